package dev.offtake.explain;

import dev.offtake.network.Network;
import dev.offtake.part.Doing;
import dev.offtake.part.OperatingLimit;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import dev.offtake.study.Origins;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The first sentences of an answer: which source feeds which side, what gives nothing, whose air
 * comes to no user, what runs backward, and which users go short.
 */
final class FeedsHeadline {
  /**
   * A source below this share of its side's, or of the largest anywhere, is said to give nothing.
   */
  private static final double NOTHING = 0.03;

  /** From this share on of a side's air a source of elsewhere is told beside its own. */
  private static final double MUCH = 0.1;

  /** Less than this is no air to speak of, kg/s. */
  private static final double SOME_AIR = 1e-4;

  private final Solution solution;
  private final Network network;
  private final Origins origins;
  private final Style style;
  private final List<Side> told = new ArrayList<>();

  /**
   * Who feeds a side.
   *
   * @param name of the side; empty for a system without sides
   * @param feeding numbers of its own sources that feed it, the order of the file
   * @param idle numbers of its own sources that give nothing
   * @param beside what of elsewhere feeds it as well, with a comma before; empty for nothing
   * @param says the same in sentences
   */
  record Side(String name, List<Integer> feeding, List<Integer> idle, String beside, String says) {}

  private FeedsHeadline(Solution solution, Style style) {
    this.solution = solution;
    this.style = style;
    network = solution.network();
    origins = Origins.of(solution);
  }

  /**
   * What is told.
   *
   * @param sides who feeds each side
   * @param sentences the same in words, with the users that go short
   */
  record Told(List<Side> sides, List<String> sentences) {}

  /**
   * Tells who feeds what.
   *
   * @param solution a solved state
   * @param sides names of the sides; none for a system that has none
   * @param style units to speak in
   */
  static Told of(Solution solution, List<String> sides, Style style) {
    FeedsHeadline headline = new FeedsHeadline(solution, style);
    headline.feeds(sides);
    return new Told(headline.told, headline.sentences());
  }

  private List<String> sentences() {
    List<String> sentences = new ArrayList<>(told.stream().map(Side::says).toList());
    for (int i = 0; i < network.parts().size(); i++) {
      Doing doing = solution.doing(i, style);
      if (network.parts().get(i).role() == Role.USER && doing.regime().equals("starved")) {
        sentences.add("The " + network.parts().get(i).name() + " goes short: " + doing.why() + ".");
      } else if (doing.regime().equals(OperatingLimit.PASSED)) {
        sentences.add("The " + network.parts().get(i).name() + " IS PASSED: " + doing.why() + ".");
      }
    }
    return sentences;
  }

  private void feeds(List<String> sides) {
    for (String side : sides.isEmpty() ? List.of("") : sides) {
      feeds(side);
    }
  }

  private void feeds(String side) {
    List<Integer> own = sources(side);
    double total = own.stream().mapToDouble(i -> Math.max(0, given(i))).sum();
    double largest = sources("").stream().mapToDouble(this::given).max().orElse(0);
    double least = NOTHING * Math.max(total, largest);
    List<Integer> feeds = new ArrayList<>();
    List<Integer> rests = new ArrayList<>();
    StringBuilder lost = new StringBuilder();
    for (int i : own) {
      String name = withoutSide(network.parts().get(i).name(), side);
      boolean gives = total > SOME_AIR && given(i) > least;
      if (gives && !arrives(network.parts().get(i).name())) {
        String flow = style.print(given(i), Dimension.MASS_FLOW);
        lost.append(" The ").append(name).append(" gives ").append(flow);
        lost.append(", which comes to no user.");
      } else if (gives) {
        feeds.add(i);
      } else if (given(i) > -Backward.MUCH) {
        rests.add(i);
      }
    }
    List<String> feeding = names(feeds, side);
    feeding.replaceAll(name -> name.toUpperCase(Locale.ROOT));
    List<String> idle = names(rests, side);
    String whom = side.isEmpty() ? "the system" : "the " + side + " side";
    if ((largest <= SOME_AIR || !feeding.isEmpty()) && onlyLeak(side)) {
      return;
    }
    String verb = feeding.size() == 1 ? " feeds " : " together feed ";
    String first =
        feeding.isEmpty()
            ? "Nothing of its own feeds " + whom + from(side, least) + "."
            : "The " + String.join(" and the ", feeding) + verb + whom + beside(side, least) + ".";
    String gives = idle.size() == 1 ? " gives nothing." : " give nothing.";
    boolean any = !feeding.isEmpty() && !idle.isEmpty();
    String others = any ? " The " + String.join(" and the ", idle) + gives : "";
    String says = first + others + lost + Backward.into(solution, own, style);
    told.add(new Side(side, feeds, rests, beside(side, least), says));
  }

  private List<String> names(List<Integer> parts, String side) {
    List<String> names = new ArrayList<>();
    parts.forEach(part -> names.add(withoutSide(network.parts().get(part).name(), side)));
    return names;
  }

  /** Whether a source's air comes to any user; where none takes air, to any other place. */
  private boolean arrives(String source) {
    boolean taken = false;
    for (int i = 0; i < network.parts().size(); i++) {
      Part part = network.parts().get(i);
      int point = part.role() == Role.USER ? network.point(part.legs().get(0).from()) : -1;
      if (point >= 0 && solution.flow(i, 0) > SOME_AIR) {
        taken = true;
        if (origins.share(point, source) > NOTHING) {
          return true;
        }
      }
    }
    return !taken;
  }

  /** Tells that the air of a side's sources feeds nobody; whether that is so. */
  private boolean onlyLeak(String side) {
    List<Integer> own = sources(side);
    Passing passing = new Passing(solution, own);
    if (passing.feeds()) {
      return false;
    }
    String others = from(side, Compared.FLOW);
    if (!others.isEmpty()) {
      String why = passing.because(side);
      String says = "Nothing of its own feeds the " + side + " side: " + why + others + ".";
      told.add(leaking(side, says + Backward.into(solution, own, style)));
      return true;
    }
    // What goes from one tap back into another does not come to the side.
    double passes = Math.max(0, own.stream().mapToDouble(this::given).sum());
    String flow = style.print(passes, Dimension.MASS_FLOW);
    boolean none = flow.equals(style.print(0, Dimension.MASS_FLOW));
    String start = none ? "No air flows to " : "Nothing but leak passes to ";
    String whom = side.isEmpty() ? "the system" : "the " + side + " side";
    String much = none ? "" : ", " + flow;
    String says = start + whom + much + ": " + passing.because(side) + ".";
    told.add(leaking(side, says + Backward.into(solution, own, style)));
    return true;
  }

  private static Side leaking(String side, String says) {
    return new Side(side, List.of(), List.of(), "", says);
  }

  /** Where the air of a side's users comes from, when it is not the side's own. */
  private String from(String side, double least) {
    List<String> givers = givers(side, least, NOTHING);
    return givers.isEmpty() ? "" : "; its air comes from the " + String.join(" and the ", givers);
  }

  /** What feeds a side's users beside its own sources, where it is much of their air. */
  private String beside(String side, double least) {
    List<String> others = side.isEmpty() ? List.of() : givers(side, least, MUCH);
    return others.isEmpty() ? "" : ", beside the " + String.join(" and the ", others);
  }

  /** Sources of elsewhere whose share in the air of a side's users is larger than a given one. */
  private List<String> givers(String side, double least, double share) {
    List<String> givers = new ArrayList<>();
    for (int i = 0; i < network.parts().size(); i++) {
      Part part = network.parts().get(i);
      boolean draws = part.role() == Role.USER && part.name().startsWith(side + " ");
      int point = draws ? network.point(part.legs().get(0).from()) : -1;
      if (point >= 0 && solution.flow(i, 0) > least) {
        for (String source : origins.sources()) {
          boolean own = !side.isEmpty() && source.startsWith(side + " ");
          if (!own && origins.share(point, source) > share && !givers.contains(source)) {
            givers.add(source);
          }
        }
      }
    }
    return givers;
  }

  private List<Integer> sources(String side) {
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < network.parts().size(); i++) {
      if (StateInquiry.feeds(network.parts().get(i), side)) {
        found.add(i);
      }
    }
    return found;
  }

  private double given(int part) {
    return solution.flow(part, 0);
  }

  static String withoutSide(String name, String side) {
    return side.isEmpty() ? name : name.substring(side.length() + 1);
  }
}

package dev.offtake.explain;

import dev.offtake.network.Network;
import dev.offtake.part.Doing;
import dev.offtake.part.OperatingLimit;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * The sentence that stands above all others: who feeds, and the valve that tells most. {@code
 * Ground idle: the high tap feeds both sides. The left and right mid check valve are held shut by
 * 15.9 psi.}
 */
final class LeadSentence {
  /** No more valves than this are told. */
  private static final int FEW = 2;

  /** Regimes by which a valve shows that a person or a command holds it, and no pressure. */
  private static final Set<String> TOLD_BY_ITSELF = Set.of("shut by pressure", "shut");

  private final Solution solution;
  private final Network network;
  private final Style style;

  private LeadSentence(Solution solution, Style style) {
    this.solution = solution;
    this.style = style;
    network = solution.network();
  }

  /**
   * The sentence.
   *
   * @param question what was asked
   * @param solution its state, solved
   * @param sides who feeds each side
   * @param style units to speak in
   */
  static String of(
      Question question, Solution solution, List<FeedsHeadline.Side> sides, Style style) {
    LeadSentence lead = new LeadSentence(solution, style);
    List<String> sentences = new ArrayList<>();
    sentences.add(capital(question.called()) + ": " + lead.feeds(sides));
    List<String> more = new ArrayList<>(lead.trips());
    more.addAll(lead.passed());
    more.addAll(lead.starved());
    if (more.isEmpty()) {
      more.addAll(lead.valves(sides));
    }
    sentences.addAll(more.subList(0, Math.min(FEW, more.size())));
    return String.join(" ", sentences);
  }

  /**
   * The sentence about a broken system.
   *
   * @param question what was asked
   * @param headline its largest consequence, one sentence
   * @param style units to speak in
   */
  static String broken(Question question, String headline, Style style) {
    List<String> faults = question.faults().stream().map(f -> f.words(style)).toList();
    String broken =
        faults.size() <= FEW ? String.join(" and ", faults) : faults.size() + " things broken";
    return capital(question.called()) + ", " + broken + ": " + small(headline);
  }

  /** Who feeds, and what of elsewhere does so beside it. */
  private record Feeding(String feeds, String beside) {}

  /** Who feeds; once for all sides where it is the same. */
  private String feeds(List<FeedsHeadline.Side> sides) {
    Map<Feeding, List<String>> whom = new LinkedHashMap<>();
    List<String> others = new ArrayList<>();
    for (FeedsHeadline.Side side : sides) {
      if (side.feeding().isEmpty()) {
        others.add(small(first(side.says())));
      } else {
        List<String> names = side.feeding().stream().map(i -> bare(i, side.name())).toList();
        String verb = names.size() == 1 ? " feeds " : " together feed ";
        Feeding who = new Feeding("the " + String.join(" and the ", names) + verb, side.beside());
        whom.computeIfAbsent(who, key -> new ArrayList<>()).add(side.name());
      }
    }
    List<String> clauses = new ArrayList<>();
    whom.forEach((who, fed) -> clauses.add(who.feeds() + these(fed, sides.size()) + who.beside()));
    clauses.addAll(others);
    return String.join("; ", clauses) + ".";
  }

  private static String these(List<String> fed, int all) {
    if (fed.get(0).isEmpty()) {
      return "the system";
    }
    boolean both = fed.size() == 2 && all == 2;
    return both
        ? "both sides"
        : "the " + String.join(" and ", fed) + (fed.size() == 1 ? " side" : " sides");
  }

  private List<String> trips() {
    return gathered(doing("tripped"), "has tripped.", "have tripped.");
  }

  private List<String> passed() {
    return gathered(doing(OperatingLimit.PASSED), "IS PASSED.", "ARE PASSED.");
  }

  /** Names of the parts that are in a regime. */
  private List<String> doing(String regime) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < network.parts().size(); i++) {
      if (solution.doing(i, style).regime().equals(regime)) {
        names.add(network.parts().get(i).name());
      }
    }
    return names;
  }

  private List<String> starved() {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < network.parts().size(); i++) {
      boolean user = network.parts().get(i).role() == Role.USER;
      if (user && solution.doing(i, style).regime().equals("starved")) {
        names.add(network.parts().get(i).name());
      }
    }
    return gathered(names, "goes short.", "go short.");
  }

  private static List<String> gathered(List<String> names, String one, String many) {
    if (names.isEmpty()) {
      return List.of();
    }
    String all = String.join(" and the ", Together.of(names));
    return List.of("The " + all + " " + (names.size() == 1 ? one : many));
  }

  /** The valves that keep the idle sources from feeding; where all feed, those that they open. */
  private List<String> valves(List<FeedsHeadline.Side> sides) {
    Map<String, List<String>> whose = new LinkedHashMap<>();
    for (FeedsHeadline.Side side : sides) {
      List<Integer> sources = side.idle().isEmpty() ? side.feeding() : side.idle();
      for (int source : sources) {
        int valve = behind(source);
        if (valve >= 0) {
          String name = network.parts().get(valve).name();
          whose.computeIfAbsent(does(valve, side.name()), key -> new ArrayList<>()).add(name);
        }
      }
    }
    List<String> sentences = new ArrayList<>();
    whose.forEach(
        (does, names) ->
            sentences.add(
                "The "
                    + String.join(" and the ", Together.counted(names))
                    + (names.size() == 1 ? " is " : " are ")
                    + does
                    + "."));
    return sentences;
  }

  /** The valve into which a source gives its air; −1 for none. */
  private int behind(int source) {
    String at = network.parts().get(source).legs().get(0).to();
    for (int i = 0; i < network.parts().size(); i++) {
      Part part = network.parts().get(i);
      if (part.role() == Role.VALVE && part.legs().get(0).from().equals(at)) {
        return i;
      }
    }
    return -1;
  }

  private String does(int valve, String side) {
    Doing doing = solution.doing(valve, style);
    Part part = network.parts().get(valve);
    int ahead = network.point(part.legs().get(0).from());
    int behind = network.point(part.legs().get(0).to());
    boolean held =
        part.kind().equals("check valve")
            && doing.regime().equals("shut")
            && ahead >= 0
            && behind >= 0
            && solution.pressure(behind) > solution.pressure(ahead);
    if (held) {
      double holds = solution.pressure(behind) - solution.pressure(ahead);
      return "held shut by " + style.print(holds, Dimension.PRESSURE_DIFFERENCE);
    }
    String why = first(doing.why()).split(";", 2)[0];
    boolean told = TOLD_BY_ITSELF.contains(doing.regime()) || doing.regime().contains("open");
    String own = side.isEmpty() ? why : why.replace(side + " ", "");
    return doing.word() + (told && !why.isEmpty() ? ": " + own : "");
  }

  private String bare(int part, String side) {
    return FeedsHeadline.withoutSide(network.parts().get(part).name(), side);
  }

  /** The first sentence without its full stop. */
  private static String first(String sentences) {
    int end = sentences.indexOf(". ");
    String one = end < 0 ? sentences : sentences.substring(0, end);
    return one.endsWith(".") ? one.substring(0, one.length() - 1) : one;
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private static String small(String text) {
    return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
  }
}

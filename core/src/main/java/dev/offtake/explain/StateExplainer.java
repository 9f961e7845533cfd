package dev.offtake.explain;

import dev.offtake.network.Network;
import dev.offtake.part.Doing;
import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import dev.offtake.stability.Stability;
import dev.offtake.study.NextChange;
import dev.offtake.study.Origins;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Makes a {@link StateAnswer} of a solved state. */
public final class StateExplainer {
  /**
   * A source below this share of its side's, or of the largest anywhere, is said to give nothing.
   */
  private static final double NOTHING = 0.03;

  private final Solution solution;
  private final Network network;
  private final Origins origins;
  private final Style style;

  private StateExplainer(Solution solution, Style style) {
    this.solution = solution;
    this.style = style;
    network = solution.network();
    origins = Origins.of(solution);
  }

  /**
   * Explains a state.
   *
   * @param asked what was asked
   * @param solution its state
   * @param next the next change, when one was found
   * @param style units to speak in
   */
  public static StateAnswer explain(
      Asked asked, Solution solution, Optional<NextChange.Event> next, Style style) {
    if (!solution.solved()) {
      return unsolved(asked, solution);
    }
    StateExplainer explainer = new StateExplainer(solution, style);
    return new StateAnswer(
        asked,
        true,
        explainer.headline(asked.sides()),
        explainer.why(),
        explainer.air(),
        explainer.room(),
        explainer.memory(),
        next.map(explainer::nextChange).orElse(""),
        Stability.of(solution),
        explainer.balance(),
        StateAnswer.CAUTION);
  }

  private static StateAnswer unsolved(Asked asked, Solution solution) {
    List<String> cycle = solution.outcome().cycle();
    String says =
        cycle.isEmpty()
            ? "NOT SOLVED. The place that resists is " + solution.outcome().resists() + "."
            : "NO STATE AT REST. The logic cycles; what goes to and fro: "
                + String.join(", ", cycle)
                + ".";
    return new StateAnswer(
        asked,
        false,
        List.of(says),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        "",
        Stability.of(solution),
        "not balanced",
        StateAnswer.CAUTION);
  }

  private List<String> headline(List<String> sides) {
    List<String> sentences = new ArrayList<>();
    if (sides.isEmpty()) {
      feeds("", sentences);
    }
    for (String side : sides) {
      feeds(side, sentences);
    }
    for (int i = 0; i < network.parts().size(); i++) {
      Doing doing = solution.doing(i, style);
      if (network.parts().get(i).role() == Role.USER && doing.regime().equals("starved")) {
        sentences.add("The " + network.parts().get(i).name() + " goes short: " + doing.why() + ".");
      }
    }
    return sentences;
  }

  private void feeds(String side, List<String> sentences) {
    List<Integer> own = sources(side);
    double total = own.stream().mapToDouble(i -> Math.max(0, given(i))).sum();
    double largest = sources("").stream().mapToDouble(this::given).max().orElse(0);
    double least = NOTHING * Math.max(total, largest);
    List<String> feeding = new ArrayList<>();
    List<String> idle = new ArrayList<>();
    for (int i : own) {
      String name = withoutSide(network.parts().get(i).name(), side);
      boolean feeds = total > 1e-4 && given(i) > least;
      (feeds ? feeding : idle).add(feeds ? name.toUpperCase(Locale.ROOT) : name);
    }
    String whom = side.isEmpty() ? "the system" : "the " + side + " side";
    String verb = feeding.size() == 1 ? " feeds " : " together feed ";
    String first =
        feeding.isEmpty()
            ? "Nothing of its own feeds " + whom + "."
            : "The " + String.join(" and the ", feeding) + verb + whom + ".";
    boolean any = !feeding.isEmpty() && !idle.isEmpty();
    String gives = idle.size() == 1 ? " gives nothing." : " give nothing.";
    sentences.add(any ? first + " The " + String.join(" and the ", idle) + gives : first);
  }

  private List<Integer> sources(String side) {
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < network.parts().size(); i++) {
      Part part = network.parts().get(i);
      boolean here = side.isEmpty() || part.name().startsWith(side + " ");
      if (part.role() == Role.SOURCE && here && !part.kind().equals("fan tap")) {
        found.add(i);
      }
    }
    return found;
  }

  private double given(int part) {
    return solution.flow(part, 0);
  }

  private static String withoutSide(String name, String side) {
    return side.isEmpty() ? name : name.substring(side.length() + 1);
  }

  private List<StateAnswer.Why> why() {
    List<StateAnswer.Why> rows = new ArrayList<>();
    for (int i = 0; i < network.parts().size(); i++) {
      Part part = network.parts().get(i);
      Doing doing = solution.doing(i, style);
      boolean told = part.role() == Role.VALVE || doing.regime().equals("tripped");
      if (told) {
        rows.add(new StateAnswer.Why(part.name(), doing.word(), doing.why()));
      }
    }
    return rows;
  }

  private List<StateAnswer.Air> air() {
    List<StateAnswer.Air> rows = new ArrayList<>();
    addAir(rows, Role.SOURCE);
    addPoints(rows);
    addAir(rows, Role.USER);
    return rows;
  }

  private void addPoints(List<StateAnswer.Air> rows) {
    for (int i = 0; i < network.points().size(); i++) {
      rows.add(
          new StateAnswer.Air(
              network.points().get(i).name(),
              solution.sensed(i) - solution.conditions().ambientP(),
              solution.temperature(i),
              Double.NaN,
              from(i)));
    }
  }

  private void addAir(List<StateAnswer.Air> rows, Role role) {
    for (int i = 0; i < network.parts().size(); i++) {
      Part part = network.parts().get(i);
      if (part.role() != role || part.legs().isEmpty() || idle(i)) {
        continue;
      }
      Leg leg = part.legs().get(0);
      int point = network.point(role == Role.SOURCE ? leg.to() : leg.from());
      if (point >= 0) {
        rows.add(
            new StateAnswer.Air(
                part.name(),
                solution.sensed(point) - solution.conditions().ambientP(),
                solution.temperature(point),
                solution.flow(i, 0),
                solution.doing(i, style).word()));
      }
    }
  }

  /** Whether a part is switched off and therefore not worth a line. */
  private boolean idle(int part) {
    String regime = solution.doing(part, style).regime();
    boolean user = network.parts().get(part).role() == Role.USER;
    return regime.equals("off") || (user && regime.equals("shut"));
  }

  private String from(int point) {
    List<String> named = new ArrayList<>(origins.sources());
    named.sort(Comparator.comparingDouble((String s) -> -origins.share(point, s)));
    List<String> told = new ArrayList<>();
    for (String source : named) {
      double share = origins.share(point, source);
      if (share >= 0.005) {
        told.add(share > 0.995 ? source : Math.round(100 * share) + " % " + source);
      }
    }
    return told.isEmpty() ? "still" : "from " + String.join(", ", told);
  }

  private List<StateAnswer.Room> room() {
    List<StateAnswer.Room> rows = new ArrayList<>();
    for (int i = 0; i < network.parts().size(); i++) {
      Part part = network.parts().get(i);
      Doing doing = solution.doing(i, style);
      if (part.role() == Role.USER && !idle(i)) {
        rows.add(new StateAnswer.Room(part.name(), doing.why()));
      }
    }
    return rows;
  }

  private List<String> memory() {
    List<String> sentences = new ArrayList<>();
    for (String part : solution.outcome().memory()) {
      sentences.add("The " + part + " moved: the state shown is the one after it.");
    }
    solution.outcome().before().ifPresent(before -> sentences.addAll(differences(before)));
    return sentences;
  }

  private List<String> differences(Solution before) {
    List<String> sentences = new ArrayList<>();
    for (int i = 0; i < network.points().size(); i++) {
      double change = solution.sensed(i) - before.sensed(i);
      if (Math.abs(change) > 3500) {
        double ambient = solution.conditions().ambientP();
        sentences.add(
            "Before: "
                + network.points().get(i).name()
                + " "
                + style.print(before.sensed(i) - ambient, Dimension.GAUGE_PRESSURE)
                + " and "
                + style.print(before.temperature(i), Dimension.TEMPERATURE)
                + ", now "
                + style.print(solution.sensed(i) - ambient, Dimension.GAUGE_PRESSURE)
                + ".");
      }
    }
    return sentences;
  }

  private String nextChange(NextChange.Event event) {
    List<String> parts = new ArrayList<>();
    for (NextChange.Change change : event.parts()) {
      parts.add(change.part() + " " + inWords(change));
    }
    return String.format(
        Locale.ROOT, "core %.1f %%: %s", 100 * event.core(), String.join("; ", parts));
  }

  /** Words of a change; where the word stays the same, the regimes tell the difference. */
  private static String inWords(NextChange.Change change) {
    boolean same = change.before().word().equals(change.after().word());
    String before = same ? change.before().regime() : change.before().word();
    return before + " to " + (same ? change.after().regime() : change.after().word());
  }

  private String balance() {
    double share = Math.max(solution.outcome().imbalance(), 1e-16);
    int power = (int) Math.floor(-Math.log10(share));
    long parts = (long) Math.ceil(share * Math.pow(10, power));
    return "air and heat in = out to " + parts + " parts in 10^" + power;
  }
}

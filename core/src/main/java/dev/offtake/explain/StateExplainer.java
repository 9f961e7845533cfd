package dev.offtake.explain;

import dev.offtake.network.Network;
import dev.offtake.part.Doing;
import dev.offtake.part.Leg;
import dev.offtake.part.OperatingLimit;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import dev.offtake.stability.Stability;
import dev.offtake.study.Origins;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Makes a {@link StateAnswer} of a solved state. */
public final class StateExplainer {
  /** Less than this is no air to speak of, kg/s. */
  private static final double SOME_AIR = 1e-4;

  /** What the settler takes for granted about what happened before. */
  private static final String FRESH =
      "Assumed: reliefs shut and nothing tripped before, power rising.";

  private final Solution solution;
  private final Network network;
  private final Origins origins;
  private final double[] inflow;
  private final Style style;

  private StateExplainer(Solution solution, Style style) {
    this.solution = solution;
    this.style = style;
    network = solution.network();
    origins = Origins.of(solution);
    inflow = inflow(solution);
  }

  /**
   * Explains a state.
   *
   * @param asked what was asked
   * @param solution its state
   * @param ahead gives what changes as power comes up, asked last; empty where no engine feeds
   * @param style units to speak in
   */
  static StateAnswer explain(
      Asked asked, Solution solution, Supplier<Optional<StateInquiry.Ahead>> ahead, Style style) {
    StateExplainer explainer = new StateExplainer(solution, style);
    Stability stability = Stability.of(solution);
    return new StateAnswer(
        asked,
        true,
        FeedsHeadline.of(solution, asked.sides(), style).sentences(),
        explainer.why(),
        explainer.air(),
        explainer.gauges(),
        Panel.of(solution, style),
        explainer.room(),
        explainer.memory(),
        ahead.get().map(a -> AheadWords.of(a, solution.conditions().corrected())).orElse(List.of()),
        stability,
        BalanceWords.of(solution.outcome()),
        StateAnswer.CAUTION,
        Optional.empty());
  }

  /**
   * Tells why there is no answer.
   *
   * @param asked what was asked
   * @param solution what was found instead of a state
   */
  static StateAnswer withoutAnswer(Asked asked, Solution solution) {
    return new StateAnswer(
        asked,
        false,
        List.of(trouble(solution)),
        List.of(),
        List.of(),
        "",
        Panel.NONE,
        List.of(),
        List.of(),
        List.of(),
        Stability.of(solution),
        "",
        StateAnswer.CAUTION,
        Optional.empty());
  }

  /** Why there is no answer, one sentence or two. */
  static String trouble(Solution solution) {
    List<String> cycle = solution.outcome().cycle();
    String says = "NOT SOLVED. The place that resists is " + solution.outcome().resists() + ".";
    if (!cycle.isEmpty()) {
      says =
          "NO STATE AT REST. The logic cycles; what goes to and fro: "
              + String.join(", ", cycle)
              + ".";
    } else if (!solution.refusals().isEmpty()) {
      says = refusal(solution.refusals());
    }
    return says;
  }

  /**
   * Tells a state as far as that needs no other one.
   *
   * @param question what was asked
   * @param solution its state, solved
   * @param style units to speak in
   */
  static Glance glance(Question question, Solution solution, Style style) {
    StateExplainer explainer = new StateExplainer(solution, style);
    Asked asked = question.asked(style);
    FeedsHeadline.Told feeds = FeedsHeadline.of(solution, asked.sides(), style);
    return new Glance(
        asked,
        LeadSentence.of(question, solution, feeds.sides(), style),
        feeds.sentences(),
        explainer.places(),
        explainer.acts(),
        Panel.of(solution, style),
        explainer.room(),
        explainer.memory(),
        BalanceWords.of(solution.outcome()));
  }

  private List<Glance.Place> places() {
    List<Glance.Place> places = new ArrayList<>();
    for (int i = 0; i < network.points().size(); i++) {
      int point = i;
      boolean flows = inflow(i) >= SOME_AIR;
      String most =
          origins.sources().stream()
              .max(Comparator.comparingDouble((String s) -> origins.share(point, s)))
              .filter(s -> flows && origins.share(point, s) >= 0.005)
              .orElse("");
      // What leaks through a shut valve feeds nobody.
      boolean fed = inflow(i) >= Compared.FLOW && origins.fed(i);
      places.add(new Glance.Place(from(i), most, fed));
    }
    return places;
  }

  private List<Glance.Act> acts() {
    List<Glance.Act> acts = new ArrayList<>();
    for (int i = 0; i < network.parts().size(); i++) {
      Doing doing = solution.doing(i, style);
      boolean valve = network.parts().get(i).role() == Role.VALVE;
      String back = valve ? Backward.through(solution, i, style) : "";
      acts.add(new Glance.Act(doing.regime(), doing.word(), doing.why() + back));
    }
    return acts;
  }

  private static String refusal(Map<String, String> refusals) {
    List<String> parts = new ArrayList<>(refusals.keySet());
    String first = parts.remove(0);
    String others = parts.isEmpty() ? "" : " The same goes for " + String.join(", ", parts) + ".";
    return "NO ANSWER. The "
        + first
        + " is asked too far outside its table: "
        + refusals.get(first)
        + "."
        + others;
  }

  private List<StateAnswer.Why> why() {
    List<StateAnswer.Why> rows = new ArrayList<>();
    for (int i = 0; i < network.parts().size(); i++) {
      Part part = network.parts().get(i);
      Doing doing = solution.doing(i, style);
      boolean told = part.role() == Role.VALVE || doing.regime().equals("tripped");
      if (told) {
        String back = Backward.through(solution, i, style);
        rows.add(new StateAnswer.Why(part.name(), doing.word(), doing.why() + back));
      }
    }
    return rows;
  }

  private List<StateAnswer.Air> air() {
    List<StateAnswer.Air> rows = new ArrayList<>();
    addAir(rows, Role.SOURCE);
    addPoints(rows);
    addAir(rows, Role.USER);
    rows.addAll(Outlets.of(solution, style));
    return rows;
  }

  /** How gauges differ from what valves and users feel, where the difference can be read. */
  private String gauges() {
    double most = 0;
    int where = -1;
    for (int i = 0; i < network.points().size(); i++) {
      double faster = solution.pressure(i) - solution.sensed(i);
      where = faster > most ? i : where;
      most = Math.max(most, faster);
    }
    String read = style.print(most, Dimension.PRESSURE_DIFFERENCE);
    return read.equals(style.print(0, Dimension.PRESSURE_DIFFERENCE))
        ? ""
        : "Static, as a gauge reads it. Users are judged by total pressure; it is "
            + read
            + " higher at most, in "
            + network.points().get(where).name()
            + ".";
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
                note(i)));
      }
    }
  }

  /** What a source or user does, without the flow that stands in its column. */
  private String note(int part) {
    String flow = style.print(Math.abs(solution.flow(part, 0)), Dimension.MASS_FLOW);
    String word = solution.doing(part, style).word();
    for (String verb : List.of("gives ", "takes ")) {
      if (word.startsWith(verb + flow)) {
        String rest = word.substring((verb + flow).length());
        return rest.startsWith(", ") ? rest.substring(2) : rest.strip();
      }
    }
    return word.replace("takes back " + flow, "takes it back");
  }

  /** Whether a part is switched off and therefore not worth a line. */
  private boolean idle(int part) {
    String regime = solution.doing(part, style).regime();
    boolean user = network.parts().get(part).role() == Role.USER;
    return regime.equals("off") || (user && regime.equals("shut"));
  }

  private String from(int point) {
    if (inflow(point) < SOME_AIR) {
      return "still";
    }
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

  private double inflow(int point) {
    return inflow[point];
  }

  /** What flows into each point, kg/s. */
  private static double[] inflow(Solution solution) {
    Network network = solution.network();
    double[] inflow = new double[network.points().size()];
    for (int i = 0; i < network.parts().size(); i++) {
      List<Leg> legs = network.parts().get(i).legs();
      for (int k = 0; k < legs.size(); k++) {
        double flow = solution.flow(i, k);
        int into = network.point(flow > 0 ? legs.get(k).to() : legs.get(k).from());
        if (into >= 0) {
          inflow[into] += Math.abs(flow);
        }
      }
    }
    return inflow;
  }

  private List<StateAnswer.Room> room() {
    List<StateAnswer.Room> rows = new ArrayList<>();
    for (int i = 0; i < network.parts().size(); i++) {
      Part part = network.parts().get(i);
      Doing doing = solution.doing(i, style);
      boolean works = part.role() == Role.USER && !idle(i);
      if (works || (part instanceof OperatingLimit limit && counts(limit, i))) {
        rows.add(new StateAnswer.Room(part.name(), doing.why()));
      }
    }
    return rows;
  }

  private boolean counts(OperatingLimit limit, int part) {
    return limit.counts(solution.view(part, style));
  }

  private List<String> memory() {
    List<String> sentences = new ArrayList<>();
    for (String part : solution.outcome().memory()) {
      sentences.add("The " + part + " moved: the state shown is the one after it.");
    }
    solution.outcome().before().ifPresent(before -> sentences.addAll(differences(before)));
    sentences.add(FRESH);
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
}

package dev.offtake.explain;

import dev.offtake.part.Conditions;
import dev.offtake.part.Gauge;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.profile.Action;
import dev.offtake.profile.BleedDown;
import dev.offtake.profile.Inputs;
import dev.offtake.profile.Paces;
import dev.offtake.profile.Profile;
import dev.offtake.profile.Sequence;
import dev.offtake.profile.Speeds;
import dev.offtake.profile.Start;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Setup;
import dev.offtake.study.Fault;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.LineUp;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleConsumer;

/** Looks at how trapped air leaves, by itself and with whatever may be wrong. */
public final class BleedInquiry {
  /** A pocket that is down sooner needs nothing opened, s. */
  private static final double QUICK = 60;

  /** What shortens the wait by less is not worth a word. */
  private static final double WORTH = 0.5;

  /** How long is played after the engine stands, s; bleeding down is looked at for longer. */
  private static final double REST = 20;

  /** Most openings that are told. */
  private static final int MOST = 3;

  private final BleedSystem system;
  private final Profile profile;
  private final Style style;
  private final double to;

  /**
   * Prepares.
   *
   * @param profile one that ends shut down
   * @param to pressure that is waited for, Pa above the air outside
   */
  public BleedInquiry(BleedSystem system, Profile profile, Style style, double to) {
    this.system = system;
    this.profile = profile;
    this.style = style;
    this.to = to;
  }

  /**
   * How it bleeds down.
   *
   * @param faults what is broken in any case
   * @param causes what may be broken besides, each for itself
   * @param progress is told the share that is done, 0..1
   * @throws QuantityProblem when faults contradict each other
   */
  PlayAnswer.Bleeding with(List<Fault> faults, List<List<Fault>> causes, DoubleConsumer progress)
      throws QuantityProblem {
    BleedDown healthy = down(profile, faults);
    List<PlayAnswer.Caused> caused = new ArrayList<>();
    for (int i = 0; i < causes.size(); i++) {
      progress.accept((i + 1.0) / (causes.size() + 2));
      List<Fault> all = new ArrayList<>(faults);
      all.addAll(causes.get(i));
      caused.add(new PlayAnswer.Caused(words(causes.get(i)), down(profile, all)));
    }
    List<PlayAnswer.Worst> worst =
        worst(healthy, caused.stream().filter(PlayAnswer.Caused::done).toList());
    return new PlayAnswer.Bleeding(
        healthy, caused, worst, proof(healthy), opening(healthy, faults));
  }

  /**
   * A profile that only shuts the engine down at a power, all supplies taken off.
   *
   * @param question power, day and line-up
   */
  public static Profile shutDown(Question question) {
    Setup setup = question.setup();
    Conditions c = setup.conditions();
    double factor = c.corrected() ? question.day().physicalSpeed(1) : 1;
    Asked asked = question.asked(Style.SHOP);
    Speeds speeds = new Speeds(power(asked), factor * c.core(), factor * c.fan());
    Inputs inputs = new Inputs(Map.of());
    double down = inputs.value(Inputs.RUN_DOWN);
    List<Action> actions = new ArrayList<>();
    for (Part part : question.system().parts()) {
      if (part.kind().equals("supply")) {
        actions.add(new Action.Hose(0, 0, part.name(), false));
      }
    }
    actions.add(new Action.ShutDown(0, 0, speeds, down));
    Start start =
        new Start(
            speeds,
            day(asked),
            question.day(),
            setup.positions(),
            setup.locks(),
            List.of(),
            List.of());
    List<String> assumes =
        List.of(
            "All supplies are off and their hoses taken off as fuel is cut.",
            Inputs.sentence(Inputs.RUN_DOWN.says(), inputs.of(Inputs.RUN_DOWN), Inputs.PRACTICE));
    return new Profile(
        "",
        "bleed-down",
        "",
        start,
        inputs,
        new Paces(Map.of()),
        actions,
        down + REST,
        "",
        assumes);
  }

  private static String power(Asked asked) {
    int comma = asked.power().indexOf(',');
    return comma < 0 ? asked.power() : asked.power().substring(0, comma);
  }

  private static String day(Asked asked) {
    int comma = asked.day().indexOf(',');
    return comma < 0 ? asked.day() : asked.day().substring(0, comma);
  }

  private String words(List<Fault> faults) {
    return String.join(" and ", faults.stream().map(fault -> fault.words(style)).toList());
  }

  private BleedDown down(Profile asked, List<Fault> faults) throws QuantityProblem {
    Sequence sequence = PlayInquiry.sequence(system, asked, faults);
    double off = 0;
    double stands = 0;
    for (Action action : asked.actions()) {
      if (action instanceof Action.ShutDown shut) {
        off = shut.at();
        stands = shut.until();
      }
    }
    return BleedDown.of(sequence, off, stands, to, seconds -> true);
  }

  /** For each pocket of the healthy system, and each that only a cause makes, the worst. */
  private List<PlayAnswer.Worst> worst(BleedDown healthy, List<PlayAnswer.Caused> causes) {
    Map<String, PlayAnswer.Worst> worst = new LinkedHashMap<>();
    for (BleedDown.Pocket pocket : healthy.pockets()) {
      PlayAnswer.Worst row =
          new PlayAnswer.Worst(
              name(pocket), pocket.begins(), pocket.seconds(), pocket.seconds(), "", pocket.left());
      for (PlayAnswer.Caused cause : causes) {
        row = worse(row, pocket, cause);
      }
      worst.put(row.pocket(), row);
    }
    for (PlayAnswer.Caused cause : causes) {
      for (BleedDown.Pocket pocket : cause.down().pockets()) {
        boolean known = pocket.points().stream().anyMatch(point -> holds(healthy.pockets(), point));
        if (!known) {
          double before = slowest(healthy, pocket);
          PlayAnswer.Worst row =
              new PlayAnswer.Worst(
                  name(pocket),
                  pocket.begins(),
                  before,
                  pocket.seconds(),
                  cause.words(),
                  pocket.left());
          worst.merge(row.pocket(), row, (one, two) -> two.worst() > one.worst() ? two : one);
        }
      }
    }
    List<PlayAnswer.Worst> rows = new ArrayList<>(worst.values());
    rows.sort(Comparator.comparingDouble((PlayAnswer.Worst row) -> -row.worst()));
    return rows;
  }

  private static boolean holds(List<BleedDown.Pocket> pockets, int point) {
    return pockets.stream().anyMatch(pocket -> pocket.points().contains(point));
  }

  private static double slowest(BleedDown down, BleedDown.Pocket pocket) {
    return pocket.points().stream().mapToDouble(point -> down.seconds().get(point)).max().orElse(0);
  }

  private static PlayAnswer.Worst worse(
      PlayAnswer.Worst row, BleedDown.Pocket pocket, PlayAnswer.Caused cause) {
    double seconds = slowest(cause.down(), pocket);
    if (!(seconds > row.worst())) {
      return row;
    }
    double left =
        cause.down().pockets().stream()
            .filter(other -> pocket.points().stream().anyMatch(other.points()::contains))
            .mapToDouble(BleedDown.Pocket::left)
            .max()
            .orElse(row.left());
    return new PlayAnswer.Worst(
        row.pocket(), row.begins(), row.healthy(), seconds, cause.words(), left);
  }

  /** A pocket by its points: at most three, those that users draw from first. */
  private String name(BleedDown.Pocket pocket) {
    List<String> names = new ArrayList<>(pocket.names());
    names.sort(Comparator.comparingInt(name -> taken(name) ? 0 : 1));
    int more = names.size() - 3;
    List<String> together = Together.of(names.subList(0, Math.min(3, names.size())));
    return String.join(", ", together) + (more > 0 ? " and " + more + " more" : "");
  }

  private boolean taken(String point) {
    return system.parts().stream()
        .filter(part -> part.role() == Role.USER)
        .flatMap(part -> part.legs().stream())
        .anyMatch(leg -> leg.from().equals(point));
  }

  /** How a gauge proves each pocket that is not down at once. */
  private List<String> proof(BleedDown down) {
    List<String> proof = new ArrayList<>();
    for (BleedDown.Pocket pocket : down.pockets()) {
      proof.add(name(pocket) + ": " + proof(pocket));
    }
    return proof;
  }

  private String proof(BleedDown.Pocket pocket) {
    for (Part part : system.parts()) {
      if (part instanceof Gauge gauge && !gauge.temperature()) {
        for (int i = 0; i < gauge.needles().size(); i++) {
          if (pocket.names().contains(gauge.needles().get(i).reads().point())) {
            return reads(gauge, i);
          }
        }
      }
    }
    return port(pocket, "no gauge of the file reads it");
  }

  private String reads(Gauge gauge, int needle) {
    String mark = gauge.needles().get(needle).reads().name();
    String says = "the " + gauge.name() + " reads " + mark;
    if (gauge.step() > 0) {
      String step = style.print(gauge.step(), Dimension.PRESSURE_DIFFERENCE);
      says += "; its step is " + step + ": a zero needle is no evidence below that";
    }
    return says;
  }

  private String port(BleedDown.Pocket pocket, String none) {
    for (Part part : system.parts()) {
      boolean here = part.legs().stream().anyMatch(leg -> pocket.names().contains(leg.from()));
      if (part.kind().equals("test port") && here) {
        return none + "; a test gauge goes to the " + part.name();
      }
    }
    return none + " and it has no test port: crack a joint open only by the approved manual";
  }

  /** Switches and valves that would let the slowest pocket out sooner, the quickest first. */
  private List<String> opening(BleedDown down, List<Fault> faults) throws QuantityProblem {
    if (down.pockets().isEmpty() || down.pockets().get(0).seconds() < QUICK) {
      return List.of();
    }
    BleedDown.Pocket slow = down.pockets().get(0);
    record Way(String says, double seconds) {}
    List<Way> ways = new ArrayList<>();
    for (Action.Turn turn : turns()) {
      double seconds = slowest(down(profile.with(turn), faults), slow);
      if (seconds < WORTH * slow.seconds()) {
        ways.add(
            new Way(turn.what() + " " + turn.to() + ": about " + Durations.of(seconds), seconds));
      }
    }
    ways.sort(Comparator.comparingDouble(Way::seconds));
    return ways.stream().limit(MOST).map(Way::says).toList();
  }

  /** What a hand could turn at the end, but for power, supplies and what the file forbids. */
  private List<Action.Turn> turns() {
    double at = profile.end();
    Map<String, String> stands = new LinkedHashMap<>(profile.start().positions());
    for (Action action : profile.actions()) {
      if (action instanceof Action.Turn turn) {
        stands.put(turn.what(), turn.to());
      }
      at = action instanceof Action.ShutDown off ? off.until() : at;
    }
    List<Action.Turn> turns = new ArrayList<>();
    for (Map.Entry<String, List<String>> control : system.switches().entrySet()) {
      for (String position : control.getValue()) {
        boolean same = position.equals(stands.get(control.getKey()));
        if (!same && !feeds(control.getKey()) && !forbidden(control.getKey(), position)) {
          turns.add(new Action.Turn(at, 0, control.getKey(), position));
        }
      }
    }
    for (Part part : system.parts()) {
      if (part.role() == Role.VALVE && part.kind().contains("shutoff")) {
        turns.add(new Action.Turn(at, 0, part.name(), LineUp.Lock.LOCKED_OPEN.words()));
      }
    }
    return turns;
  }

  /** Whether a switch turns on a supply, a starter or electrical power. */
  private boolean feeds(String control) {
    return control.endsWith(" bus")
        || system.parts().stream()
            .filter(part -> part.role() == Role.SOURCE || part.kind().equals("starter"))
            .flatMap(part -> part.controls().stream())
            .flatMap(one -> one.rules().stream())
            .anyMatch(rule -> rule.when() != null && rule.when().names().contains(control));
  }

  private boolean forbidden(String control, String position) {
    return system.never().stream()
        .anyMatch(line -> line.text().contains(control + " is " + position));
  }
}

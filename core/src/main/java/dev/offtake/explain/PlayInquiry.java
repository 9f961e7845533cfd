package dev.offtake.explain;

import dev.offtake.network.Network;
import dev.offtake.profile.Action;
import dev.offtake.profile.Playing;
import dev.offtake.profile.Profile;
import dev.offtake.profile.Sequence;
import dev.offtake.profile.Shortage;
import dev.offtake.profile.Start;
import dev.offtake.profile.Watch;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.quantity.Unit;
import dev.offtake.quantity.Units;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Solution;
import dev.offtake.stability.Stability;
import dev.offtake.study.Broken;
import dev.offtake.study.Column;
import dev.offtake.study.Curve;
import dev.offtake.study.Fault;
import dev.offtake.study.FaultReader;
import dev.offtake.study.Feeders;
import dev.offtake.study.Sweep;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.NeverLine;
import dev.offtake.time.Cycle;
import dev.offtake.time.Event;
import dev.offtake.time.Played;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import java.util.stream.Collectors;

/** From a profile to what is told of it: plays it, and looks at what happened. */
public final class PlayInquiry {
  /** States along a curve; a table shows the round ones. */
  private static final int STATES = 600;

  /** A pressure that is so near to its steady value is at rest, Pa. */
  private static final double RESTS = 700;

  /** Share of the work that playing is; the rest is looking. */
  private static final double PLAYING = 0.7;

  private final BleedSystem system;
  private final Profile profile;
  private final Request request;
  private final Style style;
  private final DoubleConsumer progress;
  private final List<Fault> faults = new ArrayList<>();
  private final Sequence sequence;

  /**
   * What is asked besides the profile.
   *
   * @param faults what is broken from the beginning, in words
   * @param causes what may be broken besides while air bleeds down, each for itself
   * @param show values to show, with commas between them; empty for those of the profile
   * @param to pressure to which trapped air must fall, Pa above the air outside
   */
  public record Request(List<String> faults, List<List<Fault>> causes, String show, double to) {
    /** Keeps its lists. */
    public Request {
      faults = List.copyOf(faults);
      causes = List.copyOf(causes);
    }
  }

  private PlayInquiry(
      BleedSystem system, Profile profile, Request request, Style style, DoubleConsumer progress)
      throws QuantityProblem {
    this.system = system;
    this.profile = profile;
    this.request = request;
    this.style = style;
    this.progress = progress;
    FaultReader reader = new FaultReader(system);
    for (String text : request.faults()) {
      faults.addAll(reader.read(text));
    }
    sequence = sequence(system, profile, faults);
  }

  /**
   * Answers.
   *
   * @param system what it is played on
   * @param profile what is done
   * @param request what else is asked
   * @param style units to speak in
   * @param progress is told the share that is done, 0..1
   * @throws QuantityProblem when a fault or a value to show is not known
   */
  public static PlayAnswer answer(
      BleedSystem system, Profile profile, Request request, Style style, DoubleConsumer progress)
      throws QuantityProblem {
    return new PlayInquiry(system, profile, request, style, progress).answer(played -> {});
  }

  /**
   * Answers, and hands out what was played, for one who shows its states.
   *
   * @param system what it is played on
   * @param profile what is done
   * @param request what else is asked
   * @param style units to speak in
   * @param states is given what was played, before the answer is told
   * @throws QuantityProblem when a fault or a value to show is not known
   */
  public static PlayAnswer answerWith(
      BleedSystem system, Profile profile, Request request, Style style, Consumer<Played> states)
      throws QuantityProblem {
    return new PlayInquiry(system, profile, request, style, share -> {}).answer(states);
  }

  /** A profile with faults, as the solver is asked it. */
  static Sequence sequence(BleedSystem system, Profile profile, List<Fault> faults)
      throws QuantityProblem {
    try {
      return Sequence.of(system, profile, faults);
    } catch (Broken.Contradiction both) {
      throw new QuantityProblem(
          both.getMessage() + " contradict each other: they change the same thing",
          "leave one of them out");
    }
  }

  private PlayAnswer answer(Consumer<Played> states) throws QuantityProblem {
    List<Column> columns = columns();
    double length = Math.max(1e-9, sequence.drive().seconds());
    Played played =
        Playing.of(
            sequence,
            seconds -> {
              progress.accept(PLAYING * seconds / length);
              return true;
            });
    states.accept(played);
    if (played.end() == Played.End.NO_START) {
      return withoutStart(played);
    }
    return told(played, columns);
  }

  private List<Column> columns() throws QuantityProblem {
    String show = request.show().isEmpty() ? profile.show() : request.show();
    return Shown.same(system, sequence.network(), Shown.read(system, show));
  }

  private PlayAnswer withoutStart(Played played) throws QuantityProblem {
    String trouble = "there is no steady state to begin from: " + played.resists();
    Sweep sweep = sweep(List.of(0.0, 1.0));
    Curve none = new Curve(sweep, List.of(), List.of(), List.of(), List.of(), List.of());
    Asked asked = asked();
    return new PlayAnswer(
        asked,
        profile,
        false,
        trouble,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        drawn(asked, none),
        Optional.empty(),
        sequence.assumes());
  }

  /** What happened, without limits that were passed for a moment in which they may be. */
  private static List<Event> happened(Played played, List<Watch.Seen> limits) {
    Set<String> brief =
        limits.stream()
            .filter(seen -> seen.watch().stated() && !PlayHeadline.passed(seen))
            .map(seen -> seen.watch().part())
            .collect(Collectors.toSet());
    return played.events().stream().filter(event -> !brief.contains(event.part())).toList();
  }

  private PlayAnswer told(Played played, List<Column> columns) throws QuantityProblem {
    Network network = sequence.network();
    double ambient = profile.start().day().pressure();
    List<Cycle> hunts = Cycle.in(played, network);
    List<Shortage> shortages = Shortage.of(network, played);
    List<Watch.Seen> limits = Watch.seen(Watch.of(network, ambient), played, times(played));
    List<PlayStory.Line> lines =
        PlayStory.of(network, sequence.happenings(), happened(played, limits), hunts, shortages);
    lines.removeIf(line -> line.at() > played.seconds());
    Asked asked = asked();
    CurveAnswer curve = drawn(asked, curve(played, columns, lines));
    Optional<PlayAnswer.Bleeding> bleed =
        profile.endsShutDown() && played.end() == Played.End.DONE
            ? Optional.of(bleeding())
            : Optional.empty();
    progress.accept(1);
    String trouble = played.end() == Played.End.DONE ? "" : played.resists();
    PlayAnswer answer =
        new PlayAnswer(
            asked,
            profile,
            played.end() == Played.End.DONE,
            trouble,
            List.of(),
            lines.stream()
                .map(line -> new PlayAnswer.Told(line.at(), line.done(), line.says()))
                .toList(),
            played.events(),
            limits,
            shortages,
            hunts,
            end(played),
            curve,
            bleed,
            sequence.assumes());
    return PlayHeadline.over(answer, style);
  }

  private PlayAnswer.Bleeding bleeding() throws QuantityProblem {
    return new BleedInquiry(system, profile, style, request.to())
        .with(faults, request.causes(), share -> progress.accept(PLAYING + (1 - PLAYING) * share));
  }

  /** The course as a picture shows it: what is broken stands beside how it begins. */
  private CurveAnswer drawn(Asked asked, Curve curve) {
    String title = profile.title().isEmpty() ? "" : profile.title() + ": ";
    String broken = asked.broken().isEmpty() ? "" : ", if " + String.join(" and ", asked.broken());
    Asked plain =
        new Asked(
            asked.title(),
            asked.about(),
            asked.power(),
            asked.day(),
            asked.lineUp(),
            asked.sides(),
            asked.standsOn(),
            asked.assumes(),
            asked.warnings(),
            List.of());
    String power = title + "begins at " + asked.power() + broken;
    return new CurveAnswer(plain, power, asked.day(), "", curve, List.of());
  }

  /** Ends of steps, and instants close enough to see peaks between them. */
  private static double[] times(Played played) {
    TreeSet<Double> times = new TreeSet<>();
    for (double at : played.instants()) {
      times.add(at);
    }
    for (int i = 0; i <= STATES; i++) {
      times.add(played.seconds() * i / STATES);
    }
    return times.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static Sweep sweep(List<Double> stops) {
    Unit seconds = Units.find("s", Dimension.TIME).orElseThrow();
    return new Sweep(
        "time",
        seconds,
        stops,
        at -> {
          throw new IllegalStateException("time is played, not set");
        },
        Optional.empty());
  }

  private Curve curve(Played played, List<Column> columns, List<PlayStory.Line> lines)
      throws QuantityProblem {
    double end = Math.max(played.seconds(), 1e-6);
    Unit seconds = Units.find("s", Dimension.TIME).orElseThrow();
    List<Double> stops = Stops.of(0, end, seconds, STATES);
    List<Feeders> feeders = Shown.feeders(system, sequence.network());
    List<Curve.Row> rows = new ArrayList<>();
    for (double at : stops) {
      Solution state = played.at(at);
      List<Double> values = columns.stream().map(column -> column.reading().of(state)).toList();
      List<List<String>> feeding = feeders.stream().map(group -> group.feeding(state)).toList();
      rows.add(new Curve.Row(at, values, feeding, ""));
    }
    List<Curve.Event> events = new ArrayList<>();
    for (PlayStory.Line line : lines) {
      events.add(
          new Curve.Event(
              line.at(), line.at(), line.at(), Curve.Way.BOTH, line.changes(), List.of()));
    }
    return new Curve(sweep(stops), columns, feeders, rows, List.of(), events);
  }

  /** How steady it is where it ended. */
  private List<String> end(Played played) {
    Solution last = played.at(played.seconds());
    if (played.end() != Played.End.DONE || last.setup().conditions().core() == 0) {
      return List.of();
    }
    Solution steady = new Settler(sequence.network()).goOn(last, sequence.drive().last());
    if (!steady.solved()) {
      return List.of();
    }
    List<String> says = new ArrayList<>();
    String moves = "";
    double most = RESTS;
    for (int i = 0; i < sequence.network().points().size(); i++) {
      double off = Math.abs(last.sensed(i) - steady.sensed(i));
      if (off > most) {
        most = off;
        moves = sequence.network().points().get(i).name();
      }
    }
    if (!moves.isEmpty()) {
      String by = style.print(most, Dimension.PRESSURE_DIFFERENCE);
      says.add("not at rest yet: " + moves + " is " + by + " from where it settles");
    }
    says.addAll(stability(steady).says());
    return says;
  }

  /** With the lags of the profile where it gives any. */
  private Stability stability(Solution steady) {
    return profile.paces().given().isEmpty()
        ? Stability.of(steady)
        : Stability.of(steady, part -> profile.paces().of(part).lags());
  }

  private Asked asked() throws QuantityProblem {
    Asked asked = asked(system, profile.start(), faults, style);
    List<String> warnings = new ArrayList<>(asked.warnings());
    for (NeverLine never : system.never()) {
      if (never.judgedByAPerson() && touched(never)) {
        String source = never.source().isEmpty() ? "" : " (" + never.source() + ")";
        warnings.add("Only you can judge: never " + never.text() + source + ".");
      }
    }
    return new Asked(
        asked.title(),
        asked.about(),
        asked.power(),
        asked.day(),
        asked.lineUp(),
        asked.sides(),
        asked.standsOn(),
        asked.assumes(),
        warnings,
        asked.broken());
  }

  /** Whether the profile turns something to what a line forbids under conditions. */
  private boolean touched(NeverLine never) {
    return profile.actions().stream()
        .filter(action -> action instanceof Action.Turn)
        .map(action -> (Action.Turn) action)
        .anyMatch(turn -> never.text().contains(turn.what() + " is " + turn.to()));
  }

  /** How a profile begins, in words. */
  static Asked asked(BleedSystem system, Start start, List<Fault> more, Style style)
      throws QuantityProblem {
    double speed = start.power().stopped() ? 0.6 : start.power().core();
    String any = String.format(Locale.ROOT, "%.3f %%", 100 * speed);
    List<String> sets = new ArrayList<>();
    start.positions().forEach((what, to) -> sets.add(what + ": " + to));
    start.locks().forEach((what, to) -> sets.add(what + ": " + to));
    Asked plain = Question.of(system, any, start.dayName(), "", sets).asked(style);
    String core = String.format(Locale.ROOT, "core %.1f %%", 100 * start.power().core());
    String power =
        start.power().stopped()
            ? "engine stopped"
            : start.power().name().endsWith("%") ? core : start.power().name() + ", " + core;
    List<String> broken = new ArrayList<>();
    start.faults().forEach(fault -> broken.add(fault.words(style)));
    more.forEach(fault -> broken.add(fault.words(style)));
    return new Asked(
        plain.title(),
        plain.about(),
        power,
        plain.day(),
        plain.lineUp(),
        plain.sides(),
        plain.standsOn(),
        List.of(),
        plain.warnings(),
        broken);
  }
}

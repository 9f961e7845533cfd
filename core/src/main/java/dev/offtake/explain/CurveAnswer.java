package dev.offtake.explain;

import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Settler;
import dev.offtake.study.Curve;
import dev.offtake.study.CurveTracer;
import dev.offtake.study.Stretches;
import dev.offtake.study.Sweep;
import dev.offtake.study.Traced;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import java.util.stream.Collectors;

/**
 * What a person is told about one curve.
 *
 * @param asked what was asked
 * @param power in words, with what was moved
 * @param day likewise
 * @param heldSpeed {@code physical} or {@code corrected} where nobody said which the engine holds
 *     and the day makes a difference; else empty
 * @param curve the answer
 * @param noticed where a person could tell it from the healthy system, by rising value without a
 *     hole; empty for the healthy system
 */
public record CurveAnswer(
    Asked asked, String power, String day, String heldSpeed, Curve curve, List<Noticed> noticed) {
  private static final String ALTITUDE = "altitude";
  private static final String AIR = "air temperature";
  private static final String CORE = "core";

  /** Keeps its stretches. */
  public CurveAnswer {
    noticed = List.copyOf(noticed);
  }

  /**
   * A stretch along which a person could tell the broken system from the healthy one equally well.
   *
   * @param from where it begins, SI
   * @param to where it ends, SI
   * @param verdict of what is seen without a test gauge: {@code plain}, {@code lost in the gauge},
   *     {@code HIDDEN}, or {@code no answer}
   * @param shows what tells most, each where it tells most
   * @param says why nothing tells; empty where something does
   */
  public record Noticed(double from, double to, String verdict, List<Shows> shows, String says) {
    /** Keeps its signs. */
    public Noticed {
      shows = List.copyOf(shows);
    }

    /** From where to where, in the unit of an axis. */
    public String where(Axis axis) {
      String first = axis.number(from);
      return first.equals(axis.number(to)) ? axis.print(to) : first + " to " + axis.print(to);
    }

    /** What tells and where, or that nothing tells. */
    public String told(Axis axis) {
      return shows.isEmpty()
          ? says
          : shows.stream()
              .map(one -> "at " + axis.number(one.at()) + " " + one.says())
              .collect(Collectors.joining("; "));
    }
  }

  /**
   * A sign where it tells most.
   *
   * @param at the place, SI
   * @param says the sign in words
   */
  public record Shows(double at, String says) {}

  /** What is asked of a curve besides its question. */
  public record Request(String over, int points, String show) {}

  /**
   * Answers one question.
   *
   * @param question all that stands still
   * @param request what is moved and shown
   * @param style units to speak in
   * @param progress is told the share that is done, 0..1
   * @throws QuantityProblem when the quantity, its range or a column is not known
   */
  public static CurveAnswer of(
      Question question, Request request, Style style, DoubleConsumer progress)
      throws QuantityProblem {
    return told(question, traced(question, request, progress).curve(), List.of(), style);
  }

  private static Traced traced(Question question, Request request, DoubleConsumer progress)
      throws QuantityProblem {
    BleedSystem system = question.system();
    String over = request.over().isEmpty() ? Over.USUAL : request.over();
    Sweep sweep = Over.read(question, over, request.points());
    return CurveTracer.follow(
        new Settler(question.network()),
        sweep,
        Shown.same(system, question.network(), Shown.read(system, request.show())),
        Shown.feeders(system, question.network()),
        progress);
  }

  private static CurveAnswer told(
      Question question, Curve curve, List<Noticed> noticed, Style style) {
    Sweep sweep = curve.sweep();
    Asked asked = question.asked(style);
    boolean corrected = question.holdsCorrected();
    boolean either = question.atCorrectedSpeed().isPresent();
    String held = corrected ? " corrected" : either ? " physical" : "";
    String range = sweep.name() + held(sweep, held) + " " + Axis.of(sweep).range(sweep);
    boolean core = sweep.name().equals(CORE);
    boolean air = List.of(ALTITUDE, AIR, "Mach").contains(sweep.name());
    return new CurveAnswer(
        asked,
        core ? range : asked.power() + (air ? "" : ", " + range),
        air ? asked.day() + ", but " + range : asked.day(),
        question.unsaid() ? held.strip() : "",
        curve,
        noticed);
  }

  /**
   * All answers to a question: for physical speed, and for corrected speed where nobody said which
   * the engine holds and the day makes a difference; each for the healthy system first, and then
   * for the broken one where something is broken.
   *
   * @param question all that stands still
   * @param request what is moved and shown
   * @param style units to speak in
   * @param progress is told the share that is done, 0..1
   * @throws QuantityProblem when the quantity, its range or a column is not known, or when a fault
   *     changes what is to be moved
   */
  public static List<CurveAnswer> all(
      Question question, Request request, Style style, DoubleConsumer progress)
      throws QuantityProblem {
    Optional<Question> corrected = question.atCorrectedSpeed();
    if (corrected.isEmpty()) {
      return compared(question, request, style, progress);
    }
    List<CurveAnswer> all =
        new ArrayList<>(compared(question, request, style, done -> progress.accept(done / 2)));
    all.addAll(compared(corrected.get(), request, style, done -> progress.accept(0.5 + done / 2)));
    return all;
  }

  private static List<CurveAnswer> compared(
      Question question, Request request, Style style, DoubleConsumer progress)
      throws QuantityProblem {
    if (question.faults().isEmpty()) {
      return List.of(of(question, request, style, progress));
    }
    // The broken one first: it refuses what a fault changes before anything is solved.
    Traced now = traced(question, request, done -> progress.accept(0.45 * done));
    Question sound = question.with(List.of());
    Traced healthy = traced(sound, request, done -> progress.accept(0.45 + 0.45 * done));
    List<Noticed> noticed =
        BreakNotice.along(Stretches.between(healthy, now), BreakInquiry.moving(question), style);
    return List.of(
        told(sound, healthy.curve(), List.of(), style),
        told(question, now.curve(), noticed, style));
  }

  private static String held(Sweep sweep, String held) {
    return sweep.name().equals(CORE) ? held : "";
  }

  /** Name of the day alone, with the speed that is held where both are answered. */
  public String dayName() {
    int comma = asked.day().indexOf(',');
    String name = comma < 0 ? asked.day() : asked.day().substring(0, comma);
    return name + (heldSpeed.isEmpty() ? "" : " (" + heldSpeed + " speed)");
  }

  /** Whether something is broken in it. */
  public boolean broken() {
    return !asked.broken().isEmpty();
  }

  /**
   * What tells it from the others: the day where there are several, {@code healthy} or {@code now}
   * where something is broken; empty for the only one.
   *
   * @param all the answers that are shown together, itself among them
   */
  public String name(List<CurveAnswer> all) {
    List<String> parts = new ArrayList<>();
    if (all.stream().filter(answer -> !answer.broken()).count() > 1) {
      parts.add(dayName());
    }
    if (all.stream().anyMatch(CurveAnswer::broken)) {
      parts.add(broken() ? "now" : "healthy");
    }
    return String.join(", ", parts);
  }

  /** The conditions in one line. */
  public String conditions() {
    List<String> parts = new ArrayList<>(List.of(power, day, asked.lineUp()));
    parts.removeIf(String::isEmpty);
    return String.join(" | ", parts);
  }
}

package dev.offtake.explain;

import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Settler;
import dev.offtake.study.Curve;
import dev.offtake.study.CurveTracer;
import dev.offtake.study.Sweep;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;

/**
 * What a person is told about one curve.
 *
 * @param asked what was asked
 * @param power in words, with what was moved
 * @param day likewise
 * @param heldSpeed {@code physical} or {@code corrected} where nobody said which the engine holds
 *     and the day makes a difference; else empty
 * @param curve the answer
 */
public record CurveAnswer(Asked asked, String power, String day, String heldSpeed, Curve curve) {
  private static final String ALTITUDE = "altitude";
  private static final String AIR = "air temperature";
  private static final String CORE = "core";

  /** What is asked of a curve besides its question. */
  public record Request(String over, int points, String show) {}

  /**
   * Answers.
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
    BleedSystem system = question.system();
    String over = request.over().isEmpty() ? Over.USUAL : request.over();
    Sweep sweep = Over.read(question, over, request.points());
    Curve curve =
        CurveTracer.trace(
            new Settler(system.network()),
            sweep,
            Shown.read(system, request.show()),
            Shown.feeders(system),
            progress);
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
        curve);
  }

  /**
   * Answers for physical speed, and for corrected speed where nobody said which the engine holds
   * and the day makes a difference.
   *
   * @param question all that stands still
   * @param request what is moved and shown
   * @param style units to speak in
   * @param progress is told the share that is done, 0..1
   * @throws QuantityProblem when the quantity, its range or a column is not known
   */
  public static List<CurveAnswer> both(
      Question question, Request request, Style style, DoubleConsumer progress)
      throws QuantityProblem {
    Optional<Question> corrected = question.atCorrectedSpeed();
    if (corrected.isEmpty()) {
      return List.of(of(question, request, style, progress));
    }
    CurveAnswer physical = of(question, request, style, done -> progress.accept(done / 2));
    CurveAnswer other =
        of(corrected.get(), request, style, done -> progress.accept(0.5 + done / 2));
    return List.of(physical, other);
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

  /** The conditions in one line. */
  public String conditions() {
    List<String> parts = new ArrayList<>(List.of(power, day, asked.lineUp()));
    parts.removeIf(String::isEmpty);
    return String.join(" | ", parts);
  }
}

package dev.offtake.study;

import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The core speed from which on something has happened, and how far the bands of the parts move it.
 *
 * <p>Nobody knows the numbers of a system exactly. What moves a changeover most is the curve of a
 * tap between the points of its table (±5 % of p/p₀ − 1 at mid-gap, nothing at the points) and the
 * sets and droops of the regulators inside their bands. Each of them is put to an end of its band,
 * alone, and the crossing looked for anew (a curve at both ends; a set or droop moves it in
 * proportion, so that one end tells the other); the numbers are independent of one another, so the
 * shifts are gathered as the root of the sum of their squares, up and down apart. (All at their
 * worst ends together would be wider, and no engine is.)
 */
final class Crossing {
  private static final String CURVE = "curve between points";

  /** Parameters that count, by name. */
  private static final Set<String> BANDS = Set.of(CURVE, "pressure factor", "set", "droop");

  /** The crossing is known to a twentieth of a percent of speed, its shift to a quarter. */
  static final double EXACT = 0.0005;

  private static final double SHIFT_EXACT = 0.0025;

  /** Shifts are looked for from the first of these reaches on, and followed as far as the last. */
  private static final double FIRST_REACH = 0.01;

  private static final double FARTHEST = 0.12;

  /** Flows that differ by a smaller share are the same; less than the second is none, kg/s. */
  private static final double SAME = 1e-6;

  private static final double SMALL_FLOW = 1e-3;

  private final Course course;
  private final Predicate<Solution> happened;
  private final int[] judged;
  private final double core;

  /**
   * Where a crossing may lie.
   *
   * @param core by the numbers in force, a fraction
   * @param low with the bands of the parts, a fraction
   * @param high likewise
   */
  record Range(double core, double low, double high) {}

  private Crossing(Course course, Predicate<Solution> happened, int[] judged, double core) {
    this.course = course;
    this.happened = happened;
    this.judged = judged;
    this.core = core;
  }

  /**
   * Locates a crossing by the numbers in force, to a twentieth of a percent of speed.
   *
   * @param course what is asked at other speeds
   * @param happened tells the states beyond the crossing from those before it
   * @param near a speed before it, a fraction
   * @param far a higher speed, beyond it
   */
  static double bisect(Course course, Predicate<Solution> happened, double near, double far) {
    return bisect(course, happened, near, far, EXACT);
  }

  /**
   * How far the bands move a crossing.
   *
   * @param course what is asked at other speeds
   * @param happened tells the states beyond the crossing from those before it
   * @param judged numbers of the parts whose streams decide it; where these stay the same, it stays
   * @param core where it is by the numbers in force, a fraction
   */
  static Range range(Course course, Predicate<Solution> happened, int[] judged, double core) {
    return new Crossing(course, happened, judged, core).range();
  }

  private static double bisect(
      Course course, Predicate<Solution> happened, double near, double far, double exact) {
    double before = near;
    double beyond = far;
    while (beyond - before > exact) {
      double middle = (before + beyond) / 2;
      if (course.at(middle).filter(happened).isPresent()) {
        beyond = middle;
      } else {
        before = middle;
      }
    }
    return (before + beyond) / 2;
  }

  private Range range() {
    double up = 0;
    double down = 0;
    Optional<Solution> base = course.at(core);
    List<Part> parts = base.map(b -> b.network().parts()).orElse(List.of());
    for (Part part : parts) {
      for (Parameter parameter : part.parameters()) {
        if (BANDS.contains(parameter.name()) && parameter.low() < parameter.high()) {
          double[] shifts = shifts(base.orElseThrow(), part, parameter);
          double most = Math.max(0, Math.max(shifts[0], shifts[1]));
          double least = Math.min(0, Math.min(shifts[0], shifts[1]));
          up += most * most;
          down += least * least;
        }
      }
    }
    return new Range(core, core - Math.sqrt(down), core + Math.sqrt(up));
  }

  /** Shifts of the crossing with one number at the two ends of its band. */
  private double[] shifts(Solution base, Part part, Parameter parameter) {
    Setup.PartNumber number = new Setup.PartNumber(part.name(), parameter.name());
    if (course.setup().changed().containsKey(number)) {
      return new double[2];
    }
    double above = parameter.high() - parameter.value();
    double below = parameter.low() - parameter.value();
    double end = above > 0 ? above : below;
    Course other = course.with(number, parameter.value() + end);
    if (other.at(core).map(there -> same(base, there)).orElse(true)) {
      return new double[2];
    }
    double shift = shift(other);
    double opposite = end == above ? below : above;
    // A curve is held back where it would stop rising, so that its two ends are no mirror images.
    double back =
        opposite != 0 && parameter.name().equals(CURVE)
            ? shift(course.with(number, parameter.value() + opposite))
            : shift * opposite / end;
    return new double[] {shift, back};
  }

  /**
   * Whether what the crossing is judged by is the same in two states, but for the solver's rest.
   */
  private boolean same(Solution one, Solution two) {
    for (int part : judged) {
      for (int leg = 0; leg < one.network().parts().get(part).legs().size(); leg++) {
        double flow = one.flow(part, leg);
        if (Math.abs(two.flow(part, leg) - flow) > SAME * Math.max(Math.abs(flow), SMALL_FLOW)) {
          return false;
        }
      }
    }
    return true;
  }

  /**
   * How far the crossing lies from where it is by the numbers in force, as far as it is followed.
   */
  private double shift(Course other) {
    boolean earlier = other.at(core).filter(happened).isPresent();
    double sign = earlier ? -1 : 1;
    double inside = 0;
    double reach = FIRST_REACH;
    while (reach < FARTHEST && stillShifted(other, core + sign * reach, earlier)) {
      inside = reach;
      reach *= 2;
    }
    double place =
        earlier
            ? bisect(other, happened, core - reach, core - inside, SHIFT_EXACT)
            : bisect(other, happened, core + inside, core + reach, SHIFT_EXACT);
    return place - core;
  }

  private boolean stillShifted(Course other, double at, boolean earlier) {
    Optional<Solution> there = other.at(at);
    return there.isPresent() && happened.test(there.get()) == earlier;
  }
}

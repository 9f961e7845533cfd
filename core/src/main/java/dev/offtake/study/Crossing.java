package dev.offtake.study;

import dev.offtake.network.Network;
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
 * sets and droops of the regulators inside their bands. Each of them is put to both ends of its
 * band, alone, and the crossing looked for anew; the numbers are independent of one another, so the
 * shifts are gathered as the root of the sum of their squares, up and down apart. (All at their
 * worst ends together would be wider, and no engine is.)
 */
final class Crossing {
  /** Parameters that count, by name. */
  private static final Set<String> BANDS =
      Set.of("curve between points", "pressure factor", "set", "droop");

  /** The crossing is known to a twentieth of a percent of speed, its shift to a quarter. */
  static final double EXACT = 0.0005;

  private static final double SHIFT_EXACT = 0.0025;

  /** Shifts are followed as far as this. */
  private static final double FARTHEST = 0.12;

  private final Course course;
  private final Predicate<Solution> happened;
  private final double core;

  /**
   * Where a crossing may lie.
   *
   * @param core by the numbers in force, a fraction
   * @param low with the bands of the parts, a fraction
   * @param high likewise
   */
  record Range(double core, double low, double high) {}

  private Crossing(Course course, Predicate<Solution> happened, double core) {
    this.course = course;
    this.happened = happened;
    this.core = core;
  }

  /**
   * Locates a crossing.
   *
   * @param course what is asked at other speeds
   * @param happened tells the states beyond the crossing from those before it
   * @param near a speed before it, a fraction
   * @param far a higher speed, beyond it
   */
  static Range locate(Course course, Predicate<Solution> happened, double near, double far) {
    return range(course, happened, bisect(course, happened, near, far));
  }

  /** How far the bands move a crossing that is already located. */
  static Range range(Course course, Predicate<Solution> happened, double core) {
    return new Crossing(course, happened, core).range();
  }

  /** Locates a crossing by the numbers in force alone, to {@link #EXACT}. */
  static double bisect(Course course, Predicate<Solution> happened, double near, double far) {
    return bisect(course, happened, near, far, EXACT);
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
    Network network = course.at(core).map(Solution::network).orElse(null);
    List<Part> parts = network == null ? List.of() : network.parts();
    for (Part part : parts) {
      for (Parameter parameter : part.parameters()) {
        if (BANDS.contains(parameter.name()) && parameter.low() < parameter.high()) {
          double one = shift(part, parameter, parameter.high());
          double two = one == 0 ? 0 : shift(part, parameter, parameter.low());
          double most = Math.max(0, Math.max(one, two));
          double least = Math.min(0, Math.min(one, two));
          up += most * most;
          down += least * least;
        }
      }
    }
    return new Range(core, core - Math.sqrt(down), core + Math.sqrt(up));
  }

  /** How far the crossing moves with one number at one end of its band; 0 when it stays. */
  private double shift(Part part, Parameter parameter, double value) {
    Setup.PartNumber number = new Setup.PartNumber(part.name(), parameter.name());
    if (value == parameter.value() || course.setup().changed().containsKey(number)) {
      return 0;
    }
    Course other = course.with(number, value);
    boolean later = other.at(core + SHIFT_EXACT).filter(happened.negate()).isPresent();
    boolean earlier = !later && other.at(core - SHIFT_EXACT).filter(happened).isPresent();
    if (!later && !earlier) {
      return 0;
    }
    double direction = later ? 1 : -1;
    double inside = SHIFT_EXACT;
    double reach = 2 * SHIFT_EXACT;
    while (reach < FARTHEST && stillMoved(other, core + direction * reach, later)) {
      inside = reach;
      reach *= 2;
    }
    double place =
        later
            ? bisect(other, happened, core + inside, core + reach, SHIFT_EXACT)
            : bisect(other, happened, core - reach, core - inside, SHIFT_EXACT);
    return place - core;
  }

  private boolean stillMoved(Course other, double at, boolean later) {
    Optional<Solution> there = other.at(at);
    return there.isPresent() && happened.test(there.get()) != later;
  }
}

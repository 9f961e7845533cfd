package dev.offtake.study;

import dev.offtake.part.Leg;
import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
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
 * alone, and the crossing looked for anew; the other end moves it in proportion; the numbers are
 * independent of one another, so the shifts are gathered as the root of the sum of their squares,
 * up and down apart. (All at their worst ends together would be wider, and no engine is.)
 */
final class Crossing {
  /** Parameters that count, by name. */
  private static final Set<String> BANDS =
      Set.of("curve between points", "pressure factor", "set", "droop");

  /** The crossing is known to a twentieth of a percent of speed, its shift to a quarter. */
  static final double EXACT = 0.0005;

  private static final double SHIFT_EXACT = 0.0051;

  /** Shifts are looked for within this at first, and followed as far as the second. */
  private static final double REACH = 0.01;

  private static final double FARTHEST = 0.12;

  /**
   * What differs by a smaller share is the same; smaller flows are measured by the second, kg/s.
   */
  private static final double SAME = 1e-3;

  private static final double SMALL_FLOW = 0.1;

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
    for (Band band : bandsFelt()) {
      double shift = shift(band.atEnd(course));
      double back = shift * band.opposite() / band.end();
      double most = Math.max(0, Math.max(shift, back));
      double least = Math.min(0, Math.min(shift, back));
      up += most * most;
      down += least * least;
    }
    return new Range(core, core - Math.sqrt(down), core + Math.sqrt(up));
  }

  /** The bands that the crossing feels; those of half a system are tried at once. */
  private List<Band> bandsFelt() {
    List<Band> all = bands();
    List<Band> found = new ArrayList<>();
    int half = (all.size() + 1) / 2;
    for (List<Band> some : List.of(all.subList(0, half), all.subList(half, all.size()))) {
      if (felt(some)) {
        some.stream().filter(band -> felt(List.of(band))).forEach(found::add);
      }
    }
    return found;
  }

  private List<Band> bands() {
    List<Band> all = new ArrayList<>();
    List<Part> parts = course.at(core).map(base -> base.network().parts()).orElse(List.of());
    for (Part part : parts) {
      for (Parameter parameter : part.parameters()) {
        Band band = Band.of(part, parameter);
        boolean fixed = band.end() == 0 || course.setup().changed().containsKey(band.number());
        if (BANDS.contains(parameter.name()) && !fixed) {
          all.add(band);
        }
      }
    }
    return all;
  }

  /** Looked at on both sides of the crossing: on one of them a valve at its stop feels nothing. */
  private boolean felt(List<Band> bands) {
    Course other = course;
    for (Band band : bands) {
      other = band.atEnd(other);
    }
    return other != course && (felt(other, core - REACH) || felt(other, core + REACH));
  }

  private boolean felt(Course other, double at) {
    Optional<Solution> base = course.at(at);
    return other.at(at).filter(there -> base.isPresent() && !same(base.get(), there)).isPresent();
  }

  /** Whether the judged parts have the same air in two states, but for the solver's rest. */
  private boolean same(Solution one, Solution two) {
    boolean air = false;
    for (int part : judged) {
      List<Leg> legs = one.network().parts().get(part).legs();
      for (int leg = 0; leg < legs.size(); leg++) {
        air = true;
        if (differ(one.flow(part, leg), two.flow(part, leg), SMALL_FLOW)
            || differ(pressure(one, legs.get(leg).from()), pressure(two, legs.get(leg).from()), 1)
            || differ(pressure(one, legs.get(leg).to()), pressure(two, legs.get(leg).to()), 1)) {
          return false;
        }
      }
    }
    return air;
  }

  private static double pressure(Solution solution, String point) {
    int number = solution.network().point(point);
    return number < 0 ? 0 : solution.pressure(number);
  }

  private static boolean differ(double one, double two, double least) {
    return Math.abs(one - two) > SAME * Math.max(Math.abs(one), least);
  }

  /**
   * A number and the distances from its value to the two ends of its band.
   *
   * @param end the one that is looked at; 0 when the number has no band
   * @param opposite the other
   */
  private record Band(Setup.PartNumber number, double value, double end, double opposite) {
    static Band of(Part part, Parameter parameter) {
      double above = parameter.high() - parameter.value();
      double below = parameter.low() - parameter.value();
      Setup.PartNumber number = new Setup.PartNumber(part.name(), parameter.name());
      return above > 0
          ? new Band(number, parameter.value(), above, below)
          : new Band(number, parameter.value(), below, above);
    }

    Course atEnd(Course from) {
      return from.with(number, value + end);
    }
  }

  /**
   * How far the crossing lies from where it is by the numbers in force, as far as it is followed.
   */
  private double shift(Course other) {
    double low = core - REACH;
    double high = core + REACH;
    while (core - low < FARTHEST && other.at(low).filter(happened).isPresent()) {
      high = low;
      low = core - 2 * (core - low);
    }
    while (high > core && high - core < FARTHEST && notYet(other, high)) {
      low = high;
      high = core + 2 * (high - core);
    }
    return bisect(other, happened, low, high, SHIFT_EXACT) - core;
  }

  private boolean notYet(Course other, double at) {
    return other.at(at).filter(happened.negate()).isPresent();
  }
}

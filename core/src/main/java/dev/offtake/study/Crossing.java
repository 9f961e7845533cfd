package dev.offtake.study;

import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.function.Predicate;

/**
 * The core speed from which on something has happened, and how far the bands of the parts move it.
 *
 * <p>Nobody knows the numbers of a system exactly. What moves a changeover most is the curve of a
 * tap between the points of its table (±5 % of p/p₀ − 1 at mid-gap, nothing at the points) and the
 * sets and droops of the regulators inside their bands. How far the end of each band moves the
 * crossing follows from the slopes of the solved state at it ({@link ReadingShifts}, {@link
 * PictureShifts}); only where the state jumps, so that it shows nothing of what comes, the number
 * is put to the end of its band and the crossing looked for anew. The other end moves it in
 * proportion; the numbers are independent of one another, so the shifts are gathered as the root of
 * the sum of their squares, up and down apart. (All at their worst ends together would be wider,
 * and no engine is.)
 */
final class Crossing {
  /** Parameters that count, by name. */
  private static final Set<String> BANDS =
      Set.of("curve between points", "pressure factor", "set", "droop");

  /** The crossing is known to a twentieth of a percent of speed. */
  static final double EXACT = 0.0005;

  /** To this a shift is known that is found by solving. */
  private static final double SOLVED_EXACT = 0.0026;

  /** Shifts are looked for within this at first, and followed as far as the second. */
  private static final double REACH = 0.01;

  static final double FARTHEST = 0.12;

  private Crossing() {}

  /**
   * Where a crossing may lie.
   *
   * @param core by the numbers in force, a fraction
   * @param low with the bands of the parts, a fraction
   * @param high likewise
   */
  record Range(double core, double low, double high) {}

  /**
   * The two sides of a crossing.
   *
   * @param before a speed at which it has not happened, a fraction
   * @param beyond a higher one at which it has
   */
  record Between(double before, double beyond) {
    double middle() {
      return (before + beyond) / 2;
    }
  }

  /**
   * Locates a crossing by the numbers in force, to a twentieth of a percent of speed.
   *
   * @param course what is asked at other speeds
   * @param happened tells the states beyond the crossing from those before it
   * @param near a speed before it, a fraction
   * @param far a higher speed, beyond it
   */
  static Between bisect(Course course, Predicate<Solution> happened, double near, double far) {
    return bisect(course::at, happened, new Between(near, far), EXACT);
  }

  private static Between bisect(
      DoubleFunction<Optional<Solution>> states,
      Predicate<Solution> happened,
      Between between,
      double exact) {
    double before = between.before();
    double beyond = between.beyond();
    while (beyond - before > exact) {
      double middle = (before + beyond) / 2;
      if (states.apply(middle).filter(happened).isPresent()) {
        beyond = middle;
      } else {
        before = middle;
      }
    }
    return new Between(before, beyond);
  }

  /**
   * How far the bands move a crossing.
   *
   * @param course what is asked at other speeds
   * @param core where it is by the numbers in force, a fraction
   * @param shifts how far each of them moves it
   */
  static Range range(Course course, double core, Shifts shifts) {
    double up = 0;
    double down = 0;
    for (Band band : bands(course, core)) {
      double shift = shifts.of(band);
      double back = shift * band.opposite() / band.end();
      double most = Math.max(0, Math.max(shift, back));
      double least = Math.min(0, Math.min(shift, back));
      up += most * most;
      down += least * least;
    }
    return new Range(core, core - Math.sqrt(down), core + Math.sqrt(up));
  }

  /** The bands that may move a crossing. */
  static List<Band> bands(Course course, double core) {
    List<Band> all = new ArrayList<>();
    List<Part> parts = course.at(core).map(base -> base.network().parts()).orElse(List.of());
    for (int i = 0; i < parts.size(); i++) {
      List<Parameter> parameters = parts.get(i).parameters();
      for (int k = 0; k < parameters.size(); k++) {
        if (BANDS.contains(parameters.get(k).name())) {
          Band band = Band.of(parts.get(i), i, k);
          if (band.end() != 0 && !course.setup().changed().containsKey(band.number())) {
            all.add(band);
          }
        }
      }
    }
    return all;
  }

  /**
   * Shifts that are found by solving anew with each number at the end of its band: slow, and right
   * where a state jumps.
   *
   * @param course what is asked at other speeds
   * @param happened tells the states beyond the crossing from those before it
   * @param core where it is by the numbers in force, a fraction
   */
  static Shifts bySolving(Course course, Predicate<Solution> happened, double core) {
    return band -> {
      Course other = course.with(band.number(), band.value() + band.end());
      double shift = shift(other::at, happened, core, SOLVED_EXACT);
      return Math.abs(shift) < SOLVED_EXACT ? 0 : shift;
    };
  }

  /**
   * How far a crossing lies from a place, as far as it is followed.
   *
   * @param states the state at each speed
   * @param happened tells the states beyond the crossing from those before it
   * @param core the place, a fraction
   * @param exact to which the shift is known
   */
  static double shift(
      DoubleFunction<Optional<Solution>> states,
      Predicate<Solution> happened,
      double core,
      double exact) {
    double low = core - REACH;
    double high = core + REACH;
    while (core - low < FARTHEST && states.apply(low).filter(happened).isPresent()) {
      high = low;
      low = core - 2 * (core - low);
    }
    while (high > core && high - core < FARTHEST && notYet(states.apply(high), happened)) {
      low = high;
      high = core + 2 * (high - core);
    }
    return bisect(states, happened, new Between(low, high), exact).middle() - core;
  }

  private static boolean notYet(Optional<Solution> state, Predicate<Solution> happened) {
    return state.filter(happened.negate()).isPresent();
  }
}

package dev.offtake.study;

import dev.offtake.part.Leg;
import dev.offtake.solve.Picture;
import dev.offtake.solve.Sensitivities;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Shifts of a crossing at which a part begins to do something else: the state just before it is
 * moved to first order along the core speed and along a number, and the part's own law and words
 * tell on which side it then is.
 */
final class PictureShifts implements Shifts {
  private static final double WAY = 0.01;

  /**
   * What differs by a smaller share is the same; smaller flows are measured by the second, kg/s.
   */
  private static final double SAME = 1e-3;

  private static final double SMALL_FLOW = 0.1;

  private final Course course;
  private final Predicate<Solution> happened;
  private final int judged;
  private final double core;
  private final Solution base;
  private final Sensitivities slopes;
  private final Picture picture;
  private final double[] perSpeed;
  private final double[] still;

  private PictureShifts(
      Course course,
      Predicate<Solution> happened,
      int judged,
      double core,
      Solution base,
      Sensitivities slopes) {
    this.course = course;
    this.happened = happened;
    this.judged = judged;
    this.core = core;
    this.base = base;
    this.slopes = slopes;
    picture = new Picture(base);
    perSpeed = slopes.toward(course.question(core + WAY).conditions());
    for (int v = 0; v < perSpeed.length; v++) {
      perSpeed[v] /= WAY;
    }
    still = new double[perSpeed.length];
  }

  /**
   * Prepares.
   *
   * @param course what is asked at other speeds
   * @param happened tells the states beyond the crossing from those before it
   * @param judged number of the part that changes
   * @param core just before the crossing, a fraction
   * @return empty where the state before does not show what comes, because it ends there
   */
  static Optional<Shifts> of(Course course, Predicate<Solution> happened, int judged, double core) {
    Optional<Solution> base = course.at(core);
    Optional<Sensitivities> slopes = base.flatMap(Sensitivities::at);
    if (base.isEmpty() || slopes.isEmpty()) {
      return Optional.empty();
    }
    PictureShifts shifts =
        new PictureShifts(course, happened, judged, core, base.get(), slopes.get());
    boolean seen = Math.abs(shifts.moved(Map.of(), shifts.still)) <= 2 * Crossing.EXACT;
    return seen ? Optional.of(shifts) : Optional.empty();
  }

  @Override
  public double of(Band band) {
    double[] move = slopes.byNumber(band.part(), band.which());
    for (int v = 0; v < move.length; v++) {
      move[v] *= band.end();
    }
    Map<Setup.PartNumber, Double> changed = Map.of(band.number(), band.value() + band.end());
    boolean felt = own(band.part()) || !same(base, at(core, changed, move));
    return felt ? moved(changed, move) : 0;
  }

  /** Whether a part is the judged one or acts through it. */
  private boolean own(int part) {
    var parts = base.network().parts();
    return part == judged || parts.get(part).attachedTo().equals(parts.get(judged).name());
  }

  private double moved(Map<Setup.PartNumber, Double> changed, double[] move) {
    return Crossing.shift(
        there -> Optional.of(at(there, changed, move)), happened, core, Crossing.EXACT);
  }

  private Solution at(double there, Map<Setup.PartNumber, Double> more, double[] move) {
    Setup asked = course.question(there);
    Map<Setup.PartNumber, Double> changed = new HashMap<>(asked.changed());
    changed.putAll(more);
    Setup setup = new Setup(asked.conditions(), asked.positions(), asked.locks(), changed);
    double[] all = move.clone();
    for (int v = 0; v < all.length; v++) {
      all[v] += (there - core) * perSpeed[v];
    }
    return picture.at(setup, all);
  }

  /** Whether the judged part has the same air in two states; without air nothing is the same. */
  private boolean same(Solution one, Solution two) {
    List<Leg> legs = one.network().parts().get(judged).legs();
    for (int leg = 0; leg < legs.size(); leg++) {
      if (differ(one.flow(judged, leg), two.flow(judged, leg), SMALL_FLOW)
          || differ(pressure(one, legs.get(leg).from()), pressure(two, legs.get(leg).from()), 1)
          || differ(pressure(one, legs.get(leg).to()), pressure(two, legs.get(leg).to()), 1)) {
        return false;
      }
    }
    return !legs.isEmpty();
  }

  private static double pressure(Solution solution, String point) {
    int number = solution.network().point(point);
    return number < 0 ? 0 : solution.pressure(number);
  }

  private static boolean differ(double one, double two, double least) {
    return Math.abs(one - two) > SAME * Math.max(Math.abs(one), least);
  }
}

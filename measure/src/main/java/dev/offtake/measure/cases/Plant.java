package dev.offtake.measure.cases;

import java.util.Optional;

/** The whole invented aircraft's air supply, at rest. */
final class Plant {
  private static final double OVERHEAT = Shop.kelvin(490);
  private static final double OVERPRESSURE = 180 * Shop.PSI;
  private static final double PYLON_ALARM = Shop.kelvin(255);
  private static final double WING_ALARM = Shop.kelvin(180);

  /** Bore at the bosses of gauges, m². */
  private static final double DUCT_BORE = Shop.bore(3.8);

  private final Knobs knobs;
  private final Half left;
  private final Half right;

  Plant(Knobs knobs) {
    this.knobs = knobs;
    left = new Half(knobs, Side.LEFT);
    right = new Half(knobs, Side.RIGHT);
  }

  /** Its numbers. */
  Knobs knobs() {
    return knobs;
  }

  /**
   * The state at rest, after any trip.
   *
   * @return empty when none is found
   */
  Optional<State> at(Running running) {
    boolean leftTripped = false;
    boolean rightTripped = false;
    // A trip on one side may bring the other's; twice is enough for both.
    for (int i = 0; i < 3; i++) {
      Plumbing plumbing = new Plumbing(knobs, left, right, running, leftTripped, rightTripped);
      Optional<double[]> rest = Relaxation.settle(plumbing::imbalance, plumbing.guess());
      if (rest.isEmpty()) {
        return Optional.empty();
      }
      Points l = Points.of(rest.get(), Side.LEFT);
      Points r = Points.of(rest.get(), Side.RIGHT);
      boolean leftTrips = leftTripped || trips(Side.LEFT, l, running);
      boolean rightTrips = rightTripped || trips(Side.RIGHT, r, running);
      if (leftTrips == leftTripped && rightTrips == rightTripped) {
        return Optional.of(state(plumbing, l, r, leftTripped, rightTripped, running));
      }
      leftTripped = leftTrips;
      rightTripped = rightTrips;
    }
    return Optional.empty();
  }

  private boolean trips(Side side, Points at, Running running) {
    double above = at.p()[Points.INTERSTAGE] - running.outside().p();
    return trips(side.of(Parts.OVERHEAT), at.t()[Points.DUCT], OVERHEAT)
        || trips(side.of(Parts.OVERPRESSURE), above, OVERPRESSURE);
  }

  /** Whether a trip or a loop acts. */
  private boolean trips(String part, double watched, double limit) {
    if (knobs.on(part, Knob.FALSE)) {
      return true;
    }
    return !knobs.on(part, Knob.DEAD) && watched + knobs.get(part, Knob.DRIFT) > limit;
  }

  private State state(
      Plumbing plumbing, Points l, Points r, boolean leftTrip, boolean rightTrip, Running run) {
    Sums[] sums = plumbing.sums(l, r);
    return new State(
        half(Side.LEFT, left, l, sums[0], leftTrip, run),
        half(Side.RIGHT, right, r, sums[1], rightTrip, run),
        Plumbing.opening(knobs, run.stop()));
  }

  private State.HalfState half(
      Side side, Half half, Points at, Sums sums, boolean tripped, Running running) {
    Outside air = running.outside();
    double pylon =
        half.zone(Parts.PYLON_JOINT, at.p()[Points.REGULATED], at.t()[Points.REGULATED], air);
    double wing = half.zone(Parts.WING_JOINT, at.p()[Points.DUCT], at.t()[Points.DUCT], air);
    boolean leak =
        trips(side.of(Parts.PYLON_LOOP), pylon, PYLON_ALARM)
            || trips(side.of(Parts.WING_LOOP), wing, WING_ALARM);
    return new State.HalfState(
        still(at, Points.DUCT, sums) - air.p(),
        still(at, Points.INTERSTAGE, sums) - air.p(),
        at.t()[Points.DUCT],
        tripped,
        lit(side.of(Parts.TRIP_LIGHT), tripped),
        lit(side.of(Parts.LEAK_LIGHT), leak));
  }

  private boolean lit(String light, boolean asked) {
    return knobs.on(light, Knob.FALSE) || (asked && !knobs.on(light, Knob.DEAD));
  }

  /** Static pressure at a boss, Pa: the total less the dynamic pressure. */
  private static double still(Points at, int point, Sums sums) {
    double p = at.p()[point];
    double density = p / (Gas.R * at.t()[point]);
    double speed = sums.through(point) / (density * DUCT_BORE);
    return p - density * speed * speed / 2;
  }
}

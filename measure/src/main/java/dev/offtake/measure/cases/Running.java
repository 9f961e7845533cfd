package dev.offtake.measure.cases;

import java.util.random.RandomGenerator;

/**
 * How the plant is run while gauges are read: what the readings call by the name of a stop, and
 * what it really was.
 *
 * @param stop what the crew set
 * @param coreLeft core speed of the left engine, physical, share
 * @param coreRight the same of the right
 * @param fan speed of both fans, physical, share
 * @param outside the air
 * @param friction where friction left the valves within its band, −1 to 1: high stage left and
 *     right, regulator left and right
 * @param unsettled what is left of the way of temperatures from the stop before, 0 to 1
 */
record Running(
    Stop stop,
    double coreLeft,
    double coreRight,
    double fan,
    Outside outside,
    double[] friction,
    double unsettled) {
  /** Both engines off by the same, and one from the other, share of full speed. */
  private static final double SPEED = 0.008;

  private static final double BETWEEN = 0.002;
  private static final double BAROMETER = 0.1 * Shop.IN_HG;
  private static final double AIR = 5 * Shop.DEG_F;

  /** Error of a height of flight, m. */
  private static final double HEIGHT = 30;

  /** Exactly as set. */
  static Running exact(Stop stop) {
    Power power = stop.power();
    return new Running(
        stop, power.core(), power.core(), power.fan(), power.day(), new double[4], 0);
  }

  /** About as set: within ±1 % of core speed, ±0.1 inHg (in flight 30 m) and ±5 °F. */
  static Running about(Stop stop, RandomGenerator chance) {
    Power power = stop.power();
    double both = SPEED * even(chance);
    double left = power.core() + both + BETWEEN * even(chance);
    double right = power.core() + both + BETWEEN * even(chance);
    double fan = power.fan() * (1 + both + BETWEEN * even(chance));
    Outside day = power.day();
    // Air at rest thins by 0.0342 K/m times p/T.
    double pascal = day.mach() > 0 ? HEIGHT * 0.0342 * day.p() / day.t() : BAROMETER;
    Outside air = day.off(pascal * even(chance), AIR * even(chance));
    double[] friction = {even(chance), even(chance), even(chance), even(chance)};
    // Two to four time constants are waited.
    double unsettled = Math.exp(-3 - even(chance));
    return new Running(stop, left, right, fan, air, friction, unsettled);
  }

  private static double even(RandomGenerator chance) {
    return 2 * chance.nextDouble() - 1;
  }

  /** Core speed of a side. */
  double core(Side side) {
    return side.pick(coreLeft, coreRight);
  }
}

package dev.offtake.time;

import dev.offtake.network.Equations;
import dev.offtake.network.Network;
import dev.offtake.part.Conditions;
import dev.offtake.solve.Setup;

/** Points with any air in them at the beginning, left to themselves on a standard day. */
final class Vessels {
  private final Equations equations;
  private final AirInTime model;
  private final double[] y;

  Vessels(Network network) {
    Setup setup = Setup.healthy(Conditions.standardDay(1, 1));
    equations = new Equations(network, setup.conditions());
    Timetable timetable = new Timetable(equations, Drive.from(setup).hold(1e6));
    timetable.enter(1);
    model = new AirInTime(equations, timetable, false, Pace::usual);
    y = new double[model.size()];
  }

  /** Fills a point, Pa and K. */
  Vessels with(String point, double p, double t) {
    int i = equations.network().point(point);
    y[2 * i] = Math.log(p / 1e5);
    y[2 * i + 1] = t;
    return this;
  }

  /** Lets time pass; returns how many steps it took. */
  int run(double from, double until, double tolerance) {
    return Rates.run(model, y, from, until, tolerance);
  }

  /** Lets time pass at the usual tolerance with steps of at most a length; tells their number. */
  int run(double until, double longest) {
    return Rates.run(model, y, 0, until, Settings.USUAL_TOLERANCE, longest);
  }

  double p(String point) {
    return 1e5 * Math.exp(y[2 * equations.network().point(point)]);
  }

  double t(String point) {
    return y[2 * equations.network().point(point) + 1];
  }

  /** Sum over all points of the air (0) or of the internal energy (1) that is stored, kg or J. */
  double sum(int which) {
    double[] stored = new double[y.length];
    model.stored(y, stored);
    double sum = 0;
    for (int i = 0; i < equations.innerPoints(); i++) {
      sum += stored[2 * i + which];
    }
    return sum;
  }

  /** Air that a point holds, kg. */
  double mass(String point) {
    double[] stored = new double[y.length];
    model.stored(y, stored);
    return stored[2 * equations.network().point(point)];
  }
}

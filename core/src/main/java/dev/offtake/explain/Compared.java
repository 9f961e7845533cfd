package dev.offtake.explain;

import dev.offtake.part.Doing;
import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;

/**
 * Two answers of one system at the same power: before something happened and after it.
 *
 * <p>Points and parts have the same numbers in both; parts that a failure adds, such as a hole,
 * have numbers beyond those of the first.
 *
 * @param was the first, such as the healthy one
 * @param is the second
 * @param style units to speak in
 */
record Compared(Solution was, Solution is, Style style) {
  /** Less is not seen on a usual gauge, Pa (0.5 psi, half a step): an assumption. */
  static final double PRESSURE = 3447.379;

  /** Less is not seen on a usual thermometer, K (5 °F): an assumption. */
  static final double TEMPERATURE = 5 / 1.8;

  /** Less is no air to speak of, kg/s (0.5 lb/min): an assumption. */
  static final double FLOW = 0.5 * 0.45359237 / 60;

  /** Less is not seen on a position mark, a share of the stroke: an assumption. */
  static final double OPENING = 0.05;

  private static final String OPEN = "opening";

  /** Number of parts in the second state. */
  int parts() {
    return is.network().parts().size();
  }

  /** A part as it stands in the second state. */
  Part part(int number) {
    return is.network().parts().get(number);
  }

  /** Whether a part was there in the first state. */
  boolean isOld(int part) {
    return part < was.network().parts().size();
  }

  /** Name of a point. */
  String point(int number) {
    return is.network().points().get(number).name();
  }

  /** What a part did; as it does now for a part that was not there. */
  Doing did(int part) {
    return isOld(part) ? was.doing(part, style) : does(part);
  }

  /** What a part does now. */
  Doing does(int part) {
    return is.doing(part, style);
  }

  /** Whether a part is in another regime than before. */
  boolean regimeChanged(int part) {
    return !did(part).regime().equals(does(part).regime());
  }

  /** Static pressure of a point before, Pa above the air outside. */
  double pressureWas(int point) {
    return was.sensed(point) - was.conditions().ambientP();
  }

  /** Static pressure of a point now, Pa above the air outside. */
  double pressureIs(int point) {
    return is.sensed(point) - is.conditions().ambientP();
  }

  /** Change of a point's pressure, Pa. */
  double pressureChange(int point) {
    return is.sensed(point) - was.sensed(point);
  }

  /** Change of a point's temperature, K. */
  double temperatureChange(int point) {
    return is.temperature(point) - was.temperature(point);
  }

  boolean pressureMoved(int point) {
    return Math.abs(pressureChange(point)) > PRESSURE;
  }

  boolean temperatureMoved(int point) {
    return Math.abs(temperatureChange(point)) > TEMPERATURE;
  }

  /** Flow through a part's first leg before, kg/s; none for a part that was not there. */
  double flowWas(int part) {
    return isOld(part) && hasLeg(was, part) ? was.flow(part, 0) : 0;
  }

  /** Flow through a part's first leg now, kg/s. */
  double flowIs(int part) {
    return hasLeg(is, part) ? is.flow(part, 0) : 0;
  }

  private static boolean hasLeg(Solution solution, int part) {
    return !solution.network().parts().get(part).legs().isEmpty();
  }

  boolean flowMoved(int part) {
    return Math.abs(flowIs(part) - flowWas(part)) > FLOW;
  }

  /** Opening of a valve before, 0..1; NaN for what has none. */
  double openingWas(int part) {
    return isOld(part) ? opening(was, part) : Double.NaN;
  }

  /** Opening of a valve now, 0..1; NaN for what has none. */
  double openingIs(int part) {
    return opening(is, part);
  }

  private double opening(Solution solution, int part) {
    return solution.view(part, style).observed(solution.network().parts().get(part).name(), OPEN);
  }

  /** Temperature of the air that goes through a part's first leg now, K. */
  double airThrough(int part) {
    Leg leg = part(part).legs().get(0);
    int from = is.network().point(flowIs(part) >= 0 ? leg.from() : leg.to());
    int other = is.network().point(flowIs(part) >= 0 ? leg.to() : leg.from());
    int point = from >= 0 ? from : other;
    return point >= 0 ? is.temperature(point) : is.conditions().ambientT();
  }

  String flow(double kgPerSecond) {
    return style.print(Math.abs(kgPerSecond), Dimension.MASS_FLOW);
  }

  String temperature(double kelvin) {
    return style.print(kelvin, Dimension.TEMPERATURE);
  }

  /** Two values of a kind with one unit: {@code from 24.0 to 13.5 psig}. */
  String fromTo(double before, double after, Dimension dimension) {
    return "from " + style.number(before, dimension) + " to " + style.print(after, dimension);
  }
}

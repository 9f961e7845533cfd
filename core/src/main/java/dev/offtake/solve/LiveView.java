package dev.offtake.solve;

import dev.offtake.network.Equations;
import dev.offtake.network.Network;
import dev.offtake.part.Conditions;
import dev.offtake.part.Leg;
import dev.offtake.quantity.Style;

/** Equations, as they stand evaluated just now, as seen from one part. Nothing is copied out. */
final class LiveView implements PrintedView {
  private final Equations equations;
  private final Network network;
  private final String[][] because;
  private final int part;
  private final double[] observed;

  /**
   * Looks from one part.
   *
   * @param scratch for what parts observe, one for all views: as long as the most of any part
   */
  LiveView(Equations equations, String[][] because, int part, double[] scratch) {
    this.equations = equations;
    this.because = because;
    this.part = part;
    network = equations.network();
    observed = scratch;
  }

  @Override
  public double p(String point) {
    return point.equals(Leg.AMBIENT)
        ? conditions().ambientP()
        : equations.evaluation().gas[number(point)].p;
  }

  @Override
  public double t(String point) {
    return point.equals(Leg.AMBIENT)
        ? conditions().ambientT()
        : equations.evaluation().gas[number(point)].t;
  }

  @Override
  public double sensed(String point) {
    return point.equals(Leg.AMBIENT)
        ? conditions().ambientP()
        : equations.sensedPressure(number(point));
  }

  private int number(String point) {
    int number = network.point(point);
    if (number < 0) {
      throw new IllegalArgumentException("no point named " + point);
    }
    return number;
  }

  @Override
  public double flow(int leg) {
    return equations.branches(part)[leg].mdot;
  }

  @Override
  public boolean choked(int leg) {
    return equations.branches(part)[leg].choked;
  }

  @Override
  public double observed(int which) {
    return observed(part, which);
  }

  private double observed(int whose, int which) {
    equations.element(whose).observe(equations.evaluation(), observed, 0);
    return observed[which];
  }

  @Override
  public double observed(String other, String observable) {
    int number = network.part(other);
    int which = number < 0 ? -1 : network.parts().get(number).observables().indexOf(observable);
    return which < 0 ? Double.NaN : observed(number, which);
  }

  @Override
  public double parameter(int which) {
    return equations.evaluation().parameters[equations.firstParameter(part) + which];
  }

  @Override
  public double control(int which) {
    return equations.evaluation().controls[equations.firstControl(part) + which];
  }

  @Override
  public String because(int control) {
    return because[part][control];
  }

  @Override
  public Conditions conditions() {
    return equations.evaluation().conditions;
  }

  @Override
  public Style style() {
    return Style.SHOP;
  }
}

package dev.offtake.solve;

import dev.offtake.network.Network;
import dev.offtake.part.Conditions;
import dev.offtake.part.Leg;
import dev.offtake.quantity.Style;

/** A snapshot as seen from one part. */
record PartView(Network network, Conditions conditions, Snapshot snapshot, int part, Style style)
    implements PrintedView {

  @Override
  public double p(String point) {
    return point.equals(Leg.AMBIENT) ? conditions.ambientP() : snapshot.pressure[number(point)];
  }

  @Override
  public double t(String point) {
    return point.equals(Leg.AMBIENT) ? conditions.ambientT() : snapshot.temperature[number(point)];
  }

  @Override
  public double sensed(String point) {
    return point.equals(Leg.AMBIENT) ? conditions.ambientP() : snapshot.sensed[number(point)];
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
    return snapshot.flow[part][leg];
  }

  @Override
  public boolean choked(int leg) {
    return snapshot.choked[part][leg];
  }

  @Override
  public double observed(int which) {
    return snapshot.observed[part][which];
  }

  @Override
  public double observed(String other, String observable) {
    int number = network.part(other);
    int which = number < 0 ? -1 : network.parts().get(number).observables().indexOf(observable);
    return which < 0 ? Double.NaN : snapshot.observed[number][which];
  }

  @Override
  public double parameter(int which) {
    return snapshot.parameter[part][which];
  }

  @Override
  public double control(int which) {
    return snapshot.control[part][which];
  }

  @Override
  public String because(int control) {
    return snapshot.because[part][control];
  }
}

package dev.offtake.solve;

import dev.offtake.logic.Situation;
import dev.offtake.network.Network;
import dev.offtake.quantity.Style;
import org.jspecify.annotations.Nullable;

/**
 * What conditions may ask while the logic is decided: switches always, trips and values once a
 * state has been solved.
 */
record StateSituation(Network network, Setup setup, @Nullable Snapshot snapshot)
    implements Situation {
  private static final String PRESSURE = " pressure";
  private static final String TEMPERATURE = " temperature";

  @Override
  public boolean is(String subject, String position) {
    int part = network.part(subject);
    if (part < 0) {
      return position.equals(setup.positions().get(subject));
    }
    return snapshot != null
        && network
            .parts()
            .get(part)
            .carries(
                position, new PartView(network, setup.conditions(), snapshot, part, Style.SHOP));
  }

  /** The value, or NaN, which no comparison holds for, while it is not known. */
  @Override
  public double value(String subject) {
    if (subject.equals("core")) {
      return setup.conditions().core();
    }
    if (snapshot == null) {
      return Double.NaN;
    }
    if (subject.endsWith(PRESSURE)) {
      return at(snapshot.sensed, subject, PRESSURE);
    }
    return subject.endsWith(TEMPERATURE)
        ? at(snapshot.temperature, subject, TEMPERATURE)
        : Double.NaN;
  }

  private double at(double[] values, String subject, String ending) {
    int point = network.point(subject.substring(0, subject.length() - ending.length()));
    return point < 0 ? Double.NaN : values[point];
  }

  @Override
  public double ambientPressure() {
    return setup.conditions().ambientP();
  }
}

package dev.offtake.part;

import dev.offtake.air.GasState;
import dev.offtake.flow.Flow;
import dev.offtake.flow.NozzleLaw;

/** What a nozzle passes wide open: turns a flow at a pressure, as manuals print it, to an area. */
final class WideOpen {
  private WideOpen() {}

  /**
   * Flow of one square metre from a gauge pressure to the standard day at sea level, kg/(s m²).
   *
   * @param gauge Pa above the air outside, above 0
   * @param t temperature, K
   */
  static double unitFlow(double gauge, double t) {
    Conditions day = Conditions.standardDay(1, 1);
    GasState one = new GasState();
    GasState two = new GasState();
    one.set(Math.log((day.ambientP() + gauge) / GasState.REFERENCE_PRESSURE), t);
    two.set(Math.log(day.ambientP() / GasState.REFERENCE_PRESSURE), day.ambientT());
    Flow flow = new Flow();
    new NozzleLaw().evaluate(one, two, 1, flow);
    return flow.mdot;
  }
}

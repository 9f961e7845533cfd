package dev.offtake.part;

import java.util.List;
import java.util.Optional;

/** The kinds of parts, one line each. */
public final class Kinds {
  private static final List<Kind> ALL =
      List.of(
          CompressorTap.KIND,
          FanTap.KIND,
          Supply.KIND,
          CheckValve.KIND,
          Regulator.KIND,
          Thermostat.KIND,
          ShutoffValve.KIND,
          TemperatureControlValve.KIND,
          ReliefValve.KIND,
          Trip.KIND,
          Duct.KIND,
          Bend.KIND,
          Orifice.KIND,
          Venturi.KIND,
          Leak.KIND,
          Vent.KIND,
          TestPort.KIND,
          HeatExchanger.KIND,
          FlowUser.KIND,
          OrificeUser.KIND,
          Starter.KIND,
          DeadEndedUser.KIND,
          LeakLoop.KIND,
          OperatingLimit.KIND,
          Gauge.KIND,
          EngineGauge.KIND,
          Light.KIND);

  private Kinds() {}

  /** The kind of a name, if there is one. */
  public static Optional<Kind> named(String name) {
    return ALL.stream().filter(kind -> kind.name().equals(name)).findFirst();
  }

  /** All kinds in the order in which they are listed to people. */
  public static List<Kind> all() {
    return ALL;
  }
}

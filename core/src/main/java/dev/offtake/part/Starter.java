package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.List;

/** The kind <em>starter</em>: an air turbine that turns the core. */
public final class Starter {
  /** The kind. */
  public static final Kind KIND =
      new SimpleKind(
          "starter",
          "An air turbine that turns the core; its flow and torque follow pressure and speed.",
          "motor",
          List.of(
              Key.of("takes from", Form.POINT, "starter duct", "Where it draws air.").must(),
              new Key(
                      "map",
                      Form.TABLE,
                      Dimension.SHARE,
                      Dimension.TORQUE,
                      true,
                      "",
                      List.of(),
                      "columns: [core %, lbf ft, lb/min], rows: [[0, 420, 95], [50, 110, 85]]",
                      "Torque and flow over core speed at the map's pressure and temperature.")
                  .among("SHARE", "TORQUE", "MASS_FLOW"),
              Key.quantity(
                      "map pressure",
                      Dimension.GAUGE_PRESSURE,
                      "35 psig",
                      "Inlet pressure of the map on a standard day.")
                  .usually("35 psig"),
              Key.quantity(
                      "map temperature",
                      Dimension.TEMPERATURE,
                      "400 degF",
                      "Inlet temperature of the map.")
                  .usually("400 degF"),
              Key.quantity(
                      "needs",
                      Dimension.GAUGE_PRESSURE,
                      "28 psig",
                      "Pressure below which a start is not promised.")
                  .usually("28 psig"),
              Key.quantity("minimum flow", Dimension.MASS_FLOW, "70 lb/min", "Flow that it needs."),
              Key.of("open when", Form.CONDITION, "start switch is START", "When it takes air.")),
          List.of("starter"),
          StarterPart::of);

  private Starter() {}
}

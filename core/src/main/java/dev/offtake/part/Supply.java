package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.List;

/** The kind <em>supply</em>: ground cart, auxiliary unit or shop air. */
public final class Supply {
  /** The kind. */
  public static final Kind KIND =
      new SimpleKind(
          "supply",
          "A ground cart, auxiliary unit or shop air: its pressure falls as it gives more.",
          "source",
          List.of(
              Key.of("to", Form.POINT, "left duct", "Where the air goes.").must(),
              new Key(
                      "table",
                      Form.TABLE,
                      Dimension.GAUGE_PRESSURE,
                      Dimension.MASS_FLOW,
                      true,
                      "",
                      List.of(),
                      "columns: [psig, lb/min], rows: [[45, 0], [38, 120], [25, 200]]",
                      "Gauge pressure at the unit over flow; pressure falls strictly.")
                  .among("GAUGE_PRESSURE", "MASS_FLOW"),
              Key.quantity(
                      "temperature",
                      Dimension.TEMPERATURE,
                      "400 degF",
                      "Temperature that it gives.")
                  .usually("400 degF"),
              Key.of("on when", Form.CONDITION, "aux bleed is ON", "When it gives air."),
              Key.quantity(
                      "check valve cracks at",
                      Dimension.PRESSURE_DIFFERENCE,
                      "0.3 psid",
                      "Difference at which its own check valve opens.")
                  .usually("0.3 psid"),
              Key.quantity("bore", Dimension.LENGTH, "3 in", "Inner diameter of the coupling."),
              Key.quantity(
                  "at most pressure",
                  Dimension.GAUGE_PRESSURE,
                  "50 psig",
                  "Limit of the receiver."),
              Key.quantity(
                  "at most temperature",
                  Dimension.TEMPERATURE,
                  "450 degF",
                  "Limit of the receiver.")),
          List.of("supply", SupplyModes.CHECK_VALVE, SupplyModes.HOSE),
          List.of("on", "off"),
          SupplyPart::of);

  private Supply() {}
}

package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.List;

/** The kind <em>heat exchanger</em>: a precooler or another cross-flow core with two ways of air. */
public final class HeatExchanger {
  /** The kind. */
  public static final Kind KIND =
      new SimpleKind(
          "heat exchanger",
          "A cross-flow core, such as a precooler: hot bleed air on one side, fan air on the other.",
          "cooler",
          List.of(
              Key.of("hot path", Form.PATH, "precooler in -> duct", "Way of the hot air.").must(),
              Key.of("cold path", Form.PATH, "fan duct -> cooling exit", "Way of the cold air.")
                  .must(),
              Key.quantity("rated hot flow", Dimension.MASS_FLOW, "90 lb/min", "Hot air.").must(),
              Key.quantity("rated hot inlet", Dimension.TEMPERATURE, "700 degF", "Hot air in.")
                  .must(),
              Key.quantity("rated hot outlet", Dimension.TEMPERATURE, "400 degF", "Hot air out.")
                  .must(),
              Key.quantity("rated cold flow", Dimension.MASS_FLOW, "130 lb/min", "Cold air.")
                  .must(),
              Key.quantity("rated cold inlet", Dimension.TEMPERATURE, "120 degF", "Cold air in.")
                  .must(),
              Key.quantity(
                      "exponent", Dimension.NUMBER, "0.6", "Power of flow in its heat transfer.")
                  .usually("0.6"),
              Key.quantity(
                      "hot pressure drop",
                      Dimension.PRESSURE_DIFFERENCE,
                      "2 psid",
                      "Loss of the hot side at the rated point.")
                  .usually("2 psid"),
              Key.quantity(
                      "rated hot pressure",
                      Dimension.GAUGE_PRESSURE,
                      "40 psig",
                      "Hot inlet pressure at the rated point, standard day.")
                  .usually("40 psig"),
              Key.quantity(
                      "cold pressure drop",
                      Dimension.PRESSURE_DIFFERENCE,
                      "0.8 psid",
                      "Loss of the cold side at the rated point.")
                  .usually("0.8 psid"),
              Key.quantity(
                      "rated cold pressure",
                      Dimension.GAUGE_PRESSURE,
                      "4 psig",
                      "Cold inlet pressure at the rated point, standard day.")
                  .usually("4 psig"),
              Key.quantity("hot bore", Dimension.LENGTH, "4 in", "Inner diameter of hot ports."),
              Key.quantity("cold bore", Dimension.LENGTH, "6 in", "Inner diameter of cold ports.")),
          List.of("heat exchanger"),
          ExchangerPart::of);

  private HeatExchanger() {}
}

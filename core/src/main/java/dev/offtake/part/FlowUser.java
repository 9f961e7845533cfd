package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.List;

/** The kind <em>flow user</em>: takes a scheduled flow as long as the pressure lets it. */
public final class FlowUser {
  /** The kind. */
  public static final Kind KIND =
      new SimpleKind(
          "flow user",
          "Takes a scheduled flow, such as an air conditioning pack, as long as pressure lets it.",
          "user",
          List.of(
              Key.of("takes from", Form.POINT, "duct", "Where it draws air.").must(),
              new Key(
                  "takes",
                  Form.QUANTITY_WHEN,
                  Dimension.MASS_FLOW,
                  null,
                  true,
                  "",
                  List.of(),
                  "52 lb/min when pack switch is ON",
                  "How much it draws and when; the first line that holds counts."),
              Key.quantity(
                      "needs",
                      Dimension.GAUGE_PRESSURE,
                      "12 psig",
                      "Pressure at which, wide open, it just takes its most.")
                  .usually("12 psig"),
              Key.quantity(
                      "needs at temperature",
                      Dimension.TEMPERATURE,
                      "350 degF",
                      "Air temperature at which the needed pressure holds.")
                  .usually("350 degF"),
              Key.quantity(
                  "wide open area",
                  Dimension.AREA,
                  "4.1 in2",
                  "Effective area when wide open; else it follows from what it needs."),
              Key.of(
                  "discharges to",
                  Form.POINT,
                  "pack plenum",
                  "Where the air goes; outside if not said.")),
          List.of("user"),
          List.of("on", "off", "starved"),
          FlowUserPart::of);

  private FlowUser() {}
}

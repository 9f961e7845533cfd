package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.List;

/**
 * What compressor and fan taps have in common.
 *
 * @param name of the kind
 * @param says what it is for
 * @param fan whether fan speed counts, else core speed
 * @param rows example of the table's rows
 */
record TapKind(String name, String says, boolean fan, String rows) implements Kind {
  @Override
  public List<Key> keys() {
    return List.of(
        Key.of("to", Form.POINT, "mid duct", "Where the air goes.").must(),
        Key.quantity("bore", Dimension.LENGTH, "3.4 in", "Inner diameter of the port.")
            .usually("3 in"),
        Key.quantity(
                "flow coefficient", Dimension.NUMBER, "0.8", "Share of the bore that is effective.")
            .usually("0.8"),
        Key.of("taken on", Form.DAY, "standard day", "Day of the table, engine at rest."),
        Key.choice(
            "speeds",
            List.of("physical", "corrected"),
            "Whether the table's speeds are as read or corrected to 15 degC."),
        Key.choice(
            "read", List.of("at port", "in manifold"), "Where the table's pressures were read."),
        Key.of("with", Form.TEXT, "no bleed", "Air drawn while the table was taken.")
            .in(Dimension.MASS_FLOW)
            .usually("no bleed"),
        new Key(
                "table",
                Form.TABLE,
                Dimension.SHARE,
                null,
                true,
                "",
                List.of(),
                "columns: [" + (fan ? "fan" : "core") + " %, psig, degF], rows: [" + rows + "]",
                "Speed, pressure and temperature of the stage, speed rising.")
            .among("SHARE", "PRESSURE", "TEMPERATURE"),
        Key.quantity(
                "pressure factor",
                Dimension.NUMBER,
                "1 +/- 0.02",
                "This engine's pressure above the inlet's against the table.")
            .usually("1"),
        Key.quantity(
            "droop",
            Dimension.NUMBER,
            "unknown 0..1",
            "Percent of pressure lost for each percent of core flow that is drawn."),
        Key.at(
            "core flow",
            Dimension.MASS_FLOW,
            Dimension.SHARE,
            "3000 lb/min at 99 %",
            "Air through the core at a speed; without it droop cannot act."),
        Key.of("runs when", Form.CONDITION, "engine is RUNNING", "When the engine turns."));
  }

  @Override
  public String symbol() {
    return name;
  }

  @Override
  public List<String> removableUnits() {
    return CompressorTap.UNITS;
  }

  @Override
  public Part build(Facts facts) {
    return new TapReader(this, facts).tap();
  }
}

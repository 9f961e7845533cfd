package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.List;

/** The kind <em>duct</em>: a pipe with friction that loses heat. */
public final class Duct {
  static final String RUNS_IN = "runs in";

  /** The kind. */
  public static final Kind KIND =
      new SimpleKind(
          "duct",
          "A pipe with friction, bends and heat loss.",
          "line",
          List.of(
              Key.of("path", Form.PATH, "interstage -> duct", "The points it joins.").must(),
              Key.quantity("bore", Dimension.LENGTH, "4 in", "Inner diameter.").must(),
              Key.quantity("length", Dimension.LENGTH, "70 in", "Length along its middle.").must(),
              Key.quantity("roughness", Dimension.LENGTH, "0.002 in", "Roughness of the wall.")
                  .usually("0.002 in"),
              Key.quantity(
                      "k",
                      Dimension.NUMBER,
                      "0.6",
                      "Dynamic heads lost in bends and fittings, added up.")
                  .usually("0"),
              Key.quantity(
                      "insulation thickness",
                      Dimension.LENGTH,
                      "0.5 in",
                      "Thickness of the insulation; bare when not said.")
                  .usually("0 in"),
              Key.quantity(
                      "insulation conductivity",
                      Dimension.NUMBER,
                      "0.06",
                      "Conductivity of the insulation, W/(m K).")
                  .usually("0.06"),
              Key.quantity(
                      "emissivity",
                      Dimension.NUMBER,
                      "0.3",
                      "How well its outermost surface radiates, 0 to 1.")
                  .usually("0.3"),
              zone()),
          List.of("duct", DuctModes.CLAMP, DuctModes.INSULATION),
          DuctPart::of);

  private Duct() {}

  /** The line that says where a duct runs. */
  static Key zone() {
    return Key.of(
        RUNS_IN,
        Form.ZONE,
        "pylon zone",
        "The space around it, into which it blows if it leaks; the air outside if not said.");
  }
}

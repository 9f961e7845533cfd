package dev.offtake.part;

import dev.offtake.flow.DuctLaw;
import dev.offtake.heat.CylinderLoss;
import dev.offtake.quantity.Dimension;
import java.util.List;

/**
 * A duct of a system.
 *
 * @param name full name
 * @param leg its way
 * @param parameters flow area and heat loss
 * @param length m
 * @param roughness m
 * @param k sum of loss coefficients
 */
record DuctPart(
    String name, Leg leg, List<Parameter> parameters, double length, double roughness, double k)
    implements Part {
  static final int AREA = 0;
  static final int LOSS = 1;

  /** Temperature inside at which the heat loss is taken, K (400 °F): an assumption. */
  private static final double USUAL_INSIDE_T = 477.594;

  static Part of(Facts facts) {
    Facts.Path path = facts.path("path");
    Leg leg = new Leg(path.from(), path.to(), facts.si("bore"), true);
    double loss = loss(facts);
    Parameter heat =
        new Parameter(
            "heat loss",
            loss,
            0.5 * loss,
            2 * loss,
            0,
            20 * loss,
            Dimension.CONDUCTANCE,
            "duct");
    facts.assume("heat loss", "still air around the duct; the loss may be half or twice as much");
    return new DuctPart(
        facts.name(),
        leg,
        List.of(Bore.parameter("flow area", facts.stated("bore"), "duct"), heat),
        facts.si("length"),
        facts.si("roughness"),
        facts.si("k"));
  }

  /** Conductance from the air inside to the surroundings, W/K, at a usual temperature. */
  private static double loss(Facts facts) {
    try {
      return new CylinderLoss(
              facts.si("bore"),
              facts.si("length"),
              facts.si("insulation thickness"),
              facts.si("insulation conductivity"),
              facts.si("emissivity"))
          .conductance(USUAL_INSIDE_T, Conditions.REFERENCE_T, 101325);
    } catch (IllegalArgumentException wrong) {
      facts.problem("", String.valueOf(wrong.getMessage()), "Correct the duct's measures.");
      return 0;
    }
  }

  @Override
  public String kind() {
    return Duct.KIND.name();
  }

  @Override
  public List<Leg> legs() {
    return List.of(leg);
  }

  @Override
  public Element element(Wiring wiring) {
    return new DuctElement(this, new DuctLaw(length, roughness, k), wiring);
  }

  @Override
  public Doing doing(View view) {
    return Tell.resistance(view, leg, "carries");
  }
}

package dev.offtake.part;

import dev.offtake.flow.DuctLaw;
import dev.offtake.heat.CylinderLoss;
import dev.offtake.quantity.Dimension;
import java.util.ArrayList;
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
 * @param zone point of the space around it
 * @param bare how many times its heat it loses without its insulation
 */
record DuctPart(
    String name,
    Leg leg,
    List<Parameter> parameters,
    double length,
    double roughness,
    double k,
    String zone,
    double bare)
    implements Part {
  static final int AREA = 0;
  static final int LOSS = 1;

  private static final String THICKNESS = "insulation thickness";

  /** Temperature inside at which the heat loss is taken, K (400 °F): an assumption. */
  private static final double USUAL_INSIDE_T = 477.594;

  static Part of(Facts facts) {
    Facts.Path path = facts.path("path");
    Leg leg = new Leg(path.from(), path.to(), facts.si("bore"), true);
    double loss = loss(facts, facts.si(THICKNESS));
    double bare = loss > 0 ? loss(facts, 0) / loss : 1;
    Parameter heat =
        new Parameter(
            "heat loss", loss, 0.5 * loss, 2 * loss, 0, 20 * loss, Dimension.CONDUCTANCE, "duct");
    facts.assume("heat loss", "still air around the duct; the loss may be half or twice as much");
    return new DuctPart(
        facts.name(),
        leg,
        List.of(Bore.parameter("flow area", facts.stated("bore"), "duct"), heat),
        facts.si("length"),
        facts.si("roughness"),
        facts.si("k"),
        facts.point(Duct.RUNS_IN),
        bare);
  }

  /** Conductance from the air inside to the surroundings, W/K, at a usual temperature. */
  private static double loss(Facts facts, double insulation) {
    try {
      return new CylinderLoss(
              facts.si("bore"),
              facts.si("length"),
              insulation,
              facts.si("insulation conductivity"),
              facts.si("emissivity"))
          .conductance(USUAL_INSIDE_T, Conditions.REFERENCE_T, 101325);
    } catch (IllegalArgumentException wrong) {
      facts.problem("", String.valueOf(wrong.getMessage()), "Correct the duct's measures.");
      return 0;
    }
  }

  @Override
  public double airInside() {
    return parameters.get(AREA).value() * length;
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
    Doing plain = Tell.resistance(view, leg, "carries", parameters.get(AREA));
    String heat = Tell.changed(view, LOSS, parameters.get(LOSS), "heat loss");
    return new Doing(plain.regime(), plain.word(), plain.why() + heat);
  }

  @Override
  public List<Mode> modes() {
    List<Mode> modes = new ArrayList<>(DuctModes.of(leg, zone, "duct"));
    modes.addAll(DuctModes.insulation(bare));
    return modes;
  }
}

package dev.offtake.part;

import dev.offtake.flow.DuctLaw;
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

  static Part of(Facts facts) {
    Facts.Path path = facts.path("path");
    Leg leg = new Leg(path.from(), path.to(), facts.si("bore"), true);
    double loss = loss(facts);
    Parameter heat =
        new Parameter(
            "heat loss", loss, 0.5 * loss, 2 * loss, 0, 20 * loss, Dimension.CONDUCTANCE,
            "insulation");
    facts.assume("outside coefficient", "the heat loss may be half or twice what follows from it");
    return new DuctPart(
        facts.name(),
        leg,
        List.of(Bore.parameter("flow area", facts.stated("bore"), "duct"), heat),
        facts.si("length"),
        facts.si("roughness"),
        facts.si("k"));
  }

  /** Conductance from the air inside to the surroundings, W/K; the inner film and the wall do not count. */
  private static double loss(Facts facts) {
    double inner = 0.5 * facts.si("bore");
    double outer = inner + facts.si("insulation thickness");
    double insulation = Math.log(outer / inner) / facts.si("insulation conductivity");
    double film = 1 / (facts.si("outside coefficient") * outer);
    return 2 * Math.PI * facts.si("length") / (insulation + film);
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

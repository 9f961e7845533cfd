package dev.offtake.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.air.Air;
import dev.offtake.quantity.Dimension;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Holes and fittings against closed forms. */
class ResistancesTest {
  private static final double AMBIENT = 101325;
  private static final double T = 480;
  private static final double BORE = 0.0127;
  private static final double CLOSE = 1e-9;

  private static KindFacts hole(double coefficient) {
    return new KindFacts()
        .with("path", new Facts.Path("up", "down", false))
        .with("at", "up")
        .si("bore", BORE, Dimension.LENGTH)
        .si("flow coefficient", coefficient, Dimension.NUMBER);
  }

  private static double flow(Part part, double p1, double p2) {
    Rig rig = new Rig(part).set("up", p1, T);
    part.legs().stream()
        .filter(leg -> !leg.to().equals(Leg.AMBIENT))
        .forEach(leg -> rig.set(leg.to(), p2, 400));
    return rig.run().mdot;
  }

  private static void agrees(double flow, double expected) {
    assertThat(flow).isPositive().isCloseTo(expected, within(CLOSE * expected));
  }

  @ParameterizedTest
  @ValueSource(doubles = {2.9e5, 2.4e5, 1.8e5, 1.4e5, 1e5})
  void orificeIsANozzleOfItsEffectiveHole(double behind) {
    Part part = Orifice.KIND.build(hole(0.6));
    double area = 0.6 * ClosedForms.circle(BORE);
    agrees(flow(part, 3e5, behind), ClosedForms.nozzle(area, 3e5, T, behind));
    assertThat(flow(part, behind, 3e5)).isNegative();
  }

  @ParameterizedTest
  @ValueSource(doubles = {1.05e5, 1.5e5, 3e5})
  void ventBlowsToTheAirOutsideOnlyWhileItIsOpen(double ahead) {
    KindFacts facts = hole(0.8).with("open when", new BenchFacts.Words("dump switch is OPEN"));
    Rig rig = new Rig(Vent.KIND.build(facts)).set("up", ahead, T);
    assertThat(rig.run().mdot).isZero();
    rig.e.controls[0] = 1;
    double area = 0.8 * ClosedForms.circle(BORE);
    agrees(rig.run().mdot, ClosedForms.nozzle(area, ahead, T, AMBIENT));
  }

  @Test
  void testPortIsTightUntilItsPlugIsLeftOut() {
    Part part = TestPort.KIND.build(hole(1));
    Rig rig = new Rig(part).set("up", 2.5e5, T);
    assertThat(rig.run().mdot).isZero();
    Parameter open = part.parameters().get(0);
    assertThat(open.max()).isCloseTo(ClosedForms.circle(BORE), within(1e-18));
    rig.e.parameters[0] = open.max();
    agrees(rig.run().mdot, ClosedForms.nozzle(0.6 * open.max(), 2.5e5, T, AMBIENT));
  }

  @Test
  void leakBlowsIntoItsZone() {
    KindFacts facts = hole(0.6).si("area", 3e-5, Dimension.AREA).with("into", "zone");
    Part part = Leak.KIND.build(facts);
    agrees(flow(part, 2e5, 1.4e5), ClosedForms.nozzle(0.6 * 3e-5, 2e5, T, 1.4e5));
  }

  private static KindFacts venturi(double recovery) {
    return hole(0.97)
        .si("throat", 0.04, Dimension.LENGTH)
        .si("recovery", recovery, Dimension.NUMBER);
  }

  /** p₂ = p_t + η(p₁ − p_t): the throat sees the fall 1/(1 − η) times as large. */
  @ParameterizedTest
  @ValueSource(doubles = {2.98e5, 2.9e5, 2.8e5})
  void venturiGivesItsThroatsFallBack(double behind) {
    double throat = 3e5 - (3e5 - behind) / (1 - 0.8);
    double area = 0.97 * ClosedForms.circle(0.04);
    double expected = ClosedForms.nozzle(area, 3e5, T, throat);
    agrees(flow(Venturi.KIND.build(venturi(0.8)), 3e5, behind), expected);
  }

  @Test
  void venturiChokesWhereItsThroatDoes() {
    Part part = Venturi.KIND.build(venturi(0.8));
    double fall = (1 - 0.8) * (1 - ClosedForms.critical(T));
    double most = ClosedForms.nozzle(0.97 * ClosedForms.circle(0.04), 3e5, T, 0);
    agrees(flow(part, 3e5, 3e5 * (1 - fall) - 1), most);
    assertThat(flow(part, 3e5, 3e5 * (1 - 0.8 * fall))).isLessThan(0.999 * most);
    agrees(flow(part, 3e5, 1e5), most);
  }

  @Test
  void venturiRefusesToGiveMoreBackThanAnyDoes() {
    KindFacts facts = venturi(0.99);
    Venturi.KIND.build(facts);
    assertThat(facts.problems).singleElement().asString().startsWith("recovery");
  }

  /** Slow air: Δp = K·ρw²/2 with the density ahead; compressibility is of the order of Δp/p. */
  @ParameterizedTest
  @ValueSource(doubles = {0.3, 1.2})
  void bendLosesItsDynamicHeads(double k) {
    KindFacts facts = hole(1).si("loss coefficient", k, Dimension.NUMBER);
    double fall = 60;
    double density = 2e5 / (Air.R * T);
    double expected = ClosedForms.circle(BORE) * Math.sqrt(2 * density * fall / k);
    assertThat(flow(Bend.KIND.build(facts), 2e5, 2e5 - fall))
        .isCloseTo(expected, within(1.5e-3 * expected));
  }
}

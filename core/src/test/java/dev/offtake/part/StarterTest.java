package dev.offtake.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.quantity.Dimension;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A starter against the map in its own file. */
class StarterTest {
  private static final double FLOW = 95 * Samples.LB_MIN;
  private static final double MAP_P = 101325 + 35 * Samples.PSI;
  private static final double MAP_T = 478;

  static KindFacts facts() {
    return new KindFacts()
        .with("takes from", "duct")
        .with("open when", new BenchFacts.Words("start switch is START"))
        .si("map pressure", 35 * Samples.PSI, Dimension.GAUGE_PRESSURE)
        .si("map temperature", MAP_T, Dimension.TEMPERATURE)
        .si("needs", 28 * Samples.PSI, Dimension.GAUGE_PRESSURE)
        .with(
            "map",
            List.of(new double[] {0, 570, FLOW}, new double[] {0.5, 150, 85 * Samples.LB_MIN}));
  }

  private static Rig rig(double core) {
    Rig rig = new Rig(Starter.KIND.build(facts()));
    rig.e.controls[0] = 1;
    rig.e.conditions = Conditions.standardDay(core, 0);
    return rig.set("duct", MAP_P, MAP_T);
  }

  private static double torque(Rig rig) {
    rig.run();
    double[] seen = new double[1];
    rig.element.observe(rig.e, seen, 0);
    return seen[0];
  }

  @Test
  void givesItsMapBack() {
    assertThat(rig(0).run().mdot).isCloseTo(FLOW, within(1e-12));
    assertThat(torque(rig(0))).isCloseTo(570, within(1e-9));
    assertThat(rig(0.25).run().mdot).isCloseTo(90 * Samples.LB_MIN, within(1e-12));
    assertThat(torque(rig(0.25))).isCloseTo(360, within(1e-9));
    assertThat(rig(0.8).run().mdot).isCloseTo(85 * Samples.LB_MIN, within(1e-12));
  }

  /** Choked both times: flow goes with p, torque with the pressure above the air outside. */
  @Test
  void growsWithPressure() {
    Rig rig = rig(0).set("duct", 101325 + 50 * Samples.PSI, MAP_T);
    double ratio = (101325 + 50 * Samples.PSI) / MAP_P;
    assertThat(rig.run().mdot).isCloseTo(FLOW * ratio, within(1e-12));
    assertThat(torque(rig)).isCloseTo(570 * 50 / 35.0, within(1e-9));
  }

  @Test
  void takesNothingWhileItsValveIsShut() {
    Rig rig = rig(0);
    rig.e.controls[0] = 0;
    assertThat(rig.run().mdot).isZero();
    assertThat(torque(rig)).isZero();
  }

  @Test
  void refusesAMapWhoseSpeedFalls() {
    KindFacts facts =
        facts().with("map", List.of(new double[] {0.5, 1, 1}, new double[] {0, 1, 1}));
    Starter.KIND.build(facts);
    assertThat(facts.problems).singleElement().asString().contains("rising speed");
  }
}

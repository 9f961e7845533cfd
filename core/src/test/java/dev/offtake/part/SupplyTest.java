package dev.offtake.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class SupplyTest {
  private final Rig rig = new Rig(Supply.KIND.build(Samples.supply()));

  private double gives(double psig) {
    return rig.set("duct", 101325 + psig * Samples.PSI, 400).run().mdot / Samples.LB_MIN;
  }

  @Test
  void followsItsTableLessTheCheckValve() {
    assertThat(gives(38 - 0.3)).isCloseTo(120, within(1e-3));
    assertThat(gives(31.5 - 0.3)).isCloseTo(160, within(1e-3));
    assertThat(gives(41.5 - 0.3)).isCloseTo(60, within(1e-3));
  }

  @Test
  void isHeldShutAboveItsDeadheadPressure() {
    assertThat(gives(60)).isBetween(-1e-3, 0.0);
  }

  @Test
  void givesNothingWhenOff() {
    rig.e.controls[0] = 0;
    rig.element.boundary(rig.e);
    assertThat(gives(0)).isCloseTo(0, within(1e-9));
    assertThat(gives(20)).isBetween(-1e-3, 0.0);
  }

  @Test
  void refusesATableThatRises() {
    KindFacts facts =
        Samples.supply().with("table", List.of(new double[] {2e5, 0}, new double[] {2.2e5, 0.5}));
    Supply.KIND.build(facts);
    assertThat(facts.problems).singleElement().asString().contains("falls strictly");
  }
}

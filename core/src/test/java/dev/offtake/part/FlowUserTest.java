package dev.offtake.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FlowUserTest {
  private static final double WANTED = 52 * Samples.LB_MIN;
  private final Rig rig = PartPartialsTest.userRig();

  private double takes(double psig) {
    return rig.set("duct", 101325 + psig * Samples.PSI, 450).run().mdot;
  }

  @Test
  void takesOnePercentLessWhereScheduleAndCapacityMeet() {
    assertThat(takes(12)).isCloseTo(0.99 * WANTED, within(1e-9));
  }

  @Test
  void takesItsScheduleUnderHighPressure() {
    assertThat(takes(45)).isBetween(0.9995 * WANTED, WANTED);
  }

  @Test
  void takesWhatItCanWhenStarved() {
    assertThat(takes(3)).isBetween(0.3 * WANTED, 0.6 * WANTED);
    assertThat(takes(0)).isCloseTo(0, within(1e-15));
  }

  @Test
  void risesWithPressureAllAlong() {
    double before = takes(-2);
    for (double psig = -1.9; psig < 60; psig += 0.1) {
      double now = takes(psig);
      assertThat(now).isGreaterThan(before);
      before = now;
    }
  }

  @Test
  void takesNothingWhenNothingIsAsked() {
    rig.e.controls[0] = 0;
    assertThat(takes(30)).isZero();
    assertThat(takes(-3)).isZero();
  }
}

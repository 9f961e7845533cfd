package dev.offtake.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.offtake.air.Air;
import dev.offtake.air.GasState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Duct walls: the law along the duct and what makes its conductance. */
class WallTest {
  private final DuctHeat duct = new DuctHeat();

  private static GasState air(double t) {
    GasState air = new GasState();
    air.set(0, t);
    return air;
  }

  private double[] outlet(double mdot, double t1) {
    duct.evaluate(mdot, air(t1), 290, 6);
    return new double[] {duct.t, duct.h};
  }

  @ParameterizedTest
  @CsvSource({"0.5, 600", "0.01, 600", "0.002, 480", "0.004, 240", "1e-4, 600"})
  void derivativesAreThoseOfTheValues(double mdot, double t1) {
    double step = 1e-4 * mdot;
    double rise = 1e-2;
    double[] more = outlet(mdot + step, t1);
    double[] less = outlet(mdot - step, t1);
    double[] warmer = outlet(mdot, t1 + rise);
    double[] colder = outlet(mdot, t1 - rise);
    outlet(mdot, t1);
    double tByFlow = (more[0] - less[0]) / (2 * step);
    assertThat(duct.dTdMdot).isCloseTo(tByFlow, within(1e-6 * Math.abs(tByFlow) + 1e-12 / step));
    double hByFlow = (more[1] - less[1]) / (2 * step);
    assertThat(duct.dMdot).isCloseTo(hByFlow, within(1e-6 * Math.abs(hByFlow) + 1e-9 / step));
    assertThat(duct.dTdT1).isCloseTo((warmer[0] - colder[0]) / (2 * rise), within(1e-8));
    assertThat(duct.dT1).isCloseTo((warmer[1] - colder[1]) / (2 * rise), within(1e-5));
  }

  @ParameterizedTest
  @CsvSource({"0", "1e-300", "1e-9", "-1"})
  void stillAirTakesTheTemperatureAround(double mdot) {
    duct.evaluate(mdot, air(600), 290, 6);
    assertThat(duct.t).isEqualTo(290);
    assertThat(duct.h).isEqualTo(Air.h(290));
    assertThat(new double[] {duct.dMdot, duct.dT1, duct.dTdMdot, duct.dTdT1}).containsOnly(0);
  }

  @Test
  void withoutConductanceNothingIsLost() {
    for (double mdot : new double[] {0, 0.3}) {
      duct.evaluate(mdot, air(600), 290, 0);
      assertThat(duct.t).isEqualTo(600);
      assertThat(duct.dMdot).isZero();
      assertThat(duct.dT1).isEqualTo(Air.cp(600));
    }
  }

  /** Public library CalebBell/ht, tests/test_conv_free_immersed.py: Pr 0.69, Gr 2.63e9. */
  @Test
  void nusseltNumberAgreesWithACorrelationLibrary() {
    double nusselt = FreeConvection.nusselt(2.63e9 * 0.69, 0.69);
    assertThat(nusselt).isCloseTo(139.13493970073597, within(1e-11));
  }

  /** Incropera and DeWitt, example 9.4, recomputed: Ra 5.075925e6 and Pr 0.697 give 23.0949. */
  @Test
  void nusseltNumberAgreesWithATextbook() {
    assertThat(FreeConvection.nusselt(5.075925e6, 0.697)).isCloseTo(23.0949, within(6e-5));
  }

  @Test
  void insulationStandsInSeriesWithTheSurface() {
    CylinderLoss bare = new CylinderLoss(0.1, 3, 0, 0.05, 0.3);
    CylinderLoss lagged = new CylinderLoss(0.1, 3, 0.02, 0.05, 0.3);
    double loss = lagged.conductance(600, 290, 101325);
    double through = 2 * Math.PI * 0.05 * 3 / Math.log(1.4);
    assertThat(loss).isLessThan(through).isLessThan(bare.conductance(600, 290, 101325));
    // The heat that crosses the insulation leaves a bare duct of the surface's size and warmth.
    double surfaceT = 600 - loss * 310 / through;
    CylinderLoss surface = new CylinderLoss(0.14, 3, 0, 0.05, 0.3);
    double leaves = surface.conductance(surfaceT, 290, 101325) * (surfaceT - 290);
    assertThat(leaves).isCloseTo(loss * 310, withinPercentage(1e-6));
  }

  @Test
  void hardlyConductingInsulationApproachesNothing() {
    CylinderLoss lagged = new CylinderLoss(0.1, 3, 0.02, 1e-9, 0.3);
    assertThat(lagged.conductance(600, 290, 101325)).isBetween(0.0, 1e-7);
  }

  /** Own case: at equal temperatures Nu is 0.36, and radiation is 4εσT³. */
  @Test
  void hasALimitAtEqualTemperatures() {
    CylinderLoss bare = new CylinderLoss(0.1, 1, 0, 0.05, 0.5);
    double radiation = 4 * 0.5 * 5.670374419e-8 * 300 * 300 * 300;
    double convection = 0.36 * Air.conductivity(300) / 0.1;
    double expected = (radiation + convection) * Math.PI * 0.1;
    assertThat(bare.conductance(300, 300, 101325)).isCloseTo(expected, within(1e-12));
    CylinderLoss lagged = new CylinderLoss(0.1, 1, 0.01, 0.05, 0.5);
    assertThat(lagged.conductance(300, 300, 101325)).isPositive();
  }

  @Test
  void losesLessInThinAir() {
    CylinderLoss bare = new CylinderLoss(0.1, 1, 0, 0.05, 0.5);
    assertThat(bare.conductance(500, 250, 25e3)).isLessThan(bare.conductance(500, 250, 100e3));
  }

  @Test
  void coolsAColdDuctAlike() {
    CylinderLoss lagged = new CylinderLoss(0.1, 1, 0.01, 0.05, 0.5);
    assertThat(lagged.conductance(250, 320, 101325)).isPositive().isLessThan(5);
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new CylinderLoss(0, 1, 0, 0.05, 0.5))
        .withMessageContaining("outside diameter");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new CylinderLoss(0.1, 1, 0, 0.05, 1.5))
        .withMessageContaining("emissivity");
  }
}

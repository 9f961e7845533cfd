package dev.offtake.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.air.Air;
import dev.offtake.air.GasState;
import dev.offtake.flow.DuctLaw;
import dev.offtake.flow.Fanno;
import dev.offtake.flow.Flow;
import dev.offtake.flow.Isentropic;
import dev.offtake.flow.TestGas;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Worked examples of adiabatic pipe flow with friction. */
class FannoCheckTest {
  private static final double G = 1.4;

  /**
   * Cengel and Cimbala, example 12-17, after FOSSEE/Scilab-TBC-Uploads 3720/CH12/EX12.17: D 0.05 m,
   * f 0.023, 85 m/s, 220 kPa, 450 K. Printed: longest duct 31.6 m, 4.6 m more than 27 m, 0.284
   * kg/s; M₂ 0.42 is a coarse reading of the table (2 % off, recomputed 0.41022).
   */
  @Test
  void adiabaticDuct() {
    double m1 = 85 / Math.sqrt(1.4 * 287 * 450);
    double f = 0.023;
    double toChoke = Fanno.lengthToChoke(m1, G);
    assertThat(m1).isCloseTo(0.1998977, within(0.5e-7));
    assertThat(toChoke).isCloseTo(14.550686, within(0.6e-6));
    assertThat(toChoke * 0.05 / f).isCloseTo(31.6, within(0.005 * 31.6));
    assertThat(toChoke * 0.05 / f - 27).isCloseTo(4.632, within(0.5e-3));
    assertThat(220e3 / (287 * 450) * 85 * Math.PI / 4 * 0.0025).isCloseTo(0.284300, within(5e-6));
    assertThat(Fanno.lengthBetween(m1, Math.log(0.41022 / m1), G))
        .isCloseTo(f * 27 / 0.05, within(2e-3));
  }

  /**
   * The same duct through the law: the friction as a loss coefficient, ends from the example's Mach
   * numbers; own closed form. The flow must come back.
   */
  @Test
  void lawFindsTheFlowOfTheExample() {
    double m1 = 85 / Math.sqrt(1.4 * 287 * 450);
    double m2 = exitMach(m1, 0.023 * 27 / 0.05);
    assertThat(m2).isCloseTo(0.41022, within(0.6e-5));
    double t = 450 / Isentropic.temperatureRatio(m1, G);
    double p1 = 220e3 / Isentropic.pressureRatio(m1, G);
    double p2 = p1 * Fanno.totalPressureRatio(m2, G) / Fanno.totalPressureRatio(m1, G);
    Flow out = new Flow();
    law(0.023 * 27 / 0.05)
        .evaluate(
            TestGas.constant(p1, t, G), TestGas.constant(p2, t, G), Math.PI / 4 * 0.0025, out);
    double flow = out.mdot * Math.sqrt(Air.R / 287);
    assertThat(flow).isCloseTo(0.284300, within(1e-6));
    assertThat(flow).isCloseTo(0.284, within(0.005 * 0.284));
  }

  /** Own case: M₁ 0.24, D 0.1 m, 20 m, Fanning 0.005. */
  @Test
  void ductExercise() {
    assertThat(Fanno.lengthToChoke(0.24, G)).isCloseTo(9.3864805, within(0.6e-7));
    double m2 = exitMach(0.24, 4.0);
    assertThat(m2).isCloseTo(0.2981739, within(0.6e-7));
    assertThat(Fanno.pressureRatio(m2, G) / Fanno.pressureRatio(0.24, G))
        .isCloseTo(0.8024198, within(0.6e-7));
    assertThat(Fanno.totalPressureRatio(m2, G) / Fanno.totalPressureRatio(0.24, G))
        .isCloseTo(0.8199398, within(0.6e-7));
  }

  /** The choked flow of the law is that of the Fanno length to the choke (closed form). */
  @ParameterizedTest
  @ValueSource(doubles = {0.15, 0.3, 0.5, 0.7})
  void chokedFlowIsFoundNotClipped(double m1) {
    GasState up = TestGas.constant(3e5, 450, G);
    Flow out = new Flow();
    law(Fanno.lengthToChoke(m1, G)).evaluate(up, TestGas.constant(0.2e5, 450, G), 1e-3, out);
    double flow = 1e-3 * 3e5 / Math.sqrt(Air.R * 450) * Math.exp(Isentropic.lnFlow(m1, G));
    assertThat(out.choked).isTrue();
    assertThat(out.mdot).isCloseTo(flow, within(1e-12 * flow));
    assertThat(out.dLnP1).isCloseTo(flow, within(1e-12 * flow));
    assertThat(out.dLnP2).isZero();
  }

  private static DuctLaw law(double k) {
    return TestGas.duct(0, 0, k);
  }

  private static double exitMach(double m1, double number) {
    double low = 0;
    double high = -Math.log(m1);
    for (int i = 0; i < 80; i++) {
      double mid = 0.5 * (low + high);
      if (Fanno.lengthBetween(m1, mid, G) < number) {
        low = mid;
      } else {
        high = mid;
      }
    }
    return m1 * Math.exp(low);
  }
}

package dev.offtake.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.air.Air;
import dev.offtake.air.GasState;
import dev.offtake.flow.Flow;
import dev.offtake.flow.Isentropic;
import dev.offtake.flow.NozzleLaw;
import dev.offtake.flow.TestGas;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Nozzle and orifice mass flow. */
class NozzleCheckTest {
  /** Critical values of γ 1.4; recomputed, and 0.5283 in every textbook. */
  @Test
  void criticalRatioAndFlowFunction() {
    assertThat(Isentropic.pressureRatio(1, 1.4)).isCloseTo(0.528281788, within(1e-9));
    assertThat(Math.exp(Isentropic.lnFlow(1, 1.4))).isCloseTo(0.684731456, within(1e-9));
    assertThat(choked(1.4, 1, 1, 287) * 1).isCloseTo(0.04041842, within(0.5e-8));
  }

  /**
   * Cengel and Cimbala, example 12-5, after FOSSEE/Scilab-TBC-Uploads 3720/CH12/EX12.5: 1 MPa, 873
   * K, 150 m/s, 50 cm²; printed 6.77 (through a rounded table Mach number, 0.2 % low) and 7.10
   * kg/s; recomputed 6.784970 and 7.106278.
   */
  @ParameterizedTest
  @CsvSource({"0.7e6, 6.784970, 6.77, 0.003", "0.4e6, 7.106278, 7.10, 0.002"})
  void convergingNozzle(double back, double recomputed, double printed, double room) {
    double flow = subsonic(1.0456026e6, back, 884.19403, 1.4, 50e-4, 287);
    assertThat(flow).isCloseTo(recomputed, within(1e-6 * recomputed));
    assertThat(flow).isCloseTo(printed, within(room * printed));
  }

  /**
   * Gas dynamics example 2.1 (nvidia/Nemotron-CC-Math-v1 page): 1.12 kg/m³, 500 m/s, 10 mm throat;
   * printed 0.02543 kg/s from rounded ratios; recomputed 0.02545272.
   */
  @Test
  void throatOfTenMillimetres() {
    double t0 = 500.0 * 500 / (1.4 * 287);
    double flow = choked(1.4, 1.12 * 287 * t0, t0, 287) * Math.PI / 4 * 1e-4;
    assertThat(flow).isCloseTo(0.02545272, within(1e-8));
    assertThat(flow).isCloseTo(0.02543, within(1.5e-3 * 0.02543));
  }

  /** White, Fluid Mechanics, converging nozzle (from memory): choked 0.145; recomputed 0.145506. */
  @ParameterizedTest
  @CsvSource({"90e3, 0.128596", "45e3, 0.145506"})
  void sixSquareCentimetres(double back, double recomputed) {
    assertThat(subsonic(120e3, back, 400, 1.4, 6e-4, 287))
        .isCloseTo(recomputed, within(1e-6));
  }

  /** Critical state of carbon dioxide: CalebBell/fluids tests/test_compressible.py. */
  @Test
  void criticalStateOfCarbonDioxide() {
    assertThat(473 * Isentropic.temperatureRatio(1, 1.289))
        .isCloseTo(413.2809086937528, within(1e-9));
    assertThat(1.4e6 * Isentropic.pressureRatio(1, 1.289))
        .isCloseTo(766812.9022792266, within(1e-5));
  }

  /**
   * Choked flux of real dry air (own case: isentropic maximum with the iapws library's equation of
   * state), ideal gas with γ(T₁): within 0.15 %.
   */
  @ParameterizedTest
  @CsvSource({
    "1e5, 300, 1.399926, 233.4579", "10e5, 500, 1.386611, 1803.663", "20e5, 800, 1.353653, 2826.913"
  })
  void realAir(double p, double t, double gamma, double flux) {
    assertThat(subsonic(p, 0.1 * p, t, gamma, 1, Air.R)).isCloseTo(flux, within(1.5e-3 * flux));
  }

  private static double choked(double gamma, double p, double t, double r) {
    return subsonic(p, 0.2 * p, t, gamma, 1, r);
  }

  /** The law's flow, brought to the source's gas constant. */
  private static double subsonic(
      double p, double back, double t, double gamma, double area, double r) {
    GasState up = TestGas.constant(p, t, gamma);
    Flow out = new Flow();
    new NozzleLaw().evaluate(up, TestGas.constant(back, t, gamma), area, out);
    return out.mdot * Math.sqrt(Air.R / r);
  }
}

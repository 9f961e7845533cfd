package dev.offtake.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.air.GasState;
import dev.offtake.flow.Flow;
import dev.offtake.flow.Iso6358Law;
import dev.offtake.flow.NozzleLaw;
import dev.offtake.flow.TestGas;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * ISO 6358: own worked case of the formula (from memory of the standard; no published worked
 * example found). C 2e-8 m³/(s Pa), b 0.30, p₁ 600 kPa.
 */
class Iso6358CheckTest {
  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          100, 0.0142200000, 0.0114772618, 0.0114772618, 0.0114772618
          180, 0.0142200000, 0.0114772618, 0.0114772618, 0.0114772618
          210, 0.0141836781, 0.0114479456, 0.0114450182, 0.0114449365
          300, 0.0136272371, 0.0109988304, 0.0109520982, 0.0109486100
          400, 0.0121130997, 0.0097767381, 0.0096212069, 0.0095854034
          500, 0.0092101386, 0.0074336971, 0.0071177301, 0.0068863571
          550, 0.0067289741, 0.0054310968, 0.0050395583, 0.0043609819
          590, 0.0030845325, 0.0024895912, 0.0021367663, 0.0000000000
          600, 0.0000000000, 0.0000000000, 0.0000000000, 0.0000000000
          """)
  void workedCase(double p2, double cold, double hot, double index, double cracked) {
    assertThat(flow(0.5, 0, p2, 293.15)).isCloseTo(cold, within(0.6e-10));
    assertThat(flow(0.5, 0, p2, 450)).isCloseTo(hot, within(0.6e-10));
    assertThat(flow(0.55, 0, p2, 450)).isCloseTo(index, within(0.6e-10));
    assertThat(flow(0.5, 20e3, p2, 450)).isCloseTo(cracked, within(0.6e-10));
  }

  /**
   * A 10 mm hole of discharge coefficient 0.8 is C = 1.251687e-7 m³/(s Pa) with R 287; recomputed.
   * The law uses R of air, 287.0509: 9e-5 apart.
   */
  @Test
  void sonicConductanceOfAHole() {
    GasState up = TestGas.constant(6e5, Iso6358Law.TEMPERATURE, 1.4);
    Flow out = new Flow();
    new NozzleLaw().evaluate(up, TestGas.constant(1e5, 300, 1.4), 0.8 * Math.PI / 4 * 1e-4, out);
    double conductance = out.mdot / (Iso6358Law.DENSITY * 6e5);
    assertThat(conductance).isCloseTo(1.251687e-7, within(1e-4 * 1.251687e-7));
  }

  private static double flow(double m, double cracking, double p2, double t) {
    Flow out = new Flow();
    GasState up = TestGas.constant(600e3, t, 1.4);
    GasState down = TestGas.constant(p2 * 1e3, t, 1.4);
    new Iso6358Law(0.30, m, cracking).evaluate(up, down, 2e-8, out);
    return out.mdot;
  }
}

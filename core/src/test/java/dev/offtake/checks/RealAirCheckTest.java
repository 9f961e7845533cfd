package dev.offtake.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.offtake.air.Air;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Ideal-gas air against real dry air.
 *
 * <p>Source: real_air.csv, made by real_air.py beside it with the package iapws 1.5.3 (equation of
 * state of Lemmon et al., J. Phys. Chem. Ref. Data 29 (2000); transport of Lemmon and Jacobsen,
 * Int. J. Thermophysics 25 (2004)). The bounds are the errors that the documents state.
 */
class RealAirCheckTest {

  /** One row of the grid, SI; enthalpy relative to 300 K and 1 bar. */
  record Real(
      double t,
      double p,
      double rho,
      double z,
      double cp,
      double gamma,
      double h,
      double mu,
      double k) {
    static Real parse(String line) {
      double[] v = Arrays.stream(line.split(",")).mapToDouble(Double::parseDouble).toArray();
      return new Real(v[0], v[1], v[2], v[3], v[4], v[5], v[6], v[7], v[8]);
    }
  }

  static List<Real> grid() {
    try (InputStream in = RealAirCheckTest.class.getResourceAsStream("real_air.csv")) {
      String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
      return text.lines().skip(1).map(Real::parse).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Stream<Real> atOneBar() {
    return grid().stream().filter(r -> r.p() == 1e5);
  }

  static Stream<Real> upToTwentyBarAndHot() {
    return grid().stream().filter(r -> r.p() <= 2e6 && r.t() >= 500);
  }

  static Stream<Real> hot() {
    return grid().stream().filter(r -> r.t() >= 800);
  }

  @Test
  void coversTheRangeOfBleedAir() {
    assertThat(grid()).hasSize(80);
    assertThat(grid()).extracting(Real::t).contains(250.0, 1000.0);
    assertThat(grid()).extracting(Real::p).contains(1e5, 2e6, 4e6);
  }

  @ParameterizedTest
  @MethodSource("atOneBar")
  void isTheRealGasAtOneBar(Real real) {
    assertThat(1e5 / (Air.R * real.t())).isCloseTo(real.rho(), withinPercentage(0.1));
    assertThat(Air.cp(real.t())).isCloseTo(real.cp(), withinPercentage(0.3));
    assertThat(Air.gamma(real.t())).isCloseTo(real.gamma(), withinPercentage(0.2));
  }

  @ParameterizedTest
  @MethodSource("atOneBar")
  void hasTheTransportOfTheRealGas(Real real) {
    assertThat(Air.viscosity(real.t())).isCloseTo(real.mu(), withinPercentage(0.25));
    assertThat(Air.conductivity(real.t())).isCloseTo(real.k(), withinPercentage(0.4));
  }

  @ParameterizedTest
  @MethodSource("upToTwentyBarAndHot")
  void isCloseToTheRealGasWhereBleedIsTapped(Real real) {
    assertThat(real.p() / (Air.R * real.t())).isCloseTo(real.rho(), withinPercentage(0.75));
    assertThat(Air.cp(real.t())).isCloseTo(real.cp(), withinPercentage(1));
    assertThat(Air.gamma(real.t())).isCloseTo(real.gamma(), withinPercentage(0.75));
    assertThat(Air.viscosity(real.t())).isCloseTo(real.mu(), withinPercentage(1));
    assertThat(Air.conductivity(real.t())).isCloseTo(real.k(), withinPercentage(1));
  }

  @ParameterizedTest
  @MethodSource("hot")
  void isUsableAtFortyBarWhenHot(Real real) {
    assertThat(real.p() / (Air.R * real.t())).isCloseTo(real.rho(), withinPercentage(1.5));
    assertThat(Air.cp(real.t())).isCloseTo(real.cp(), withinPercentage(0.75));
  }
}

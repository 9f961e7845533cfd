package dev.offtake.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.air.Air;
import dev.offtake.flow.NozzleLaw;
import dev.offtake.network.Network;
import dev.offtake.network.Passage;
import dev.offtake.network.PointSpec;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * A vessel that empties through a nozzle into the air outside.
 *
 * <p>Source: closed forms of any textbook of gas dynamics (<a
 * href="http://potto.org/gasDynamics/node177.php">potto.org</a>), recomputed; where heat capacity
 * varies with temperature, quadrature of the same equations along the isentrope, own.
 */
class BlowDownCheckTest {
  private static final double OUTSIDE = 101325;
  private static final double AREA = 2e-5;
  private static final double VOLUME = 0.05;
  private static final double TIGHT = 1e-8;

  /** Air of one temperature: a wall of 10⁹ W/K, at the 288.15 K of the standard day. */
  private static Vessels vessel(double wall, double volume, double area, double p, double t) {
    Network bare =
        Network.of(List.of(Passage.between("hole", "vessel", "ambient", area, NozzleLaw::new)));
    PointSpec point = new PointSpec("vessel", wall, volume);
    return new Vessels(new Network(List.of(point), bare.parts())).with("vessel", p, t);
  }

  private static double psi(double gamma, double ratio) {
    double critical = Math.pow(2 / (gamma + 1), gamma / (gamma - 1));
    double r = Math.max(ratio, critical);
    double head = Math.pow(r, 2 / gamma) - Math.pow(r, (gamma + 1) / gamma);
    return Math.sqrt(2 * gamma / (gamma - 1) * head);
  }

  private static double flow(double p, double t) {
    return AREA * p / Math.sqrt(Air.R * t) * psi(Air.gamma(t), OUTSIDE / p);
  }

  @Test
  void isothermalFallsExponentiallyWhileChoked() {
    double t = 288.15;
    double tau = VOLUME / (AREA * Math.sqrt(Air.R * t) * psi(Air.gamma(t), 0));
    Vessels vessel = vessel(1e9, VOLUME, AREA, 8e5, t);
    vessel.run(0, tau, TIGHT);
    assertThat(vessel.p("vessel")).isCloseTo(8e5 * Math.exp(-1), within(8e5 * 1e-7));
    assertThat(vessel.t("vessel")).isCloseTo(t, within(1e-4));
  }

  /** Simpson's rule over the logarithm of pressure. */
  private static double quadrature(double high, double low, DoubleUnaryOperator seconds) {
    int n = 2000;
    double step = Math.log(high / low) / n;
    double sum = 0;
    for (int i = 0; i <= n; i++) {
      double weight = i == 0 || i == n ? 1 : i % 2 == 1 ? 4 : 2;
      sum += weight * seconds.applyAsDouble(low * Math.exp(i * step));
    }
    return sum * step / 3;
  }

  @Test
  void isothermalThenBelowTheSpeedOfSound() {
    double t = 288.15;
    DoubleUnaryOperator perLogarithm = p -> VOLUME * p / (Air.R * t) / flow(p, t);
    double seconds = quadrature(4e5, 1.05e5, perLogarithm);
    Vessels vessel = vessel(1e9, VOLUME, AREA, 4e5, t);
    vessel.run(0, seconds, TIGHT);
    assertThat(vessel.p("vessel")).isCloseTo(1.05e5, within(1.0));
  }

  /** Temperature on the isentrope: s₀(T) − R ln p stays, by bisection. */
  private static double isentropic(double p, double p0, double t0) {
    double entropy = Air.s0(t0) + Air.R * Math.log(p / p0);
    double low = 200;
    double high = t0;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (Air.s0(middle) < entropy) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  @Test
  void adiabaticFollowsTheIsentrope() {
    double p0 = 5e5;
    double t0 = 480;
    // dm = V/(R T) · dp/γ along the isentrope.
    DoubleUnaryOperator perLogarithm =
        p -> {
          double t = isentropic(p, p0, t0);
          return VOLUME * p / (Air.R * t * Air.gamma(t)) / flow(p, t);
        };
    double end = 1.1e5;
    double seconds = quadrature(p0, end, perLogarithm);
    Vessels vessel = vessel(0, VOLUME, AREA, p0, t0);
    vessel.run(0, seconds, TIGHT);
    assertThat(vessel.p("vessel")).isCloseTo(end, within(2e-5 * end));
    assertThat(vessel.t("vessel")).isCloseTo(isentropic(end, p0, t0), within(1e-3));
  }

  /** With γ = 1.4 all along, which air of 350 to 250 K keeps to within 0.2 %. */
  @Test
  void adiabaticClosedFormOfAConstantGamma() {
    double t0 = 350;
    double tau = VOLUME / (AREA * Math.sqrt(Air.R * t0) * psi(1.4, 0));
    double seconds = tau;
    double expected = 8e5 * Math.pow(1 + 0.2 * seconds / tau, -7);
    Vessels vessel = vessel(0, VOLUME, AREA, 8e5, t0);
    vessel.run(0, seconds, TIGHT);
    assertThat(vessel.p("vessel")).isCloseTo(expected, within(3e-3 * expected));
  }

  /**
   * A tyre of one cubic foot leaks through a hole of 0.0938 in from 50 psia, at 70 °F all along:
   * choked until 13.1 psig, after about 18.7 s.
   *
   * <p>Source: Balmer, Modern Engineering Thermodynamics, example 16.8, as carried by the public
   * repository FOSSEE/Scilab-TBC-Uploads, 3831/CH16/EX16.8.
   */
  @Test
  void tyre() {
    double psi = 6894.757293168;
    double area = Math.PI / 4 * Math.pow(0.0938 * 0.0254, 2);
    // The day is at 59 °F, so that the time of 70 °F is longer by the root of their ratio.
    double seconds = 18.7 * Math.sqrt(294.26 / 288.15);
    Vessels tyre = vessel(1e9, 0.028316846592, area, 50 * psi, 288.15);
    tyre.run(0, seconds, 1e-6);
    assertThat(tyre.p("vessel") / psi).isCloseTo(14.7 + 13.1, within(0.003 * 27.8));
  }

  /** A tolerance is that of one step: over all of them it errs by a few times as much. */
  @Test
  void atTheUsualToleranceErrsByThreeThousandths() {
    double t = 288.15;
    double tau = VOLUME / (AREA * Math.sqrt(Air.R * t) * psi(Air.gamma(t), 0));
    Vessels vessel = vessel(1e9, VOLUME, AREA, 8e5, t);
    int steps = vessel.run(0, tau, Settings.USUAL_TOLERANCE);
    assertThat(vessel.p("vessel")).isCloseTo(8e5 * Math.exp(-1), within(3e-3 * 3e5));
    assertThat(steps).isLessThan(60);
  }
}

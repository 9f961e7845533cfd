package dev.offtake.flow;

import dev.offtake.air.Air;
import dev.offtake.air.GasState;
import java.util.function.DoubleUnaryOperator;

/**
 * Adiabatic pipe flow with friction (Fanno); size is the flow area, m², from which the diameter
 * follows.
 *
 * <p>Total pressure to total pressure, friction number f·L/D + ΣK with the Darcy friction factor of
 * Churchill 1977, viscosity at the upstream total temperature. The choke at the outlet is found;
 * its kink is smoothed over the last 0.5 % of what the outlet can pass (see {@link FannoPath}).
 */
public final class DuctLaw extends UpstreamLaw {
  /** A smooth open joint and a loss below this cannot be told apart; less loss counts as this. */
  public static final double LEAST_K = 1e-3;

  private static final double LN_4_PI = Math.log(4 / Math.PI);

  private final double length;
  private final double roughness;
  private final double k;
  private final DoubleUnaryOperator viscosity;
  private final DoubleUnaryOperator dViscosity;

  /**
   * Makes the law for air.
   *
   * @param length of the duct, m, 0 or more
   * @param roughness of the wall, m, 0 or more
   * @param k sum of loss coefficients of bends and fittings, 0 or more
   * @throws IllegalArgumentException when one of them is negative or not a number
   */
  public DuctLaw(double length, double roughness, double k) {
    this(length, roughness, k, Air::viscosity, Air::dViscosity);
  }

  /**
   * Makes the law for a gas of given viscosity, Pa s by K, with its slope.
   *
   * @throws IllegalArgumentException when a dimension is negative or not a number
   */
  DuctLaw(
      double length,
      double roughness,
      double k,
      DoubleUnaryOperator viscosity,
      DoubleUnaryOperator dViscosity) {
    require(length, "length, m,");
    require(roughness, "roughness, m,");
    require(k, "loss coefficient");
    this.length = length;
    this.roughness = roughness;
    this.k = Math.max(k, LEAST_K);
    this.viscosity = viscosity;
    this.dViscosity = dViscosity;
  }

  @Override
  void jet(double l, GasState up, double size, FannoPath path, Jet out) {
    if (!(size > 0 && up.p > 0)) {
      out.zero();
      return;
    }
    double t = Math.max(up.t, LEAST_T);
    double mu = viscosity.applyAsDouble(t);
    double lnD = 0.5 * (Math.log(size) + LN_4_PI);
    double d = Math.exp(lnD);
    double lnFlux = Math.log(up.p) - 0.5 * Math.log(Air.R * t);
    path.solve(l, up.gamma, k, length / d, roughness / d, lnFlux + lnD - Math.log(mu));
    double flow = Math.exp(path.y + lnFlux) * size;
    out.choked = path.choked();

    path.differentiate();
    out.value = flow;
    out.dL = flow * path.yL;
    path.along(0, 1, 0);
    out.dLnP = flow * (path.yTheta + 1);
    out.dLdLnP = flow * ((path.yTheta + 1) * path.yL + path.yLTheta);
    path.along(up.dGamma, -0.5 / t - dViscosity.applyAsDouble(t) / mu, 0);
    double byT = path.yTheta - 0.5 / t;
    out.dT = flow * byT;
    out.dLdT = flow * (byT * path.yL + path.yLTheta);
    path.along(0, 0.5, -0.5);
    double bySize = path.yTheta + 1;
    out.dSize = flow * bySize / size;
    out.dLdSize = flow * (bySize * path.yL + path.yLTheta) / size;
  }

  private static void require(double value, String what) {
    if (!(value >= 0 && value < 1e9)) {
      throw new IllegalArgumentException(
          "A duct's " + what + " is 0 or more, not " + value + "; correct it");
    }
  }
}

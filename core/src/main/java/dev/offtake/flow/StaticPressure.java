package dev.offtake.flow;

import dev.offtake.air.GasState;

/**
 * ln(total/static pressure) at a bore from the local flow.
 *
 * <p>The Mach number M solves |ṁ|·√(R·T)/(A·p) = √γ·M·(1 + (γ−1)/2·M²)^(−(γ+1)/(2(γ−1))); then
 * p/p_s = (1 + (γ−1)/2·M²)^(γ/(γ−1)). Above M = 0.95, where the slope runs to infinity, the answer
 * leaves along its tangent in the logarithm of the flow and levels off: exact up to there,
 * continuous with its slope, and near what a choked bore can do however far Newton's method
 * oversteps the choke.
 *
 * <p>Mutable on purpose: one object for each sensed place, overwritten by each evaluation.
 */
public final class StaticPressure {
  /** Mach number up to which the answer is exact. */
  public static final double EXACT_MACH = 0.95;

  private static final double TANGENT = EXACT_MACH * EXACT_MACH / (1 - EXACT_MACH * EXACT_MACH);

  /** Scale in ln of the flow over which the answer levels off. */
  private static final double LEVELS_OFF = 0.01;

  /** Flow function that lies below that of {@link #EXACT_MACH} at every γ. */
  private static final double SURELY_EXACT = 0.6;

  /** ln of the flow over the edge beyond which nothing changes any more. */
  private static final double MOST_OVER = 700;

  private static final double USUAL_LN_MACH = Math.log(0.3);
  private static final double LEAST_LN_MACH = -400;

  /** Where the next search for ln M starts; the answer does not depend on it. */
  private double lnMach = USUAL_LN_MACH;

  /** ln(p_total/p_static), zero or more. */
  public double lnRatio;

  /** Its partial by mass flow, s/kg. */
  public double dMdot;

  /** Its partial by ln of total pressure. */
  public double dLnP;

  /** Its partial by total temperature, 1/K. */
  public double dT;

  /**
   * Evaluates.
   *
   * @param mdot kg/s, either sign
   * @param gas total state
   * @param area of the bore, m², above 0
   */
  public void evaluate(double mdot, GasState gas, double area) {
    double t = Math.max(gas.t, UpstreamLaw.LEAST_T);
    double flux = Math.abs(mdot) / (area * gas.flux);
    if (!(flux > 1e-150)) {
      lnRatio = 0;
      dMdot = 0;
      dLnP = 0;
      dT = 0;
      return;
    }
    if (flux < SURELY_EXACT) {
      exact(flux, mdot, t, gas);
      return;
    }
    double over = Math.log(flux) - Isentropic.lnFlow(EXACT_MACH, gas.gamma);
    if (over <= 0) {
      exact(flux, mdot, t, gas);
    } else {
      beyond(Math.min(over, MOST_OVER), mdot, t, gas);
    }
  }

  /**
   * At constant M the ratio moves with γ; at constant flow M moves with γ too. The two slopes by γ
   * are those of {@link Isentropic}, written out so that one logarithm serves them and the ratio.
   */
  private void exact(double flux, double mdot, double t, GasState gas) {
    double g = gas.gamma;
    // What a wild step left must not be where a later search begins.
    boolean usable = lnMach <= 0 && lnMach > LEAST_LN_MACH;
    double flow = 0.5 * Math.log(flux * flux / g);
    lnMach = Isentropic.lnMach(flow, g, usable ? lnMach : USUAL_LN_MACH);
    double m2 = Math.exp(2 * lnMach);
    double below = g - 1;
    double head = 0.5 * below * m2;
    double lnQ = NearOne.log1p(head);
    double perQ = 0.5 * m2 / (1 + head);
    double curved = lnQ / (below * below);
    lnRatio = g / below * lnQ;
    double dLnFlow = g * m2 / (1 - m2);
    double ratioByGamma = g / below * perQ - curved;
    double flowByGamma = 0.5 / g + curved - Isentropic.exponent(g) * perQ;
    partials(dLnFlow, ratioByGamma - dLnFlow * flowByGamma, mdot, t, gas);
  }

  private void beyond(double over, double mdot, double t, GasState gas) {
    double g = gas.gamma;
    double left = Math.exp(-over / LEVELS_OFF);
    double risen = TANGENT * LEVELS_OFF * (1 - left);
    double slope = g * TANGENT * left;
    lnRatio = Isentropic.lnTotalOverStatic(EXACT_MACH, g) + g * risen;
    double dGamma =
        Isentropic.dLnTotalOverStaticByGamma(EXACT_MACH, g)
            + risen
            - slope * Isentropic.dLnFlowByGamma(EXACT_MACH, g);
    partials(slope, dGamma, mdot, t, gas);
  }

  private void partials(double dLnFlow, double dGamma, double mdot, double t, GasState gas) {
    dMdot = dLnFlow / mdot;
    dLnP = -dLnFlow;
    dT = 0.5 * dLnFlow / t + dGamma * gas.dGamma;
  }
}

package dev.offtake.flow;

/**
 * Zero flow without the square root's infinite slope.
 *
 * <p>Let ε = 1 − p_down/p_up, counted negative in reverse flow, and s = ε/1e-4. For |s| &lt; 1 the
 * law is replaced by the odd cubic a·s + c·s³ that meets the law's value f and slope f′ at s = 1: a
 * = (3f − f′)/2, c = (f′ − f)/2.
 *
 * <p>Where the two ends differ in temperature, so do their slopes a₁ and a₂ at zero. Both sides
 * then leave zero with the harmonic mean 2·a₁·a₂/(a₁ + a₂) and meet their own f and f′ by a Hermite
 * cubic: flow and slope stay continuous, and since the harmonic mean is at most twice the lesser
 * slope (2.5 f of a square root) the cubic is monotone at any ratio of temperatures. Ends alike
 * give the odd cubic again.
 *
 * <p>The enthalpy that the flow carries blends with the weight of end one
 *
 * <p>w(s) = ½ + (3s − s³)/4,
 *
 * <p>whose slope vanishes at s = ±1.
 */
final class NearZero {
  /** Half width of the band in ε. */
  static final double BAND = 1e-4;

  /** L = ln(1 − ε) at the edge of the band. */
  static final double EDGE_L = Math.log1p(-BAND);

  /** |L| from which on no exponential is needed to know that a state lies outside the band. */
  static final double WELL_BEYOND = 2 * BAND;

  /** dL/ds at the edge. */
  private static final double EDGE_DL = -BAND / (1 - BAND);

  private NearZero() {}

  /**
   * Signed ε over the band's half width, from L = ln p₂ − ln p₁ no larger than {@link
   * #WELL_BEYOND}: 1 − e^−|L| by its series, whose next term is below rounding there.
   */
  static double scaled(double l) {
    double a = Math.abs(l);
    return -l * (1 - a / 2 * (1 - a / 3 * (1 - a / 4))) / BAND;
  }

  /** Derivative of {@link #scaled}, negative. */
  static double dScaled(double l) {
    double a = Math.abs(l);
    return -(1 - a * (1 - a / 2 * (1 - a / 3 * (1 - a / 4)))) / BAND;
  }

  /** Sets the share of a flow that is well outside the band. */
  static void oneWay(double l, Flow out) {
    out.share1 = l < 0 ? 1 : 0;
    out.dShareLnP1 = 0;
    out.dShareLnP2 = 0;
  }

  /** Sets the share of end one and its derivatives. */
  static void share(double s, double ds, Flow out) {
    if (Math.abs(s) >= 1) {
      out.share1 = s > 0 ? 1 : 0;
      out.dShareLnP1 = 0;
      out.dShareLnP2 = 0;
      return;
    }
    out.share1 = weight(s);
    out.dShareLnP2 = dWeight(s) * ds;
    out.dShareLnP1 = -out.dShareLnP2;
  }

  /**
   * Sets flow and derivatives inside the band from the two jets at its edge.
   *
   * @param s place in the band, −1..1
   * @param ds ds/d(ln p₂ − ln p₁)
   * @param out holds the jets, receives the flow
   */
  static void blend(double s, double ds, Flow out) {
    Jet one = out.fromOne;
    Jet two = out.fromTwo;
    double a1 = start(one.value, one.dL);
    double a2 = start(two.value, two.dL);
    if (a1 + a2 == 0) { // size 0: the weights are those of any small size
      a1 = start(one.dSize, one.dLdSize);
      a2 = start(two.dSize, two.dLdSize);
    }
    double by1 = a1 + a2 == 0 ? 0.5 : 2 * square(a2 / (a1 + a2));
    double by2 = a1 + a2 == 0 ? 0.5 : 2 * square(a1 / (a1 + a2));
    boolean fromOne = s >= 0;
    Jet up = fromOne ? one : two;
    double u = Math.abs(s);
    double sign = fromOne ? 1 : -1;
    // The harmonic mean is homogeneous: a₀ = a₁·∂a₀/∂a₁ + a₂·∂a₀/∂a₂.
    double a0 = by1 * start(one.value, one.dL) + by2 * start(two.value, two.dL);
    double slope = dHermite(u, a0, up.value, up.dL) * ds;
    double w1 = fromOne ? 1 : 0;
    double w2 = 1 - w1;
    out.mdot = sign * hermite(u, a0, up.value, up.dL);
    out.dLnP1 = sign * part(u, by1, w1, one.dLnP, one.dLdLnP) - slope;
    out.dLnP2 = sign * part(u, by2, w2, two.dLnP, two.dLdLnP) + slope;
    out.dT1 = sign * part(u, by1, w1, one.dT, one.dLdT);
    out.dT2 = sign * part(u, by2, w2, two.dT, two.dLdT);
    out.dSize =
        sign
            * (part(u, by1, w1, one.dSize, one.dLdSize) + part(u, by2, w2, two.dSize, two.dLdSize));
    out.choked = false;
  }

  private static double weight(double s) {
    return 0.5 + 0.25 * s * (3 - s * s);
  }

  private static double dWeight(double s) {
    return 0.75 * (1 - s * s);
  }

  private static double square(double x) {
    return x * x;
  }

  /** Slope at zero of the odd cubic through value f and slope ∂f/∂L at the edge. */
  private static double start(double f, double dL) {
    return 0.5 * (3 * f - dL * EDGE_DL);
  }

  /** One end's part of a derivative: through the common slope at zero and, upstream, the edge. */
  private static double part(double u, double by, double weight, double f, double dL) {
    return hermite(u, by * start(f, dL), weight * f, weight * dL);
  }

  /** From zero with slope a₀ to value f and slope ∂f/∂L at the edge; linear in all three. */
  private static double hermite(double u, double a0, double f, double dL) {
    double end = dL * EDGE_DL;
    return u * (a0 + u * (3 * f - 2 * a0 - end + u * (a0 + end - 2 * f)));
  }

  private static double dHermite(double u, double a0, double f, double dL) {
    double end = dL * EDGE_DL;
    return a0 + u * (2 * (3 * f - 2 * a0 - end) + 3 * u * (a0 + end - 2 * f));
  }
}

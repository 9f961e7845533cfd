package dev.offtake.flow;

/**
 * Nozzle whose diffuser recovers a share η of the throat's dynamic head; size is the effective
 * throat area, m².
 *
 * <p>The throat's static pressure p_t follows from p₂ = p_t + η·(p₁ − p_t); the flow is that of an
 * ideal nozzle to p_t, so it chokes at 1 − r = (1 − η)(1 − r*).
 */
public final class VenturiLaw extends AreaLaw {
  private final double lost;

  /**
   * Makes the law.
   *
   * @param recovery share of the difference between inlet total and throat static pressure that is
   *     recovered, 0..0.95
   * @throws IllegalArgumentException when the recovery is outside this range
   */
  public VenturiLaw(double recovery) {
    if (!(recovery >= 0 && recovery <= 0.95)) {
      throw new IllegalArgumentException(
          "A venturi recovers 0 to 0.95 of its throat's head, not "
              + recovery
              + "; give such a share");
    }
    lost = 1 - recovery;
  }

  @Override
  void psi(double l, double gamma, Jet out) {
    double drop = -NearOne.expm1(l) / lost;
    if (drop >= -NearOne.expm1(NozzleFunction.lnCritical(gamma))) {
      NozzleFunction.evaluate(Double.NEGATIVE_INFINITY, gamma, out);
      return;
    }
    NozzleFunction.evaluate(NearOne.log1p(-drop), gamma, out);
    double stretch = Math.exp(l) / (lost * (1 - drop));
    out.psiL *= stretch;
    out.psiLG *= stretch;
  }
}

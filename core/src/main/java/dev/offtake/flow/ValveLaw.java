package dev.offtake.flow;

/**
 * IEC 60534 gas law on the low-Δp effective area; size is that area, m².
 *
 * <p>ṁ = A·Y·√(2·x·p₁·ρ₁) with x = 1 − r, Y = 1 − x/(3·F_γ·x_T), F_γ = γ/1.40; choked from x =
 * F_γ·x_T on. Source: IEC 60534-2-1 (form from memory), turned from a flow coefficient to an area.
 */
public final class ValveLaw extends AreaLaw {
  private static final double REFERENCE_GAMMA = 1.40;

  private double dChoke;

  /**
   * Makes the law.
   *
   * @param xT pressure ratio factor x_T, above 0 and at most 1
   * @throws IllegalArgumentException when x_T is outside this range
   */
  public ValveLaw(double xT) {
    check(xT);
    dChoke = xT / REFERENCE_GAMMA;
  }

  /**
   * Changes x_T, which may drift or be unknown, from the next evaluation on.
   *
   * @param xT pressure ratio factor x_T, above 0 and at most 1
   * @throws IllegalArgumentException when x_T is outside this range
   */
  public void pressureRatioFactor(double xT) {
    check(xT);
    dChoke = xT / REFERENCE_GAMMA;
  }

  private static void check(double xT) {
    if (!(xT > 0 && xT <= 1)) {
      throw new IllegalArgumentException(
          "x_T lies above 0 and at most at 1, not at " + xT + "; usual are 0.4 to 0.8");
    }
  }

  @Override
  void psi(double l, double gamma, Jet out) {
    double x = -NearOne.expm1(l);
    double choke = gamma * dChoke;
    out.choked = x >= choke;
    out.psiP = 0;
    if (out.choked) {
      double root = Math.sqrt(2 * choke);
      out.psi = root * 2 / 3;
      out.psiL = 0;
      out.psiG = 2 * dChoke / (3 * root);
      out.psiLG = 0;
      return;
    }
    double root = Math.sqrt(2 * x);
    double share = x / choke;
    double r = 1 - x;
    out.psi = root * (1 - share / 3);
    out.psiL = -r * (1 - share) / root;
    out.psiG = root * share / (3 * gamma);
    out.psiLG = -r * share / (gamma * root);
  }
}

package dev.offtake.flow;

/**
 * Darcy friction factors (four times Fanning's) of round pipes by Reynolds number Re &gt; 0 and
 * relative roughness e = roughness/diameter, 0 to 0.05.
 *
 * <p>The duct law uses {@link #churchill}, which is smooth over all Reynolds numbers; the others
 * are turbulent correlations for comparison.
 */
public final class FrictionFactor {
  private FrictionFactor() {}

  /** Churchill 1977, laminar to rough turbulent. */
  public static double churchill(double re, double e) {
    return Math.exp(evaluated(re, e).lnF);
  }

  /** Derivative of {@link #churchill} by Re. */
  public static double churchillByRe(double re, double e) {
    Churchill c = evaluated(re, e);
    return Math.exp(c.lnF) * c.dLnRe / re;
  }

  /** Haaland 1983: 1/√f = −1.8·log₁₀[(e/3.7)^1.11 + 6.9/Re]. */
  public static double haaland(double re, double e) {
    double root = -1.8 * Math.log10(Math.pow(e / 3.7, 1.11) + 6.9 / re);
    return 1 / (root * root);
  }

  /** Swamee and Jain 1976: f = 0.25/[log₁₀(e/3.7 + 5.74/Re^0.9)]². */
  public static double swameeJain(double re, double e) {
    double root = Math.log10(e / 3.7 + 5.74 / Math.pow(re, 0.9));
    return 0.25 / (root * root);
  }

  /** Colebrook 1939, solved to machine precision: 1/√f = −2·log₁₀(e/3.7 + 2.51/(Re·√f)). */
  public static double colebrook(double re, double e) {
    double root = 1 / Math.sqrt(haaland(re, e));
    for (int i = 0; i < 20; i++) {
      double inner = e / 3.7 + 2.51 * root / re;
      double miss = root + 2 * Math.log10(inner);
      double step = miss / (1 + 2 * 2.51 / (re * inner * Math.log(10)));
      root -= step;
      if (Math.abs(step) < 1e-15 * root) {
        break;
      }
    }
    return 1 / (root * root);
  }

  private static Churchill evaluated(double re, double e) {
    Churchill c = new Churchill();
    c.evaluate(Math.log(re), e);
    return c;
  }
}

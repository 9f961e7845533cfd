package dev.offtake.flow;

/**
 * The flow function of an ideal nozzle, ψ = √(2γ/(γ−1)·(r^(2/γ) − r^((γ+1)/γ))), constant below r*
 * = (2/(γ+1))^(γ/(γ−1)); any textbook of gas dynamics, for example NACA Report 1135.
 */
final class NozzleFunction {
  /** ln of the critical ratio lies between these two for every γ from 1 to 2. */
  private static final double LEAST_CRITICAL = -0.8;

  private static final double MOST_CRITICAL = -0.5;

  private NozzleFunction() {}

  /** ln of the critical pressure ratio. */
  static double lnCritical(double gamma) {
    return gamma / (gamma - 1) * Math.log(2 / (gamma + 1));
  }

  /**
   * Sets ψ and its derivatives.
   *
   * @param l ln r, negative
   * @param gamma ratio of heat capacities
   * @param out receives psi, psiL, psiG, psiLG, choked
   */
  static void evaluate(double l, double gamma, Jet out) {
    out.choked = l <= LEAST_CRITICAL || (l < MOST_CRITICAL && l <= lnCritical(gamma));
    out.psiP = 0;
    if (out.choked) {
      choked(gamma, out);
    } else {
      subcritical(l, gamma, out);
    }
  }

  private static void choked(double gamma, Jet out) {
    double below = gamma - 1;
    double ln = Math.log(2 / (gamma + 1));
    out.psi = Math.sqrt(gamma) * Math.exp((gamma + 1) / (2 * below) * ln);
    out.psiG = out.psi * (0.5 / gamma - ln / (below * below) - 0.5 / below);
    out.psiL = 0;
    out.psiLG = 0;
  }

  /** With k = (γ−1)/γ and E = 1 − r^k: ln ψ = ½ ln(2/k) + L/γ + ½ ln E. */
  private static void subcritical(double l, double gamma, Jet out) {
    double k = (gamma - 1) / gamma;
    double dk = 1 / (gamma * gamma);
    double e = -NearOne.expm1(k * l);
    double q = (1 - e) / e;
    double lnL = 1 / gamma - 0.5 * k * q;
    double lnG = -0.5 * dk / k - l * dk * (1 + 0.5 * q);
    double lnLG = -dk - 0.5 * dk * q * (1 + k * (1 + q) * l);
    out.psi = Math.exp(l / gamma) * Math.sqrt(2 / k * e);
    out.psiL = out.psi * lnL;
    out.psiG = out.psi * lnG;
    out.psiLG = out.psi * (lnL * lnG + lnLG);
  }
}

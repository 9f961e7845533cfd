package dev.offtake.flow;

/**
 * Darcy friction factor of S. W. Churchill, Friction-factor equation spans all fluid-flow regimes,
 * Chemical Engineering 84 (1977), with the derivatives that the duct law needs.
 *
 * <p>f = 8·[(8/Re)¹² + (A + B)^(−3/2)]^(1/12), A = {2.457·ln[1/((7/Re)^0.9 + 0.27·e)]}¹⁶, B =
 * (37530/Re)¹⁶, e = roughness/diameter. Worked in logarithms, since the powers overflow otherwise.
 *
 * <p>Mutable scratch.
 */
final class Churchill {
  private static final double LN7 = Math.log(7);
  private static final double LN8 = Math.log(8);
  private static final double LN_B = Math.log(37530);

  /** ln f. */
  double lnF;

  /** ∂ ln f/∂ ln Re. */
  double dLnRe;

  /** ∂ ln f/∂e. */
  double dRough;

  /** ∂² ln f/∂(ln Re)². */
  double dLnRe2;

  /** ∂² ln f/∂ ln Re ∂e. */
  double dLnReRough;

  private double lnA;
  private double lnADr;
  private double lnADe;
  private double lnADrr;
  private double lnADre;

  /**
   * Evaluates.
   *
   * @param lnRe ln of the Reynolds number
   * @param e relative roughness, 0 or more
   */
  void evaluate(double lnRe, double e) {
    turbulent(lnRe, e);
    double lnB = 16 * (LN_B - lnRe);
    double lnS = lnSum(lnA, lnB);
    double a = Math.exp(lnA - lnS);
    double bend = a * (1 - a) * (lnADr + 16);
    double sR = a * lnADr - 16 * (1 - a);
    double sE = a * lnADe;
    double sRr = a * lnADrr + bend * (lnADr + 16);
    double sRe = a * lnADre + bend * lnADe;

    double lnLaminar = 12 * (LN8 - lnRe);
    double lnTotal = lnSum(lnLaminar, -1.5 * lnS);
    double v = Math.exp(-1.5 * lnS - lnTotal);
    double turn = v * (1 - v) * (12 - 1.5 * sR);
    lnF = LN8 + lnTotal / 12;
    dLnRe = (-12 * (1 - v) - 1.5 * v * sR) / 12;
    dRough = -1.5 * v * sE / 12;
    dLnRe2 = (-1.5 * v * sRr + turn * (12 - 1.5 * sR)) / 12;
    dLnReRough = (-1.5 * v * sRe - 1.5 * turn * sE) / 12;
  }

  /** ln A with derivatives by ln Re (r) and e; A vanishes where its logarithm's argument is 1. */
  private void turbulent(double lnRe, double e) {
    double tau = Math.exp(0.9 * (LN7 - lnRe));
    double theta = tau + 0.27 * e;
    double l = -Math.log(theta);
    if (!(Math.abs(l) > 1e-8 && Math.abs(l) < 1e8)) {
      lnA = Double.NEGATIVE_INFINITY;
      lnADr = 0;
      lnADe = 0;
      lnADrr = 0;
      lnADre = 0;
      return;
    }
    double share = tau / theta;
    double lR = 0.9 * share;
    double lE = -0.27 / theta;
    double lRr = -0.81 * share * (1 - share);
    double lRe = 0.9 * share * lE;
    lnA = 16 * Math.log(2.457 * Math.abs(l));
    lnADr = 16 * lR / l;
    lnADe = 16 * lE / l;
    lnADrr = 16 * (lRr - lR * lR / l) / l;
    lnADre = 16 * (lRe - lR * lE / l) / l;
  }

  private static double lnSum(double a, double b) {
    double high = Math.max(a, b);
    return high + Math.log1p(Math.exp(Math.min(a, b) - high));
  }
}

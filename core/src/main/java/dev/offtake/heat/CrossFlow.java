package dev.offtake.heat;

import java.util.stream.IntStream;

/**
 * Cross-flow heat exchanger, both streams unmixed: heat flow for each kelvin between the inlets.
 *
 * <p>The exact series (Nusselt; Mason 1955) with P the regularised lower incomplete gamma function,
 * a = UA/C₁ and b = UA/C₂ is
 *
 * <pre>G = C₁·C₂/UA · Σ_{m≥1} P(m, a)·P(m, b)</pre>
 *
 * <p>P(m, x) is the chance that a Poisson number of mean x reaches m. The sum is thus the mean of
 * the smaller of two independent Poisson numbers A (mean a) and B (mean b), from which
 *
 * <pre>
 * ∂G/∂C₁ = Pr(A ≥ B + 2)    ∂G/∂C₂ = Pr(B ≥ A + 2)
 * ∂G/∂UA = Σ_k Pr(A = k)·Pr(B = k)/(k + 1)
 * G = C₁·∂G/∂C₁ + C₂·∂G/∂C₂ + UA·∂G/∂UA    (G is homogeneous of degree one)
 * </pre>
 *
 * <p>All terms are positive, so nothing cancels; there is no kink where C₁ = C₂; only the terms
 * that are not zero to rounding are summed, some thirty times √NTU of them. The Bessel form of the
 * same law overflows from NTU of a few hundred.
 *
 * <p>Mutable result object: make one, evaluate often; {@link #evaluate} does not allocate.
 */
public final class CrossFlow {
  /**
   * Number of transfer units beyond which more area is ignored; less than 1e-3 of the heat is
   * missed there.
   */
  private static final double MAX_NTU = 1e6;

  /**
   * Number of transfer units below which it makes no difference: keeps the unscaled chances of
   * {@link #sum} from overflowing.
   */
  private static final double MIN_NTU = 1e-30;

  /** Standard deviations of a Poisson number kept; what lies beyond is less than rounding. */
  private static final double WIDTH = 9;

  /** Whole numbers kept besides, for the skewness of small means. */
  private static final double MARGIN = 10;

  /**
   * Largest mean whose chances are taken as they are, from 0 up, where nothing above the smaller
   * mean's top can count: exp(−700) is still a number, and what lies above that top is the rest of
   * 1, about half of it or more.
   */
  private static final double MOST_DIRECT = 700;

  /** 1/(k + 1). */
  private static final double[] INVERSE =
      IntStream.range(0, 64).mapToDouble(k -> 1.0 / (k + 1)).toArray();

  /** Heat flow over the difference of the inlet temperatures, W/K. */
  public double conductance;

  /** Derivative of {@link #conductance} by the heat capacity rate of side 1. */
  public double dC1;

  /** Derivative of {@link #conductance} by the heat capacity rate of side 2. */
  public double dC2;

  /** Derivative of {@link #conductance} by UA. */
  public double dUa;

  // Sums of the last call of sum(): the side of more transfer units, of fewer, both.
  private double more;
  private double fewer;
  private double both;

  // Sum of the last call of chance().
  private double reached;

  /**
   * Evaluates the law and its derivatives.
   *
   * @param c1 heat capacity rate of side 1, W/K, not negative
   * @param c2 heat capacity rate of side 2, W/K, not negative
   * @param ua overall conductance of the surface, W/K, not negative
   */
  public void evaluate(double c1, double c2, double ua) {
    double larger = Math.max(c1, c2);
    if (larger <= 0) {
      conductance = 0;
      setDerivatives(0, 0, 0);
      return;
    }
    double limit = MAX_NTU * larger;
    double effective = Math.min(ua, limit);
    if (c1 <= c2) {
      sum(units(effective, c1), units(effective, c2));
      setDerivatives(more, fewer, both);
    } else {
      sum(units(effective, c2), units(effective, c1));
      setDerivatives(fewer, more, both);
    }
    conductance = c1 * dC1 + c2 * dC2 + effective * dUa;
    if (ua > limit) {
      followLimit(c1 <= c2);
    }
  }

  private static double units(double ua, double rate) {
    return Math.max(ua / rate, MIN_NTU);
  }

  /** Beyond the limit UA stands for a multiple of the larger heat capacity rate. */
  private void followLimit(boolean secondIsLarger) {
    if (secondIsLarger) {
      dC2 += MAX_NTU * dUa;
    } else {
      dC1 += MAX_NTU * dUa;
    }
    dUa = 0;
  }

  private void setDerivatives(double byC1, double byC2, double byUa) {
    dC1 = byC1;
    dC2 = byC2;
    dUa = byUa;
  }

  /**
   * Sums the three probabilities downwards over k, tails first. Chances start unscaled, as 1 at the
   * top, and are scaled by their totals at the end: no factorial, no overflow, no rounding of a
   * start value.
   *
   * @param a larger mean; infinite where a side stands still
   * @param b smaller mean
   */
  private void sum(double a, double b) {
    more = 0;
    fewer = 0;
    both = 0;
    int topB = top(b);
    if (!(bottom(a) <= topB)) {
      more = 1;
      return;
    }
    int end = (int) Math.max(0, bottom(b));
    double massA = 1; // Pr(A = k)
    double massB = 0;
    double aboveA = 0; // Pr(A = k + 1)
    double aboveB = 0;
    double reachA = 0; // Pr(A ≥ k + 2)
    double reachB = 0;
    int topA = Math.max(top(a), topB);
    if (topB + 2 <= a && a <= MOST_DIRECT) {
      topA = topB;
      massA = chance(topB, a);
      aboveA = massA * a / (topB + 1);
      reachA = 1 - reached - aboveA;
    }
    double perA = 1 / a;
    double perB = 1 / b;
    for (int k = topA; k >= end; k--) {
      if (k == topB) {
        massB = 1;
      }
      more += massB * reachA;
      fewer += massA * reachB;
      both += massA * massB * (k < INVERSE.length ? INVERSE[k] : 1.0 / (k + 1));
      reachA += aboveA;
      reachB += aboveB;
      aboveA = massA;
      aboveB = massB;
      massA *= k * perA;
      massB *= k * perB;
    }
    double total = (reachA + aboveA) * (reachB + aboveB);
    more /= total;
    fewer /= total;
    both /= total;
  }

  /** Pr(A = k) for a mean a, and in {@link #reached} Pr(A ≤ k). */
  private double chance(int k, double a) {
    double mass = Math.exp(-a);
    reached = mass;
    for (int i = 0; i < k; i++) {
      mass *= a * (i < INVERSE.length ? INVERSE[i] : 1.0 / (i + 1));
      reached += mass;
    }
    return mass;
  }

  /** Whole number above which the chance is nil to rounding, relative to what is below. */
  private static int top(double mean) {
    if (mean < 1e-8) {
      return 3;
    }
    if (mean < 1e-2) {
      return 8;
    }
    return (int) Math.ceil(mean + WIDTH * Math.sqrt(mean) + MARGIN);
  }

  /** Number below which the chance is nil to rounding; negative where there is none. */
  private static double bottom(double mean) {
    return Math.floor(mean - WIDTH * Math.sqrt(mean) - MARGIN);
  }
}

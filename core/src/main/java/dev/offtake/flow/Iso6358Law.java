package dev.offtake.flow;

import dev.offtake.air.GasState;

/**
 * ISO 6358; size is the sonic conductance C, m³/(s Pa).
 *
 * <p>ṁ = C·ρ₀·p₁·√(T₀/T₁)·{1 − [(r − b)/(1 − Δ − b)]²}^m with Δ = Δp_c/p₁, choked at r ≤ b, zero
 * where p₁ − p₂ ≤ Δp_c; T₀ = 293.15 K, ρ₀ = 1.185 kg/m³. Source: ISO 6358:1989 and ISO 6358-1:2013
 * (formula from memory).
 *
 * <p>Two things go beyond the standard, both to keep the slope continuous. Behind a cracking
 * pressure the first 1e-4 of ratio rises from zero slope by a cubic. And where the cracking
 * pressure takes nearly all of 1 − b (very low p₁), the span 1 − Δ − b is kept from vanishing: it
 * is exact above {@value #LEAST_SPAN} and bends to half of that.
 */
public final class Iso6358Law extends UpstreamLaw {
  /** Density of the reference atmosphere ANR, kg/m³. */
  public static final double DENSITY = 1.185;

  /** Temperature of the reference atmosphere, K. */
  public static final double TEMPERATURE = 293.15;

  private static final double LEAST_SPAN = 0.1;

  private final double b;
  private final double m;
  private final double cracking;

  /**
   * Makes the law.
   *
   * @param b critical back-pressure ratio, 0 up to 0.9
   * @param m subsonic index, 0.3 to 1; 0.5 in the edition of 1989
   * @param cracking cracking pressure Δpc, Pa, 0 or more
   * @throws IllegalArgumentException when one of them is outside its range
   */
  public Iso6358Law(double b, double m, double cracking) {
    require(b >= 0 && b <= 0.9, "critical ratio b", b, "0 to 0.9");
    require(m >= 0.3 && m <= 1, "subsonic index m", m, "0.3 to 1; use 0.5 when not known");
    require(cracking >= 0 && cracking < 1e9, "cracking pressure, Pa,", cracking, "0 or more");
    this.b = b;
    this.m = m;
    this.cracking = cracking;
  }

  @Override
  boolean startsFlat() {
    return cracking > 0;
  }

  @Override
  void jet(double l, GasState up, double size, FannoPath path, Jet out) {
    double t = Math.max(up.t, LEAST_T);
    double delta = cracking == 0 ? 0 : cracking / up.p;
    shape(-NearOne.expm1(l), delta, Math.exp(l), out);
    out.psiG = 0;
    out.psiLG = 0;
    out.fromPsi(size, DENSITY * up.p * Math.sqrt(TEMPERATURE / t), t, up.dGamma);
  }

  /** Sets ψ of ε, with e = ε − Δ the drop beyond cracking. */
  private void shape(double eps, double delta, double r, Jet out) {
    double free = 1 - b - delta;
    double d = span(free);
    double e = eps - delta;
    out.choked = e >= d;
    out.psiL = 0;
    out.psiP = 0;
    if (out.choked || e <= 0) {
      out.psi = out.choked ? 1 : 0;
      return;
    }
    double byE;
    double byD;
    if (cracking > 0 && e < NearZero.BAND) {
      double s = e / NearZero.BAND;
      double u = NearZero.BAND / d;
      double edge = power(u);
      double n = index(u);
      double cube = s * s * (3 - n + (n - 2) * s);
      out.psi = edge * cube;
      byE = edge * s * (2 * (3 - n) + 3 * (n - 2) * s) / NearZero.BAND;
      byD = -(edge * n * cube + edge * dIndex(u) * s * s * (s - 1)) / d;
    } else {
      double u = e / d;
      out.psi = power(u);
      double slope = out.psi * index(u);
      byE = slope / e;
      byD = -slope / d;
    }
    out.psiL = -r * byE;
    out.psiP = delta * (byE + byD * dSpan(free));
  }

  /** {u·(2 − u)}^m, the standard's braces with u = e/d. */
  private double power(double u) {
    return Math.pow(u * (2 - u), m);
  }

  /** d ln power/d ln u. */
  private double index(double u) {
    return 2 * m * (1 - u) / (2 - u);
  }

  /** d index/d ln u. */
  private double dIndex(double u) {
    return -2 * m * u / ((2 - u) * (2 - u));
  }

  private static double span(double free) {
    double half = 0.5 * LEAST_SPAN;
    if (free >= LEAST_SPAN) {
      return free;
    }
    return free <= 0 ? half : half + free * free / (4 * half);
  }

  private static double dSpan(double free) {
    return Math.min(Math.max(free / LEAST_SPAN, 0), 1);
  }

  private static void require(boolean holds, String what, double value, String range) {
    if (!holds) {
      throw new IllegalArgumentException(
          "ISO 6358: the " + what + " is " + value + "; give " + range);
    }
  }
}

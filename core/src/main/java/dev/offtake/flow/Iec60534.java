package dev.offtake.flow;

/**
 * Sizing of control valves for gases by IEC 60534-2-1 (constants of table 1 for Kv, bar and mm;
 * from memory).
 *
 * <p>W = N₆·F_P·C·Y·√(x·p₁·ρ₁), x = (p₁ − p₂)/p₁, Y = 1 − x/(3·F_γ·x_T) ≥ 2/3, choked from x =
 * F_γ·x_T on; with fittings x_TP takes the place of x_T. The standard prints its constants to three
 * digits, so answers carry 0.2 % of rounding against exact physics.
 */
public final class Iec60534 {
  private static final double N2 = 1.60e-3;
  private static final double N5 = 1.80e-3;
  private static final double N6 = 31.6;
  private static final double N9 = 2460;

  private Iec60534() {}

  /** F_γ = γ/1.40. */
  public static double specificHeatFactor(double gamma) {
    return gamma / 1.40;
  }

  /** Expansion factor Y, not below 2/3. */
  public static double expansion(double x, double gamma, double xT) {
    double choke = specificHeatFactor(gamma) * xT;
    return 1 - Math.min(x, choke) / (3 * choke);
  }

  /**
   * Mass flow, kg/h.
   *
   * @param fpC F_P·Kv, m³/h
   * @param p1 upstream pressure, bar absolute
   * @param x pressure drop ratio
   * @param rho1 upstream density, kg/m³
   * @param gamma ratio of heat capacities
   * @param xT x_T, or x_TP with fittings
   */
  public static double massFlow(
      double fpC, double p1, double x, double rho1, double gamma, double xT) {
    double sized = Math.min(x, specificHeatFactor(gamma) * xT);
    return N6 * fpC * expansion(x, gamma, xT) * Math.sqrt(sized * p1 * rho1);
  }

  /**
   * F_P·Kv that passes a flow of normal volume.
   *
   * @param q flow, m³/h at 0 °C and 1013.25 mbar
   * @param p1 upstream pressure, bar absolute
   * @param x pressure drop ratio
   * @param gas molar mass M, T₁ and Z₁ of the gas
   * @param xT x_T, or x_TP with fittings
   */
  public static double coefficient(double q, double p1, double x, Gas gas, double xT) {
    double sized = Math.min(x, specificHeatFactor(gas.gamma) * xT);
    return q
        / (N9 * p1 * expansion(x, gas.gamma, xT))
        * Math.sqrt(gas.molarMass * gas.temperature * gas.compressibility / sized);
  }

  /**
   * Kv of a valve between reducers that passes a flow of normal volume, with F_P and x_TP of that
   * same Kv (solved, not stopped after a pass or two).
   */
  public static double coefficient(
      double q, double p1, double x, Gas gas, double xT, Fittings fittings) {
    double c = coefficient(q, p1, x, gas, xT);
    for (int i = 0; i < 200; i++) {
      double xTp = fittings.chokeFactor(c, xT);
      double next = coefficient(q, p1, x, gas, xTp) / fittings.geometryFactor(c);
      if (Math.abs(next - c) < 1e-13 * c) {
        return next;
      }
      c = next;
    }
    throw new IllegalArgumentException(
        "No valve of bore " + fittings.d + " mm passes this flow; take a larger bore");
  }

  /**
   * A gas for {@link #coefficient}.
   *
   * @param molarMass kg/kmol
   * @param temperature K
   * @param compressibility Z
   * @param gamma ratio of heat capacities
   */
  public record Gas(double molarMass, double temperature, double compressibility, double gamma) {}

  /**
   * Reducers that touch the valve.
   *
   * @param d bore of the valve, mm
   * @param d1 bore of the pipe before it, mm
   * @param d2 bore of the pipe behind it, mm
   */
  public record Fittings(double d, double d1, double d2) {
    /** Σζ = ζ₁ + ζ₂ + ζ_B1 − ζ_B2. */
    public double lossSum() {
      return inletLoss() + square(1 - square(d / d2)) - bernoulli(d2);
    }

    /** ζᵢ = ζ₁ + ζ_B1. */
    public double inletSum() {
      return inletLoss();
    }

    /** F_P at a flow coefficient C. */
    public double geometryFactor(double c) {
      return 1 / Math.sqrt(1 + lossSum() / N2 * square(c / (d * d)));
    }

    /** x_TP at a flow coefficient C. */
    public double chokeFactor(double c, double xT) {
      double fp = geometryFactor(c);
      return xT / (fp * fp) / (1 + xT * inletSum() / N5 * square(c / (d * d)));
    }

    private double inletLoss() {
      return 0.5 * square(1 - square(d / d1)) + bernoulli(d1);
    }

    private double bernoulli(double pipe) {
      return 1 - square(square(d / pipe));
    }

    private static double square(double v) {
      return v * v;
    }
  }
}

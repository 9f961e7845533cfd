package dev.offtake.air;

/**
 * Dry air as an ideal gas with temperature-dependent heat.
 *
 * <p>Heat: the mixture "Air" of McBride, Zehe and Gordon, NASA/TP-2002-211556 (2002). Enthalpy and
 * entropy keep the report's zero, elements at 298.15 K. Between 200 and 2000 K the numbers hold;
 * outside, heat capacity goes on along its tangent so that iterations stay finite, and {@link
 * #inRange} says so. Entropy and the transport properties need a temperature above 0 K.
 *
 * <p>Transport: see {@link DiluteTransport}.
 */
public final class Air {
  /** Molar mass, kg/mol (NASA/TP-2002-211556, "Air"). */
  public static final double MOLAR_MASS = 28.9651159e-3;

  /** Specific gas constant, J/(kg K); molar constant of the SI of 2019. */
  public static final double R = 8.31446261815324 / MOLAR_MASS;

  /** Lowest temperature at which the properties hold, K. */
  public static final double COLDEST = 200;

  /** Highest temperature at which the properties hold, K. */
  public static final double HOTTEST = 2000;

  /** Where the two ranges of the report meet, K. */
  private static final double MIDDLE = 1000;

  private static final HeatLaw COOL =
      new GlennPolynomial(
          1.009950160e+04,
          -1.968275610e+02,
          5.009155110e+00,
          -5.761013730e-03,
          1.066859930e-05,
          -7.940297970e-09,
          2.185231910e-12,
          -1.767967310e+02,
          -3.921504225e+00);

  private static final HeatLaw HOT =
      new GlennPolynomial(
              2.415214430e+05,
              -1.257874600e+03,
              5.144558670e+00,
              -2.138541790e-04,
              7.065227840e-08,
              -1.071483490e-11,
              6.577800150e-16,
              6.462263190e+03,
              -8.147411905e+00)
          .meeting(COOL, MIDDLE);

  private static final HeatLaw BELOW = LinearHeat.continuing(COOL, COLDEST);
  private static final HeatLaw ABOVE = LinearHeat.continuing(HOT, HOTTEST);

  private static final int MAX_STEPS = 50;

  private Air() {}

  /** The law in force at a temperature, K. */
  static HeatLaw law(double t) {
    if (t <= MIDDLE) {
      return t >= COLDEST ? COOL : BELOW;
    }
    return t <= HOTTEST ? HOT : ABOVE;
  }

  /** Whether the properties hold at a temperature, K; false for NaN. */
  public static boolean inRange(double t) {
    return t >= COLDEST && t <= HOTTEST;
  }

  /** Isobaric heat capacity at a temperature in K, J/(kg K). */
  public static double cp(double t) {
    return law(t).cp(t);
  }

  /** Derivative of {@link #cp}, J/(kg K²). */
  public static double dCp(double t) {
    return law(t).dCp(t);
  }

  /** Specific enthalpy at a temperature in K, J/kg; −4334 J/kg at 298.15 K. */
  public static double h(double t) {
    return law(t).h(t);
  }

  /** Specific entropy at 1 bar and a temperature in K above 0, J/(kg K). */
  public static double s0(double t) {
    return law(t).s0(t);
  }

  /** Ratio of heat capacities at a temperature in K. */
  public static double gamma(double t) {
    double cp = cp(t);
    return cp / (cp - R);
  }

  /** Derivative of {@link #gamma}, 1/K. */
  public static double dGamma(double t) {
    HeatLaw law = law(t);
    double cv = law.cp(t) - R;
    return -R * law.dCp(t) / (cv * cv);
  }

  /**
   * Temperature at which the enthalpy has a value, by Newton's method to rounding.
   *
   * @param h specific enthalpy, J/kg
   * @return temperature, K; NaN for NaN
   */
  public static double temperature(double h) {
    // cp varies by a quarter over the whole range, so the first guess is close and Newton is safe.
    double t = 300 + (h - h(300)) / 1050;
    for (int i = 0; i < MAX_STEPS; i++) {
      HeatLaw law = law(t);
      double step = (h - law.h(t)) / law.cp(t);
      t += step;
      if (!(Math.abs(step) > 1e-13 * Math.abs(t))) {
        break;
      }
    }
    return t;
  }

  /** Dynamic viscosity at a temperature in K above 0, Pa s. */
  public static double viscosity(double t) {
    return DiluteTransport.viscosity(t);
  }

  /** Derivative of {@link #viscosity}, Pa s/K. */
  public static double dViscosity(double t) {
    return DiluteTransport.dViscosity(t);
  }

  /** Thermal conductivity at a temperature in K above 0, W/(m K). */
  public static double conductivity(double t) {
    return DiluteTransport.conductivity(t);
  }
}

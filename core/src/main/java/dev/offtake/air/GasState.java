package dev.offtake.air;

/**
 * Air at one point of a network: total pressure and temperature and what follows from them.
 *
 * <p>Mutable on purpose: one object for each point is refreshed once per evaluation, so that the
 * laws of all parts that meet at the point share one evaluation of the polynomials and nothing is
 * allocated in the inner loop.
 */
public final class GasState {
  /** Pressure to which {@link #lnP} refers, Pa. */
  public static final double REFERENCE_PRESSURE = 1e5;

  /** Least temperature that {@link #flux} is computed with, K: a wild step stays finite. */
  public static final double LEAST_T = 1;

  /** Natural logarithm of the total pressure over 1 bar (100 000 Pa). */
  public double lnP;

  /** Total pressure, Pa absolute. */
  public double p;

  /** Total temperature, K. */
  public double t;

  /** Specific enthalpy, J/kg. */
  public double h;

  /** Isobaric heat capacity, J/(kg K); also the derivative of {@link #h}. */
  public double cp;

  /** Derivative of {@link #cp} by temperature, J/(kg K²). */
  public double dcp;

  /** Ratio of heat capacities. */
  public double gamma;

  /** Derivative of {@link #gamma} by temperature, 1/K. */
  public double dGamma;

  /** Mass flow through 1 m² at a flow function of 1, p/√(R T), kg/(m² s). */
  public double flux;

  /**
   * Sets the state and everything that follows from it.
   *
   * @param newLnP ln(p/1 bar)
   * @param newT temperature, K; outside 200 to 2000 K see {@link Air}
   */
  public void set(double newLnP, double newT) {
    lnP = newLnP;
    p = REFERENCE_PRESSURE * Math.exp(newLnP);
    t = newT;
    Air.law(newT).fill(this, newT);
    flux = p / Math.sqrt(Air.R * Math.max(newT, LEAST_T));
    double cv = cp - Air.R;
    gamma = cp / cv;
    dGamma = -Air.R * dcp / (cv * cv);
  }
}

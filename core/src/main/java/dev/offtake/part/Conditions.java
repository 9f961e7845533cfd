package dev.offtake.part;

/**
 * How hard the engine works and the air that it breathes, in SI units.
 *
 * @param ambientP static pressure of the air outside, Pa absolute
 * @param ambientT static temperature of the air outside, K
 * @param inletP total pressure at the engine inlet, Pa absolute
 * @param inletT total temperature at the engine inlet, K
 * @param core core speed as a fraction of 100 %
 * @param fan fan speed as a fraction of 100 %
 * @param corrected whether the speeds are already corrected to a 288.15 K inlet
 */
public record Conditions(
    double ambientP,
    double ambientT,
    double inletP,
    double inletT,
    double core,
    double fan,
    boolean corrected) {

  /** Reference temperature of corrected speed, K (U.S. Standard Atmosphere 1976, sea level). */
  public static final double REFERENCE_T = 288.15;

  /** Standard day at sea level, engine at rest in still air. */
  public static Conditions standardDay(double core, double fan) {
    return new Conditions(101325, REFERENCE_T, 101325, REFERENCE_T, core, fan, false);
  }

  /** Core speed corrected to the reference temperature, N/√θ, as a fraction. */
  public double coreCorrected() {
    return corrected ? core : core / Math.sqrt(inletT / REFERENCE_T);
  }

  /** Fan speed corrected to the reference temperature, N/√θ, as a fraction. */
  public double fanCorrected() {
    return corrected ? fan : fan / Math.sqrt(inletT / REFERENCE_T);
  }

  /** The same conditions with other speeds. */
  public Conditions withSpeeds(double newCore, double newFan) {
    return new Conditions(ambientP, ambientT, inletP, inletT, newCore, newFan, corrected);
  }

  /**
   * Conditions on the straight way to others.
   *
   * @param other where the way leads; it also says whether speeds are corrected
   * @param share of the way, 0 here and 1 there; may lie outside
   */
  public Conditions toward(Conditions other, double share) {
    return new Conditions(
        mix(ambientP, other.ambientP, share),
        mix(ambientT, other.ambientT, share),
        mix(inletP, other.inletP, share),
        mix(inletT, other.inletT, share),
        mix(core, other.core, share),
        mix(fan, other.fan, share),
        other.corrected);
  }

  /** Exactly {@code a} where both are equal. */
  private static double mix(double a, double b, double share) {
    return a + share * (b - a);
  }
}

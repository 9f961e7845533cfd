package dev.offtake.heat;

import dev.offtake.air.GasState;

/**
 * Air-to-air cross-flow exchanger whose surface conductances grow with a power of the flows.
 *
 * <p>hA of each side goes with ṁⁿ from the rated point (n of 0.6 for plate-fin cores is common
 * practice, no source). Fouling by a share f adds a resistance f/((1 − f)·UA_rated). Heat capacity
 * rates are flow times one mean heat capacity between the two inlet temperatures, outlets follow
 * by enthalpy: what one side gives the other takes, and neither leaves the span of the inlets.
 *
 * <p>Flows below a millionth of the rated ones fade out smoothly: with m̃ = √(m² + m₀²) in place of
 * m, each outlet is drawn towards the other inlet only in the measure m/m̃ in which there is another
 * flow. With one side still, the other passes unchanged; both still, both pass unchanged.
 *
 * @param ua overall conductance at the rated point, W/K, above 0
 * @param mHot hot side's flow at the rated point, kg/s, above 0
 * @param mCold cold side's flow at the rated point, kg/s, above 0
 * @param exponent n, from 0 up to but not 1
 * @param hotShare share of the rated resistance that lies on the hot side, between 0 and 1
 */
public record Exchanger(double ua, double mHot, double mCold, double exponent, double hotShare) {
  /** Exponent when nothing is said (common practice, no source). */
  public static final double USUAL_EXPONENT = 0.6;

  /** Share of the rated resistance on the hot side when nothing is said. */
  public static final double EQUAL_SIDES = 0.5;

  /** Flow, relative to the rated one, at which a side fades out. */
  private static final double FADE = 1e-6;

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if one is out of its range
   */
  public Exchanger {
    Requirement.above(0, ua, "rated conductance of an exchanger, W/K,");
    Requirement.above(0, mHot, "rated flow of the hot side, kg/s,");
    Requirement.above(0, mCold, "rated flow of the cold side, kg/s,");
    Requirement.within(0, 0.999, exponent, "flow exponent of an exchanger");
    Requirement.within(0.001, 0.999, hotShare, "hot side's share of the rated resistance");
  }

  /** An exchanger with equal sides at the rated point and the usual exponent. */
  public static Exchanger rated(double ua, double mHot, double mCold) {
    return new Exchanger(ua, mHot, mCold, USUAL_EXPONENT, EQUAL_SIDES);
  }

  /**
   * Evaluates heat and outlets with their derivatives; allocates nothing.
   *
   * @param hot flow of the hot side, kg/s, a magnitude
   * @param hotIn air that enters the hot side
   * @param cold flow of the cold side, kg/s, a magnitude
   * @param coldIn air that enters the cold side
   * @param out where {@link Exchange#fouling} is read and the outcome is put
   */
  public void evaluate(
      double hot, GasState hotIn, double cold, GasState coldIn, Exchange out) {
    double softHot = Math.hypot(hot, FADE * mHot);
    double softCold = Math.hypot(cold, FADE * mCold);
    out.heat.evaluate(hotIn, coldIn);
    double cp = out.heat.cp;
    double resistanceHot = hotShare / ua * Math.pow(softHot / mHot, -exponent);
    double resistanceCold = (1 - hotShare) / ua * Math.pow(softCold / mCold, -exponent);
    double fouled = out.fouling / ((1 - out.fouling) * ua);
    out.ua = 1 / (resistanceHot + resistanceCold + fouled);
    CrossFlow core = out.core;
    core.evaluate(softHot * cp, softCold * cp, out.ua);

    // Conductance g and its derivatives by the softened flows and by both temperatures.
    double g = core.conductance;
    double gain = core.dUa * out.ua * out.ua * exponent;
    double gHot = core.dC1 * cp + gain * resistanceHot / softHot;
    double gCold = core.dC2 * cp + gain * resistanceCold / softCold;
    double byCp = core.dC1 * softHot + core.dC2 * softCold;

    double span = hotIn.t - coldIn.t;
    double heat = g * span;
    double heatByHotT = g + byCp * out.heat.d1 * span;
    double heatByColdT = -g + byCp * out.heat.d2 * span;
    double shareHot = hot / softHot;
    double shareCold = cold / softCold;
    double heatByHot = gHot * shareHot * span;
    double heatByCold = gCold * shareCold * span;
    // d(m/m̃)/dm = (m₀/m̃)²/m̃
    double bendHot = fadeSlope(FADE * mHot, softHot);
    double bendCold = fadeSlope(FADE * mCold, softCold);

    double present = shareHot * shareCold;
    out.q = heat * present;
    out.dq[Exchange.M_HOT] = (heatByHot * shareHot + heat * bendHot) * shareCold;
    out.dq[Exchange.T_HOT] = heatByHotT * present;
    out.dq[Exchange.M_COLD] = (heatByCold * shareCold + heat * bendCold) * shareHot;
    out.dq[Exchange.T_COLD] = heatByColdT * present;

    double perHot = shareCold / softHot;
    out.hHotOut = hotIn.h - heat * perHot;
    double[] dHot = out.dHHotOut;
    dHot[Exchange.M_HOT] = -(heatByHot - heat * shareHot / softHot) * perHot;
    dHot[Exchange.T_HOT] = hotIn.cp - heatByHotT * perHot;
    dHot[Exchange.M_COLD] = -(heatByCold * shareCold + heat * bendCold) / softHot;
    dHot[Exchange.T_COLD] = -heatByColdT * perHot;

    double perCold = shareHot / softCold;
    out.hColdOut = coldIn.h + heat * perCold;
    double[] dCold = out.dHColdOut;
    dCold[Exchange.M_HOT] = (heatByHot * shareHot + heat * bendHot) / softCold;
    dCold[Exchange.T_HOT] = heatByHotT * perCold;
    dCold[Exchange.M_COLD] = (heatByCold - heat * shareCold / softCold) * perCold;
    dCold[Exchange.T_COLD] = coldIn.cp + heatByColdT * perCold;
  }

  private static double fadeSlope(double floor, double soft) {
    double ratio = floor / soft;
    return ratio * ratio / soft;
  }
}

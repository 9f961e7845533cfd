package dev.offtake.heat;

import dev.offtake.air.GasState;

/**
 * Air-to-air cross-flow exchanger whose surface conductances grow with a power of the flows.
 *
 * <p>hA of each side goes with ṁⁿ from the rated point (n of 0.6 for plate-fin cores is common
 * practice, no source). Fouling by a share f adds a resistance f/((1 − f)·UA_rated). Heat capacity
 * rates are flow times one mean heat capacity between the two inlet temperatures, outlets follow by
 * enthalpy: what one side gives the other takes, and neither leaves the span of the inlets.
 *
 * <p>Flows below a millionth of the rated ones fade out smoothly: with m̃ = √(m² + m₀²) in place of
 * m, each outlet is drawn towards the other inlet only in the measure m/m̃ in which there is
 * another flow. With one side still, the other passes unchanged; both still, both pass unchanged.
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
  public void evaluate(double hot, GasState hotIn, double cold, GasState coldIn, Exchange out) {
    MeanHeat mean = out.heat;
    mean.evaluate(hotIn, coldIn);
    out.hotSide.set(hot, mHot, exponent, hotShare / ua, mean.cp);
    out.coldSide.set(cold, mCold, exponent, (1 - hotShare) / ua, mean.cp);
    double fouled = out.fouling / ((1 - out.fouling) * ua);
    out.ua = 1 / (out.hotSide.resistance + out.coldSide.resistance + fouled);
    out.core.evaluate(out.hotSide.rate, out.coldSide.rate, out.ua);
    fillOutcome(hotIn, coldIn, out);
  }

  private void fillOutcome(GasState hotIn, GasState coldIn, Exchange out) {
    Side hot = out.hotSide;
    Side cold = out.coldSide;
    CrossFlow core = out.core;
    double span = hotIn.t - coldIn.t;
    double heat = core.conductance * span;
    double byMeanCp = (core.dC1 * hot.soft + core.dC2 * cold.soft) * span;
    double byHotT = core.conductance + byMeanCp * out.heat.d1;
    double byColdT = -core.conductance + byMeanCp * out.heat.d2;
    hot.heatByFlow = byFlow(hot, core.dC1, out) * span;
    cold.heatByFlow = byFlow(cold, core.dC2, out) * span;

    double present = hot.presence * cold.presence;
    out.q = heat * present;
    out.dq[Exchange.M_HOT] = faded(hot, heat) * cold.presence;
    out.dq[Exchange.T_HOT] = byHotT * present;
    out.dq[Exchange.M_COLD] = faded(cold, heat) * hot.presence;
    out.dq[Exchange.T_COLD] = byColdT * present;

    double perHot = cold.presence / hot.soft;
    out.hHotOut = hotIn.h - heat * perHot;
    out.dHHotOut[Exchange.M_HOT] = -diluted(hot, heat) * perHot;
    out.dHHotOut[Exchange.T_HOT] = hotIn.cp - byHotT * perHot;
    out.dHHotOut[Exchange.M_COLD] = -faded(cold, heat) / hot.soft;
    out.dHHotOut[Exchange.T_COLD] = -byColdT * perHot;

    double perCold = hot.presence / cold.soft;
    out.hColdOut = coldIn.h + heat * perCold;
    out.dHColdOut[Exchange.M_HOT] = faded(hot, heat) / cold.soft;
    out.dHColdOut[Exchange.T_HOT] = byHotT * perCold;
    out.dHColdOut[Exchange.M_COLD] = diluted(cold, heat) * perCold;
    out.dHColdOut[Exchange.T_COLD] = coldIn.cp + byColdT * perCold;
  }

  /** Derivative of the core's conductance by the flow of a side: heat capacity and surface. */
  private double byFlow(Side side, double byRate, Exchange out) {
    double surface = out.core.dUa * out.ua * out.ua * exponent * side.resistance;
    return (byRate * side.rate + surface) / side.soft * side.presence;
  }

  /** Derivative of heat times presence by the flow of a side. */
  private static double faded(Side side, double heat) {
    return side.heatByFlow * side.presence + heat * side.bend;
  }

  /** Derivative of heat over softened flow by the flow of a side, times that softened flow. */
  private static double diluted(Side side, double heat) {
    return side.heatByFlow - heat * side.presence / side.soft;
  }
}

package dev.offtake.heat;

import dev.offtake.air.Air;
import dev.offtake.air.GasState;

/**
 * One measured or printed point of an exchanger: flows, inlets and the hot side's outlet.
 *
 * @param mHot flow of the hot side, kg/s, above 0
 * @param tHotIn temperature into the hot side, K
 * @param tHotOut temperature out of the hot side, K, between the inlets
 * @param mCold flow of the cold side, kg/s, above 0
 * @param tColdIn temperature into the cold side, K, below that into the hot side
 */
public record RatedPoint(double mHot, double tHotIn, double tHotOut, double mCold, double tColdIn) {
  private static final int MAX_STEPS = 500;

  /** Effectiveness above which a rating says nothing of the size of the core. */
  private static final double MAX_EFFECTIVENESS = 0.98;

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if the flows or temperatures cannot be those of an exchanger
   */
  public RatedPoint {
    Requirement.above(0, mHot, "rated flow of the hot side, kg/s,");
    Requirement.above(0, mCold, "rated flow of the cold side, kg/s,");
    Requirement.within(Air.COLDEST, Air.HOTTEST, tHotIn, "rated hot inlet temperature, K,");
    Requirement.within(Air.COLDEST, Air.HOTTEST, tColdIn, "rated cold inlet temperature, K,");
    if (!(tHotIn > tHotOut && tHotOut > tColdIn)) {
      throw new IllegalArgumentException(
          "rated hot outlet of "
              + tHotOut
              + " K must lie between the inlets of "
              + tColdIn
              + " K and "
              + tHotIn
              + " K; check which side is the hot one");
    }
  }

  /**
   * The exchanger that has this point, with equal sides at it.
   *
   * @param n exponent of the surface conductances, see {@link Exchanger}
   * @throws IllegalArgumentException if no core of any size can do what the point says
   */
  public Exchanger exchanger(double n) {
    return new Exchanger(conductance(), mHot, mCold, n, Exchanger.EQUAL_SIDES);
  }

  /** Overall conductance at this point, W/K. */
  private double conductance() {
    GasState hot = new GasState();
    hot.set(0, tHotIn);
    GasState cold = new GasState();
    cold.set(0, tColdIn);
    MeanHeat mean = new MeanHeat();
    mean.evaluate(hot, cold);
    double c1 = mHot * mean.cp;
    double c2 = mCold * mean.cp;
    double wanted = mHot * (hot.h - Air.h(tHotOut)) / (tHotIn - tColdIn);
    double effectiveness = wanted / Math.min(c1, c2);
    if (effectiveness > MAX_EFFECTIVENESS) {
      throw new IllegalArgumentException(
          String.format(
              "the rated point asks for %.0f %% of the heat that the smaller flow can carry;"
                  + " a real core stays below %.0f %%: check the flows and the outlet temperature",
              100 * effectiveness, 100 * MAX_EFFECTIVENESS));
    }
    return size(c1, c2, wanted);
  }

  /**
   * Newton's method from below. Heat is a rising, concave function of the conductance and never
   * above its tangent at zero, so the steps cannot overshoot.
   */
  private static double size(double c1, double c2, double wanted) {
    CrossFlow core = new CrossFlow();
    double ua = wanted;
    for (int i = 0; i < MAX_STEPS; i++) {
      core.evaluate(c1, c2, ua);
      double step = (wanted - core.conductance) / core.dUa;
      ua += step;
      if (Math.abs(step) <= 1e-14 * ua) {
        break;
      }
    }
    return ua;
  }
}

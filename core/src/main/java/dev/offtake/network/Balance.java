package dev.offtake.network;

import dev.offtake.air.GasState;
import dev.offtake.part.Branch;
import dev.offtake.part.Evaluation;
import java.util.Arrays;

/**
 * Judges an answer: does as much air and heat leave each point as arrives?
 *
 * <p>Computed from the streams of a fresh evaluation, without the residual or the Jacobian that the
 * solver used. For each point with S = max(½ Σ|ṁ|, 10⁻³ of the largest flow of its connected group,
 * 10⁻⁶ kg/s)
 *
 * <pre>
 *   |Σ ṁ|           ≤ 10⁻⁹ S      + rounding
 *   |Σ ṁ (h − h_i)| ≤ 10⁻⁹ S cp T + rounding
 * </pre>
 *
 * where rounding is four times what one unit in the last place of the variables would move.
 *
 * <p>Where rounding and not the tolerance lets a point pass, a share of the flow says little
 * (behind a wide port a trickle rounds at many parts in 10⁹). {@link #pressureError()} says what it
 * is worth in pressure: for mass |Σ ṁ| / |∂Σṁ/∂ ln p| · p with the slope by the point's own
 * pressure; for heat, whose rounding is that of the streams, as many last places of ln p as the
 * residual has roundings, times p.
 */
public final class Balance {
  /** Largest accepted imbalance as a share of the flow. */
  public static final double TOLERANCE = 1e-9;

  private static final double SMALLEST_FLOW = 1e-6;
  private static final double GROUP_SHARE = 1e-3;
  private static final double ULP = Math.ulp(1.0);

  private final Equations equations;
  private final int[] groups;
  private final double[] mass;
  private final double[] massRounding;
  private final double[] energy;
  private final double[] energyRounding;
  private final double[] scale;
  private final double[] groupLargest;
  private double worst;
  private int worstPoint;
  private final double[] slope;
  private double worstShare;
  private double pressureError;

  /** Prepares to judge answers of the given equations. */
  public Balance(Equations equations) {
    this.equations = equations;
    int n = equations.innerPoints();
    groups = Groups.of(equations);
    mass = new double[n];
    massRounding = new double[n];
    energy = new double[n];
    energyRounding = new double[n];
    scale = new double[n];
    slope = new double[n];
    groupLargest = new double[n];
  }

  /**
   * Judges the last evaluation.
   *
   * @return true when every point balances
   */
  public boolean holds() {
    collect();
    return judge();
  }

  /** Scale S of each point at the last judgement, kg/s. */
  public double scale(int point) {
    return scale[point];
  }

  /** The point that resists most. */
  public int worstPoint() {
    return worstPoint;
  }

  /** Largest imbalance as a multiple of what is accepted. */
  public double worst() {
    return worst;
  }

  /** Largest imbalance as a share of the flow or heat that passes, before rounding is forgiven. */
  public double worstShare() {
    return worstShare;
  }

  /**
   * Largest pressure error that is equivalent to what is left of an imbalance, over the points
   * where rounding and not the tolerance decides.
   *
   * @return Pa; 0 when the tolerance is met at every point
   */
  public double pressureError() {
    return pressureError;
  }

  private void collect() {
    Evaluation e = equations.evaluation();
    Arrays.fill(mass, 0);
    Arrays.fill(massRounding, 0);
    Arrays.fill(energy, 0);
    Arrays.fill(energyRounding, 0);
    Arrays.fill(scale, 0);
    Arrays.fill(slope, 0);
    Arrays.fill(groupLargest, 0);
    for (int part = 0; part < equations.network().parts().size(); part++) {
      for (Branch branch : equations.branches(part)) {
        add(branch, branch.from, -1, branch.hFrom, e);
        add(branch, branch.to, 1, branch.hTo, e);
      }
    }
  }

  private void add(Branch branch, int point, double sign, double enthalpy, Evaluation e) {
    if (point >= mass.length) {
      return;
    }
    double arriving = sign * branch.mdot;
    double excess = enthalpy - e.gas[point].h;
    int ownLnP = equations.lnP(point);
    mass[point] += arriving;
    energy[point] += arriving * excess;
    scale[point] += 0.5 * Math.abs(arriving);
    double moved = 0;
    for (int k = 0; k < branch.variables.length; k++) {
      double value = e.variables[branch.variables[k]];
      moved += Math.abs(branch.dMdot[k]) * ULP * Math.max(Math.abs(value), 1);
      if (branch.variables[k] == ownLnP) {
        slope[point] += sign * branch.dMdot[k];
      }
    }
    massRounding[point] += moved;
    energyRounding[point] +=
        moved * Math.abs(excess)
            + Math.abs(arriving) * ULP * (Math.abs(enthalpy) + e.gas[point].cp * e.gas[point].t);
  }

  private boolean judge() {
    Evaluation e = equations.evaluation();
    for (int i = 0; i < mass.length; i++) {
      groupLargest[groups[i]] = Math.max(groupLargest[groups[i]], scale[i]);
    }
    worst = 0;
    worstPoint = 0;
    worstShare = 0;
    pressureError = 0;
    for (int i = 0; i < mass.length; i++) {
      GasState gas = e.gas[i];
      double s = Math.max(Math.max(scale[i], GROUP_SHARE * groupLargest[groups[i]]), SMALLEST_FLOW);
      scale[i] = s;
      double heat = s * gas.cp * gas.t;
      double lost =
          energy[i]
              - equations.network().points().get(i).wall() * (gas.t - e.conditions.ambientT());
      note(i, Math.abs(mass[i]), s, massRounding[i]);
      note(i, Math.abs(lost), heat, energyRounding[i]);
      price(i, s, Math.abs(lost), heat);
    }
    return worst <= 1;
  }

  /** Prices in Pa what rounding alone lets pass at a point. */
  private void price(int point, double size, double lost, double heat) {
    GasState gas = equations.evaluation().gas[point];
    double unexplained = Math.abs(mass[point]);
    if (unexplained > TOLERANCE * size) {
      pressureError = Math.max(pressureError, unexplained / Math.abs(slope[point]) * gas.p);
    }
    if (lost > TOLERANCE * heat) {
      double places = lost / energyRounding[point];
      double place = ULP * Math.max(Math.abs(gas.lnP), 1);
      pressureError = Math.max(pressureError, places * place * gas.p);
    }
  }

  private void note(int point, double imbalance, double size, double rounding) {
    double share = imbalance / size;
    double multiple = imbalance / (TOLERANCE * size + 4 * rounding);
    // A NaN compares as worse than anything, so that it can never pass as balanced.
    if (!(multiple <= worst)) {
      worst = Double.isNaN(multiple) ? Double.POSITIVE_INFINITY : multiple;
      worstPoint = point;
    }
    worstShare = Math.max(worstShare, Double.isNaN(share) ? Double.POSITIVE_INFINITY : share);
  }
}

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
  private final double[] massAllowance;
  private final double[] energyAllowance;
  private final double[] ulp;
  private final Branch[] branches;
  private double worst;
  private int worstPoint;
  private double worstShare;

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
    groupLargest = new double[n];
    massAllowance = new double[n];
    energyAllowance = new double[n];
    ulp = new double[equations.evaluation().variables.length];
    branches = equations.allBranches();
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

  /** Imbalance of air that the last judgement accepts at a point, kg/s. */
  public double massAllowance(int point) {
    return massAllowance[point];
  }

  /** Imbalance of heat that the last judgement accepts at a point, W. */
  public double energyAllowance(int point) {
    return energyAllowance[point];
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
   * Largest pressure error that is equivalent to what the last judgement left of an imbalance, over
   * the points where rounding and not the tolerance decides.
   *
   * @return Pa; 0 when the tolerance is met at every point
   */
  public double pressureError() {
    double most = 0;
    for (int i = 0; i < mass.length; i++) {
      GasState gas = equations.evaluation().gas[i];
      double unexplained = Math.abs(mass[i]);
      if (unexplained > massAllowance[i] - 4 * massRounding[i]) {
        most = Math.max(most, unexplained / slope(i) * gas.p);
      }
      double lost = Math.abs(energy[i] - wallLoss(i));
      if (lost > energyAllowance[i] - 4 * energyRounding[i]) {
        double place = ULP * Math.max(Math.abs(gas.lnP), 1);
        most = Math.max(most, lost / energyRounding[i] * place * gas.p);
      }
    }
    return most;
  }

  /** What the flow into a point loses when its own ln p rises, kg/s; all its streams lose. */
  private double slope(int point) {
    int own = equations.lnP(point);
    double sum = 0;
    for (Branch branch : branches) {
      for (int k = 0; k < branch.variables.length; k++) {
        boolean touches = branch.from == point || branch.to == point;
        sum += touches && branch.variables[k] == own ? Math.abs(branch.dMdot[k]) : 0;
      }
    }
    return sum;
  }

  private double wallLoss(int point) {
    Evaluation e = equations.evaluation();
    double over = e.gas[point].t - e.conditions.ambientT();
    return equations.network().points().get(point).wall() * over;
  }

  private void collect() {
    Evaluation e = equations.evaluation();
    Arrays.fill(mass, 0);
    Arrays.fill(massRounding, 0);
    Arrays.fill(energy, 0);
    Arrays.fill(energyRounding, 0);
    Arrays.fill(scale, 0);
    Arrays.fill(groupLargest, 0);
    for (int v = 0; v < ulp.length; v++) {
      ulp[v] = ULP * Math.max(Math.abs(e.variables[v]), 1);
    }
    for (Branch branch : branches) {
      double moved = 0;
      for (int k = 0; k < branch.variables.length; k++) {
        moved += Math.abs(branch.dMdot[k]) * ulp[branch.variables[k]];
      }
      add(branch.from, -branch.mdot, branch.hFrom, moved, e);
      add(branch.to, branch.mdot, branch.hTo, moved, e);
    }
  }

  private void add(int point, double arriving, double enthalpy, double moved, Evaluation e) {
    if (point >= mass.length) {
      return;
    }
    GasState gas = e.gas[point];
    double excess = enthalpy - gas.h;
    double size = Math.abs(arriving);
    mass[point] += arriving;
    energy[point] += arriving * excess;
    scale[point] += 0.5 * size;
    massRounding[point] += moved;
    energyRounding[point] +=
        moved * Math.abs(excess) + size * ULP * (Math.abs(enthalpy) + gas.cp * gas.t);
  }

  private boolean judge() {
    Evaluation e = equations.evaluation();
    for (int i = 0; i < mass.length; i++) {
      groupLargest[groups[i]] = Math.max(groupLargest[groups[i]], scale[i]);
    }
    worst = 0;
    worstPoint = 0;
    worstShare = 0;
    for (int i = 0; i < mass.length; i++) {
      GasState gas = e.gas[i];
      double s = Math.max(Math.max(scale[i], GROUP_SHARE * groupLargest[groups[i]]), SMALLEST_FLOW);
      double heat = s * gas.cp * gas.t;
      double lost = energy[i] - wallLoss(i);
      massAllowance[i] = TOLERANCE * s + 4 * massRounding[i];
      energyAllowance[i] = TOLERANCE * heat + 4 * energyRounding[i];
      note(i, Math.abs(mass[i]), s, massAllowance[i]);
      note(i, Math.abs(lost), heat, energyAllowance[i]);
    }
    return worst <= 1;
  }

  private void note(int point, double imbalance, double size, double allowance) {
    double share = imbalance / size;
    double multiple = imbalance / allowance;
    // A NaN compares as worse than anything, so that it can never pass as balanced.
    if (!(multiple <= worst)) {
      worst = Double.isNaN(multiple) ? Double.POSITIVE_INFINITY : multiple;
      worstPoint = point;
    }
    worstShare = Math.max(worstShare, Double.isNaN(share) ? Double.POSITIVE_INFINITY : share);
  }
}

package dev.offtake.network;

import dev.offtake.air.GasState;
import dev.offtake.flow.StaticPressure;
import dev.offtake.part.Branch;
import dev.offtake.part.Evaluation;
import dev.offtake.sparse.SparsePattern;

/**
 * The row of a sensed static pressure: ln p_static − ln p_total + L(ṁ, p_total, T) = 0 at the bore
 * of one stream.
 */
final class SenseRow {
  private final int row;
  private final int part;
  private final int variable;
  private final int point;
  private final double area;
  private final Branch branch;
  private final boolean atFrom;
  private final StaticPressure law = new StaticPressure();
  private int ownSlot;
  private final int[] slots;
  private double residual;

  SenseRow(int row, Layout.Sense sense, Branch branch) {
    this.row = row;
    this.branch = branch;
    part = sense.part();
    variable = sense.variable();
    point = sense.point();
    area = Math.PI / 4 * sense.bore() * sense.bore();
    atFrom = branch.from == sense.point();
    slots = new int[branch.variables.length];
  }

  void locate(SparsePattern pattern, int[] columns) {
    ownSlot = pattern.slot(row, columns[variable]);
    for (int k = 0; k < slots.length; k++) {
      int column = columns[branch.variables[k]];
      slots[k] = column < 0 ? -1 : pattern.slot(row, column);
    }
  }

  int row() {
    return row;
  }

  /** Number of the part in whose bore it sits. */
  int part() {
    return part;
  }

  int variable() {
    return variable;
  }

  /** Number of the point whose pressure is sensed. */
  int point() {
    return point;
  }

  Branch branch() {
    return branch;
  }

  double residual() {
    return residual;
  }

  void evaluate(Evaluation e) {
    GasState gas = e.gas[point];
    law.evaluate(branch.mdot, gas, area);
    residual = e.variables[variable] - gas.lnP + law.lnRatio;
  }

  /** By how much the row would change with the variables that stand in no column. */
  double boundaryShift(double[] change) {
    double flow = 0;
    for (int k = 0; k < slots.length; k++) {
      if (slots[k] < 0) {
        flow += branch.dMdot[k] * change[branch.variables[k]];
      }
    }
    return law.dMdot * flow;
  }

  /** Adds the row of the last evaluation. */
  void jacobian(double[] values) {
    values[ownSlot] += 1;
    for (int k = 0; k < slots.length; k++) {
      if (slots[k] >= 0) {
        values[slots[k]] += law.dMdot * branch.dMdot[k];
      }
    }
    int lnP = atFrom ? Branch.LN_P_FROM : Branch.LN_P_TO;
    if (slots[lnP] >= 0) {
      values[slots[lnP]] += law.dLnP - 1;
      values[slots[lnP + 1]] += law.dT;
    }
  }
}

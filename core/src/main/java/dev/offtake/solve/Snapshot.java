package dev.offtake.solve;

import dev.offtake.network.Equations;
import dev.offtake.part.Branch;
import dev.offtake.part.Conditions;
import dev.offtake.part.Evaluation;

/** The numbers of one evaluated state, copied out of the equations. */
final class Snapshot {
  /** All variables, as {@link Evaluation#variables} holds them. */
  final double[] variables;

  /** Total pressure of each inner point, Pa. */
  final double[] pressure;

  /** Static pressure at each inner point, Pa. */
  final double[] sensed;

  /** Temperature of each inner point, K. */
  final double[] temperature;

  /** Flow of each leg of each part, kg/s. */
  final double[][] flow;

  /** Whether each leg of each part is choked. */
  final boolean[][] choked;

  /** Whether each leg of each part is nearly still. */
  final boolean[][] still;

  /** Observables of each part. */
  final double[][] observed;

  /** Parameters of each part, SI. */
  final double[][] parameter;

  /** Controls of each part. */
  final double[][] control;

  /** Why each control of each part has its value. */
  final String[][] because;

  Snapshot(Equations equations, String[][] reasons) {
    Evaluation e = equations.evaluation();
    int points = equations.innerPoints();
    int parts = equations.network().parts().size();
    variables = e.variables.clone();
    pressure = new double[points];
    sensed = new double[points];
    temperature = new double[points];
    flow = new double[parts][];
    choked = new boolean[parts][];
    still = new boolean[parts][];
    observed = new double[parts][];
    parameter = new double[parts][];
    control = new double[parts][];
    because = deepCopy(reasons);
    for (int i = 0; i < points; i++) {
      pressure[i] = e.gas[i].p;
      temperature[i] = e.gas[i].t;
      sensed[i] = equations.sensedPressure(i);
    }
    for (int part = 0; part < parts; part++) {
      copyPart(equations, part);
    }
  }

  private static String[][] deepCopy(String[][] texts) {
    String[][] copy = new String[texts.length][];
    for (int i = 0; i < texts.length; i++) {
      copy[i] = texts[i].clone();
    }
    return copy;
  }

  private void copyPart(Equations equations, int part) {
    Evaluation e = equations.evaluation();
    Branch[] branches = equations.branches(part);
    flow[part] = new double[branches.length];
    choked[part] = new boolean[branches.length];
    still[part] = new boolean[branches.length];
    for (int leg = 0; leg < branches.length; leg++) {
      flow[part][leg] = branches[leg].mdot;
      choked[part][leg] = branches[leg].choked;
      still[part][leg] = branches[leg].still;
    }
    observed[part] = new double[equations.network().parts().get(part).observables().size()];
    equations.element(part).observe(e, observed[part], 0);
    parameter[part] =
        slice(e.parameters, equations.firstParameter(part), equations.firstParameter(part + 1));
    control[part] =
        slice(e.controls, equations.firstControl(part), equations.firstControl(part + 1));
  }

  /** Puts equations of the same network into this state, to be evaluated. */
  void restore(Equations equations, Conditions conditions) {
    Evaluation e = equations.evaluation();
    for (int part = 0; part < parameter.length; part++) {
      System.arraycopy(
          parameter[part], 0, e.parameters, equations.firstParameter(part), parameter[part].length);
      System.arraycopy(
          control[part], 0, e.controls, equations.firstControl(part), control[part].length);
    }
    System.arraycopy(variables, 0, e.variables, 0, variables.length);
    equations.setConditions(conditions);
  }

  private static double[] slice(double[] all, int from, int to) {
    double[] slice = new double[to - from];
    System.arraycopy(all, from, slice, 0, slice.length);
    return slice;
  }
}

package dev.offtake.solve;

import dev.offtake.network.Equations;
import dev.offtake.network.Network;
import dev.offtake.part.Branch;
import dev.offtake.part.Evaluation;

/**
 * The numbers of one evaluated state, copied out of the equations.
 *
 * @param pressure total pressure of each inner point, Pa
 * @param sensed static pressure at each inner point, Pa
 * @param temperature of each inner point, K
 * @param flow of each leg of each part, kg/s
 * @param choked of each leg of each part
 * @param still of each leg of each part
 * @param observed observables of each part
 * @param parameter parameters of each part, SI
 * @param control controls of each part
 * @param because why each control has its value
 */
record Snapshot(
    double[] pressure,
    double[] sensed,
    double[] temperature,
    double[][] flow,
    boolean[][] choked,
    boolean[][] still,
    double[][] observed,
    double[][] parameter,
    double[][] control,
    String[][] because) {

  static Snapshot of(Equations equations, String[][] because) {
    Network network = equations.network();
    Evaluation e = equations.evaluation();
    int points = equations.innerPoints();
    int parts = network.parts().size();
    Snapshot made =
        new Snapshot(
            new double[points],
            new double[points],
            new double[points],
            new double[parts][],
            new boolean[parts][],
            new boolean[parts][],
            new double[parts][],
            new double[parts][],
            new double[parts][],
            deepCopy(because));
    for (int i = 0; i < points; i++) {
      made.pressure[i] = e.gas[i].p;
      made.temperature[i] = e.gas[i].t;
      made.sensed[i] = equations.sensedPressure(i);
    }
    for (int part = 0; part < parts; part++) {
      made.copyPart(equations, part);
    }
    return made;
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

  private static double[] slice(double[] all, int from, int to) {
    double[] slice = new double[to - from];
    System.arraycopy(all, from, slice, 0, slice.length);
    return slice;
  }
}

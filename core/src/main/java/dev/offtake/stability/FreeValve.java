package dev.offtake.stability;

import dev.offtake.network.Equations;
import dev.offtake.part.Branch;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import java.util.ArrayList;
import java.util.List;

/**
 * A valve that moves freely in a state.
 *
 * @param part number in the network
 * @param row slope of its opening by each variable of its branch
 * @param column slope of the residual by its opening
 */
record FreeValve(int part, double[] row, double[] column) {
  /** A valve that passes less than this for its whole stroke moves nothing, kg/s. */
  private static final double NOTHING = 1e-9;

  /** Half the step of the opening by which columns are found; flow is linear in area. */
  private static final double STEP = 1e-4;

  private static final String STUCK = "stuck at";

  /**
   * Finds the valves that move freely, and holds them where they are: the equations are left
   * evaluated with each valve stuck at its opening.
   *
   * @param equations at a steady state
   */
  static List<FreeValve> holdAll(Equations equations) {
    List<Part> parts = equations.network().parts();
    double[] parameters = equations.evaluation().parameters;
    double[][] freely = new double[parts.size()][];
    for (int i = 0; i < parts.size(); i++) {
      int stuck = equations.parameter(i, STUCK);
      if (parts.get(i).role() == Role.VALVE && stuck >= 0 && parameters[stuck] < 0) {
        freely[i] = equations.branches(i)[0].dMdot.clone();
        parameters[stuck] = opening(equations, i);
      }
    }
    equations.evaluate();
    List<FreeValve> valves = new ArrayList<>();
    for (int i = 0; i < freely.length; i++) {
      double[] moves = freely[i] == null ? new double[0] : less(freely[i], equations, i);
      for (double move : moves) {
        if (move != 0) {
          add(valves, equations, i, moves);
          break;
        }
      }
    }
    return valves;
  }

  private static double opening(Equations equations, int part) {
    List<String> names = equations.network().parts().get(part).observables();
    double[] observed = new double[names.size()];
    equations.element(part).observe(equations.evaluation(), observed, 0);
    return observed[names.indexOf("opening")];
  }

  /** What of the slopes of a stream comes from the moving of its valve. */
  private static double[] less(double[] freely, Equations equations, int part) {
    double[] held = equations.branches(part)[0].dMdot;
    double[] moves = new double[freely.length];
    for (int k = 0; k < moves.length; k++) {
      moves[k] = freely[k] - held[k];
    }
    return moves;
  }

  private static void add(List<FreeValve> valves, Equations equations, int part, double[] moves) {
    double[] parameters = equations.evaluation().parameters;
    int stuck = equations.parameter(part, STUCK);
    double opening = parameters[stuck];
    double low = Math.max(0, opening - STEP);
    double high = Math.min(1, opening + STEP);
    Branch branch = equations.branches(part)[0];
    double[] below = new double[equations.size()];
    double[] above = new double[equations.size()];
    double less = flow(equations, branch, stuck, low, below);
    double more = flow(equations, branch, stuck, high, above);
    parameters[stuck] = opening;
    equations.evaluate();
    double byOpening = (more - less) / (high - low);
    if (Math.abs(byOpening) < NOTHING) {
      return;
    }
    for (int r = 0; r < above.length; r++) {
      above[r] = (above[r] - below[r]) / (high - low);
    }
    for (int k = 0; k < moves.length; k++) {
      moves[k] /= byOpening;
    }
    valves.add(new FreeValve(part, moves, above));
  }

  private static double flow(
      Equations equations, Branch branch, int stuck, double opening, double[] residual) {
    equations.evaluation().parameters[stuck] = opening;
    equations.evaluate();
    equations.residual(residual);
    return branch.mdot;
  }
}

package dev.offtake.stability;

import dev.offtake.network.Equations;
import dev.offtake.part.Branch;
import dev.offtake.part.FlowUser;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import java.util.ArrayList;
import java.util.List;

/**
 * Holds parts that move where they are, so that it shows what their moving does.
 *
 * <p>A valve is held by being stuck at its present opening. A flow user that keeps its schedule is
 * held by making what it wants endless and its area so small that the same air passes.
 *
 * <p>The slopes of a stream differ, free and held, by (slope of the flow by the opening) times
 * (slope of the opening by each variable): a matrix of rank one for each part that moves.
 */
final class Hold {
  /** A part that passes less than this for its whole stroke moves nothing, kg/s. */
  private static final double NOTHING = 1e-9;

  /** Half the step of an opening by which columns are found; flow is linear in area. */
  private static final double STEP = 1e-4;

  /** A user that its area limits to within this share of its flow is wide open and stays so. */
  private static final double WIDE = 0.97;

  /** What a held user wants, as a multiple of its schedule. */
  private static final double ENDLESS = 1e12;

  private final Equations equations;
  private final double[] parameters;
  private final List<Part> parts;

  /** Position of the parameter that opens a part, and its lowest and highest value. */
  private record Handle(int at, double low, double high) {
    double middle() {
      return (low + high) / 2;
    }
  }

  private Hold(Equations equations) {
    this.equations = equations;
    parameters = equations.evaluation().parameters;
    parts = equations.network().parts();
  }

  /**
   * Holds all parts that move.
   *
   * @param equations at a steady state, evaluated; left evaluated with the parts held
   * @return the parts that moved
   */
  static List<Mover> all(Equations equations) {
    return new Hold(equations).all();
  }

  private List<Mover> all() {
    double[][] free = new double[parts.size()][];
    double[] handled = new double[parts.size()];
    int[] handles = new int[parts.size()];
    for (int i = 0; i < handles.length; i++) {
      handles[i] = handle(i);
      if (handles[i] >= 0) {
        free[i] = equations.branches(i)[0].dMdot.clone();
        handled[i] = held(i, handles[i]);
      }
    }
    for (int i = 0; i < handles.length; i++) {
      if (handles[i] >= 0) {
        parameters[handles[i]] = handled[i];
      }
    }
    equations.evaluate();
    List<Mover> movers = new ArrayList<>();
    for (int i = 0; i < handles.length; i++) {
      if (handles[i] >= 0) {
        add(movers, i, free[i], range(i, handles[i]));
      }
    }
    return movers;
  }

  /** The parameter by which a part can be held, or −1 where it does not move. */
  private int handle(int part) {
    Part whose = parts.get(part);
    if (whose.role() == Role.VALVE) {
      int stuck = equations.parameter(part, "stuck at");
      return stuck >= 0 && parameters[stuck] < 0 ? stuck : -1;
    }
    boolean takes = whose.kind().equals(FlowUser.KIND.name());
    return takes && equations.branches(part)[0].mdot > 0
        ? equations.parameter(part, "wide open area")
        : -1;
  }

  /** Value of the handle that holds a part where it is. */
  private double held(int part, int handle) {
    if (parts.get(part).role() == Role.VALVE) {
      List<String> names = parts.get(part).observables();
      double[] observed = new double[names.size()];
      equations.element(part).observe(equations.evaluation(), observed, 0);
      return observed[names.indexOf("opening")];
    }
    int demand = equations.parameter(part, "demand");
    double wanted = parameters[demand];
    double passes = equations.branches(part)[0].mdot;
    parameters[demand] = ENDLESS * wanted;
    equations.element(part).evaluate(equations.evaluation());
    double share = passes / equations.branches(part)[0].mdot;
    if (share > WIDE) {
      parameters[demand] = wanted;
      share = 1;
    }
    return share * parameters[handle];
  }

  private Handle range(int part, int handle) {
    double value = parameters[handle];
    return parts.get(part).role() == Role.VALVE
        ? new Handle(handle, Math.max(0, value - STEP), Math.min(1, value + STEP))
        : new Handle(handle, (1 - STEP) * value, (1 + STEP) * value);
  }

  private void add(List<Mover> movers, int part, double[] free, Handle handle) {
    Branch branch = equations.branches(part)[0];
    double[] row = free.clone();
    boolean moves = false;
    for (int k = 0; k < row.length; k++) {
      row[k] -= branch.dMdot[k];
      moves |= row[k] != 0;
    }
    if (!moves) {
      return;
    }
    double[] below = new double[equations.size()];
    double[] column = new double[equations.size()];
    double present = parameters[handle.at()];
    double less = flow(branch, handle.at(), handle.low(), below);
    double more = flow(branch, handle.at(), handle.high(), column);
    parameters[handle.at()] = present;
    equations.evaluate();
    if (Math.abs(more - less) < NOTHING * (handle.high() - handle.low()) / scale(part, handle)) {
      return;
    }
    for (int r = 0; r < column.length; r++) {
      column[r] -= below[r];
    }
    for (int k = 0; k < row.length; k++) {
      row[k] /= more - less;
    }
    movers.add(new Mover(part, row, column));
  }

  /** What the handle reads when the part is wide open. */
  private double scale(int part, Handle handle) {
    return parts.get(part).role() == Role.VALVE ? 1 : handle.middle();
  }

  private double flow(Branch branch, int handle, double value, double[] residual) {
    parameters[handle] = value;
    equations.evaluate();
    equations.residual(residual);
    return branch.mdot;
  }
}

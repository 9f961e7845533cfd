package dev.offtake.solve;

import dev.offtake.network.Equations;
import dev.offtake.part.Conditions;
import dev.offtake.sparse.SparseLu;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * How a solved state answers to small changes, by the implicit function theorem.
 *
 * <p>At a state x that solves R(x, θ) = 0 with the Jacobian J,
 *
 * <pre>
 *   dx/dθ = −J⁻¹ ∂R/∂θ                  forward: one number, everything that follows
 *   dq/dθ = ∂q/∂θ − λᵀ ∂R/∂θ, Jᵀλ = ∂q/∂x   adjoint: one reading, every number behind it
 * </pre>
 *
 * (any textbook of analysis). J is factored once; ∂R/∂θ is a difference of evaluations of the few
 * laws that feel the number, moved by 10⁻⁵ of its size to both sides; no state is looked for anew.
 * Commands and memory (trips, reliefs) stay as they are.
 *
 * <p>The answer is the slope on the branch where the state lies: at the stop of a valve, a choke or
 * another bend it holds to one side only. Where a state is about to vanish it grows without bound.
 *
 * <p>Belongs to one thread. Owns its equations, which stand at the state again after each call.
 */
public final class Sensitivities {
  /** How far a variable is moved to differentiate a reading, as a share of its size, at least 1. */
  private static final double SMALL = 1e-6;

  private final Equations equations;
  private final SparseLu factors;
  private final double[] state;
  private final double[] above;
  private final double[] below;
  private final double[] scratch;

  private Sensitivities(Equations equations, SparseLu factors) {
    this.equations = equations;
    this.factors = factors;
    state = equations.evaluation().variables.clone();
    above = new double[equations.size()];
    below = new double[equations.size()];
    scratch = new double[equations.size()];
  }

  /**
   * Prepares at a state.
   *
   * @param solution a state that balances
   * @return empty when its Jacobian is singular, so that it has no slopes
   */
  public static Optional<Sensitivities> at(Solution solution) {
    Equations equations = solution.equations();
    double[] values = new double[equations.pattern().size()];
    equations.jacobian(values);
    SparseLu factors = new SparseLu(equations.pattern());
    return factors.order(values)
        ? Optional.of(new Sensitivities(equations, factors))
        : Optional.empty();
  }

  /** The equations, evaluated at the state. */
  Equations equations() {
    return equations;
  }

  /**
   * Slope of every variable of the network by a number of a part.
   *
   * @param part number of the part
   * @param which position of the number among the part's parameters
   * @return for each variable, boundary included, units of ln p or K per SI unit of the number
   */
  public double[] byNumber(int part, int which) {
    return forward(Change.OfNumber.of(equations, part, which));
  }

  /**
   * Change of every variable of the network, to first order, if the conditions became others.
   *
   * @param other conditions near those of the state: speeds, day or both
   * @return for each variable, boundary included, units of ln p or K
   */
  public double[] toward(Conditions other) {
    return forward(new Change.OfConditions(equations.evaluation().conditions, other));
  }

  /** Prepares to tell how one reading answers to any of many numbers. */
  public Gradient of(Quantity quantity) {
    double[] slopes = new double[equations.size()];
    int[] wanted = quantity.variables(equations);
    for (int c = 0; c < slopes.length; c++) {
      int variable = equations.variableOf(c);
      if (Arrays.stream(wanted).anyMatch(v -> v == variable)) {
        slopes[c] = slope(quantity, variable);
      }
    }
    restore();
    double[] lambda = new double[slopes.length];
    factors.solveTransposed(slopes, lambda);
    return new Gradient(quantity, lambda);
  }

  /** Prepares to tell how several readings answer, each number being looked at once for all. */
  public Gradients of(List<Quantity> quantities) {
    return new Gradients(quantities.stream().map(this::of).toList());
  }

  private double slope(Quantity quantity, int variable) {
    double step = SMALL * Math.max(1, Math.abs(state[variable]));
    double[] x = equations.evaluation().variables;
    x[variable] = state[variable] + step;
    equations.evaluate();
    double high = quantity.read(equations);
    x[variable] = state[variable] - step;
    equations.evaluate();
    double low = quantity.read(equations);
    x[variable] = state[variable];
    return (high - low) / (2 * step);
  }

  private void restore() {
    System.arraycopy(state, 0, equations.evaluation().variables, 0, state.length);
    equations.evaluate();
  }

  private double[] forward(Change change) {
    double[] slopes = differentiate(change)[0];
    factors.solve(above, above);
    for (int c = 0; c < above.length; c++) {
      slopes[equations.variableOf(c)] = -above[c];
    }
    return slopes;
  }

  /**
   * Leaves ∂R/∂θ in {@link #above}. What the boundary does to the residual is taken from the laws'
   * own partials: where a wide port stands before a dead end, the smallest move of the boundary
   * would turn the trickle round and the difference would be that of two branches.
   *
   * @param readings to differentiate with the unknowns held
   * @return slopes of the variables, 0 but at the boundary; slopes of the readings
   */
  private double[][] differentiate(Change change, Quantity... readings) {
    double width = change.up() + change.down();
    double[] high = new double[state.length];
    double[] low = new double[state.length];
    double[] moved = side(change, change.up(), above, high, readings);
    double[] back = side(change, -change.down(), below, low, readings);
    for (int q = 0; q < moved.length; q++) {
      moved[q] = (moved[q] - back[q]) / width;
    }
    for (int v = 0; v < high.length; v++) {
      high[v] = (high[v] - low[v]) / width;
    }
    double[] shift = new double[above.length];
    equations.boundaryShift(high, shift);
    for (int r = 0; r < above.length; r++) {
      above[r] = (above[r] - below[r]) / width + shift[r];
    }
    return new double[][] {high, moved};
  }

  /** The residual with the boundary held, then boundary and reading; comes back to the state. */
  private double[] side(
      Change change, double away, double[] residual, double[] boundary, Quantity... readings) {
    change.set(equations, away);
    change.residual(equations, residual);
    equations.refreshBoundary();
    System.arraycopy(equations.evaluation().variables, 0, boundary, 0, boundary.length);
    double[] read = new double[readings.length];
    if (readings.length > 0) {
      change.residual(equations, scratch);
    }
    for (int q = 0; q < read.length; q++) {
      read[q] = readings[q].read(equations);
    }
    change.set(equations, 0);
    equations.refreshBoundary();
    change.residual(equations, scratch);
    return read;
  }

  /** How one reading answers to numbers and conditions: the adjoint form. */
  public final class Gradient {
    private final Quantity quantity;
    private final double[] lambda;

    private Gradient(Quantity quantity, double[] lambda) {
      this.quantity = quantity;
      this.lambda = lambda;
    }

    /**
     * Slope of the reading by a number of a part.
     *
     * @param part number of the part
     * @param which position of the number among the part's parameters
     * @return SI unit of the reading per SI unit of the number
     */
    public double byNumber(int part, int which) {
      return by(Change.OfNumber.of(equations, part, which));
    }

    /**
     * Change of the reading, to first order, if the conditions became others.
     *
     * @param other conditions near those of the state
     * @return SI unit of the reading
     */
    public double toward(Conditions other) {
      return by(new Change.OfConditions(equations.evaluation().conditions, other));
    }

    /** The reading at the state, SI. */
    public double value() {
      return quantity.read(equations);
    }

    private double by(Change change) {
      double slope = differentiate(change, quantity)[1][0];
      for (int r = 0; r < above.length; r++) {
        slope -= lambda[r] * above[r];
      }
      return slope;
    }
  }

  /** How several readings answer to numbers and conditions. */
  public final class Gradients {
    private final List<Gradient> each;
    private final Quantity[] quantities;

    private Gradients(List<Gradient> each) {
      this.each = each;
      quantities = each.stream().map(gradient -> gradient.quantity).toArray(Quantity[]::new);
    }

    /**
     * Slopes of the readings by a number of a part.
     *
     * @param part number of the part
     * @param which position of the number among the part's parameters
     * @return for each reading, its SI unit per SI unit of the number
     */
    public double[] byNumber(int part, int which) {
      return by(Change.OfNumber.of(equations, part, which));
    }

    /**
     * Changes of the readings, to first order, if the conditions became others.
     *
     * @param other conditions near those of the state
     * @return for each reading, its SI unit
     */
    public double[] toward(Conditions other) {
      return by(new Change.OfConditions(equations.evaluation().conditions, other));
    }

    private double[] by(Change change) {
      double[] slopes = differentiate(change, quantities)[1];
      for (int q = 0; q < slopes.length; q++) {
        double[] lambda = each.get(q).lambda;
        for (int r = 0; r < above.length; r++) {
          slopes[q] -= lambda[r] * above[r];
        }
      }
      return slopes;
    }
  }
}

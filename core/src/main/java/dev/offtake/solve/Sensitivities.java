package dev.offtake.solve;

import dev.offtake.network.Equations;
import dev.offtake.part.Conditions;
import dev.offtake.sparse.SparseLu;
import java.util.Arrays;
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

  private Sensitivities(Equations equations, SparseLu factors) {
    this.equations = equations;
    this.factors = factors;
    state = equations.evaluation().variables.clone();
    above = new double[equations.size()];
    below = new double[equations.size()];
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
    double[] slopes = new double[state.length];
    double[] x = equations.evaluation().variables;
    change.put(equations, change.up(), above);
    System.arraycopy(x, 0, slopes, 0, x.length);
    change.put(equations, -change.down(), below);
    double width = change.up() + change.down();
    for (int v = 0; v < x.length; v++) {
      slopes[v] = (slopes[v] - x[v]) / width;
    }
    for (int r = 0; r < above.length; r++) {
      above[r] = (below[r] - above[r]) / width;
    }
    change.put(equations, 0, below);
    factors.solve(above, below);
    for (int c = 0; c < below.length; c++) {
      slopes[equations.variableOf(c)] = below[c];
    }
    return slopes;
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
      change.put(equations, change.up(), above);
      double moved = quantity.read(equations);
      change.put(equations, -change.down(), below);
      moved -= quantity.read(equations);
      for (int r = 0; r < above.length; r++) {
        moved -= lambda[r] * (above[r] - below[r]);
      }
      change.put(equations, 0, below);
      return moved / (change.up() + change.down());
    }
  }
}

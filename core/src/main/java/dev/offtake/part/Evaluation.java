package dev.offtake.part;

import dev.offtake.air.GasState;

/**
 * What elements read while they are evaluated: the air at the points, the variables, the parameters
 * in force, the discrete inputs, and the conditions outside. Owned by the network's equations;
 * elements keep no copy.
 */
public final class Evaluation {
  /** Air at each point, refreshed before the elements are evaluated. */
  public final GasState[] gas;

  /** Values of all variables: ln(p/1 bar), K, and the logarithm of sensed static pressures. */
  public final double[] variables;

  /** Values of all parameters, SI; a fault is a set of changed values in here. */
  public final double[] parameters;

  /** Discrete inputs that logic and memory decide. */
  public final double[] controls;

  /** Conditions outside. */
  public Conditions conditions;

  /**
   * Share of its pressure above the air outside that every source gives: 1, except while a solver
   * lets the air in slowly.
   */
  public double rise = 1;

  /**
   * Makes the record for a network of a given size.
   *
   * @param gas air at each point
   * @param variables as many as the network has
   * @param parameters as many as the network has
   * @param controls as many as the network has
   * @param conditions conditions to start with
   */
  public Evaluation(
      GasState[] gas,
      double[] variables,
      double[] parameters,
      double[] controls,
      Conditions conditions) {
    this.gas = gas;
    this.variables = variables;
    this.parameters = parameters;
    this.controls = controls;
    this.conditions = conditions;
  }
}

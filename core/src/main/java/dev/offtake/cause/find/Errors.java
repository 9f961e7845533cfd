package dev.offtake.cause.find;

import dev.offtake.system.BleedSystem;
import dev.offtake.system.ModelError;

/**
 * How far forecasts of a system may be from an engine that is as it should be.
 *
 * @param model what the file says, or what is assumed
 */
record Errors(ModelError model) {
  /**
   * Pressure of which the share is taken at least, Pa (10 psi): no forecast gets better without end
   * towards the pressure of the air outside. An assumption.
   */
  static final double LEAST = 10 * 6894.757;

  static Errors of(BleedSystem system) {
    return new Errors(system.modelError());
  }

  /**
   * What is left of the errors from one instant of a recording to another: most of what a model has
   * wrong it has wrong all along, see {@link Unknown.Channel}. A third is an assumption.
   */
  static Errors along(BleedSystem system) {
    ModelError whole = system.modelError();
    return new Errors(whole.with(whole.pressure() / 3, whole.temperature() / 3));
  }

  /** The pressure of which the share is taken, Pa. */
  static double counted(double gauge) {
    return Math.max(LEAST, Math.abs(gauge));
  }

  /** Standard deviation of a gauge pressure, Pa. */
  double pressure(double gauge) {
    return model.pressure() * counted(gauge);
  }

  /** Standard deviation of a temperature, K. */
  double temperature() {
    return model.temperature();
  }

  /**
   * Standard deviation of something that is watched.
   *
   * @param temperature whether it is a temperature
   * @param value K, or Pa above the air outside
   */
  double of(boolean temperature, double value) {
    return temperature ? temperature() : pressure(value);
  }
}

package dev.offtake.system;

/**
 * How far a forecast may be from an engine that is as it should be: what simple laws and worn
 * engines leave, gauges left out.
 *
 * @param pressure standard deviation as a share of a gauge pressure
 * @param temperature standard deviation, K
 * @param source where both are from; empty for none
 * @param statedPressure whether the file gives it, else it is assumed
 * @param statedTemperature whether the file gives it, else it is assumed
 */
public record ModelError(
    double pressure,
    double temperature,
    String source,
    boolean statedPressure,
    boolean statedTemperature) {

  /** What is taken where a file says nothing, 3 % and 15 °F: assumptions. */
  public static final ModelError USUAL = new ModelError(0.03, 15 / 1.8, "", false, false);

  /** Whether anything of it is assumed. */
  public boolean assumed() {
    return !statedPressure || !statedTemperature;
  }

  /** The same with values from another source, NaN where that tells none. */
  public ModelError with(double otherPressure, double otherTemperature) {
    return new ModelError(
        Double.isNaN(otherPressure) ? pressure : otherPressure,
        Double.isNaN(otherTemperature) ? temperature : otherTemperature,
        source,
        statedPressure,
        statedTemperature);
  }
}

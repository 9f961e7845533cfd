package dev.offtake.study.effect;

import dev.offtake.quantity.Dimension;
import dev.offtake.severity.Criterion;

/**
 * One thing that a failure leads to.
 *
 * @param criterion what it is
 * @param place part or point that it happens to; empty where it is the system
 * @param flow kg/s that matters here; NaN where none does
 * @param healthyFlow the same in the healthy system
 * @param value what a limit is compared with, K or Pa absolute, or the temperature of the flow, K;
 *     NaN where there is none
 * @param limit what is passed, in the same unit; NaN where there is none
 * @param dimension of value and limit
 */
public record Finding(
    Criterion criterion,
    String place,
    double flow,
    double healthyFlow,
    double value,
    double limit,
    Dimension dimension) {

  /** A finding without numbers. */
  static Finding plain(Criterion criterion, String place) {
    return new Finding(
        criterion, place, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Dimension.TEMPERATURE);
  }

  /** A finding about a flow of air of a temperature. */
  static Finding flow(
      Criterion criterion, String place, double flow, double healthy, double temperature) {
    return new Finding(
        criterion, place, flow, healthy, temperature, Double.NaN, Dimension.TEMPERATURE);
  }

  /** A finding about a limit that is passed. */
  static Finding limit(
      Criterion criterion, String place, double value, double limit, Dimension dimension) {
    return new Finding(criterion, place, Double.NaN, Double.NaN, value, limit, dimension);
  }
}

package dev.offtake.measure.cases;

import java.util.List;

/** How far readings without noise lie from healthy ones. */
final class Distance {
  private final Healthy healthy;

  Distance(Healthy healthy) {
    this.healthy = healthy;
  }

  /** What is shown at each occasion: by occasion and item of the schedule. */
  record Shown(List<double[]> values) {}

  /** Sigmas between what two plants show on the same run. */
  double between(Schedule schedule, Shown one, Shown other) {
    return Spread.of(healthy, schedule).between(one, other);
  }
}

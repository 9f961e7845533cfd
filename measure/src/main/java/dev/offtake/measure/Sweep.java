package dev.offtake.measure;

import dev.offtake.part.Conditions;

/** Power moved up and down in even steps, without end. */
final class Sweep {
  private final Conditions[] stations;
  private int at;
  private int stride = 1;

  private Sweep(Conditions[] stations) {
    this.stations = stations;
  }

  /** The twin's engines from idle to full power and back, by 0.04 % of core speed each time. */
  static Sweep of(Twin twin) {
    Conditions[] stations = new Conditions[991];
    for (int i = 0; i < stations.length; i++) {
      stations[i] = twin.at(0.6 + 0.0004 * i).conditions();
    }
    return new Sweep(stations);
  }

  /** Around 80 %, by 0.04 % each time, on a standard day. */
  static Sweep around80() {
    Conditions[] stations = new Conditions[101];
    for (int i = 0; i < stations.length; i++) {
      stations[i] = Conditions.standardDay(0.78 + 0.0004 * i, 0.5);
    }
    return new Sweep(stations);
  }

  /** Number of states from one end to the other. */
  int length() {
    return stations.length;
  }

  /** Number of the present state from the lower end. */
  int station() {
    return at;
  }

  Conditions next() {
    if (at == 0) {
      stride = 1;
    } else if (at == stations.length - 1) {
      stride = -1;
    }
    at += stride;
    return stations[at];
  }
}

package dev.offtake.measure.cases;

import java.util.HashMap;
import java.util.Map;

/**
 * All numbers of one plant.
 *
 * @param values by part and knob; what is not in here has the knob's usual value
 */
public record Knobs(Map<Key, Double> values) {
  /** Keeps its values. */
  public Knobs {
    values = Map.copyOf(values);
  }

  /** A knob of a part. */
  record Key(String part, Knob knob) {}

  /** The value of a knob. */
  double get(String part, Knob knob) {
    return values.getOrDefault(new Key(part, knob), knob.usual());
  }

  /** Whether a knob is turned on, 1, or not, 0. */
  boolean on(String part, Knob knob) {
    return get(part, knob) > 0.5;
  }

  /** The same with another value. */
  Knobs with(String part, Knob knob, double value) {
    return with(Map.of(new Key(part, knob), value));
  }

  /** The same with other values. */
  Knobs with(Map<Key, Double> others) {
    Map<Key, Double> all = new HashMap<>(values);
    all.putAll(others);
    return new Knobs(all);
  }

  /** The same with something added. */
  Knobs plus(String part, Knob knob, double more) {
    return with(part, knob, get(part, knob) + more);
  }

  /** The same with a factor. */
  Knobs times(String part, Knob knob, double factor) {
    return with(part, knob, get(part, knob) * factor);
  }
}

package dev.offtake.explain;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.stability.Mode;
import dev.offtake.stability.Stability;

/** A {@link Stability} as JSON. */
final class StabilityJson {
  /** Modes that fade without a swing are told up to this many, the slowest first. */
  private static final int SLOWEST = 8;

  private StabilityJson() {}

  /** Writes verdict, sentences, and the modes that grow, that swing or are the slowest. */
  static void put(ObjectNode node, Stability stability) {
    node.put("verdict", stability.verdict().words());
    ArrayNode says = node.putArray("says");
    stability.says().forEach(says::add);
    ArrayNode modes = node.putArray("modes");
    int told = 0;
    for (Mode mode : stability.modes()) {
      if (told < SLOWEST || mode.circular() > 0) {
        put(modes.addObject(), mode);
        told++;
      }
    }
  }

  private static void put(ObjectNode node, Mode mode) {
    node.put("growth 1/s", mode.growth());
    node.put("frequency Hz", mode.frequency());
    node.put("damping", mode.damping());
    node.put("time constant s", mode.timeConstant());
    node.put("driver", mode.driver());
  }
}

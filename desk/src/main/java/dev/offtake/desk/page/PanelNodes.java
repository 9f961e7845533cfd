package dev.offtake.desk.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.explain.Panel;
import org.jspecify.annotations.Nullable;

/** What gauges and lights show. */
final class PanelNodes {
  private PanelNodes() {}

  /**
   * Fills needles, lights and engine gauges.
   *
   * @param root of the state
   * @param panel of the state
   * @param before of the healthy one; null when nothing is broken or it has no answer
   */
  static void fill(ObjectNode root, Panel panel, @Nullable Panel before) {
    ArrayNode needles = root.putArray("needles");
    for (Panel.Needle needle : panel.needles()) {
      ObjectNode node = needles.addObject();
      node.put("gauge", needle.gauge()).put("mark", needle.mark()).put("reads", needle.reads());
      node.put("shows", needle.value()).put("says", needle.says()).put("pegged", needle.pegged());
      node.put("seen", needle.seen());
      was(node, needle, before);
    }
    ArrayNode lights = root.putArray("lights");
    for (int i = 0; i < panel.lights().size(); i++) {
      Panel.Lamp lamp = panel.lights().get(i);
      ObjectNode node = lights.addObject();
      node.put("name", lamp.name()).put("lit", lamp.lit()).put("because", lamp.because());
      if (before != null
          && i < before.lights().size()
          && before.lights().get(i).lit() != lamp.lit()) {
        node.put("was", before.lights().get(i).lit() ? "lit" : "out");
      }
    }
    ArrayNode engine = root.putArray("engine");
    for (Panel.Engine gauge : panel.engine()) {
      engine
          .addObject()
          .put("gauge", gauge.name())
          .put("says", gauge.says())
          .put("because", gauge.because());
    }
  }

  private static void was(ObjectNode node, Panel.Needle needle, @Nullable Panel before) {
    if (before == null) {
      return;
    }
    before.needles().stream()
        .filter(n -> n.gauge().equals(needle.gauge()) && n.mark().equals(needle.mark()))
        .findFirst()
        .ifPresent(n -> PointNodes.differs(node, "was", needle.says(), n.says()));
  }
}

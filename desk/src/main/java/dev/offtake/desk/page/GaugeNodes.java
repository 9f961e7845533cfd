package dev.offtake.desk.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.part.Facts;
import dev.offtake.part.Gauge;
import dev.offtake.part.Part;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.quantity.Unit;
import dev.offtake.quantity.Units;
import dev.offtake.system.BleedSystem;
import java.util.List;

/** The faces of gauges, with their real scales, as the page is sent them. */
final class GaugeNodes {
  /** Distances of printed marks, in units of a scale. */
  private static final List<Double> NICE =
      List.of(0.05, 0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0);

  /** So many printed marks fit on a face. */
  private static final int ROOM = 10;

  private GaugeNodes() {}

  /** One for each gauge, in the order of the file. */
  static void fill(ArrayNode gauges, BleedSystem system, Style style) {
    for (Part part : system.parts()) {
      if (part instanceof Gauge gauge && !gauge.needles().isEmpty()) {
        one(gauges.addObject(), gauge, system, style);
      }
    }
  }

  private static void one(ObjectNode node, Gauge gauge, BleedSystem system, Style style) {
    Dimension dimension = gauge.dimension();
    Unit unit = Units.find(style.unit(dimension), dimension).orElseThrow();
    node.put("name", gauge.name()).put("seen", gauge.seen());
    node.put("temperature", gauge.temperature()).put("unit", unit.symbol());
    String side = SystemDocument.side(system, gauge.name());
    if (!side.isEmpty()) {
      node.put("side", side);
    }
    double low = unit.fromSi(gauge.scale().low());
    double high = unit.fromSi(gauge.scale().high());
    if (Double.isFinite(low) && Double.isFinite(high)) {
      node.put("low", round(low)).put("high", round(high));
      marks(node.putArray("marks"), round(low), round(high));
    }
    if (gauge.step() > 0) {
      node.put("step", round(gauge.step() / unit.factor()));
    }
    ArrayNode needles = node.putArray("needles");
    for (Facts.Needle needle : gauge.needles()) {
      needles
          .addObject()
          .put("mark", needle.mark())
          .put("reads", needle.reads().point())
          .put("key", needle.reads().name());
    }
  }

  private static void marks(ArrayNode marks, double low, double high) {
    double wanted = (high - low) / ROOM;
    double apart = NICE.stream().filter(nice -> nice >= wanted).findFirst().orElse(wanted);
    for (int i = (int) Math.ceil(low / apart - 1e-9); i * apart <= high + 1e-9 * apart; i++) {
      marks.add(round(i * apart));
    }
  }

  /** Without what rounding of units leaves behind. */
  private static double round(double value) {
    return Math.rint(value * 1e6) / 1e6;
  }
}

package dev.offtake.desk.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.part.Extent;
import dev.offtake.part.Mode;
import dev.offtake.part.Part;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.quantity.Style;
import dev.offtake.quantity.Unit;
import dev.offtake.quantity.Units;
import dev.offtake.study.Fault;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/**
 * A way in which a part can fail, as the page is sent it.
 *
 * @param part which fails
 * @param mode how
 * @param style units
 */
record ModeDocument(Part part, Mode mode, Style style) {
  /** Steps between the least extent and the most, the ends included. */
  private static final int STEPS = 9;

  /** Where the most is so many times the least, each step is so many times the last one. */
  private static final double WIDE = 20;

  /** So many times the least step is the most, where the least extent is nothing. */
  private static final double MOST_WIDE = 1000;

  void fill(ObjectNode node) {
    Fault usual = Fault.usual(part, mode);
    node.put("name", mode.name()).put("says", mode.means()).put("unit", mode.unit());
    node.put("words", usual.name());
    if (!mode.noticed().isEmpty()) {
      node.put("noticed", mode.noticed());
    }
    if (mode.traits().contains(Mode.Trait.MOVING)) {
      node.put("moving", true);
    }
    Extent extent = mode.extent();
    if (extent != null) {
      extent(node.putObject("extent"), extent);
    }
  }

  private void extent(ObjectNode node, Extent extent) {
    node.put("low", extent.least()).put("high", extent.most()).put("usual", extent.usual());
    node.put("unit", style.unit(extent.dimension())).put("of", extent.says());
    ArrayNode steps = node.putArray("steps");
    List<String> told = new ArrayList<>();
    for (double value : values(extent)) {
      String number = style.print(value, extent.dimension());
      if (!told.contains(number) && possible(extent, number)) {
        told.add(number);
        ObjectNode step = steps.addObject();
        step.put("words", part.name() + " " + mode.name() + " " + number);
        step.put("says", Fault.print(extent, value, style));
        if (value == extent.usual()) {
          step.put("usual", true);
        }
      }
    }
  }

  /** From the least to the most, round numbers; the usual one in place of its nearest. */
  private List<Double> values(Extent extent) {
    boolean wide = extent.dimension() != Dimension.SHARE && extent.most() > WIDE * extent.least();
    double start = wide ? Math.max(extent.least(), extent.most() / MOST_WIDE) : extent.least();
    List<Double> values = new ArrayList<>();
    int nearest = 0;
    for (int i = 0; i < STEPS; i++) {
      double share = (double) i / (STEPS - 1);
      double value =
          wide
              ? start * Math.pow(extent.most() / start, share)
              : start + share * (extent.most() - start);
      values.add(Math.max(extent.least(), Math.min(extent.most(), round(value, extent))));
      double best = Math.abs(values.get(nearest) - extent.usual());
      nearest = Math.abs(value - extent.usual()) < best ? i : nearest;
    }
    values.set(nearest, extent.usual());
    return values;
  }

  /** To two figures in the unit that is shown. */
  private double round(double value, Extent extent) {
    Unit unit = Units.find(style.unit(extent.dimension()), extent.dimension()).orElseThrow();
    BigDecimal shown = BigDecimal.valueOf(unit.fromSi(value)).round(new MathContext(2));
    return unit.toSi(shown.doubleValue());
  }

  /** Whether a text is read as an extent that the mode can have. */
  private static boolean possible(Extent extent, String text) {
    try {
      return extent.holds(QuantityReader.read(text, extent.dimension()).nominal());
    } catch (QuantityProblem none) {
      return false;
    }
  }
}

package dev.offtake.solve;

import dev.offtake.part.View;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;

/** A view that prints in one style, wherever its numbers come from. */
interface PrintedView extends View {
  /** Units to print in. */
  Style style();

  @Override
  default String gauge(double pa) {
    return gaugeOf(pa - conditions().ambientP());
  }

  @Override
  default String gaugeOf(double paAbove) {
    return style().print(paAbove, Dimension.GAUGE_PRESSURE);
  }

  @Override
  default String difference(double pa) {
    return style().print(pa, Dimension.PRESSURE_DIFFERENCE);
  }

  @Override
  default String temperature(double kelvin) {
    return style().print(kelvin, Dimension.TEMPERATURE);
  }

  @Override
  default String print(double si, Dimension dimension) {
    return style().print(si, dimension);
  }

  @Override
  default String massFlow(double kgPerSecond) {
    return style().print(kgPerSecond, Dimension.MASS_FLOW);
  }
}

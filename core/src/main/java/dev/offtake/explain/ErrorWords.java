package dev.offtake.explain;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.system.ModelError;

/** A model error in words. */
final class ErrorWords {
  private ErrorWords() {}

  static String of(ModelError error, Style style) {
    return pressure(error.pressure(), style)
        + " and "
        + style.print(error.temperature(), Dimension.TEMPERATURE_DIFFERENCE);
  }

  static String pressure(double share, Style style) {
    return style.print(share, Dimension.SHARE) + " of a gauge pressure";
  }
}

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

  /** What that stands on. */
  static String standing(ModelError error) {
    String from = error.source().isEmpty() ? " (your file)" : " (" + error.source() + ")";
    return error.assumed()
        ? (error.statedPressure() || error.statedTemperature() ? from : "")
            + " until a match of a healthy run tells better"
        : from;
  }

  static String pressure(double share, Style style) {
    return style.print(share, Dimension.SHARE) + " of a gauge pressure";
  }
}

package dev.offtake.study;

import dev.offtake.part.Extent;
import dev.offtake.part.Mode;
import dev.offtake.part.Part;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A part that has failed in one way, to one extent.
 *
 * @param part the part while it was healthy
 * @param mode how it has failed
 * @param extent how far, SI; 1 for a mode without extent
 */
public record Fault(Part part, Mode mode, double extent) {
  /** A fault to the usual extent. */
  public static Fault usual(Part part, Mode mode) {
    return new Fault(part, mode, mode.usualExtent());
  }

  /** The same fault to another extent, SI. */
  public Fault to(double other) {
    return new Fault(part, mode, other);
  }

  /** Part and mode without the extent: {@code left mid check valve stuck}. */
  public String name() {
    return part.name() + " " + mode.name();
  }

  /** The fault in words, extent included: {@code left mid check valve stuck 33 % open}. */
  public String words(Style style) {
    @Nullable Extent asks = mode.extent();
    return asks == null ? name() : name() + " " + print(asks, extent, style);
  }

  /** From the least to the most extent, with its unit and what it is once. */
  public static String range(Extent asks, Style style) {
    String most = print(asks, asks.most(), style);
    if (asks.dimension() == Dimension.SHARE) {
      return String.format(Locale.ROOT, "%.0f to ", 100 * asks.least()) + most;
    }
    return style.number(asks.least(), asks.dimension()) + " to " + most;
  }

  /** An extent in the units of the shop. */
  public static String print(Extent asks, double extent, Style style) {
    if (asks.dimension() == Dimension.SHARE) {
      String says = asks.says().startsWith("share ") ? asks.says().substring(6) : asks.says();
      return String.format(Locale.ROOT, "%.0f %% %s", 100 * extent, says);
    }
    String number = style.print(extent, asks.dimension());
    return asks.dimension() == Dimension.NUMBER ? number + " " + asks.says() : number;
  }
}

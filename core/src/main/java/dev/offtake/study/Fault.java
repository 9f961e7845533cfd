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

  /** From the least to the most extent: {@code 2 to 98 %}, {@code 0.02 to 12.57 in²}. */
  public static String range(Extent asks, Style style) {
    if (asks.dimension() == Dimension.SHARE) {
      return String.format(Locale.ROOT, "%.0f to %.0f %%", 100 * asks.least(), 100 * asks.most());
    }
    String least = style.number(asks.least(), asks.dimension());
    return least + " to " + style.print(asks.most(), asks.dimension());
  }

  /** What an extent is a share or a number of: {@code open}, {@code times slower}. */
  static String of(Extent asks) {
    return asks.says().startsWith("share ") ? asks.says().substring(6) : asks.says();
  }

  /** An extent in the units of the shop. */
  public static String print(Extent asks, double extent, Style style) {
    if (asks.dimension() == Dimension.SHARE) {
      return String.format(Locale.ROOT, "%.0f %% %s", 100 * extent, of(asks));
    }
    String number = style.print(extent, asks.dimension());
    return asks.dimension() == Dimension.NUMBER ? number + " " + asks.says() : number;
  }
}

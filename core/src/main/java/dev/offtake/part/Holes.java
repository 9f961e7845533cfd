package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.List;

/**
 * Failures that let air out: a place that leaks is added to the network, so that a healthy one has
 * no trace of it.
 *
 * <p>The extent is the area of the hole as a person would measure it; a sharp edge lets {@value
 * #SHARP} of it count (common practice, no source).
 */
final class Holes {
  /** Share of a hole that is effective. */
  static final double SHARP = 0.6;

  /** A square inch, m². */
  static final double IN2 = 0.0254 * 0.0254;

  /** Bore where none is known, m (4 in): an assumption. */
  private static final double USUAL_BORE = 4 * 0.0254;

  private static final double LEAST = 0.02 * IN2;
  private static final double USUAL = 0.5 * IN2;

  private Holes() {}

  /**
   * Area of a hole in something of a bore: from what is just found to a bore that is torn open.
   *
   * @param bore inner diameter, m; NaN when not known
   */
  static Extent extent(double bore) {
    double whole = Bore.area(bore > 0 ? bore : USUAL_BORE);
    double least = Math.min(LEAST, 0.005 * whole);
    return extent(least, Math.min(USUAL, 0.1 * whole), whole);
  }

  /** Area of a hole between bounds, m². */
  static Extent extent(double least, double usual, double most) {
    return new Extent("area of the hole", Dimension.AREA, least, usual, most);
  }

  /**
   * Makes a mode open a hole.
   *
   * @param mode with an extent of {@link #extent}
   * @param called what the hole is called behind the name of the part, such as {@code leak}
   * @param at point that leaks
   * @param into point into which it blows
   */
  static Mode opens(Mode mode, String called, String at, String into) {
    String behind = " " + called;
    return mode.rebuilds((part, twin) -> one(Leak.hole(part.name() + behind, at, into)))
        .shift(new Mode.Shift(behind, "area", (healthy, hole) -> SHARP * hole));
  }

  /** The same for a hole that opens only with the heat of the air at the point. */
  static Mode opensHot(Mode mode, String called, String at, String into) {
    String behind = " " + called;
    return mode.rebuilds((part, twin) -> one(HotHole.tight(part.name() + behind, at, into)))
        .shift(new Mode.Shift(behind, "area", (healthy, hole) -> SHARP * hole));
  }

  /** A clamp that is loose, hot or cold. */
  static Mode looseClamp(String unit, Extent extent, String at, String into) {
    return opens(clamp("clamp loose", unit, extent), "loose clamp", at, into)
        .perMillionHours(5)
        .inspected(Looks.CLAMP);
  }

  /** A clamp that is loose only when hot. */
  static Mode hotClamp(String unit, Extent extent, String at, String into) {
    Mode mode =
        Mode.named(
                "clamp loose when hot",
                unit,
                "The joint is tight cold and opens as it grows with heat")
            .extent(extent)
            .is(Mode.Trait.COMMON)
            .noticed("Hissing or a hot smell on a hot run; nothing on a cold one");
    return opensHot(mode, "loose clamp when hot", at, into)
        .perMillionHours(3)
        .inspected(Looks.HOT_RUN);
  }

  private static Mode clamp(String name, String unit, Extent extent) {
    return Mode.named(name, unit, "A clamp was not tightened or has worked loose")
        .extent(extent)
        .is(Mode.Trait.COMMON)
        .noticed("Hissing, a hot smell, soot or discoloured paint at the joint");
  }

  private static List<Part> one(Part hole) {
    return List.of(hole);
  }
}

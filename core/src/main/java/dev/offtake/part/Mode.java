package dev.offtake.part;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * One way in which a part can fail.
 *
 * <p>A failure is a set of changed numbers ({@link Shift}); where numbers are not enough, the parts
 * concerned are rebuilt first ({@link Rebuild}), so that the numbers of what was rebuilt can be
 * shifted by the extent. A mode that stands in a definite place (stuck shut, flapper missing) has
 * no extent.
 *
 * @param name words of the shop, such as {@code stuck open}; never the beginning of the name of
 *     another mode of the same part followed by an extent
 * @param unit removable unit that has failed
 * @param means what has happened physically, one sentence without a full stop
 * @param extent how far it may go; null for a mode without one
 * @param shifts what changes
 * @param rebuild what is built differently; null when numbers are enough
 * @param rate failures for each hour of running: an order of magnitude, an assumption
 * @param noticed what a person may notice without gauges, one sentence without a full stop; empty
 *     when nothing
 * @param inspection how it is looked for
 * @param traits what else is true of it
 */
public record Mode(
    String name,
    String unit,
    String means,
    @Nullable Extent extent,
    List<Shift> shifts,
    @Nullable Rebuild rebuild,
    double rate,
    String noticed,
    Inspection inspection,
    List<Trait> traits) {

  /** Rate of a mode whose order of magnitude is not told, 1/h. */
  private static final double USUAL_RATE = 1e-6;

  private static final Inspection NONE =
      Inspection.look("Remove it and test it by its own manual", Access.REMOVED, 30);

  /** Keeps its lists. */
  public Mode {
    shifts = List.copyOf(shifts);
    traits = List.copyOf(traits);
  }

  /** What else is true of a mode. */
  public enum Trait {
    /** One cause may bring it on both sides at once: a batch, a shop visit, weather, dirt. */
    COMMON,
    /** Shows only while power moves: a state at rest is that of a healthy part. */
    MOVING,
    /** Leaves pieces in the air stream, which have to be accounted for. */
    PIECES
  }

  /**
   * A number that changes.
   *
   * @param part what is added to the name of the failed part to name the one whose number it is;
   *     empty for its own
   * @param parameter name of the number
   * @param becomes its value when broken
   */
  public record Shift(String part, String parameter, Becomes becomes) {}

  /** The value of a number when broken. */
  @FunctionalInterface
  public interface Becomes {
    /**
     * Tells the value.
     *
     * @param healthy the number of the healthy part, SI
     * @param extent how far the failure goes, SI; 1 for a mode without extent
     */
    double of(double healthy, double extent);
  }

  /** Builds parts differently or adds parts. */
  @FunctionalInterface
  public interface Rebuild {
    /**
     * Builds.
     *
     * @param part the failed part
     * @param twin the same part of the other side; null where there is none
     * @return parts that take the place of those of the same name, and parts to be added; empty
     *     where the mode is not possible
     */
    List<Part> of(Part part, @Nullable Part twin);
  }

  /** A mode that still changes nothing, with an extent in reach of {@link #extent(Extent)}. */
  public static Mode named(String name, String unit, String means) {
    return new Mode(name, unit, means, null, List.of(), null, USUAL_RATE, "", NONE, List.of());
  }

  /** The same mode with an extent. */
  public Mode extent(Extent given) {
    return new Mode(name, unit, means, given, shifts, rebuild, rate, noticed, inspection, traits);
  }

  /** The same mode with another number of its own part that becomes what the extent tells. */
  public Mode puts(String parameter, DoubleUnaryOperator byExtent) {
    return shift(new Shift("", parameter, (healthy, extent) -> byExtent.applyAsDouble(extent)));
  }

  /** The same mode with another number of its own part that takes a fixed value. */
  public Mode puts(String parameter, double value) {
    return shift(new Shift("", parameter, (healthy, extent) -> value));
  }

  /** The same mode with another number of its own part that moves away from the healthy one. */
  public Mode moves(String parameter, Becomes becomes) {
    return shift(new Shift("", parameter, becomes));
  }

  /** The same mode with another changed number. */
  public Mode shift(Shift another) {
    List<Shift> all = new ArrayList<>(shifts);
    all.add(another);
    return new Mode(name, unit, means, extent, all, rebuild, rate, noticed, inspection, traits);
  }

  /** The same mode, for which parts are built differently. */
  public Mode rebuilds(Rebuild given) {
    return new Mode(name, unit, means, extent, shifts, given, rate, noticed, inspection, traits);
  }

  /** The same mode, which strikes so often in a million hours (an assumption). */
  public Mode perMillionHours(double failures) {
    return new Mode(
        name, unit, means, extent, shifts, rebuild, failures * 1e-6, noticed, inspection, traits);
  }

  /** The same mode with what a person may notice without gauges. */
  public Mode noticed(String given) {
    return new Mode(name, unit, means, extent, shifts, rebuild, rate, given, inspection, traits);
  }

  /** The same mode with how it is looked for. */
  public Mode inspected(Inspection given) {
    return new Mode(name, unit, means, extent, shifts, rebuild, rate, noticed, given, traits);
  }

  /** The same mode, of which something else is true as well. */
  public Mode is(Trait trait) {
    List<Trait> all = new ArrayList<>(traits);
    all.add(trait);
    return new Mode(name, unit, means, extent, shifts, rebuild, rate, noticed, inspection, all);
  }

  /** Extent that is taken when nobody says one; 1 for a mode without. */
  public double usualExtent() {
    return extent == null ? 1 : extent.usual();
  }
}

package dev.offtake.cause.find;

import dev.offtake.part.Extent;
import dev.offtake.quantity.Dimension;
import dev.offtake.study.Fault;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Something that can be wrong: one failure, or several at once. Without any it is a sound system.
 *
 * @param faults what has failed, each to its usual extent
 * @param common whether one cause brings all of them to the same extent
 */
public record Cause(List<Fault> faults, boolean common) {
  /** Nothing is wrong. */
  public static final Cause NOTHING = new Cause(List.of(), false);

  /** Keeps its list. */
  public Cause {
    faults = List.copyOf(faults);
  }

  /** One failure. */
  public static Cause of(Fault fault) {
    return new Cause(List.of(fault), false);
  }

  /** Two failures that have nothing to do with each other. */
  public static Cause of(Fault one, Fault two) {
    return new Cause(List.of(one, two), false);
  }

  /** Names of the failures without their extents. */
  public String name() {
    return faults.stream().map(Fault::name).collect(Collectors.joining(" and "));
  }

  /** How many extents are free. */
  int extents() {
    if (common) {
      return faults.isEmpty() || faults.get(0).mode().extent() == null ? 0 : 1;
    }
    return (int) faults.stream().filter(fault -> fault.mode().extent() != null).count();
  }

  /**
   * The failures to other extents.
   *
   * @param at for each free extent its place between the least and the most, 0 to 1, by ratio where
   *     it has a least
   */
  public List<Fault> at(double... at) {
    int[] next = {0};
    return faults.stream()
        .map(
            fault -> {
              Extent extent = fault.mode().extent();
              if (extent == null) {
                return fault;
              }
              double place = at[common ? 0 : next[0]++];
              return fault.to(extent(extent, place));
            })
        .toList();
  }

  /** The extent at a place between the least and the most. */
  static double extent(Extent extent, double place) {
    if (byRatio(extent)) {
      return extent.least() * Math.pow(extent.most() / extent.least(), place);
    }
    return extent.least() + place * (extent.most() - extent.least());
  }

  /** A size is as likely to be small as large, whatever its order; a place on a scale is not. */
  private static boolean byRatio(Extent extent) {
    boolean place =
        extent.dimension() == Dimension.GAUGE_PRESSURE
            || extent.dimension() == Dimension.ABSOLUTE_PRESSURE
            || extent.dimension() == Dimension.TEMPERATURE;
    return !place && extent.least() > 0;
  }
}

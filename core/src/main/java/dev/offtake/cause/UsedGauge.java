package dev.offtake.cause;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A test gauge that somebody brought.
 *
 * @param name how it is called in the readings
 * @param dimension difference of pressures or of temperatures that it tells; {@link
 *     Dimension#NUMBER} when nobody said what it measures
 * @param constant error that is the same at each of its readings, Pa or K; NaN when not said
 * @param each error that differs from reading to reading, Pa or K; NaN when not said
 * @param step distance of its marks, Pa or K; 0 when read to any digit
 * @param scale lowest and highest mark; empty when not said
 * @param due day until which its calibration holds; empty when not said
 * @param sharesSender gauge of the system whose sender it is fitted to, so that both share what is
 *     wrong with that sender; empty for one with its own
 * @param said what was written of it, for writing it again
 */
public record UsedGauge(
    String name,
    Dimension dimension,
    double constant,
    double each,
    double step,
    Optional<Stated> scale,
    Optional<LocalDate> due,
    String sharesSender,
    Said said) {

  /**
   * What was written of its error and its marks, each empty when it was not.
   *
   * @param goodTo plain error
   * @param constant constant part
   * @param each part that differs from reading to reading
   * @param step distance of its marks
   */
  public record Said(String goodTo, String constant, String each, String step) {
    static final Said NOTHING = new Said("", "", "", "");
  }

  /** A gauge of which only the name is known. */
  static UsedGauge named(String name) {
    return new UsedGauge(
        name,
        Dimension.NUMBER,
        Double.NaN,
        Double.NaN,
        0,
        Optional.empty(),
        Optional.empty(),
        "",
        Said.NOTHING);
  }

  /**
   * Whether its calibration no longer holds on a day.
   *
   * @param day when it was used; the due date itself still counts
   */
  public boolean overdue(LocalDate day) {
    return due.filter(day::isAfter).isPresent();
  }

  /** Whether it measures temperatures, else pressures, as far as anybody said. */
  boolean measures(boolean temperature) {
    return dimension == Dimension.NUMBER
        || temperature == (dimension == Dimension.TEMPERATURE_DIFFERENCE);
  }
}

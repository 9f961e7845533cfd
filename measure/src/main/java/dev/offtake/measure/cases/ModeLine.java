package dev.offtake.measure.cases;

import java.util.random.RandomGenerator;

/**
 * A failure mode of a part, as Offtake lists it.
 *
 * @param part full name
 * @param mode name of the mode
 * @param says what the extent is; empty without one
 * @param dimension name of what the extent measures; empty without one
 * @param least smallest extent, SI
 * @param most largest extent, SI
 * @param rate failures in a million hours
 */
public record ModeLine(
    String part,
    String mode,
    String says,
    String dimension,
    double least,
    double most,
    double rate) {

  /** Reads a line of the list. */
  static ModeLine of(String line) {
    String[] cells = line.split("\\|", -1);
    return new ModeLine(
        cells[0],
        cells[1],
        cells[2],
        cells[3],
        Double.parseDouble(cells[4]),
        Double.parseDouble(cells[5]),
        Double.parseDouble(cells[6]));
  }

  /** The line of the list. */
  public String line() {
    return String.join("|", part, mode, says, dimension, "" + least, "" + most, "" + rate);
  }

  /** Part and mode. */
  public String name() {
    return part + " " + mode;
  }

  /** Whether it has an extent. */
  public boolean hasExtent() {
    return !says.isEmpty();
  }

  /**
   * Draws an extent, SI: each power of ten alike from just visible to the most; a pressure that was
   * trapped has no size and is drawn evenly. 1 without an extent.
   */
  double extent(RandomGenerator chance) {
    if (!hasExtent()) {
      return 1;
    }
    double share = chance.nextDouble();
    boolean place = dimension.equals("GAUGE_PRESSURE") || dimension.equals("ABSOLUTE_PRESSURE");
    return place || least <= 0
        ? least + share * (most - least)
        : least * Math.pow(most / least, share);
  }
}

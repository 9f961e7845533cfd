package dev.offtake.study;

import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import dev.offtake.solve.Setup;

/**
 * A number of a part and the distances from its value to the two ends of its band.
 *
 * @param part number of the part
 * @param which position of the number among the part's parameters
 * @param number the same by name
 * @param value in force, SI
 * @param end the end that is looked at; 0 when the number has no band
 * @param opposite the other
 */
record Band(
    int part, int which, Setup.PartNumber number, double value, double end, double opposite) {

  /** The band of a number. */
  static Band of(Part owner, int part, int which) {
    Parameter p = owner.parameters().get(which);
    double above = p.high() - p.value();
    double below = p.low() - p.value();
    Setup.PartNumber number = new Setup.PartNumber(owner.name(), p.name());
    return above > 0
        ? new Band(part, which, number, p.value(), above, below)
        : new Band(part, which, number, p.value(), below, above);
  }
}

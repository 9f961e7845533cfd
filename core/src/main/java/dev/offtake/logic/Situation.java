package dev.offtake.logic;

/**
 * What a condition may ask: how things stand, and what values are. Names are full names, sides
 * unfolded.
 */
public interface Situation {
  /**
   * Tells whether a switch, trip, light or valve stands in a named position.
   *
   * @param subject full name, such as {@code left bleed switch}
   * @param position a position of that subject, such as {@code OFF} or {@code tripped}
   * @return true when it stands so
   */
  boolean is(String subject, String position);

  /**
   * The present value of something that can be measured.
   *
   * @param subject full name, such as {@code left duct pressure}
   * @return value in SI units; pressures in Pa absolute, temperatures in K, speeds as a fraction
   */
  double value(String subject);

  /**
   * The pressure of the air outside, against which gauge pressures count.
   *
   * @return Pa absolute
   */
  double ambientPressure();
}

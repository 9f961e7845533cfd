package dev.offtake.study;

/** How far a crossing moves along the core speed when a number stands at the end of its band. */
@FunctionalInterface
interface Shifts {
  /**
   * The shift.
   *
   * @param band the number; the end that is looked at
   * @return a fraction of core speed
   */
  double of(Band band);
}

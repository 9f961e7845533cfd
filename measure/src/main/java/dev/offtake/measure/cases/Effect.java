package dev.offtake.measure.cases;

import java.util.random.RandomGenerator;

/** What a failure turns. */
@FunctionalInterface
interface Effect {
  /**
   * Breaks a plant.
   *
   * @param knobs the healthy plant
   * @param part full name of the part
   * @param x extent, SI
   * @param chance decides what the name of the mode leaves open, such as which flange leaks
   */
  Knobs turn(Knobs knobs, String part, double x, RandomGenerator chance);
}

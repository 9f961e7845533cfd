package dev.offtake.part;

/**
 * What a part is there for, so that an answer can be put in order without knowing kinds by name.
 */
public enum Role {
  /** Gives air: a compressor tap, a ground supply. */
  SOURCE,
  /** Opens and shuts. */
  VALVE,
  /** Takes air for a purpose. */
  USER,
  /** Lets air through: ducts, bends, exchangers, leaks. */
  PASSAGE,
  /** Only watches: gauges, lights, trips, thermostats. */
  WATCH
}

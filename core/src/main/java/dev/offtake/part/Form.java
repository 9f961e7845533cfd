package dev.offtake.part;

/** What the value of a key looks like in a system file. */
public enum Form {
  /**
   * One quantity with its tolerance and source, or several statements of it: {@code 32 psig +/- 3;
   * SD p.7}.
   */
  QUANTITY,
  /** A quantity that holds at a condition: {@code 0..0.2 lb/min at 30 psid}. */
  QUANTITY_AT,
  /**
   * One or several quantities, each with its condition: {@code 52 lb/min when pack switch is ON}.
   */
  QUANTITY_WHEN,
  /** A limit with an optional delay: {@code 490 degF for 3 s}. */
  LIMIT,
  /** What happens below a limit: {@code shuts below 8 psig}. */
  BELOW,
  /**
   * How a latch comes back: {@code by hand}, {@code by hand below 440 degF}, {@code by itself below
   * 50 psig}.
   */
  RESET,
  /** The name of a day, {@code standard day} included. */
  DAY,
  /** The name of a point: {@code mid duct}. */
  POINT,
  /** The name of a point that is only spoken of: no air gets there through the part. */
  ZONE,
  /** What is measured at a point: {@code duct pressure}, {@code duct temperature}. */
  READING,
  /**
   * Two points joined by a part: {@code mid duct -> interstage} or {@code left duct <-> right
   * duct}.
   */
  PATH,
  /** A condition: {@code bleed switch is OFF or overheat trip is tripped}. */
  CONDITION,
  /** One of a few words. */
  CHOICE,
  /** The name of another part. */
  PART,
  /** The name of a switch whose first position means that electrical power is there. */
  BUS,
  /** Rows of numbers under named columns. */
  TABLE,
  /** Needles of a gauge, each with what it reads. */
  NEEDLES,
  /** Any words. */
  TEXT
}

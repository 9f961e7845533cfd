package dev.offtake.part;

/**
 * What it takes to get at a removable unit for a look or a measurement. The minutes are those of
 * getting there and closing up again: paid once, however much is looked at.
 *
 * <p>All minutes are common practice, no source: an order of magnitude, to put checks in order.
 */
public enum Access {
  /** From the flight deck, everything closed. */
  FLIGHT_DECK("from the flight deck", 5, ""),
  /** An engine run, cowls closed. */
  ENGINE_RUN("on an engine run", 45, "Stay out of the inlet and exhaust areas; run crew only."),
  /** A test port or connector behind a small door. */
  TEST_PORT(
      "at the test port",
      15,
      "Fit and remove the test gauge with the engine shut down and the duct depressurised."),
  /** Cowls open, engine shut down and cooled. */
  COWLS(
      "cowls open",
      30,
      "Engine shut down, duct depressurised and proved with a gauge, bleed and start switches"
          + " tagged, parts cool to the touch."),
  /** The unit comes off its duct. */
  REMOVED(
      "removed from its duct",
      90,
      "Engine shut down, every supply off and tagged, duct depressurised and proved with a gauge;"
          + " stand clear of the clamp as it is released."),
  /** The unit is on the test bench. */
  BENCH(
      "on the valve bench",
      180,
      "Follow the bench's own procedure: guard shut, hose restraints fitted, eyes and ears"
          + " protected; stand clear of outlets.");

  private final String words;
  private final double minutes;
  private final String caution;

  Access(String words, double minutes, String caution) {
    this.words = words;
    this.minutes = minutes;
    this.caution = caution;
  }

  /** Where that is, in words. */
  public String words() {
    return words;
  }

  /** Minutes to get there and to close up again. */
  public double minutes() {
    return minutes;
  }

  /** What to shut down, what to prove and where to stand; empty when nothing is opened. */
  public String caution() {
    return caution;
  }
}

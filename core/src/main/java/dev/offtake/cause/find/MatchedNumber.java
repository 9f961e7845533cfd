package dev.offtake.cause.find;

import dev.offtake.solve.Setup;
import dev.offtake.system.Statement;

/**
 * A loose number of the file, before and after matching.
 *
 * @param statement the line that states it
 * @param number which number of which part
 * @param sigma standard deviation before, SI
 * @param value after, SI
 * @param deviation standard deviation after, SI
 * @param told share of what was not known that the readings tell: one less the variance that is
 *     left over the variance before, 0 to 1
 */
public record MatchedNumber(
    Statement statement,
    Setup.PartNumber number,
    double sigma,
    double value,
    double deviation,
    double told) {

  private static final double WELL = 0.75;
  private static final double PARTLY = 0.3;

  /** How well the readings tell it. */
  public enum Verdict {
    /** Three quarters or more of what was not known. */
    TOLD_WELL("told well"),
    /** A good part of it. */
    TOLD_PARTLY("told partly"),
    /** Hardly anything. */
    NOT_TOLD("not told by these readings");

    private final String words;

    Verdict(String words) {
      this.words = words;
    }

    /** In words. */
    public String words() {
      return words;
    }
  }

  /** How well the readings tell it. */
  public Verdict verdict() {
    return told >= WELL
        ? Verdict.TOLD_WELL
        : told >= PARTLY ? Verdict.TOLD_PARTLY : Verdict.NOT_TOLD;
  }

  /** How far the value lies beyond its healthy band, SI; 0 inside. */
  public double beyond() {
    double low = statement.stated().low();
    double high = statement.stated().high();
    return Math.max(0, Math.max(low - value, value - high));
  }

  /** Whether it lies beyond its band by more than is uncertain. */
  public boolean faulty() {
    return beyond() > deviation;
  }

  /**
   * Half the band that says the same as the standard deviation after matching: in a band everything
   * is alike, so that its ends lie √3 standard deviations from its middle.
   */
  public double halfBand() {
    return Math.sqrt(3) * deviation;
  }
}

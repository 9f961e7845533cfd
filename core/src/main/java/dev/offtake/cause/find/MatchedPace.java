package dev.offtake.cause.find;

/**
 * How a valve moves, before and after matching to a recording.
 *
 * @param part full name
 * @param line which number of it
 * @param before as the profile has it, or as is usual for its kind; s or a share
 * @param value after
 * @param low after, one standard deviation down
 * @param high after, one standard deviation up
 * @param told share of what was not known that the recording tells, 0 to 1
 */
public record MatchedPace(
    String part, PaceLine line, double before, double value, double low, double high, double told) {

  private static final double WELL = 0.75;
  private static final double PARTLY = 0.3;

  /** How well the recording tells it. */
  public MatchedNumber.Verdict verdict() {
    return told >= WELL
        ? MatchedNumber.Verdict.TOLD_WELL
        : told >= PARTLY ? MatchedNumber.Verdict.TOLD_PARTLY : MatchedNumber.Verdict.NOT_TOLD;
  }
}

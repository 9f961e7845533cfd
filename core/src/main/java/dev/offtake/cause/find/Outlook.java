package dev.offtake.cause.find;

import java.util.List;

/** What states at rest tell of a cause, extent by extent. */
final class Outlook {
  /** Nothing is told: all has to be played. */
  static final Outlook UNKNOWN = new Outlook(List.of());

  /** As wide as half the distance of two places at which it was solved. */
  private static final double BESIDE = 1 / 12.0;

  private final List<Seen> seen;

  /**
   * A place that was looked at.
   *
   * @param place of the extents
   * @param verdict what has to be done there
   */
  record Seen(double[] place, Preview.Verdict verdict) {}

  Outlook(List<Seen> seen) {
    this.seen = List.copyOf(seen);
  }

  /** Whether the cause cannot be what was recorded, to whatever extent. */
  boolean past() {
    return !seen.isEmpty() && seen.stream().allMatch(one -> one.verdict() == Preview.Verdict.PAST);
  }

  /** What has to be done at a place: the most that anything beside it asks for. */
  Preview.Verdict at(double... place) {
    Preview.Verdict verdict = Preview.Verdict.PAST;
    for (Seen one : seen) {
      boolean beside = place.length == 0 || Math.abs(one.place()[0] - place[0]) <= BESIDE;
      if (beside && one.verdict().compareTo(verdict) < 0) {
        verdict = one.verdict();
      }
    }
    return seen.isEmpty() ? Preview.Verdict.PLAY : verdict;
  }
}

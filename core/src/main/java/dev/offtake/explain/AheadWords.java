package dev.offtake.explain;

import dev.offtake.study.Handover;
import dev.offtake.study.NextChange;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What lies ahead as power comes up, in words. */
final class AheadWords {
  /** A range narrower than this is one speed, a fraction. */
  private static final double ONE_SPEED = 0.002;

  private final String core;

  private AheadWords(String core) {
    this.core = core;
  }

  /**
   * Words.
   *
   * @param ahead what was found
   * @param corrected whether its speeds are corrected ones
   */
  static List<StateAnswer.Change> of(StateInquiry.Ahead ahead, boolean corrected) {
    AheadWords words = new AheadWords(corrected ? "corrected core" : "core");
    List<StateAnswer.Change> changes = new ArrayList<>();
    changes.add(ahead.next().event().map(words::next).orElse(words.none(ahead.next())));
    for (Handover.Event event : ahead.handovers()) {
      String says =
          words.speed(event.core(), event.low(), event.high())
              + ": "
              + event.to()
              + " takes over from "
              + event.from();
      changes.add(
          new StateAnswer.Change(
              StateAnswer.HANDOVER, event.core(), event.low(), event.high(), says));
    }
    return changes;
  }

  private StateAnswer.Change none(NextChange.Search search) {
    String says = "none found up to " + core + " " + percent(search.reached());
    return new StateAnswer.Change(
        StateAnswer.NEXT_CHANGE, Double.NaN, Double.NaN, Double.NaN, says);
  }

  private StateAnswer.Change next(NextChange.Event event) {
    List<String> parts = new ArrayList<>();
    for (NextChange.Change change : event.parts()) {
      parts.add(change.part() + " goes from " + inWords(change));
    }
    String says = speed(event.core(), event.low(), event.high()) + ": " + String.join("; ", parts);
    return new StateAnswer.Change(
        StateAnswer.NEXT_CHANGE, event.core(), event.low(), event.high(), says);
  }

  /** Words of a change; where the word stays the same, the regimes tell the difference. */
  private static String inWords(NextChange.Change change) {
    String before = change.before().word();
    String after = change.after().word();
    boolean same = before.equals(after) || bothPartOpen(before, after);
    return same
        ? change.before().regime() + " to " + change.after().regime()
        : before + " to " + after;
  }

  /** Whether both words tell an opening that says less than the regimes do. */
  private static boolean bothPartOpen(String before, String after) {
    return before.endsWith("open") && after.endsWith("open");
  }

  /** The speed by the numbers in force, and the range that the bands of the parts give it. */
  private String speed(double at, double low, double high) {
    String best = percent(at);
    if (high - low < ONE_SPEED) {
      return core + " " + best;
    }
    return String.format(
        Locale.ROOT,
        "%s %.0f to %.0f %% (best guess %s)",
        core,
        Math.floor(100 * low),
        Math.ceil(100 * high),
        best);
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.1f %%", 100 * share);
  }
}

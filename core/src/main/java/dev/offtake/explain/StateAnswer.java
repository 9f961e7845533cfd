package dev.offtake.explain;

import dev.offtake.stability.Stability;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a person is told about one solved state.
 *
 * @param asked what was asked
 * @param solved whether there is an answer
 * @param headline the answer in one or two sentences each
 * @param why what each valve does
 * @param air air at sources, points and users
 * @param gauges how the pressures above relate to the others in the answer; empty when they are the
 *     same
 * @param panel what gauges and lights show
 * @param room what is left until a user goes short or a limit is passed
 * @param memory what was remembered or tripped, in sentences
 * @param changes what changes as power comes up: the next change, then who takes over from whom
 * @param stability whether the state stays after a small upset
 * @param balance how well air and heat balance; empty without an answer
 * @param caution the caution
 * @param ifCorrected the answer if the engine holds corrected speed, where nobody said which it
 *     holds and the day makes a difference
 */
public record StateAnswer(
    Asked asked,
    boolean solved,
    List<String> headline,
    List<Why> why,
    List<Air> air,
    String gauges,
    Panel panel,
    List<Room> room,
    List<String> memory,
    List<Change> changes,
    Stability stability,
    String balance,
    String caution,
    Optional<StateAnswer> ifCorrected) {

  /** Label of the change that comes next. */
  public static final String NEXT_CHANGE = "NEXT CHANGE";

  /** Label of a change of the source that gives most. */
  public static final String HANDOVER = "HANDOVER";

  /** The caution under every answer. */
  public static final String CAUTION =
      "Advice, not approval. Hot air under pressure: depressurise before disconnecting, and prove"
          + " it with a gauge. The approved manual, local rules and the licensed signature rule.";

  /** Keeps its lists. */
  public StateAnswer {
    headline = List.copyOf(headline);
    why = List.copyOf(why);
    air = List.copyOf(air);
    room = List.copyOf(room);
    memory = List.copyOf(memory);
    changes = List.copyOf(changes);
  }

  /** The same answer with the one for corrected speed beside it. */
  StateAnswer with(StateAnswer corrected) {
    return new StateAnswer(
        asked,
        solved,
        headline,
        why,
        air,
        gauges,
        panel,
        room,
        memory,
        changes,
        stability,
        balance,
        caution,
        Optional.of(corrected));
  }

  /** The same with more to say of what is remembered. */
  StateAnswer remembering(List<String> more) {
    List<String> all = new ArrayList<>(memory);
    all.addAll(more);
    return new StateAnswer(
        asked,
        solved,
        headline,
        why,
        air,
        gauges,
        panel,
        room,
        all,
        changes,
        stability,
        balance,
        caution,
        ifCorrected);
  }

  /** What is said of the next change; empty without an answer. */
  public String nextChange() {
    return changes.stream()
        .filter(change -> change.label().equals(NEXT_CHANGE))
        .findFirst()
        .map(Change::says)
        .orElse("");
  }

  /**
   * Something that changes as power comes up.
   *
   * @param label {@link #NEXT_CHANGE} or {@link #HANDOVER}
   * @param core core speed by the numbers in force, a fraction; NaN when nothing changes
   * @param low where the bands of the parts may put it, a fraction; NaN when nothing changes
   * @param high likewise
   * @param says one sentence without a full stop, with the core speed
   */
  public record Change(String label, double core, double low, double high, String says) {}

  /** What a valve does and why. */
  public record Why(String part, String word, String because) {}

  /**
   * Air at a place; what is not meant there is NaN.
   *
   * @param name source, point or user
   * @param gaugePressure Pa above ambient
   * @param temperature K
   * @param flow kg/s
   * @param note such as where the air comes from
   */
  public record Air(
      String name, double gaugePressure, double temperature, double flow, String note) {}

  /** What is left: a name and a sentence. */
  public record Room(String name, String says) {}
}

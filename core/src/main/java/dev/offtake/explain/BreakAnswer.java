package dev.offtake.explain;

import dev.offtake.quantity.Dimension;
import dev.offtake.study.Sign;
import java.util.List;

/**
 * What a person is told about a state with something broken in it, beside the state itself.
 *
 * @param state the broken state
 * @param headline its largest consequence, one sentence
 * @param beside what is said of the broken state beside it, without what it tells already
 * @param follows what follows from what, along the air, a sentence each
 * @param changed what differs from the healthy state, the most significant first
 * @param unshown how many more differ
 * @param back what runs back into the engine and what that means, in sentences
 * @param byHand what was set by hand, and stays so at each power below; empty where nothing was
 * @param noticed who would notice, a row for each power
 * @param look what else to look at
 */
public record BreakAnswer(
    StateAnswer state,
    String headline,
    List<String> beside,
    List<String> follows,
    List<Changed> changed,
    int unshown,
    List<String> back,
    String byHand,
    List<Noticed> noticed,
    List<Look> look) {
  /** Keeps its lists. */
  public BreakAnswer {
    beside = List.copyOf(beside);
    follows = List.copyOf(follows);
    changed = List.copyOf(changed);
    back = List.copyOf(back);
    noticed = List.copyOf(noticed);
    look = List.copyOf(look);
  }

  /**
   * Something that differs.
   *
   * @param name place, part or light
   * @param measures what the numbers are; {@link Dimension#NUMBER} for what is on or off
   * @param healthy SI; 1 or 0 for what is on or off
   * @param now likewise
   * @param seen where it is seen: gauge, test port or {@code nowhere}
   * @param weight change against what counts as much of its kind
   */
  public record Changed(
      String name, Dimension measures, double healthy, double now, String seen, double weight) {}

  /**
   * Who would notice at one power.
   *
   * @param power name of the power
   * @param verdict of what is seen without a test gauge: {@code plain}, {@code lost in the gauge},
   *     {@code HIDDEN}, or {@code no answer}
   * @param says verdict and best sign in words
   * @param signs all that can be looked at
   */
  public record Noticed(String power, String verdict, String says, List<Sign> signs) {
    /** Keeps its signs. */
    public Noticed {
      signs = List.copyOf(signs);
    }
  }

  /**
   * Something to look at.
   *
   * @param what {@code hot}, {@code pieces}, {@code noticed}, {@code inspection} or {@code caution}
   * @param says sentences
   */
  public record Look(String what, String says) {}
}

package dev.offtake.cause.find;

import dev.offtake.system.Assumption;
import java.util.List;
import java.util.Optional;

/**
 * What to do next.
 *
 * @param order removable units in the order in which they are best looked at without any check
 * @param without expected minutes to a finished repair in that order
 * @param offers checks that shorten it, the best first
 * @param noHelp readings that tell nothing here
 * @param refused checks that would have helped and are not offered, with the reason
 */
public record Advice(
    List<Unit> order,
    double without,
    List<Offer> offers,
    List<NoHelp> noHelp,
    List<Refused> refused) {
  /** Keeps its lists. */
  public Advice {
    order = List.copyOf(order);
    offers = List.copyOf(offers);
    noHelp = List.copyOf(noHelp);
    refused = List.copyOf(refused);
  }

  /** Nothing to advise. */
  public static final Advice NONE = new Advice(List.of(), 0, List.of(), List.of(), List.of());

  /**
   * A removable unit.
   *
   * @param part full name of the part
   * @param unit which of its units
   * @param chance that it has failed
   * @param minutes of looking at it, getting there included
   */
  public record Unit(String part, String unit, double chance, double minutes) {}

  /**
   * A check that is worth its time.
   *
   * @param check what is done
   * @param minutes it takes, with what is not yet paid for
   * @param finish expected minutes to a finished repair with it, its own included
   * @param bits how much it tells
   * @param expects what it would show under each group of causes
   * @param hangsOn what the file does not say and the numbers hang on; empty for nothing
   */
  public record Offer(
      Check check,
      double minutes,
      double finish,
      double bits,
      List<Expect> expects,
      Optional<Assumption> hangsOn) {
    /** Keeps its list. */
    public Offer {
      expects = List.copyOf(expects);
    }
  }

  /**
   * What a check shows under causes that the readings so far cannot part.
   *
   * @param causes numbers in the ranking; empty for a sound system
   * @param low lowest that is expected, SI; chance of on for a light, of a find for a look
   * @param high highest that is expected
   */
  public record Expect(List<Integer> causes, double low, double high) {
    /** Keeps its list. */
    public Expect {
      causes = List.copyOf(causes);
    }
  }

  /**
   * A reading that tells nothing: it is the same under all likely causes.
   *
   * @param power where
   * @param instrument what is read
   * @param value what it shows under all of them, SI
   */
  public record NoHelp(String power, Instrument instrument, double value) {}

  /**
   * A check that is not offered.
   *
   * @param scene where
   * @param why the limit or the line of the file that it would break
   */
  public record Refused(String scene, String why) {}

  /** Whether looking at units in order is better than any check. */
  public boolean stop() {
    return offers.isEmpty();
  }
}

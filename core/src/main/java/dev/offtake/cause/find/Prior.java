package dev.offtake.cause.find;

import dev.offtake.study.Fault;

/**
 * What is believed before anything is read: how likely a sound system is by the reason for looking,
 * and how long each kind of failure had time to come. All of it are assumptions.
 *
 * @param reason why somebody looks
 * @param healthy chance that nothing is wrong
 * @param none share of everything else that no failure on the list explains
 * @param evidentHours hours since it was last good, for a failure that shows itself
 * @param dormantHours hours since its function was last proved, for one that does not
 * @param unheard how much less often somebody looks because of a failure that nobody notices,
 *     neither in the usual line-up nor in what was read, than because of one that shows itself
 * @param bothSides share of the failures of a kind that strike both sides at once
 */
public record Prior(
    Reason reason,
    double healthy,
    double none,
    double evidentHours,
    double dormantHours,
    double unheard,
    double bothSides) {

  /** Why somebody looks. */
  public enum Reason {
    /** Somebody complained. */
    SQUAWK("a squawk", 0.3, 0.02),
    /** After work on the system. */
    AFTER_MAINTENANCE("after maintenance", 0.5, 1),
    /** Nobody complained. */
    ROUTINE("a routine look", 0.95, 1);

    private final String words;
    private final double healthy;
    private final double unheard;

    Reason(String words, double healthy, double unheard) {
      this.words = words;
      this.healthy = healthy;
      this.unheard = unheard;
    }

    /** As it is said to a person. */
    public String words() {
      return words;
    }
  }

  /** The usual assumptions. */
  public static Prior of(Reason reason) {
    return new Prior(reason, reason.healthy, 0.05, 100, 500, reason.unheard, 0.1);
  }

  /** Chance of a cause against others, before it is known whether it shows itself. */
  double weight(Cause cause) {
    double weight = 1;
    double least = Double.POSITIVE_INFINITY;
    for (Fault fault : cause.faults()) {
      weight *= fault.mode().rate() * evidentHours;
      least = Math.min(least, fault.mode().rate() * evidentHours);
    }
    return cause.common() ? bothSides * least : weight;
  }

  /** How much more likely a failure is that had longer to come. */
  double dormant() {
    return dormantHours / evidentHours;
  }
}

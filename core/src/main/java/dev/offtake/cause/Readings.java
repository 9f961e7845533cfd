package dev.offtake.cause;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Everything that was read in one search.
 *
 * @param system system file as the readings name it; empty when they do not
 * @param squawk complaint in the words of who made it; empty when not said
 * @param item engine or rig, with its serial; empty when not said
 * @param date when it was read; empty when not said
 * @param day air in the place where it was read; empty when not said
 * @param gauges test gauges in use
 * @param occasions what was read, each occasion one state
 * @param seen what inspections found
 * @param recordings what recorders kept
 */
public record Readings(
    String system,
    String squawk,
    String item,
    Optional<LocalDate> date,
    Optional<SaidDay> day,
    List<UsedGauge> gauges,
    List<Occasion> occasions,
    List<Seen> seen,
    List<Recording> recordings) {

  /** Keeps its lists. */
  public Readings {
    gauges = List.copyOf(gauges);
    occasions = List.copyOf(occasions);
    seen = List.copyOf(seen);
    recordings = List.copyOf(recordings);
  }

  /** Nothing was read. */
  public static Readings none() {
    return of(List.of(), List.of(), List.of());
  }

  /** What was read, with nothing said of the system, the item and the day. */
  static Readings of(List<UsedGauge> gauges, List<Occasion> occasions, List<Seen> seen) {
    return new Readings(
        "", "", "", Optional.empty(), Optional.empty(), gauges, occasions, seen, List.of());
  }

  /** The same with what recorders kept. */
  public Readings with(List<Recording> more) {
    return new Readings(system, squawk, item, date, day, gauges, occasions, seen, more);
  }

  /** How many things were read; those that nobody looked at do not count. */
  public long count() {
    return occasions.stream().flatMap(o -> o.readings().stream()).filter(Reading::taken).count();
  }

  /**
   * What must be said of the test gauges, one sentence each without a full stop.
   *
   * @param today when the readings are used; counts where they carry no date of their own
   */
  public List<String> cautions(LocalDate today) {
    LocalDate used = date.orElse(today);
    List<String> cautions = new ArrayList<>();
    for (UsedGauge gauge : gauges) {
      if (gauge.overdue(used)) {
        String due = gauge.due().map(LocalDate::toString).orElse("");
        cautions.add(
            "The calibration of " + gauge.name() + " was due on " + due + ": it is overdue");
      } else if (gauge.due().isEmpty()) {
        cautions.add("Nothing says until when the calibration of " + gauge.name() + " holds");
      }
      if (Double.isNaN(gauge.constant())) {
        cautions.add("Nothing says how good " + gauge.name() + " is");
      }
    }
    return cautions;
  }
}

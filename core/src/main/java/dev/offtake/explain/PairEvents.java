package dev.offtake.explain;

import dev.offtake.study.Curve;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What happens along a healthy curve and a broken one, told once where it is the same in both. */
public final class PairEvents {
  /** Places nearer to each other than this share of the sweep are the same one. */
  private static final double SAME = 1e-3;

  /** Met in the healthy system only. */
  public static final String HEALTHY = "healthy";

  /** Met in the broken system only. */
  public static final String NOW = "now";

  /** Whose an event may be; empty where it is met in both. */
  public static final List<String> WHOSE = List.of("", HEALTHY, NOW);

  private PairEvents() {}

  /**
   * An event and whose it is.
   *
   * @param whose {@code healthy} or {@code now}; empty where it is met in both
   * @param event what happens
   */
  public record Marked(String whose, Curve.Event event) {}

  /**
   * The events of a pair, by rising value.
   *
   * @param healthy the healthy curve
   * @param now the broken one over the same quantity
   */
  public static List<Marked> of(Curve healthy, Curve now) {
    List<Marked> events = new ArrayList<>();
    for (Curve.Event event : healthy.events()) {
      add(events, "", event, shared(event, now, true));
      add(events, HEALTHY, event, shared(event, now, false));
    }
    for (Curve.Event event : now.events()) {
      add(events, NOW, event, shared(event, healthy, false));
    }
    events.sort(Comparator.comparingDouble((Marked marked) -> marked.event().x()));
    return events;
  }

  private static void add(
      List<Marked> events, String whose, Curve.Event event, List<Curve.Change> changes) {
    if (!changes.isEmpty()) {
      events.add(
          new Marked(
              whose,
              new Curve.Event(
                  event.x(), event.low(), event.high(), event.way(), changes, event.causes())));
    }
  }

  /** Changes of an event that another curve has at the same place too, or those that it has not. */
  private static List<Curve.Change> shared(Curve.Event event, Curve other, boolean shared) {
    return event.changes().stream()
        .filter(
            change -> other.events().stream().anyMatch(e -> has(e, event, other, change)) == shared)
        .toList();
  }

  private static boolean has(
      Curve.Event other, Curve.Event event, Curve curve, Curve.Change change) {
    boolean here = Math.abs(other.x() - event.x()) <= SAME * curve.sweep().length();
    return here
        && (other.way() == event.way())
        && other.changes().stream().anyMatch(its -> same(its, change));
  }

  private static boolean same(Curve.Change one, Curve.Change two) {
    return one.what() == two.what()
        && one.subject().equals(two.subject())
        && one.before().equals(two.before())
        && one.after().equals(two.after());
  }
}

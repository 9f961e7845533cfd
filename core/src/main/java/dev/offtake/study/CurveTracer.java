package dev.offtake.study;

import dev.offtake.part.Part;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;

/**
 * Follows a system along a sweep, up and down again, and finds what happens on the way.
 *
 * <p>The way up begins with fresh memory: nothing tripped, reliefs shut. The way down begins at the
 * end of the way up, memory included; where it meets other states, both ways are kept.
 */
public final class CurveTracer {
  /** States nearer to each other than the solver's rest are the same: share of pressure, and K. */
  private static final double SAME_P = 1e-4;

  private static final double SAME_T = 0.1;

  private final Walk walk;
  private final EventFinder finder;
  private final List<Column> columns;
  private final List<Feeders> feeders;
  private final DoubleConsumer progress;

  private CurveTracer(Walk walk, List<Column> columns, List<Feeders> feeders, DoubleConsumer p) {
    this.walk = walk;
    this.columns = columns;
    this.feeders = feeders;
    finder = new EventFinder(walk);
    progress = p;
  }

  /**
   * Follows a system.
   *
   * @param settler solves; of the network that the sweep asks
   * @param sweep what is moved
   * @param columns what is read
   * @param feeders whose feeding is followed, one for each side
   * @param progress is told the share that is done, 0..1
   */
  public static Curve trace(
      Settler settler,
      Sweep sweep,
      List<Column> columns,
      List<Feeders> feeders,
      DoubleConsumer progress) {
    return follow(settler, sweep, columns, feeders, progress).curve();
  }

  /**
   * Follows a system and keeps its states, so that they can be compared with those of another one.
   *
   * @param settler solves; of the network that the sweep asks
   * @param sweep what is moved
   * @param columns what is read
   * @param feeders whose feeding is followed, one for each side
   * @param progress is told the share that is done, 0..1
   */
  public static Traced follow(
      Settler settler,
      Sweep sweep,
      List<Column> columns,
      List<Feeders> feeders,
      DoubleConsumer progress) {
    Walk walk = new Walk(settler, sweep, feeders);
    return new CurveTracer(walk, columns, feeders, progress).traced();
  }

  private Traced traced() {
    List<Step> up = way(walk.sweep().stops());
    progress.accept(0.2);
    List<EventFinder.Found> rising = events(up, 0.2, 0.5);
    List<EventFinder.Found> falling = new ArrayList<>();
    List<Step> down = wayDown(up);
    if (!down.isEmpty()) {
      falling = events(down, 0.5, 0.6);
    }
    List<Curve.Event> events = new Ways(rising, falling, !down.isEmpty()).merge(up, down);
    Collections.reverse(down);
    Curve curve = new Curve(walk.sweep(), columns, feeders, rows(up), rows(down), events);
    return new Traced(curve, walk, up);
  }

  /** The states at the stops, and at the edges of stretches without an answer. */
  private List<Step> way(List<Double> stops) {
    List<Step> way = new ArrayList<>();
    Step answered = null;
    for (double x : stops) {
      Step here = answered == null ? walk.begin(x) : walk.on(answered.solution(), x);
      add(way, here);
      answered = here.answered() ? here : answered;
    }
    return way;
  }

  /** Adds a state, and before it the edge of the answers where they begin or end. */
  private void add(List<Step> way, Step here) {
    Step last = way.isEmpty() ? here : way.get(way.size() - 1);
    if (last.answered() != here.answered()) {
      Step edge = here.answered() ? finder.edge(here, last) : finder.edge(last, here);
      if (edge.x() != here.x() && edge.x() != last.x()) {
        way.add(edge);
      }
    }
    way.add(here);
  }

  /** The way down in the order in which it is gone; empty where it is the way up. */
  private List<Step> wayDown(List<Step> up) {
    Step top = null;
    for (Step step : up) {
      top = step.answered() ? step : top;
    }
    if (top == null) {
      return new ArrayList<>();
    }
    List<Step> down = new ArrayList<>();
    boolean other = false;
    Step answered = top;
    for (int i = up.size() - 1; i >= 0; i--) {
      Step there = up.get(i);
      Optional<Step> another = there.x() >= top.x() ? Optional.empty() : another(answered, there);
      other |= another.isPresent();
      Step here = another.orElse(there);
      answered = here.answered() ? here : answered;
      down.add(here);
    }
    return other ? down : new ArrayList<>();
  }

  /** The state on the way down; empty where it is that of the way up. */
  private Optional<Step> another(Step answered, Step there) {
    Solution solution = walk.solve(answered.solution(), there.x());
    boolean same = solution.solved() && there.answered() && same(solution, there.solution());
    boolean none = !solution.solved() && !there.answered();
    return same || none ? Optional.empty() : Optional.of(walk.step(there.x(), solution));
  }

  private static boolean same(Solution one, Solution two) {
    for (int point = 0; point < one.network().points().size(); point++) {
      double p = two.sensed(point);
      boolean pressure = Math.abs(one.sensed(point) - p) <= SAME_P * p;
      if (!pressure || Math.abs(one.temperature(point) - two.temperature(point)) > SAME_T) {
        return false;
      }
    }
    List<Part> parts = one.network().parts();
    for (int part = 0; part < parts.size(); part++) {
      for (int k = 0; k < parts.get(part).controls().size(); k++) {
        if (one.control(part, k) != two.control(part, k)) {
          return false;
        }
      }
    }
    return true;
  }

  private List<EventFinder.Found> events(List<Step> way, double from, double to) {
    List<EventFinder.Found> found = new ArrayList<>();
    for (int i = 1; i < way.size(); i++) {
      if (way.get(i - 1).answered() && way.get(i).answered()) {
        found.addAll(finder.between(way.get(i - 1), way.get(i)));
      }
      progress.accept(from + (to - from) * i / way.size());
    }
    return found;
  }

  private List<Curve.Row> rows(List<Step> way) {
    List<Curve.Row> rows = new ArrayList<>();
    for (Step step : way) {
      List<Double> values = new ArrayList<>();
      List<List<String>> feeding = new ArrayList<>();
      if (step.answered()) {
        Solution s = step.solution();
        columns.forEach(column -> values.add(column.reading().of(s)));
        feeders.forEach(group -> feeding.add(group.feeding(s)));
      }
      rows.add(new Curve.Row(step.x(), values, feeding, step.trouble()));
    }
    return rows;
  }

  /** Events of both ways, put together. */
  private final class Ways {
    /** Events of the two ways nearer to each other than this many bisections are one. */
    private static final double ONE = 5 * EventFinder.EXACT;

    private final List<EventFinder.Found> rising;
    private final List<EventFinder.Found> falling;
    private final boolean both;

    Ways(List<EventFinder.Found> rising, List<EventFinder.Found> falling, boolean both) {
      this.rising = rising;
      this.falling = falling;
      this.both = both;
    }

    List<Curve.Event> merge(List<Step> up, List<Step> down) {
      List<Curve.Event> events = new ArrayList<>();
      List<EventFinder.Found> only = new ArrayList<>(falling);
      int done = 0;
      for (EventFinder.Found event : rising) {
        boolean back = only.removeIf(other -> mirrors(event, other));
        events.add(event(event, up, both && !back ? Curve.Way.UP : Curve.Way.BOTH));
        progress.accept(0.6 + 0.4 * ++done / (rising.size() + only.size()));
      }
      for (EventFinder.Found event : only) {
        events.add(event(event, down, Curve.Way.DOWN));
      }
      events.sort((one, two) -> Double.compare(one.x(), two.x()));
      return events;
    }

    private boolean mirrors(EventFinder.Found one, EventFinder.Found two) {
      boolean near = Math.abs(one.x() - two.x()) <= ONE * walk.sweep().length();
      return near && one.changed().equals(two.changed());
    }

    private Curve.Event event(EventFinder.Found found, List<Step> way, Curve.Way which) {
      List<Curve.Cause> causes = new Spread(walk, way, found).causes();
      double below = Math.sqrt(causes.stream().mapToDouble(c -> c.below() * c.below()).sum());
      double above = Math.sqrt(causes.stream().mapToDouble(c -> c.above() * c.above()).sum());
      double x = found.x();
      return new Curve.Event(x, x - below, x + above, which, finder.changes(found), causes);
    }
  }
}

package dev.offtake.desk;

import dev.offtake.explain.Axis;
import dev.offtake.explain.ChangeWords;
import dev.offtake.explain.CurveAnswer;
import dev.offtake.explain.PairEvents;
import dev.offtake.study.Curve;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What happens along curves, numbered for a picture: events close to each other share a number, and
 * a key says what they are.
 */
final class EventKey {
  /** Events nearer to each other than this share of the sweep share a number. */
  private static final double CLOSE = 0.014;

  private final List<Entry> entries = new ArrayList<>();

  /**
   * A number in the picture.
   *
   * @param mark such as {@code 3}
   * @param x where it stands, SI
   * @param low where the bands of the parts may put the first of its events, SI
   * @param high likewise the last
   * @param says what happens
   */
  record Entry(String mark, double x, double low, double high, String says) {}

  /** Numbers the events of curves; what a pair has in common has one number. */
  EventKey(List<CurveAnswer> answers) {
    for (int i = 0; i < answers.size(); i++) {
      CurveAnswer answer = answers.get(i);
      if (i + 1 < answers.size() && answers.get(i + 1).broken()) {
        pair(answers, answer, answers.get(++i));
      } else {
        add(answer.curve(), answer.curve().events(), start(answer.name(answers)));
      }
    }
  }

  private static String start(String name) {
    return name.isEmpty() ? "" : name + ", ";
  }

  /** A healthy curve and a broken one, numbered from left to right. */
  private void pair(List<CurveAnswer> answers, CurveAnswer healthy, CurveAnswer now) {
    List<PairEvents.Marked> events = PairEvents.of(healthy.curve(), now.curve());
    int before = entries.size();
    for (String whose : PairEvents.WHOSE) {
      String name =
          switch (whose) {
            case PairEvents.HEALTHY -> healthy.name(answers);
            case PairEvents.NOW -> now.name(answers);
            default -> InCommon.both(healthy.name(answers));
          };
      List<Curve.Event> own =
          events.stream()
              .filter(marked -> marked.whose().equals(whose))
              .map(PairEvents.Marked::event)
              .toList();
      add(now.curve(), own, start(name));
    }
    List<Entry> sorted = new ArrayList<>(entries.subList(before, entries.size()));
    sorted.sort(Comparator.comparingDouble(Entry::x));
    for (int i = 0; i < sorted.size(); i++) {
      Entry entry = sorted.get(i);
      String mark = String.valueOf(before + i + 1);
      entries.set(before + i, new Entry(mark, entry.x(), entry.low(), entry.high(), entry.says()));
    }
  }

  List<Entry> entries() {
    return entries;
  }

  private void add(Curve curve, List<Curve.Event> events, String start) {
    for (Curve.Way way : Curve.Way.values()) {
      add(curve, events, way, start);
    }
  }

  private void add(Curve curve, List<Curve.Event> events, Curve.Way way, String day) {
    List<Curve.Event> close = new ArrayList<>();
    for (Curve.Event event : events) {
      if (event.way() == way && event.changes().get(0).what() != Curve.What.TABLE) {
        double gap = close.isEmpty() ? 0 : event.x() - close.get(close.size() - 1).x();
        if (gap > CLOSE * curve.sweep().length()) {
          close(curve, close, way, day);
          close.clear();
        }
        close.add(event);
      }
    }
    if (!close.isEmpty()) {
      close(curve, close, way, day);
    }
  }

  private void close(Curve curve, List<Curve.Event> events, Curve.Way way, String day) {
    List<Curve.Change> changes = new ArrayList<>();
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Curve.Event event : events) {
      changes.addAll(event.changes());
      low = Math.min(low, event.low());
      high = Math.max(high, event.high());
    }
    double first = events.get(0).x();
    double last = events.get(events.size() - 1).x();
    Axis axis = Axis.of(curve.sweep());
    String at = axis.number(first).equals(axis.number(last)) ? "" : axis.number(first) + " to ";
    String says = day + at + axis.print(last) + range(axis, low, high, first, last);
    String only = way == Curve.Way.UP ? "going up, " : way == Curve.Way.DOWN ? "going down, " : "";
    entries.add(
        new Entry(
            String.valueOf(entries.size() + 1),
            (first + last) / 2,
            low,
            high,
            only + says + ": " + ChangeWords.of(changes)));
  }

  private static String range(Axis axis, double low, double high, double first, double last) {
    String from = axis.number(low);
    String to = axis.number(high);
    boolean nothing = from.equals(axis.number(first)) && to.equals(axis.number(last));
    return nothing ? "" : " (tolerances: " + from + " to " + to + ")";
  }
}

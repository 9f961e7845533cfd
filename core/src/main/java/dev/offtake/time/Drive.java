package dev.offtake.time;

import dev.offtake.part.Conditions;
import dev.offtake.solve.Setup;
import java.util.ArrayList;
import java.util.List;

/**
 * What is asked of a network as time goes, from a start that is steady.
 *
 * <p>It is made of spans, one after the other. Within a span speeds, outside air and changed
 * numbers move in straight lines from what it begins with to what it ends with; positions and locks
 * are those that it begins with. A span that does not begin with what the one before ended with is
 * a jump.
 *
 * @param start what is asked before time begins, for as long as it takes to settle
 * @param spans in the order of time; a span of no length only jumps
 */
public record Drive(Setup start, List<Span> spans) {
  /** Keeps its spans. */
  public Drive {
    spans = List.copyOf(spans);
  }

  /**
   * A stretch of time.
   *
   * @param seconds its length, 0 or more
   * @param begins what is asked at its beginning
   * @param ends what is asked at its end; a number that only one of the two changes has its healthy
   *     value in the other
   */
  public record Span(double seconds, Setup begins, Setup ends) {
    /** Checks its length. */
    public Span {
      if (!(seconds >= 0 && seconds < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException("a span lasts 0 s or more, not " + seconds + " s");
      }
    }
  }

  /** Time in which nothing is asked yet. */
  public static Drive from(Setup start) {
    return new Drive(start, List.of());
  }

  /** Then nothing changes for a while. */
  public Drive hold(double seconds) {
    return with(new Span(seconds, last(), last()));
  }

  /**
   * Then speeds, outside air and numbers move in straight lines.
   *
   * @param seconds how long it takes
   * @param to where they are at the end; switches and locks that differ jump at the beginning
   */
  public Drive ramp(double seconds, Setup to) {
    Setup now = last();
    Setup begins = new Setup(now.conditions(), to.positions(), to.locks(), now.changed());
    return with(new Span(seconds, begins, to));
  }

  /** Then only the speeds move, in a straight line. */
  public Drive ramp(double seconds, double core, double fan) {
    Conditions now = last().conditions();
    return ramp(seconds, last().at(now.withSpeeds(core, fan)));
  }

  /** Then, at once, something else is asked. */
  public Drive jump(Setup to) {
    return with(new Span(0, to, to));
  }

  /**
   * What is asked at an instant.
   *
   * @param seconds from 0 on; after the end what is asked at the end
   */
  public Setup at(double seconds) {
    double left = seconds;
    for (Span span : spans) {
      if (left < span.seconds()) {
        Conditions from = span.begins().conditions();
        Conditions to = span.ends().conditions();
        double share = left / span.seconds();
        return span.begins()
            .at(
                from.withSpeeds(
                    from.core() + share * (to.core() - from.core()),
                    from.fan() + share * (to.fan() - from.fan())));
      }
      left -= span.seconds();
    }
    return last();
  }

  /** What is asked at the end. */
  public Setup last() {
    return spans.isEmpty() ? start : spans.get(spans.size() - 1).ends();
  }

  /** How long it lasts, s. */
  public double seconds() {
    double sum = 0;
    for (Span span : spans) {
      sum += span.seconds();
    }
    return sum;
  }

  private Drive with(Span span) {
    List<Span> more = new ArrayList<>(spans);
    more.add(span);
    return new Drive(start, more);
  }
}

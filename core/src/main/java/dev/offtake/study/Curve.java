package dev.offtake.study;

import java.util.ArrayList;
import java.util.List;

/**
 * How a system answers while one quantity moves: numbers at each stop, and what happens between.
 *
 * @param sweep what was moved
 * @param columns what was read
 * @param feeders whose feeding was followed, one for each side
 * @param up rows with the quantity rising, from fresh memory
 * @param down rows with the quantity falling again, in rising order; empty where every row is that
 *     of {@code up}
 * @param events what happens, by rising value
 */
public record Curve(
    Sweep sweep,
    List<Column> columns,
    List<Feeders> feeders,
    List<Row> up,
    List<Row> down,
    List<Event> events) {

  /** Keeps its lists. */
  public Curve {
    columns = List.copyOf(columns);
    feeders = List.copyOf(feeders);
    up = List.copyOf(up);
    down = List.copyOf(down);
    events = List.copyOf(events);
  }

  /** Whether the way down is another one than the way up. */
  public boolean remembers() {
    return !down.isEmpty();
  }

  /** Whether any row has an answer. */
  public boolean answered() {
    return up.stream().anyMatch(Row::answered);
  }

  /**
   * A state.
   *
   * @param x value of the quantity, SI
   * @param values one for each column, SI; empty without an answer
   * @param feeding full names of the sources that feed, for each of the feeders; empty without an
   *     answer
   * @param trouble why there is no answer, one sentence without a full stop; empty with one
   */
  public record Row(double x, List<Double> values, List<List<String>> feeding, String trouble) {
    /** Keeps its lists. */
    public Row {
      values = List.copyOf(values);
      feeding = List.copyOf(feeding);
    }

    /** Whether there is an answer. */
    public boolean answered() {
      return trouble.isEmpty();
    }
  }

  /** On which way an event is met. */
  public enum Way {
    /** Rising and falling alike. */
    BOTH,
    /** Only with the quantity rising. */
    UP,
    /** Only with the quantity falling. */
    DOWN
  }

  /** What kind of change it is. */
  public enum What {
    /** A part does something else. */
    PART,
    /** Another source gives most. */
    LEADER,
    /** A tap leaves its table or comes back to it. */
    TABLE,
    /** Somebody does something; what comes after says it all. */
    DONE
  }

  /**
   * Something happens.
   *
   * @param x value of the quantity by the numbers in force, SI
   * @param low where the bands of the parts may put it, SI; equal to {@code x} where nothing moves
   *     it
   * @param high likewise
   * @param way on which way it is met
   * @param changes what happens, one or more; told for the quantity rising, but falling on the way
   *     down
   * @param causes what moves it most, the strongest first
   */
  public record Event(
      double x, double low, double high, Way way, List<Change> changes, List<Cause> causes) {
    /** Keeps its lists. */
    public Event {
      changes = List.copyOf(changes);
      causes = List.copyOf(causes);
    }
  }

  /**
   * A change.
   *
   * @param what its kind
   * @param subject full name of the part, or of the side
   * @param before state before it, such as {@code shut}
   * @param after state after it
   * @param why the inequality behind the new state; empty where there is none
   */
  public record Change(What what, String subject, String before, String after, String why) {}

  /**
   * A band that moves an event.
   *
   * @param part full name
   * @param parameter name of its number
   * @param below how far it moves the event down, SI, 0 or less
   * @param above how far it moves the event up, SI, 0 or more
   */
  public record Cause(String part, String parameter, double below, double above) {}

  /**
   * A stretch without an answer.
   *
   * @param from first value without one, SI
   * @param to last value without one, SI
   * @param why one sentence without a full stop
   */
  public record Gap(double from, double to, String why) {}

  /** Stretches of the way up without an answer. */
  public List<Gap> gaps() {
    List<Gap> gaps = new ArrayList<>();
    boolean open = false;
    for (Row row : up) {
      if (row.answered()) {
        open = false;
      } else if (open) {
        Gap last = gaps.remove(gaps.size() - 1);
        // The trouble next to the answers tells most.
        boolean first = last.from() == up.get(0).x();
        gaps.add(new Gap(last.from(), row.x(), first ? row.trouble() : last.why()));
      } else {
        gaps.add(new Gap(row.x(), row.x(), row.trouble()));
        open = true;
      }
    }
    return gaps;
  }
}

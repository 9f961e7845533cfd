package dev.offtake.cause;

import dev.offtake.profile.Profile;
import dev.offtake.quantity.Dimension;
import java.util.Arrays;
import java.util.List;

/**
 * Values that a recorder kept while a profile was run.
 *
 * @param file name of the table
 * @param run name of the profile's file
 * @param profile what was done; its times are those of the table
 * @param channels what was recorded
 * @param notes what of the table was left out, a sentence each
 */
public record Recording(
    String file, String run, Profile profile, List<Channel> channels, List<String> notes) {
  /** Keeps its lists. */
  public Recording {
    channels = List.copyOf(channels);
    notes = List.copyOf(notes);
  }

  /** Time between two of its values, s: the middle one of its quickest channel. */
  public double step() {
    return channels.stream().mapToDouble(Channel::step).min().orElse(0);
  }

  /** One thing that was recorded. */
  public static final class Channel {
    private final About.Scaled about;
    private final Dimension dimension;
    private final double[] seconds;
    private final double[] values;

    /**
     * Keeps a course.
     *
     * @param about where it was taken
     * @param dimension what its values measure: gauge or absolute pressure, or temperature
     * @param seconds rising, at least one
     * @param values SI, one for each
     */
    public Channel(About.Scaled about, Dimension dimension, double[] seconds, double[] values) {
      if (seconds.length != values.length || seconds.length == 0) {
        throw new IllegalArgumentException("a channel has a value for each of its times");
      }
      this.about = about;
      this.dimension = dimension;
      this.seconds = seconds.clone();
      this.values = values.clone();
    }

    /** Where it was taken. */
    public About.Scaled about() {
      return about;
    }

    /** What its values measure. */
    public Dimension dimension() {
      return dimension;
    }

    /** When it begins, s. */
    public double from() {
      return seconds[0];
    }

    /** When it ends, s. */
    public double until() {
      return seconds[seconds.length - 1];
    }

    /** Time between two of its values, s: the middle one; infinite for a single value. */
    public double step() {
      double[] steps = new double[seconds.length - 1];
      for (int i = 0; i < steps.length; i++) {
        steps[i] = seconds[i + 1] - seconds[i];
      }
      Arrays.sort(steps);
      return steps.length == 0 ? Double.POSITIVE_INFINITY : steps[steps.length / 2];
    }

    /** Number of values. */
    public int count() {
      return seconds.length;
    }

    /**
     * The value at an instant, straight between two that were kept.
     *
     * @param at s; outside of what was recorded there is none, nor in a gap
     * @param gap two values farther apart have a gap between them, s
     * @return SI; NaN where there is none
     */
    public double at(double at, double gap) {
      int after = Arrays.binarySearch(seconds, at);
      if (after >= 0) {
        return values[after];
      }
      int next = -after - 1;
      if (next == 0 || next == seconds.length || seconds[next] - seconds[next - 1] > gap) {
        return Double.NaN;
      }
      double share = (at - seconds[next - 1]) / (seconds[next] - seconds[next - 1]);
      return values[next - 1] + share * (values[next] - values[next - 1]);
    }
  }
}

package dev.offtake.time;

import dev.offtake.network.Equations;
import dev.offtake.part.Lag;
import dev.offtake.part.Part;
import dev.offtake.stability.Lags;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * All that comes late in a network, as states: a value for each lag, and after it a speed where it
 * swings.
 */
final class Late {
  /** Pressures are not resolved finer than that of this, Pa. */
  private static final double SCALE = 1e5;

  /** Air that it moves makes a flapper swing up to three times as fast as freely: 20 steps then. */
  private static final double STEPS_A_SWING = 60;

  private final Equations equations;
  private final List<Each> all = new ArrayList<>();
  private int size;

  /** A lag, where it stands among the states, whose it is, and how it moves. */
  private static final class Each {
    final Lag lag;
    final int at;
    final int part;
    final Pace pace;
    final double seconds;
    final int slowness;
    final int friction;
    double averaging = 1;

    Each(Lag lag, int at, int part, Pace pace, double seconds, int slowness, int friction) {
      this.lag = lag;
      this.at = at;
      this.part = part;
      this.pace = pace;
      this.seconds = seconds;
      this.slowness = slowness;
      this.friction = friction;
    }

    boolean swings() {
      return lag.what() == Lag.What.POSITION && pace.swings() > 0;
    }

    /** The servo limits the rate; where there is none, the disc's own drive. */
    double rate() {
      boolean servo = pace.lags().servo() > 0;
      boolean drives = lag.what() == (servo ? Lag.What.SERVO : Lag.What.POSITION);
      return drives ? pace.rate() : Double.POSITIVE_INFINITY;
    }
  }

  Late(Equations equations, Function<Part, Pace> paces) {
    this.equations = equations;
    List<Part> parts = equations.network().parts();
    for (int i = 0; i < parts.size(); i++) {
      if (!equations.element(i).lags().isEmpty()) {
        add(i, paces.apply(parts.get(i)));
      }
    }
  }

  private void add(int part, Pace pace) {
    for (Lag lag : equations.element(part).lags()) {
      Lags lags = pace.lags();
      double seconds =
          switch (lag.what()) {
            case SENSE_LINE -> lags.senseLine();
            case SENSOR -> lags.sensor();
            case SERVO -> lags.servo();
            case POSITION -> lags.position();
          };
      if (seconds > 0) {
        boolean line = lag.what() == Lag.What.SENSE_LINE;
        boolean sensor = lag.what() == Lag.What.SENSOR;
        String name = line ? "sense line slowness" : "slowness";
        int slowness = sensor ? -1 : equations.parameter(part, name);
        boolean disc = lag.what() == Lag.What.POSITION;
        int friction = disc ? equations.parameter(part, "friction") : -1;
        Each each = new Each(lag, size, part, pace, seconds, slowness, friction);
        all.add(each);
        size += each.swings() ? 2 : 1;
      }
    }
  }

  /** Number of states. */
  int size() {
    return size;
  }

  /** Number of lags. */
  int count() {
    return all.size();
  }

  /** The part that a lag belongs to. */
  int part(int lag) {
    return all.get(lag).part;
  }

  /** Where a lag stands among the states. */
  int at(int lag) {
    return all.get(lag).at;
  }

  /** Whether a lag is a position. */
  boolean position(int lag) {
    return all.get(lag).lag.what() == Lag.What.POSITION;
  }

  /** Longest step with which discs that swing between their stops are followed, s. */
  double longest(double[] y, int first) {
    double longest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < all.size(); i++) {
      Each each = all.get(i);
      double at = y[first + each.at];
      if (each.swings() && each.averaging == 1 && at > 0 && at < 1) {
        longest = Math.min(longest, 1 / (STEPS_A_SWING * each.pace.swings()));
      }
    }
    return longest;
  }

  /** Lets a lag follow the mean of its input, this many times slower; 1 for as it is. */
  void average(int lag, double times) {
    all.get(lag).averaging = times;
  }

  /** Whether a lag follows a mean. */
  boolean averages(int lag) {
    return all.get(lag).averaging > 1;
  }

  /** Takes over how slow and how stiff parts are by their parameters. */
  void setPaces() {
    for (int i = 0; i < all.size(); i++) {
      Each each = all.get(i);
      double[] parameters = equations.evaluation().parameters;
      double slow = each.slowness < 0 ? 1 : parameters[each.slowness];
      double times = slow * each.averaging;
      boolean disc = each.lag.what() == Lag.What.POSITION;
      double added = each.friction < 0 ? 0 : parameters[each.friction];
      double play = disc ? each.pace.friction() + added : 0;
      each.lag.moves(each.seconds * times, each.rate() / slow, play);
      if (each.swings() && each.averaging == 1) {
        each.lag.swings(2 * Math.PI * each.pace.swings() / slow, each.pace.damping());
      }
    }
  }

  /** Prepares a stage. */
  void begin(double inverse, double[] kept, int first) {
    for (int i = 0; i < all.size(); i++) {
      Each each = all.get(i);
      int at = first + each.at;
      each.lag.stage(kept[at], each.swings() ? kept[at + 1] : 0, inverse);
    }
  }

  /** Holds all where a state has them. */
  void hold(double[] y, int first) {
    for (int i = 0; i < all.size(); i++) {
      Each each = all.get(i);
      int at = first + each.at;
      double value = y[at];
      if (each.lag.what() == Lag.What.POSITION || each.lag.what() == Lag.What.SERVO) {
        value = Math.max(0, Math.min(1, value));
      }
      each.lag.hold(value, each.swings() ? y[at + 1] : 0);
    }
  }

  /**
   * Puts positions that are as good as at a stop there, in a state that is only looked at: what
   * comes late never quite arrives.
   */
  void settle(double[] y, int first, double tolerance) {
    for (int i = 0; i < all.size(); i++) {
      int at = first + all.get(i).at;
      if (position(i) && y[at] < tolerance) {
        y[at] = 0;
      } else if (position(i) && y[at] > 1 - tolerance) {
        y[at] = 1;
      }
    }
  }

  /** Writes where all are. */
  void values(double[] y, int first) {
    for (int i = 0; i < all.size(); i++) {
      Each each = all.get(i);
      y[first + each.at] = each.lag.value();
      if (each.swings()) {
        y[first + each.at + 1] = each.lag.speed();
      }
    }
  }

  /** Writes how fast all move where they are held. */
  void rates(double[] rates, int first) {
    for (int i = 0; i < all.size(); i++) {
      Each each = all.get(i);
      rates[first + each.at] = each.lag.rate();
      if (each.swings()) {
        rates[first + each.at + 1] = each.lag.acceleration();
      }
    }
  }

  /** Writes the errors that are allowed. A speed may err as it likes: only its way counts. */
  void allowed(double[] y, double tolerance, double[] out, int first) {
    for (int i = 0; i < all.size(); i++) {
      Each each = all.get(i);
      int at = first + each.at;
      out[at] =
          switch (each.lag.what()) {
            case SENSE_LINE -> tolerance * Math.max(SCALE, y[at]);
            case SENSOR -> tolerance * y[at];
            case SERVO, POSITION -> tolerance;
          };
      if (each.swings()) {
        out[at + 1] = Double.POSITIVE_INFINITY;
      }
    }
  }

  /** Lets a stage forget errors as it would. */
  void leave(double inverse, double[] errors, int first) {
    for (int i = 0; i < all.size(); i++) {
      Each each = all.get(i);
      if (!each.swings()) {
        double w = each.seconds * each.averaging * inverse;
        errors[first + each.at] *= w / (1 + w);
      }
    }
  }
}

package dev.offtake.cause.find;

import dev.offtake.cause.Value;
import dev.offtake.part.EngineGauge;
import dev.offtake.part.Facts;
import dev.offtake.part.Gauge;
import dev.offtake.part.Parameter;
import dev.offtake.part.Trip;
import dev.offtake.part.View;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Quantity;
import dev.offtake.solve.Solution;
import dev.offtake.stability.Lags;
import dev.offtake.stability.Mode;
import dev.offtake.stability.Stability;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Something that can be looked at in a solved state. */
sealed interface Probe {
  /** Its value in a state, SI; 0 or 1 for what is or is not. */
  double of(SceneState state);

  /** What it hangs on smoothly, for slopes; empty for what only is or is not. */
  default Optional<Sense> sense(SceneState state) {
    return Optional.empty();
  }

  /**
   * What a value hangs on.
   *
   * @param quantity pressure (static, absolute) or temperature
   * @param weight of the quantity in the value
   * @param ambient weight of the pressure of the air outside in the value
   * @param gauge name of the gauge whose constant error adds to it; empty for none
   * @param hot number of the point whose temperature a thermometer tells; {@link #NONE} else
   */
  record Sense(Quantity quantity, double weight, double ambient, String gauge, int hot) {
    /** No point. */
    static final int NONE = -1;
  }

  private static View view(Solution state, String part) {
    return state.view(state.network().part(part), Style.SHOP);
  }

  /**
   * A needle of a gauge of the system, with all that a fault does to it.
   *
   * @param gauge the gauge
   * @param needle number of the needle
   * @param stops whether it stops at the ends of its scale, else goes on as if there were none
   */
  record Needle(Gauge gauge, int needle, boolean stops) implements Probe {
    @Override
    public double of(SceneState state) {
      double shows = gauge.shows(needle, view(state.seen(), gauge.name()));
      Gauge.Scale scale = gauge.scale();
      return stops ? Math.max(scale.low(), Math.min(scale.high(), shows)) : shows;
    }

    @Override
    public Optional<Sense> sense(SceneState state) {
      View view = view(state.seen(), gauge.name());
      return gauge.feeling(needle, view).flatMap(feels -> sense(state.seen(), feels));
    }

    private Optional<Sense> sense(Solution state, Gauge.Feeling feels) {
      Facts.Reading reads = gauge.needles().get(feels.needle()).reads();
      int point = state.network().point(reads.point());
      if (point < 0) {
        return Optional.empty();
      }
      Quantity quantity =
          reads.temperature() ? Quantity.temperature(point) : Quantity.sensed(point);
      double ambient = feels.ambient();
      int hot = reads.temperature() ? point : Sense.NONE;
      return Optional.of(new Sense(quantity, feels.share(), ambient, gauge.name(), hot));
    }
  }

  /**
   * A gauge or a thermometer that was brought along.
   *
   * @param point where it is fitted
   * @param temperature whether it tells the temperature, else the pressure
   * @param absolute whether its pressure is absolute, else against the air outside
   */
  record Port(String point, boolean temperature, boolean absolute) implements Probe {
    @Override
    public double of(SceneState state) {
      Solution seen = state.seen();
      int at = seen.network().point(point);
      if (at < 0) {
        return Double.NaN;
      }
      if (temperature) {
        return seen.temperature(at);
      }
      return seen.sensed(at) - (absolute ? 0 : seen.conditions().ambientP());
    }

    @Override
    public Optional<Sense> sense(SceneState state) {
      int at = state.seen().network().point(point);
      if (at < 0) {
        return Optional.empty();
      }
      Quantity quantity = temperature ? Quantity.temperature(at) : Quantity.sensed(at);
      double ambient = temperature || absolute ? 0 : -1;
      return Optional.of(new Sense(quantity, 1, ambient, "", temperature ? at : Sense.NONE));
    }
  }

  /**
   * The middle of what swings over a stretch of a recording.
   *
   * @param needle what reads it
   * @param about name of what was recorded
   */
  record Middle(Probe needle, String about) implements Probe {
    @Override
    public double of(SceneState state) {
      double at = needle.of(state);
      Wave wave = state.waves().getOrDefault(about, Wave.NONE);
      return sense(state)
          .filter(sense -> wave.known())
          .map(sense -> at + sense.weight() * (wave.mean() - wave.end()))
          .orElse(at);
    }

    @Override
    public Optional<Sense> sense(SceneState state) {
      return needle.sense(state);
    }
  }

  /**
   * How far something swings over a stretch of a recording, as {@link Value.Swing#scaled} has it;
   * nothing where its needle is held.
   *
   * @param needle what reads it
   * @param about name of what was recorded
   * @param noise what its needle does by itself, Pa or K
   */
  record Size(Probe needle, String about, double noise) implements Probe {
    @Override
    public double of(SceneState state) {
      double size = state.waves().getOrDefault(about, Wave.NONE).size();
      return needle
          .sense(state)
          .map(sense -> new Value.Swing(Math.abs(sense.weight()) * size, noise, 0, 0).scaled())
          .orElse(0.0);
    }
  }

  /**
   * How often something swings over a stretch of a recording, beside what was recorded: a natural
   * logarithm. What swings too little to be told how often says nothing of it: 0.
   *
   * @param about name of what was recorded
   * @param recorded how it swung
   */
  record Pitch(String about, Wave recorded) implements Probe {
    /** A swing that is smaller by this factor is not the one that was recorded. */
    private static final double TOLD = 0.25;

    @Override
    public double of(SceneState state) {
      Wave wave = state.waves().getOrDefault(about, Wave.NONE);
      boolean told = wave.hertz() > 0 && wave.size() > TOLD * recorded.size();
      return told ? Math.log(wave.hertz() / recorded.hertz()) : 0;
    }
  }

  /**
   * How far the pressure of a point at rest is from swinging for ever: less a damping ratio; far
   * below 0 where nothing swings there. Friction is taken for what it is: what moves in jerks never
   * comes to rest for long where its valve regulates.
   *
   * <p>To judge a state takes as long as to solve twenty, so that only what makes a valve late or
   * stiff is judged anew.
   *
   * @param point that is read
   * @param sound its value in a sound system; NaN before that is known
   */
  record Hunts(String point, double sound) implements Probe {
    /** A mode in which a point takes less part does not move its needle. */
    private static final double PART = 0.01;

    /** A needle follows no quicker swing, Hz. */
    private static final double QUICKEST = 10;

    private static final String FRICTION = "friction";
    private static final Set<String> LATE = Set.of(FRICTION, "slowness", "sense line slowness");

    @Override
    public double of(SceneState state) {
      if (state.moving() || !state.seen().solved()) {
        return -1;
      }
      boolean late =
          state.seen().setup().changed().keySet().stream()
              .anyMatch(number -> LATE.contains(number.parameter()));
      if (!late && !Double.isNaN(sound)) {
        return sound;
      }
      return Stability.of(state.seen(), Lags::usual).modes().stream()
          .filter(mode -> mode.circular() > 0 && mode.frequency() <= QUICKEST)
          .filter(this::moves)
          .mapToDouble(mode -> Math.max(-mode.damping(), sticks(state.seen(), mode)))
          .max()
          .orElse(-1);
    }

    private boolean moves(Mode mode) {
      return mode.shares().stream()
          .anyMatch(share -> share.name().equals(point) && share.share() > PART);
    }

    /** The friction of the valve that drives a mode, a share of its stroke; −1 for none. */
    private static double sticks(Solution state, Mode mode) {
      double most = -1;
      for (Mode.Share share : mode.shares()) {
        int part = share.valve() ? state.network().part(share.name()) : -1;
        for (int i = 0; part >= 0 && i < parameters(state, part).size(); i++) {
          double value = state.view(part, Style.SHOP).parameter(i);
          boolean own = parameters(state, part).get(i).name().equals(FRICTION) && value > 0;
          most = own ? Math.max(most, value) : most;
        }
      }
      return most;
    }

    private static List<Parameter> parameters(Solution state, int part) {
      return state.network().parts().get(part).parameters();
    }
  }

  /**
   * How far the needle that is farthest from where it usually stands is from it, in what a person
   * takes for usual.
   *
   * @param needles which
   * @param usual where each stands in a sound system, SI
   * @param bands what is still usual of each, SI
   */
  record Off(List<Needle> needles, List<Double> usual, List<Double> bands) implements Probe {
    @Override
    public double of(SceneState state) {
      double most = 0;
      for (int i = 0; i < needles.size(); i++) {
        double off = Math.abs(needles.get(i).of(state) - usual.get(i)) / bands.get(i);
        most = Math.max(most, off);
      }
      return most;
    }
  }

  /** How much warmer a point is than the air outside, K. */
  record Warmth(String point) implements Probe {
    @Override
    public double of(SceneState state) {
      Solution seen = state.seen();
      int at = seen.network().point(point);
      return at < 0 ? Double.NaN : seen.temperature(at) - seen.conditions().ambientT();
    }

    @Override
    public Optional<Sense> sense(SceneState state) {
      int at = state.seen().network().point(point);
      // A hand tells warm from cold: no more settled than that.
      return at < 0
          ? Optional.empty()
          : Optional.of(new Sense(Quantity.temperature(at), 1, 0, "", Sense.NONE));
    }
  }

  /** Whether a part stands in a position: 1 when it does. */
  record Stands(String part, String position) implements Probe {
    @Override
    public double of(SceneState state) {
      return state.seen().is(part, position) ? 1 : 0;
    }
  }

  /** How far a valve is open, 0 to 1. */
  record Opening(String part) implements Probe {
    @Override
    public double of(SceneState state) {
      View view = view(state.seen(), part);
      int at =
          state.seen().network().parts().stream()
              .filter(p -> p.name().equals(part))
              .findFirst()
              .map(p -> p.observables().indexOf("opening"))
              .orElse(-1);
      return at < 0 ? Double.NaN : view.observed(at);
    }
  }

  /** How far an engine gauge stands from where it would without bleed, in its own unit. */
  record Engine(EngineGauge gauge) implements Probe {
    @Override
    public double of(SceneState state) {
      return gauge.shift(view(state.seen(), gauge.name()));
    }
  }

  /**
   * How far beyond its limit the most pressing of some trips was before anything tripped, counted
   * in what the forecast may be wrong; far beyond for one that trips without a cause, far below for
   * one that is dead.
   */
  record Margin(List<Trip> trips, Errors errors) implements Probe {
    static final double FAR = 20;

    @Override
    public double of(SceneState state) {
      double most = -FAR;
      for (Trip trip : trips) {
        most = Math.max(most, margin(trip, state));
      }
      return most;
    }

    private double margin(Trip healthy, SceneState state) {
      Solution before = state.before();
      int number = before.network().part(healthy.name());
      if (!(before.network().parts().get(number) instanceof Trip trip)) {
        return -FAR;
      }
      return Math.max(
          -FAR, Math.min(FAR, trip.beyond(before.view(number, Style.SHOP), errors::of)));
    }
  }
}

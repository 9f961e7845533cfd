package dev.offtake.cause.find;

import dev.offtake.part.EngineGauge;
import dev.offtake.part.Facts;
import dev.offtake.part.Gauge;
import dev.offtake.part.Trip;
import dev.offtake.part.View;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Quantity;
import dev.offtake.solve.Solution;
import java.util.List;
import java.util.Optional;

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
   */
  record Sense(Quantity quantity, double weight, double ambient, String gauge) {}

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
      return Optional.of(new Sense(quantity, feels.share(), ambient, gauge.name()));
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
      return Optional.of(new Sense(quantity, 1, temperature || absolute ? 0 : -1, ""));
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
      return at < 0 ? Optional.empty() : Optional.of(new Sense(Quantity.temperature(at), 1, 0, ""));
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

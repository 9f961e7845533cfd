package dev.offtake.explain;

import dev.offtake.part.LeakLoop;
import dev.offtake.part.Light;
import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import dev.offtake.part.Trip;
import dev.offtake.part.View;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import java.util.Optional;

/** Trips, leak loops and lights that do nothing though what they warn of is there. */
final class DarkWarning {
  private final Solution solution;
  private final Style style;

  /**
   * Prepares.
   *
   * @param solution a solved state
   * @param style units to speak in
   */
  DarkWarning(Solution solution, Style style) {
    this.solution = solution;
    this.style = style;
  }

  /** Whether a part is such a warning. */
  boolean is(Part part) {
    if (part instanceof Light light) {
      return light.dark(view(part));
    }
    if (part instanceof LeakLoop loop) {
      return value(loop.zone(), true) > alarm(loop) && !solution.is(loop.name(), "lit");
    }
    return part instanceof Trip trip
        && trip.above() >= 0
        && value(trip) > limit(trip)
        && !solution.is(trip.name(), "tripped");
  }

  /** What it fails to do, short, without a full stop: {@code left pylon loop stays dark}. */
  String brief(Part part) {
    return part instanceof Trip trip
        ? trip.name() + " does not trip at " + print(trip, value(trip))
        : part.name() + " stays dark";
  }

  /** What is said of it where the whole is told, without a full stop; empty for other parts. */
  Optional<String> says(Part part) {
    if (!is(part)) {
      return Optional.empty();
    }
    String sound = "";
    if (part instanceof Trip trip) {
      sound = ": sound, it would have tripped at " + print(trip, limit(trip));
    } else if (part instanceof LeakLoop loop) {
      String zone = style.print(value(loop.zone(), true), Dimension.TEMPERATURE);
      String alarm = style.print(alarm(loop), Dimension.TEMPERATURE);
      sound = " though " + loop.zone() + " has " + zone + ": sound, it would have lit at " + alarm;
    } else {
      sound = ": " + part.doing(view(part)).why();
    }
    return Optional.of(brief(part) + sound);
  }

  private View view(Part part) {
    return solution.view(solution.network().part(part.name()), style);
  }

  /** The alarm as the file gives it, K; a failure changes the number in force, not this one. */
  private static double alarm(LeakLoop loop) {
    return loop.parameters().get(0).value();
  }

  /** The limit as the file gives it: K, or Pa absolute. */
  private double limit(Trip trip) {
    Parameter limit = trip.parameters().get(trip.above());
    boolean gauge = limit.dimension() == Dimension.GAUGE_PRESSURE;
    return limit.value() + (gauge ? solution.conditions().ambientP() : 0);
  }

  private double value(Trip trip) {
    return value(trip.watches().point(), trip.watches().temperature());
  }

  private double value(String name, boolean temperature) {
    int point = solution.network().point(name);
    if (point < 0) {
      return 0;
    }
    return temperature ? solution.temperature(point) : solution.sensed(point);
  }

  private String print(Trip trip, double value) {
    return trip.watches().temperature()
        ? style.print(value, Dimension.TEMPERATURE)
        : style.print(value - solution.conditions().ambientP(), Dimension.GAUGE_PRESSURE);
  }
}

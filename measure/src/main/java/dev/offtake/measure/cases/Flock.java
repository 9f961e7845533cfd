package dev.offtake.measure.cases;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;

/**
 * Many plants with the same thing wrong with them, each to an extent of its own, run at every stop.
 * Plants of the same number in two flocks were the same before anything broke, and are run alike.
 */
final class Flock {
  private final List<Bird> birds;

  private Flock(List<Bird> birds) {
    this.birds = birds;
  }

  /**
   * One plant.
   *
   * @param runnings how it is run at each stop
   * @param rest the state it comes to; a stop without one is missing
   */
  record Bird(Knobs knobs, Map<Stop, Running> runnings, Map<Stop, State> rest) {
    /** What is shown on a run; empty where it comes to no rest. */
    Optional<Shown> on(Schedule schedule) {
      List<Running> run = new ArrayList<>();
      List<State> states = new ArrayList<>();
      for (Occasion occasion : schedule.occasions()) {
        State state = rest.get(occasion.stop());
        if (state == null) {
          return Optional.empty();
        }
        states.add(state);
        run.add(runnings.get(occasion.stop()));
      }
      return Optional.of(Trace.of(schedule, run, states, knobs).shown());
    }

    /** The same plant with something broken. */
    Bird broken(UnaryOperator<Knobs> breaks) {
      return run(breaks.apply(knobs), runnings);
    }
  }

  /** Sound ones. */
  static Flock sound(int count, SplittableRandom chance) {
    List<Bird> birds = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Map<Stop, Running> runnings = new EnumMap<>(Stop.class);
      for (Stop stop : Stop.values()) {
        runnings.put(stop, Running.about(stop, chance));
      }
      birds.add(run(Scatter.draw(chance), runnings));
    }
    return new Flock(birds);
  }

  /** The first so many of them with a mode, each to an extent as cases draw it. */
  Flock broken(Effects effects, ModeLine line, int count, SplittableRandom chance) {
    return new Flock(
        birds.subList(0, count).stream()
            .map(
                bird -> {
                  double extent = line.extent(chance);
                  SplittableRandom open = chance.split();
                  return bird.broken(knobs -> effects.broken(line, knobs, extent, open));
                })
            .toList());
  }

  /** Its plants. */
  List<Bird> birds() {
    return birds;
  }

  private static Bird run(Knobs knobs, Map<Stop, Running> runnings) {
    Plant plant = new Plant(knobs);
    Map<Stop, State> rest = new EnumMap<>(Stop.class);
    runnings.forEach((stop, running) -> plant.at(running).ifPresent(s -> rest.put(stop, s)));
    return new Bird(knobs, runnings, rest);
  }
}

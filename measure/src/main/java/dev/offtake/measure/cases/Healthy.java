package dev.offtake.measure.cases;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;

/** What many healthy plants show at each stop; worked out when first asked for. */
final class Healthy {
  /** Of its own, so that no case shares its plants. */
  private static final long NUMBER = 0x6f66_6674_616b_6531L;

  private final List<Plant> plants = new ArrayList<>();
  private final Map<Stop, List<Optional<State>>> states = new EnumMap<>(Stop.class);
  private final Map<Stop, State> nominal = new EnumMap<>(Stop.class);

  /**
   * Draws healthy plants.
   *
   * @param count how many
   */
  Healthy(int count) {
    SplittableRandom chance = new SplittableRandom(NUMBER);
    for (int i = 0; i < count; i++) {
      plants.add(new Plant(Scatter.draw(chance)));
    }
  }

  /** The states of all plants at a stop, in their order. */
  List<Optional<State>> at(Stop stop) {
    return states.computeIfAbsent(stop, this::work);
  }

  private List<Optional<State>> work(Stop stop) {
    SplittableRandom chance = new SplittableRandom(NUMBER + stop.words().hashCode());
    List<Optional<State>> all = new ArrayList<>();
    for (Plant plant : plants) {
      all.add(plant.at(Running.about(stop, chance)));
    }
    return List.copyOf(all);
  }

  /** What a crew is used to: the plant as it was built, run exactly as set. */
  State usual(Stop stop) {
    return nominal.computeIfAbsent(
        stop,
        where ->
            new Plant(Nominal.knobs())
                .at(Running.exact(where))
                .orElseThrow(() -> new IllegalStateException("no healthy state: " + where)));
  }
}

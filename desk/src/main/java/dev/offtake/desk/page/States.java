package dev.offtake.desk.page;

import dev.offtake.explain.Question;
import dev.offtake.network.Network;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import dev.offtake.study.Fault;
import dev.offtake.system.BleedSystem;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Answers questions of the page with states; keeps the ladders of the last few line-ups. */
final class States {
  /** So many combinations of day, line-up and faults are kept. */
  private static final int KEPT = 24;

  private final BleedSystem system;
  private final Settlers healthy;
  private final Map<Key, Ladder> ladders =
      Collections.synchronizedMap(
          new LinkedHashMap<>(KEPT, 0.75f, true) {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Key, Ladder> eldest) {
              return size() > KEPT;
            }
          });

  /**
   * What a ladder is the same for.
   *
   * @param still the question at no speed
   * @param faults what is broken and how far, in words
   */
  private record Key(Setup still, List<String> faults) {}

  States(BleedSystem system) {
    this.system = system;
    healthy = new Settlers(system.network());
  }

  /** The system. */
  BleedSystem system() {
    return system;
  }

  /**
   * Solves.
   *
   * @param question what is asked
   * @param named whether its speeds are those of a power of the file, else the fan follows
   */
  Solution solve(Question question, boolean named) {
    Ladder ladder = ladder(question);
    return named ? ladder.exact(question.setup()) : ladder.at(core(question));
  }

  private static double core(Question question) {
    return question.setup().conditions().core();
  }

  /** The ladder of a question. */
  Ladder ladder(Question question) {
    Setup setup = question.setup();
    Setup still = setup.at(setup.conditions().withSpeeds(1, 1));
    return ladders.computeIfAbsent(
        new Key(still, question.faults().stream().map(States::words).toList()),
        key -> new Ladder(settlers(question.network()), question));
  }

  private static String words(Fault fault) {
    return fault.name() + "=" + fault.extent();
  }

  @SuppressWarnings("ReferenceEquality") // the same network, not one that happens to be alike
  private Settlers settlers(Network network) {
    return network == healthy.network() ? healthy : new Settlers(network);
  }
}

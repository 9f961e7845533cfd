package dev.offtake.cause;

import dev.offtake.part.Gauge;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Hint;
import dev.offtake.system.Item.Words;
import dev.offtake.system.Problems;
import dev.offtake.system.Texts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The test gauges of some readings while they are read. */
final class Gauges {
  private final List<String> own;
  private final Map<String, UsedGauge> used = new LinkedHashMap<>();
  private final boolean declared;
  private final Problems problems;

  /**
   * Begins a list.
   *
   * @param system whose own gauges need not be declared
   * @param declared whether each must be declared; else a name alone will do
   * @param problems takes what is wrong
   */
  Gauges(BleedSystem system, boolean declared, Problems problems) {
    own = system.parts().stream().filter(Gauge.class::isInstance).map(p -> p.name()).toList();
    this.declared = declared;
    this.problems = problems;
  }

  void add(UsedGauge gauge) {
    used.put(gauge.name(), gauge);
  }

  List<UsedGauge> all() {
    return List.copyOf(used.values());
  }

  /** Names of the system's own gauges. */
  List<String> own() {
    return own;
  }

  /** The test gauge of a name; empty for none, and for a gauge of the system itself. */
  Optional<UsedGauge> find(Words name) {
    String text = name.text();
    if (text.isEmpty() || Texts.named(text, own).isPresent()) {
      return Optional.empty();
    }
    Optional<String> known = Texts.named(text, used.keySet());
    if (known.isPresent()) {
      return Optional.ofNullable(used.get(known.get()));
    }
    if (!declared) {
      add(UsedGauge.named(text));
      return Optional.ofNullable(used.get(text));
    }
    List<String> all = new ArrayList<>(used.keySet());
    all.addAll(own);
    String near = Hint.nearest(text, all);
    String mend =
        "Describe it there: `" + text + ": {good to: 0.5 psi, calibration due: 2030-01-31}`";
    problems.add(
        name,
        "There is no gauge `" + text + "` under `gauges used`",
        near.isEmpty() ? mend : "Did you mean `" + near + "`?");
    return Optional.empty();
  }
}

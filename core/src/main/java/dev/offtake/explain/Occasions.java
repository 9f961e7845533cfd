package dev.offtake.explain;

import dev.offtake.study.effect.Occasion;
import dev.offtake.system.LineUp;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Several occasions in few words: a power stands alone where all of its line-ups are meant. */
final class Occasions {
  private Occasions() {}

  /**
   * Words for some occasions.
   *
   * @param some of them
   * @param all that were looked at
   */
  static String words(List<Occasion> some, List<Occasion> all) {
    if (some.isEmpty()) {
      return "nowhere";
    }
    if (some.size() == all.size()) {
      return "everywhere";
    }
    Map<String, List<Occasion>> byPower = new LinkedHashMap<>();
    some.forEach(o -> byPower.computeIfAbsent(o.power(), p -> new ArrayList<>()).add(o));
    List<String> words = new ArrayList<>();
    byPower.forEach(
        (power, here) -> {
          long possible = all.stream().filter(o -> o.power().equals(power)).count();
          words.add(here.size() == possible ? power : power + " (" + lineUps(here) + ")");
        });
    return String.join(", ", words);
  }

  private static String lineUps(List<Occasion> here) {
    List<String> names = here.stream().map(Occasion::lineUp).toList();
    return names.equals(List.of(LineUp.USUAL)) ? "usual line-up" : String.join(", ", names);
  }
}

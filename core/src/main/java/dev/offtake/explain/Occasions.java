package dev.offtake.explain;

import dev.offtake.study.effect.Occasion;
import dev.offtake.system.LineUp;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

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
    String byPower = grouped(some, all, Occasion::power, Occasion::lineUp);
    String byLineUp = grouped(some, all, Occasion::lineUp, Occasion::power);
    return byLineUp.length() < byPower.length() ? byLineUp : byPower;
  }

  /** Groups by one name; a group stands alone where it is complete, else with the other names. */
  private static String grouped(
      List<Occasion> some,
      List<Occasion> all,
      Function<Occasion, String> name,
      Function<Occasion, String> other) {
    Map<String, List<Occasion>> groups = new LinkedHashMap<>();
    some.forEach(o -> groups.computeIfAbsent(name.apply(o), key -> new ArrayList<>()).add(o));
    List<String> words = new ArrayList<>();
    groups.forEach(
        (group, here) -> {
          long possible = all.stream().filter(o -> name.apply(o).equals(group)).count();
          String named = named(group);
          boolean complete = here.size() == possible;
          words.add(complete ? named : named + " (" + others(here, other) + ")");
        });
    return String.join(", ", words);
  }

  private static String others(List<Occasion> here, Function<Occasion, String> other) {
    return here.stream().map(other).map(Occasions::named).collect(Collectors.joining(", "));
  }

  private static String named(String name) {
    return name.equals(LineUp.USUAL) ? "usual line-up" : name;
  }
}

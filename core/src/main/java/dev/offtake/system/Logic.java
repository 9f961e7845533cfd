package dev.offtake.system;

import dev.offtake.logic.Condition;
import dev.offtake.logic.Situation;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads conditions with the names of a file. */
final class Logic {
  private @Nullable Problems problems;

  Logic(
      Map<String, List<String>> switches,
      @Nullable Map<String, List<String>> positions,
      PointBook points,
      List<String> sides) {}

  void tellTo(Problems takes) {
    problems = takes;
  }

  @Nullable Condition read(String side, String text, Item at) {
    return new Interim(text);
  }

  Optional<Condition> tryRead(String side, String text) {
    return Optional.empty();
  }

  record Interim(String text) implements Condition {
    @Override
    public boolean holds(Situation situation) {
      return false;
    }

    @Override
    public Set<String> names() {
      return Set.of();
    }
  }
}

package dev.offtake.part;

import dev.offtake.logic.Condition;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What a file would say, given by a test key by key in SI. */
final class KindFacts implements Facts {
  final List<String> problems = new ArrayList<>();
  private final Map<String, Object> given = new HashMap<>();

  KindFacts with(String key, Object value) {
    given.put(key, value);
    return this;
  }

  KindFacts si(String key, double value, Dimension dimension) {
    return with(key, Stated.of(value, dimension));
  }

  private <T> @Nullable T get(String key, Class<T> type) {
    return type.cast(given.get(key));
  }

  private <T> T must(String key, Class<T> type) {
    T value = get(key, type);
    if (value == null) {
      throw new IllegalStateException("the test gives no " + key);
    }
    return value;
  }

  @Override
  public String name() {
    return "part";
  }

  @Override
  public boolean has(String key) {
    return given.containsKey(key);
  }

  @Override
  public Stated stated(String key) {
    return must(key, Stated.class);
  }

  @Override
  public double si(String key) {
    return stated(key).nominal();
  }

  @Override
  public At at(String key) {
    return must(key, At.class);
  }

  @Override
  @SuppressWarnings("unchecked")
  public List<When> whens(String key) {
    return must(key, List.class);
  }

  @Override
  public @Nullable Limit limit(String key) {
    return get(key, Limit.class);
  }

  @Override
  public @Nullable Below below(String key) {
    return get(key, Below.class);
  }

  @Override
  public @Nullable Reset reset(String key) {
    return get(key, Reset.class);
  }

  @Override
  public Conditions day(String key) {
    return Conditions.standardDay(1, 1);
  }

  @Override
  public String point(String key) {
    String name = get(key, String.class);
    return name == null ? Leg.AMBIENT : name;
  }

  @Override
  public @Nullable Reading reading(String key) {
    return get(key, Reading.class);
  }

  @Override
  public Path path(String key) {
    return must(key, Path.class);
  }

  @Override
  public @Nullable Condition condition(String key) {
    return get(key, Condition.class);
  }

  @Override
  public String choice(String key) {
    String word = get(key, String.class);
    return word == null ? "" : word;
  }

  @Override
  public String text(String key) {
    String word = get(key, String.class);
    return word == null ? "" : word;
  }

  @Override
  @SuppressWarnings("unchecked")
  public List<Needle> needles(String key) {
    List<Needle> needles = get(key, List.class);
    return needles == null ? List.of() : needles;
  }

  @Override
  @SuppressWarnings("unchecked")
  public List<double[]> table(String key) {
    List<double[]> rows = get(key, List.class);
    return rows == null ? List.of() : rows;
  }

  @Override
  public @Nullable Condition powered(String key) {
    return null;
  }

  @Override
  public void problem(String key, String wrong, String mend) {
    problems.add(key + ": " + wrong);
  }

  @Override
  public void assume(String key, String says) {}
}

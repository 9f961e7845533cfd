package dev.offtake.part;

import dev.offtake.logic.Condition;
import dev.offtake.logic.Situation;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a test says about a part, in SI; bodies of valves have usual values that a test may replace.
 */
final class BenchFacts implements Facts {
  final List<String> problems = new ArrayList<>();
  final List<String> assumed = new ArrayList<>();
  private final Kind kind;
  private final Map<String, Object> said = new HashMap<>();
  private final Map<String, Stated> usual = new HashMap<>();

  BenchFacts(Kind kind) {
    this.kind = kind;
    usual.put("flow coefficient", Stated.of(0.7, Dimension.NUMBER));
    usual.put("x_T", Stated.of(0.7, Dimension.NUMBER));
    usual.put("cracks at", Stated.of(0.5 * Bench.PSI, Dimension.PRESSURE_DIFFERENCE));
    usual.put("droop", Stated.of(4 * Bench.PSI, Dimension.PRESSURE_DIFFERENCE));
    said.put("bore", Stated.of(0.0889, Dimension.LENGTH));
  }

  /** Says a quantity in SI. */
  BenchFacts si(String key, double value, Dimension dimension) {
    return say(key, Stated.of(value, dimension));
  }

  /** Says anything in the form in which it is read. */
  BenchFacts say(String key, Object value) {
    if (kind.keys().stream().noneMatch(k -> k.name().equals(key))) {
      throw new IllegalArgumentException(kind.name() + " has no key " + key);
    }
    said.put(key, value);
    return this;
  }

  BenchFacts not(String key) {
    said.remove(key);
    return this;
  }

  Part build() {
    return kind.build(this);
  }

  @Override
  public String name() {
    return "the " + kind.name();
  }

  @Override
  public boolean has(String key) {
    return said.containsKey(key);
  }

  @Override
  public Stated stated(String key) {
    Stated stated = (Stated) said.getOrDefault(key, usual.get(key));
    return stated == null ? Stated.of(Double.NaN, Dimension.NUMBER) : stated;
  }

  @Override
  public double si(String key) {
    return stated(key).nominal();
  }

  @Override
  public At at(String key) {
    return said.containsKey(key)
        ? (At) said.get(key)
        : new At(
            Stated.of(0.0005, Dimension.MASS_FLOW),
            Stated.of(30 * Bench.PSI, Dimension.PRESSURE_DIFFERENCE));
  }

  @Override
  public List<When> whens(String key) {
    return List.of();
  }

  @Override
  public @Nullable Limit limit(String key) {
    return (Limit) said.get(key);
  }

  @Override
  public @Nullable Below below(String key) {
    return (Below) said.get(key);
  }

  @Override
  public @Nullable Reset reset(String key) {
    return (Reset) said.get(key);
  }

  @Override
  public Conditions day(String key) {
    return Conditions.standardDay(1, 1);
  }

  @Override
  public String point(String key) {
    return (String) said.getOrDefault(key, Leg.AMBIENT);
  }

  @Override
  public @Nullable Reading reading(String key) {
    return (Reading) said.get(key);
  }

  @Override
  public Path path(String key) {
    return (Path) said.getOrDefault(key, new Path("ahead", "behind", false));
  }

  @Override
  public @Nullable Condition condition(String key) {
    return said.containsKey(key) ? new Words((String) said.get(key)) : null;
  }

  @Override
  public String choice(String key) {
    String first =
        kind.keys().stream()
            .filter(k -> k.name().equals(key))
            .findFirst()
            .orElseThrow()
            .choices()
            .get(0);
    return (String) said.getOrDefault(key, first);
  }

  @Override
  public String text(String key) {
    return (String) said.getOrDefault(key, "");
  }

  @Override
  public List<Needle> needles(String key) {
    return List.of();
  }

  @Override
  public List<double[]> table(String key) {
    return List.of();
  }

  @Override
  public @Nullable Condition powered(String key) {
    return said.containsKey(key) ? new Words(said.get(key) + " is LIVE") : null;
  }

  @Override
  public void problem(String key, String wrong, String mend) {
    problems.add(key);
  }

  @Override
  public void assume(String key, String says) {
    assumed.add(key);
  }

  /** {@code subject is POSITION}. */
  record Words(String text) implements Condition {
    @Override
    public boolean holds(Situation situation) {
      String[] parts = text.split(" is ");
      return situation.is(parts[0], parts[1]);
    }

    @Override
    public Set<String> names() {
      return Set.of(text.split(" is ")[0]);
    }
  }
}

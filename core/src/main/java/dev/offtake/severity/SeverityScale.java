package dev.offtake.severity;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Which criterion means which class.
 *
 * @param classes class of each criterion
 */
public record SeverityScale(Map<Criterion, Severity> classes) {
  /** Completes the scale with the usual classes. */
  public SeverityScale {
    Map<Criterion, Severity> all = new EnumMap<>(Criterion.class);
    for (Criterion criterion : Criterion.values()) {
      all.put(criterion, classes.getOrDefault(criterion, criterion.usual()));
    }
    classes = Map.copyOf(all);
  }

  /** The scale that holds when the file says nothing. */
  public static SeverityScale usual() {
    return new SeverityScale(Map.of());
  }

  /** Class of a criterion. */
  public Severity of(Criterion criterion) {
    return classes.getOrDefault(criterion, criterion.usual());
  }

  /** The worst class of some criteria; minor for none. */
  public Severity worst(Stream<Criterion> criteria) {
    return criteria.map(this::of).min(Comparator.naturalOrder()).orElse(Severity.MINOR);
  }
}

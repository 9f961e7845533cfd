package dev.offtake.logic;

import dev.offtake.quantity.Dimension;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Invented names on the left side, and how they stand. */
final class Bench implements Names, Situation {
  static final double AMBIENT = 101_325;

  private static final Map<String, List<String>> POSITIONS =
      Map.of(
          "left bleed switch", List.of("ON", "OFF"),
          "isolation", List.of("SHUT", "AUTO", "OPEN"),
          "left overheat trip", List.of("tripped", "set"),
          "high and low valve", List.of("open", "shut"),
          "cover", List.of("installed", "not installed"),
          "lamp", List.of("lit and steady", "lit", "dark"));

  private static final Map<String, Dimension> VALUES =
      Map.of(
          "left duct pressure", Dimension.PRESSURE,
          "left duct temperature", Dimension.TEMPERATURE,
          "core", Dimension.SHARE);

  private final Map<String, String> stands = new HashMap<>();
  private final Map<String, Double> values = new HashMap<>();

  Bench put(String subject, String position) {
    stands.put(subject, position);
    return this;
  }

  Bench put(String subject, double value) {
    values.put(subject, value);
    return this;
  }

  @Override
  public Optional<String> subject(String written) {
    String low = written.toLowerCase(Locale.ROOT);
    return all().stream().filter(n -> n.equals(low) || n.equals("left " + low)).findFirst();
  }

  @Override
  public List<String> positions(String subject) {
    return POSITIONS.getOrDefault(subject, List.of());
  }

  @Override
  public Dimension dimension(String subject) {
    return VALUES.getOrDefault(subject, Dimension.NUMBER);
  }

  @Override
  public List<String> all() {
    return Stream.concat(POSITIONS.keySet().stream(), VALUES.keySet().stream()).sorted().toList();
  }

  @Override
  public boolean is(String subject, String position) {
    return position.equals(stands.get(subject));
  }

  @Override
  public double value(String subject) {
    return values.getOrDefault(subject, Double.NaN);
  }

  @Override
  public double ambientPressure() {
    return AMBIENT;
  }
}

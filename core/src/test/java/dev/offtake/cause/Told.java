package dev.offtake.cause;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.network.Demos;
import dev.offtake.system.BleedSystem;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Readings for tests, of the demo and of a system with one part of every kind. */
final class Told {
  static final BleedSystem TWIN = Demos.demo("twin");
  static final BleedSystem EVERY_KIND = Demos.everyKind();

  private Told() {}

  static Readings sound(ReadingsRead read) {
    assertThat(read.problems()).isEmpty();
    return read.readings().orElseThrow();
  }

  static Readings yaml(String text) {
    return sound(ReadingsReader.readText("readings.yaml", text, TWIN));
  }

  static Readings csv(String text) {
    return sound(ReadingsReader.readText("readings.csv", text, TWIN));
  }

  static Readings line(String... lines) {
    return sound(ReadingsReader.readLines(List.of(lines), TWIN));
  }

  /** The only occasion. */
  static Occasion only(Readings readings) {
    assertThat(readings.occasions()).hasSize(1);
    return readings.occasions().get(0);
  }

  /** What was read in words, by what it was read of. */
  static Map<String, String> words(Occasion occasion) {
    return occasion.readings().stream()
        .collect(Collectors.toMap(r -> r.about().name(), r -> r.value().words()));
  }

  /** The value of one reading written in a line of its own. */
  static Value value(BleedSystem system, String power, String reading) {
    ReadingsRead read = ReadingsReader.readLines(List.of(power + ": " + reading), system);
    return only(sound(read)).readings().get(0).value();
  }
}

package dev.offtake.severity;

import java.util.Locale;
import java.util.Optional;

/** Classes of severity after MIL-STD-1629A, the worst first. */
public enum Severity {
  /** Death or loss of the system. */
  CATASTROPHIC("I"),
  /** Severe injury, major damage, loss of the mission. */
  CRITICAL("II"),
  /** Minor injury or damage, delay. */
  MARGINAL("III"),
  /** Unscheduled maintenance. */
  MINOR("IV");

  private final String number;

  Severity(String number) {
    this.number = number;
  }

  /** Roman number of the class. */
  public String number() {
    return number;
  }

  /** Name of the class in small letters. */
  public String words() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The class of a number or a name. */
  public static Optional<Severity> of(String text) {
    for (Severity severity : values()) {
      if (severity.number.equals(text) || severity.words().equals(text)) {
        return Optional.of(severity);
      }
    }
    return Optional.empty();
  }

  /** Whether this class is worse than another. */
  public boolean worseThan(Severity other) {
    return compareTo(other) < 0;
  }
}

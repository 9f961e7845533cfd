package dev.offtake.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringWriter;

/** What was told on the error stream, however its lines are broken. */
final class Told {
  private Told() {}

  /** All of it in one line. */
  static String line(StringWriter err) {
    return err.toString().strip().replaceAll("\\s+", " ");
  }

  /** One complaint, of lines that fit a terminal, in one line. */
  static String complaint(StringWriter err) {
    assertThat(err.toString().lines()).allMatch(line -> line.length() <= 80);
    assertThat(err.toString().lines().skip(1)).allMatch(line -> line.startsWith("  "));
    assertThat(err.toString()).startsWith("offtake: ");
    return line(err);
  }
}

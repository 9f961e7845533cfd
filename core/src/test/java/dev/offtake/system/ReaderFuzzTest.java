package dev.offtake.system;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.part.Kinds;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/**
 * However a file is broken, the reader does not throw, points into the file, and comes back in
 * time. The demo files are mutated line by line and letter by letter.
 */
class ReaderFuzzTest {
  private static final List<String> ODD =
      List.of(
          "\u0000",
          "\u00a0",
          "\u2028",
          "\ufeff",
          "\ud83d\ude00",
          "\ud800",
          "\u202e",
          "é",
          "°",
          "µ",
          "\t",
          "\r",
          "{",
          "}",
          "[",
          "]",
          ":",
          ": ",
          " #",
          "#",
          "&a ",
          "*a",
          "!x ",
          "|",
          ">",
          "'",
          "\"",
          "- ",
          ", ",
          "---\n",
          "...",
          "..",
          "%",
          "@",
          "`",
          "?",
          "? ",
          ";",
          "unknown",
          "->",
          "1e999",
          "9".repeat(400),
          "k".repeat(5000),
          "(".repeat(3000),
          "[".repeat(300),
          "not ".repeat(500));

  private static List<String> lines(boolean twin) {
    Path file = Path.of("../demo").resolve(twin ? "demo-twin.yaml" : "demo-rotor.yaml");
    try {
      return new ArrayList<>(Files.readAllLines(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Property(tries = 250, seed = "20240501")
  void brokenLines(
      @ForAll boolean twin, @ForAll long seed, @ForAll @IntRange(min = 1, max = 4) int n) {
    Random random = new Random(seed);
    List<String> lines = lines(twin);
    for (int i = 0; i < n; i++) {
      mutateLines(lines, random);
    }
    readsInTime(String.join("\n", lines));
  }

  @Property(tries = 250, seed = "20240502")
  void brokenLetters(
      @ForAll boolean twin, @ForAll long seed, @ForAll @IntRange(min = 1, max = 4) int n) {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder(String.join("\n", lines(twin)));
    for (int i = 0; i < n; i++) {
      mutateLetters(text, random);
    }
    readsInTime(text.toString());
  }

  private static void mutateLines(List<String> lines, Random random) {
    int at = random.nextInt(lines.size());
    int other = random.nextInt(lines.size());
    switch (random.nextInt(5)) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(other, lines.get(at));
      case 2 -> Collections.swap(lines, at, other);
      case 3 -> lines.set(at, " ".repeat(random.nextInt(6)) + lines.get(at));
      default -> lines.subList(at, Math.min(lines.size(), at + random.nextInt(8))).clear();
    }
    if (lines.isEmpty()) {
      lines.add("");
    }
  }

  private static void mutateLetters(StringBuilder text, Random random) {
    int at = random.nextInt(text.length());
    int end = Math.min(text.length(), at + 1 + random.nextInt(12));
    switch (random.nextInt(4)) {
      case 0 -> text.delete(at, end);
      case 1 -> text.insert(at, ODD.get(random.nextInt(ODD.size())));
      case 2 -> text.replace(at, end, ODD.get(random.nextInt(ODD.size())));
      default -> text.insert(random.nextInt(text.length()), text.substring(at, end));
    }
  }

  private static void readsInTime(String text) {
    long began = System.nanoTime();
    Reading reading = SystemReader.readText("mutant.yaml", text, Kinds.all());
    double seconds = (System.nanoTime() - began) / 1e9;
    assertThat(seconds).isLessThan(5);
    assertThat(reading.system().isPresent()).isEqualTo(reading.problems().isEmpty());
    long lines = text.lines().count() + 1;
    for (Problem problem : reading.problems()) {
      assertThat(problem.file()).isEqualTo("mutant.yaml");
      assertThat((long) problem.line()).as(problem.toString()).isBetween(1L, lines);
      assertThat(problem.wrong()).isNotBlank();
      assertThat(problem.mend()).isNotBlank();
    }
  }
}

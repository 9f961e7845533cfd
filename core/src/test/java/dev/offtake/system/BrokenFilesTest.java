package dev.offtake.system;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each file in {@code broken} has one mistake, which is told once, in the right line. */
class BrokenFilesTest {
  private static final Path FOLDER = Path.of("src/test/resources/broken");

  record Case(String file, int line, String message) {
    static Case of(String row) {
      String[] cells = row.split(" \\| ?", 3);
      return new Case(cells[0], Integer.parseInt(cells[1].strip()), cells[2].strip());
    }

    @Override
    public String toString() {
      return file;
    }
  }

  static List<Case> cases() throws IOException {
    return Files.readAllLines(FOLDER.resolve("expected.txt")).stream()
        .filter(row -> !row.startsWith("#"))
        .map(Case::of)
        .toList();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void isToldOnceWithItsLine(Case broken) {
    Reading reading = SystemReader.read(FOLDER.resolve(broken.file()), TradeKinds.ALL);
    assertThat(reading.system()).isEmpty();
    assertThat(reading.problems()).as("problems of %s", broken.file()).hasSize(1);
    Problem problem = reading.problems().get(0);
    assertThat(problem.file()).isEqualTo(broken.file());
    assertThat(problem.toString()).contains(broken.message());
    assertThat(problem.line()).as(problem.toString()).isEqualTo(broken.line());
    assertThat(problem.mend()).isNotBlank().doesNotEndWith(".");
  }

  @Test
  void everyBrokenFileHasAnExpectation() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      assertThat(files.map(f -> f.getFileName().toString()).filter(f -> f.endsWith(".yaml")))
          .containsExactlyInAnyOrderElementsOf(cases().stream().map(Case::file).toList());
    }
  }
}

package dev.offtake.cause;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The reference of readings is true: each example is read, each line and word is told. */
class ReadingsDocsTest {
  private static final Path DOCS = Path.of("../docs/readings.md");

  private static List<String> blocks(String kind) throws IOException {
    return Pattern.compile("```" + kind + "\n(.*?)```", Pattern.DOTALL)
        .matcher(Files.readString(DOCS))
        .results()
        .map(found -> found.group(1))
        .toList();
  }

  static List<String> files() throws IOException {
    return blocks("yaml");
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyFileIsReadAndWrittenAgain(String text) {
    Readings readings = Told.yaml(text);
    assertThat(Told.yaml(ReadingsWriter.yaml(readings, Told.TWIN))).isEqualTo(readings);
  }

  @Test
  void everyLineAndTableIsRead() throws IOException {
    List<String> lines = blocks("line").get(0).lines().toList();
    assertThat(Told.line(lines.toArray(new String[0])).occasions()).hasSameSizeAs(lines);
    assertThat(blocks("csv")).isNotEmpty();
    for (String table : blocks("csv")) {
      Readings readings = Told.csv(table);
      assertThat(readings.count() + readings.seen().size()).isEqualTo(table.lines().count() - 1);
    }
    assertThat(files()).hasSizeGreaterThanOrEqualTo(4);
  }

  @Test
  void everySectionIsTold() throws IOException {
    String docs = Files.readString(DOCS);
    YamlReadings.SECTIONS.forEach(section -> assertThat(docs).contains("`" + section + "`"));
    CsvReadings.COLUMNS.forEach(column -> assertThat(docs).contains("`" + column + "`"));
    for (Value.Word word : Value.Word.values()) {
      assertThat(docs).contains("`" + word.words() + "`");
    }
    for (Value.Pegged word : Value.Pegged.values()) {
      assertThat(docs).contains("`" + word.words() + "`");
    }
  }
}

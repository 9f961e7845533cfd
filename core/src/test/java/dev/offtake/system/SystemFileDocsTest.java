package dev.offtake.system;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.part.Kinds;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The reference of the system file is true: each example is read, each section is told. */
class SystemFileDocsTest {
  private static final Path DOCS = Path.of("../docs/system-file.md");
  private static final Pattern BLOCK = Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL);

  static List<String> examples() throws IOException {
    return BLOCK
        .matcher(Files.readString(DOCS))
        .results()
        .map(MatchResult::group)
        .map(block -> block.substring("```yaml\n".length(), block.length() - "```".length()))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyExampleIsRead(String yaml) {
    Reading reading = SystemReader.readText("example.yaml", yaml, Kinds.all());
    assertThat(reading.problems()).isEmpty();
    assertThat(reading.system().orElseThrow().doubts()).isEmpty();
  }

  @Test
  void everySectionIsTold() throws IOException {
    String docs = Files.readString(DOCS);
    assertThat(examples()).hasSizeGreaterThanOrEqualTo(6);
    Stream.concat(DraftReader.OUTSIDE.stream(), DraftReader.ON_A_SIDE.stream())
        .forEach(section -> assertThat(docs).contains("`" + section + "`"));
  }

  /** What the reference says of the second example: one conflict, two gaps besides the ranges. */
  @Test
  void theExampleOfValuesMeansWhatIsSaid() throws IOException {
    String yaml = examples().get(1);
    BleedSystem system =
        SystemReader.readText("example.yaml", yaml, Kinds.all()).system().orElseThrow();
    assertThat(system.conflicts()).extracting(Conflict::key).containsExactly("set to");
    assertThat(system.assumptions())
        .filteredOn(Assumption::unknown)
        .extracting(Assumption::key)
        .containsExactlyInAnyOrder("droop", "shut when");
    assertThat(system.statements())
        .filteredOn(s -> s.stated().unknown())
        .extracting(s -> s.stated().text())
        .containsExactlyInAnyOrder(
            "unknown 2.5..3.5 in", "unknown 20..32 psig", "unknown 270..300 psig");
  }
}

package dev.offtake.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/** What a person gets from {@code effects} and from {@code state --if}. */
class EffectsCommandTest {
  private static final String DEMO = "../demo/demo-twin.yaml";

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  @TempDir private Path folder = Path.of("");

  private int offtake(String command, String... more) {
    String[] arguments =
        Stream.concat(Stream.of(command, DEMO, "--width", "80"), Stream.of(more))
            .toArray(String[]::new);
    return Main.prepare(
            new CommandLine(new Main()), new PrintWriter(out, true), new PrintWriter(err, true))
        .execute(arguments);
  }

  @Test
  void onePartIsToldInFullAndAsAFile() throws IOException {
    Path csv = folder.resolve("effects.csv");
    assertThat(offtake("effects", "--part", "left mid check valve", "--csv", csv.toString()))
        .isZero();
    assertThat(out.toString())
        .contains("FAILURES OF THE LEFT MID CHECK VALVE", "runs back into the engine", "CAUTION");
    assertThat(out.toString().lines()).allMatch(line -> line.length() <= 80);
    assertThat(Files.readString(csv)).startsWith("part,").contains("flapper missing", "HIDDEN");
  }

  @Test
  void aPartThatIsNotThereIsToldWithTheNearest() {
    assertThat(offtake("effects", "--part", "left mid chek valve")).isEqualTo(2);
    assertThat(Told.line(err))
        .contains("left mid chek valve", "did you mean left mid check valve?");
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void anEmptyPartIsRefused() {
    assertThat(offtake("effects", "--part", "")).isEqualTo(2);
    assertThat(Told.complaint(err)).contains("--part is empty");
    assertThat(out.toString()).isEmpty();
  }

  /** Without its side a part is that of each side, one page after the other. */
  @Test
  void aPartWithoutItsSideIsThatOfEachSide() {
    assertThat(offtake("effects", "--part", "Pylon louvre")).isZero();
    assertThat(out.toString())
        .containsSubsequence(
            "FAILURES OF THE LEFT PYLON LOUVRE", "BLOCKED", "FAILURES OF THE RIGHT", "BLOCKED");
    assertThat(out.toString().lines()).allMatch(line -> line.length() <= 80);
    assertThat(offtake("effects", "--part", "nonsense")).isEqualTo(2);
    assertThat(Told.complaint(err)).contains("offtake readback");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "left mid chek valve stuck open | did you mean left mid check valve",
        "left mid check valve stuk open | did you mean stuck open",
        "left mid check valve set drifted low | it may be",
        "left mid check valve stuck 130 % | cannot go as far as 130 %",
        "left mid check valve stuck 5 psi | psi",
        "left mid check valve flapper missing 1/2 | has no extent",
        "mid check valve stuck open | left mid check valve stuck open",
      })
  void aSlipInAFaultIsOneClearMessage(String fault, String says) {
    assertThat(offtake("state", "--if", fault)).isEqualTo(2);
    assertThat(Told.complaint(err)).contains(says);
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void faultsThatCannotBeTogetherAreRefused() {
    String part = "left mid check valve ";
    assertThat(offtake("state", "--if", part + "stuck open", "--if", part + "stuck shut"))
        .isEqualTo(2);
    assertThat(Told.line(err)).contains("contradict each other", "leave one of them out");
  }
}

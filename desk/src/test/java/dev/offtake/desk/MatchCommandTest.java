package dev.offtake.desk;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.system.Reading;
import dev.offtake.system.SystemReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** What a person gets from {@code match}. */
class MatchCommandTest {
  private static final String DEMO = "../demo/demo-twin.yaml";
  private static final String RUN = "../demo/readings/healthy-run.yaml";

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  @TempDir private Path folder = Path.of("");

  private int match(String... more) {
    String[] arguments =
        Stream.concat(Stream.of("match", DEMO, "--width", "80"), Stream.of(more))
            .toArray(String[]::new);
    return Main.prepare(
            new CommandLine(new Main()), new PrintWriter(out, true), new PrintWriter(err, true))
        .execute(arguments);
  }

  @Test
  void aNewFileIsWrittenOnceAndReadAgain() throws IOException {
    Path target = folder.resolve("matched.yaml");
    assertThat(match(RUN, "--write", target.toString())).isZero();
    assertThat(out.toString()).contains("MATCHED", "NOT TOLD", "WHAT IS LEFT", "CAUTION");
    Reading reading = SystemReader.read(target);
    assertThat(reading.problems()).isEmpty();
    String text = Files.readString(target);
    assertThat(text).contains("matched to healthy-run.yaml 2026-11-02 (was 42 psig +4 -2");
    assertThat(match(RUN, "--write", target.toString())).isEqualTo(2);
    assertThat(Told.line(err)).contains("is there already");
    assertThat(Files.readString(target)).isEqualTo(text);
    assertThat(folder.toFile().list()).containsExactly("matched.yaml");
  }

  @Test
  void aRunThatIsNotHealthyIsSaidAndNotWritten() {
    Path target = folder.resolve("matched.yaml");
    String[] run = {"take-off: left duct 42 psig, right duct 20 psig", "--write", "" + target};
    assertThat(match(run)).isEqualTo(1);
    assertThat(target).doesNotExist();
    assertThat(Told.line(err)).contains("Did not write");
    assertThat(out.toString()).contains("NOT LOOK LIKE A SOUND ENGINE");
    assertThat(out.toString().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void badInputIsOneMessage() {
    assertThat(match("take-off: left bleed trip light off")).isEqualTo(2);
    assertThat(Told.complaint(err)).contains("no number was read");
    assertThat(match("no-such-file.yaml")).isEqualTo(2);
    assertThat(out.toString()).isEmpty();
  }
}

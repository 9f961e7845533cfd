package dev.offtake.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/** What a person gets from {@code find}: on an invented engine, and messages on the demo. */
class FindCommandTest {
  private static final String DEMO = "../demo/demo-twin.yaml";
  private static final String ENGINE =
      """
      offtake: 1
      title: One engine
      power settings:
        idle: {core: 62 %, fan: 24 %, holds: physical}
      parts:
        tap: {kind: compressor tap, to: high duct, bore: 2.4 in, table: {columns: [core %, psig, degF], rows: [[62, 26, 322], [99, 285, 950]]}}
        valve: {kind: regulator, path: high duct -> duct, bore: 2.5 in, holds: duct pressure, set to: 32 psig}
        user: {kind: flow user, takes from: duct, takes: 52 lb/min, needs: 12 psig}
        port: {kind: test port, at: duct, bore: 0.25 in}
      gauges:
        duct gauge: {reads: duct pressure, scale: 0..80 psig, step: 1 psi, good to: 1 psi, seen: flight deck}
      """;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  @TempDir private Path folder = Path.of("");
  private Path engine = Path.of("");

  @BeforeEach
  void writeTheEngine() throws IOException {
    engine = Files.writeString(folder.resolve("engine.yaml"), ENGINE);
  }

  private int find(String system, String... more) {
    String[] arguments =
        Stream.concat(Stream.of("find", system, "--width", "80"), Stream.of(more))
            .toArray(String[]::new);
    return Main.prepare(
            new CommandLine(new Main()), new PrintWriter(out, true), new PrintWriter(err, true))
        .execute(arguments);
  }

  private int answering(String system, String lines) {
    InputStream before = System.in;
    System.setIn(new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8)));
    try {
      return find(system);
    } finally {
      System.setIn(before);
    }
  }

  @Test
  void aLineOfReadingsIsAnsweredWithItsCautions() {
    assertThat(find(engine.toString(), "idle: duct 15 psig, port 15 psig with gauge 7")).isZero();
    assertThat(out.toString())
        .startsWith("ONE ENGINE")
        .contains("2 readings", "all at idle", "WHAT IT CAN BE", "CHECK NEXT", "CAUTION");
    assertThat(out.toString().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void readingsThatNothingExplainsAreANo() {
    assertThat(
            find(
                engine.toString(),
                "idle: duct 2 psig, port 79 psig with gauge 7",
                "idle: duct 78 psig, port 1 psig with gauge 8"))
        .isEqualTo(1);
    assertThat(out.toString()).contains("\n\n  Nothing on the list explains your readings.\n");
  }

  @Test
  void aFileOfAnotherSystemIsNoted() throws IOException {
    Path file = folder.resolve("readings.yaml");
    String text =
        "offtake readings: 1\nsystem: other.yaml\nreadings:\n  - at: idle\n    duct: 15 psig\n";
    Files.writeString(file, text);
    assertThat(find(engine.toString(), file.toString(), "--because", "routine")).isZero();
    assertThat(out.toString().replaceAll("\\s+", " "))
        .contains("NOTE The readings are of other.yaml, the system you gave is engine.yaml")
        .contains("a routine look");
    Files.writeString(file, text.replace("other", "rigs\\engine"));
    assertThat(find(engine.toString(), file.toString(), "--json")).isZero();
    String json = out.toString().substring(out.toString().indexOf("{\n"));
    assertThat(new ObjectMapper().readTree(json).get("notes")).isEmpty();
  }

  @Test
  void withoutReadingsTheyAreAskedForWithNothingToReadIntoTheNeedle() {
    assertThat(answering(engine.toString(), "idel\nidle\n15 psi\n15 psig\n")).isZero();
    assertThat(err.toString())
        .containsSubsequence(
            "Power (idle): ",
            "There is no power setting `idel`",
            "duct pressure: ",
            "gauge or absolute",
            "duct pressure: ");
    String questions = err.toString().replaceAll("15 psi", "");
    assertThat(questions).doesNotContainPattern("\\d+ psi");
    assertThat(out.toString()).contains("1 reading\n", "duct pressure");
  }

  @Test
  void anInterviewWithoutAnAnswerEndsInOneSentence() {
    assertThat(answering(engine.toString(), "idle\n\n\n")).isEqualTo(2);
    assertThat(Told.line(err)).contains("offtake: nothing was read");
    assertThat(out.toString()).isEmpty();
    assertThat(answering(engine.toString(), "")).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ground idle: left dukt 15 psig | Did you mean `left duct`?",
        "ground idle: left duct 15 lb/min | Say psig or psia",
        "ground idle: left duct -20 psig | below vacuum",
        "ground idle: left duct 95 psig | pegged high",
        "groun idle: left duct 15 psig | Did you mean `ground idle`?",
        "left duct 15 psig | No colon stands between the power and the readings",
        "ground idle: could not duplicate | nothing was read",
        "no-such-file.yaml | There is no file `no-such-file.yaml`",
        "../demo/demo-twin.yaml | This is a system file, not readings",
      })
  void aSlipIsOneClearMessageAndNoAnswer(String readings, String says) {
    assertThat(find(DEMO, readings)).isEqualTo(2);
    assertThat(err.toString().lines()).allMatch(line -> line.length() <= 80);
    assertThat(err.toString().lines().skip(1)).allMatch(line -> line.startsWith("  "));
    assertThat(Told.line(err)).contains(says);
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void anEmptyFileAndAFileBesideLinesAreRefused() throws IOException {
    Path empty = Files.writeString(folder.resolve("empty.csv"), "");
    assertThat(find(DEMO, empty.toString())).isEqualTo(2);
    assertThat(Told.line(err)).contains("empty.csv:1: The file is empty");
    assertThat(find(DEMO, empty.toString(), "ground idle: left duct 15 psig")).isEqualTo(2);
    assertThat(Told.line(err)).contains("does not go with other readings");
    assertThat(find(DEMO, "--because", "boredom", "ground idle: left duct 15 psig")).isEqualTo(2);
    assertThat(Told.line(err)).contains("'boredom'");
    assertThat(out.toString()).isEmpty();
  }
}

package dev.offtake.desk;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.system.BleedSystem;
import dev.offtake.system.Reading;
import dev.offtake.system.Statement;
import dev.offtake.system.SystemReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** Starters answer at once and claim nothing; commands explain themselves in the trade's words. */
class StarterTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  @TempDir private Path folder = Path.of("");

  private int execute(String... arguments) {
    return Main.prepare(
            new CommandLine(new Main()), new PrintWriter(out, true), new PrintWriter(err, true))
        .execute(arguments);
  }

  private Path write(NewCommand.Arrangement arrangement) {
    Path file = folder.resolve("my-engine.yaml");
    String name = arrangement.name().toLowerCase(Locale.ROOT);
    assertThat(execute("new", file.toString(), "--arrangement", name)).isZero();
    return file;
  }

  @ParameterizedTest
  @EnumSource(NewCommand.Arrangement.class)
  void everyNumberIsARangeThatNobodyKnowsBetter(NewCommand.Arrangement arrangement) {
    Reading reading = SystemReader.read(write(arrangement));
    assertThat(reading.problems()).isEmpty();
    BleedSystem system = reading.system().orElseThrow();
    assertThat(system.doubts()).isEmpty();
    assertThat(system.statements()).hasSizeGreaterThan(5).allMatch(s -> s.stated().unknown());
    assertThat(system.statements())
        .extracting(Statement::stated)
        .allMatch(s -> s.source().equals("common practice, no source") && s.low() < s.high());
  }

  @ParameterizedTest
  @EnumSource(NewCommand.Arrangement.class)
  void itAnswersAtOnceAndSaysThatTheNumbersAreTypical(NewCommand.Arrangement arrangement) {
    String file = write(arrangement).toString();
    assertThat(execute("state", file)).isZero();
    assertThat(out.toString()).contains("TYPICAL NUMBERS, NOT YOUR ENGINE'S", "BALANCE");
    assertThat(out.toString()).contains("numbers from no paper,");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void theReadbackListsTheTableAsStillToBeLookedUp() {
    String file = write(NewCommand.Arrangement.STAND).toString();
    assertThat(execute("readback", file)).isZero();
    assertThat(out.toString())
        .contains("tap, table, psig at 62: unknown 20..26 psig", "judged by you");
  }

  @Test
  void aFileThatIsThereIsKeptUntilTold() throws IOException {
    Path file = Files.writeString(folder.resolve("my-engine.yaml"), "mine");
    assertThat(execute("new", file.toString())).isEqualTo(2);
    assertThat(Told.line(err)).contains("is there already; name another, or say --overwrite");
    assertThat(file).hasContent("mine");
    assertThat(execute("new", file.toString(), "--overwrite")).isZero();
    assertThat(Files.readString(file)).startsWith("# A starter.");
  }

  @Test
  void aFolderThatIsNotThereIsNamed() {
    assertThat(execute("new", folder.resolve("none/a.yaml").toString())).isEqualTo(2);
    assertThat(Told.line(err)).contains("there is no such folder");
  }

  @Test
  void theSchemaIsPrinted() {
    assertThat(execute("schema")).isZero();
    assertThat(out.toString()).startsWith("{").contains("2020-12", "\"compressor tap\"");
  }

  @Test
  void theHelpOfStateSpeaksTheTradesWords() {
    assertThat(execute("state", "--help")).isZero();
    assertThat(out.toString())
        .contains("--at=POWER", "--day=DAY", "--line-up=LINE-UP", "--width=COLUMNS")
        .doesNotContain("<");
    assertThat(out.toString().lines()).allMatch(line -> line.length() <= 80);
  }

  @ParameterizedTest
  @ValueSource(strings = {"29.71 inHg, 41 degF", "12 furlongs", "hot dya"})
  void aDayThatIsNoneIsAskedBack(String day) {
    String file = write(NewCommand.Arrangement.STAND).toString();
    assertThat(execute("state", file, "--day", day)).isEqualTo(2);
    assertThat(err.toString()).startsWith("offtake: ").doesNotContain("fault");
  }
}

package dev.offtake.desk;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.quantity.QuantityProblem;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Command;

class MainTest {

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private final CommandLine commands = new CommandLine(new Main());

  @Test
  void versionIsAnAnswer() {
    assertThat(execute("--version")).isEqualTo(0);
    assertThat(out.toString()).startsWith("offtake ");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void helpFitsAnEightyColumnScreen() {
    assertThat(execute("--help")).isEqualTo(0);
    assertThat(out.toString()).contains("Exit codes:", "2   bad input");
    assertThat(out.toString().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void aCommandReadAloneIsTheOneAmongAll() {
    for (String name : commands.getSubcommands().keySet()) {
      CommandLine alone = Main.asked(name, "--help").getSubcommands().get(name);
      assertThat(alone.getUsageMessage())
          .isEqualTo(commands.getSubcommands().get(name).getUsageMessage());
    }
  }

  @Test
  void onlyTheCommandThatIsAskedForIsRead() {
    assertThat(Main.asked("state", "demo.yaml").getSubcommands()).containsOnlyKeys("state");
    assertThat(Main.asked("demo").getSubcommands()).containsKeys("demo", "state", "find");
    assertThat(Main.asked("help", "state").getSubcommands()).containsKeys("help", "state");
    assertThat(Main.asked("stat").getSubcommands()).containsKey("state");
    assertThat(Main.asked().getSubcommands()).containsKey("state");
  }

  @Test
  void noCommandShowsTheHelp() {
    assertThat(execute()).isEqualTo(0);
    assertThat(out.toString()).startsWith("Usage: offtake");
  }

  @Test
  void unknownWordsAreBadInput() {
    assertThat(execute("--no-such-thing")).isEqualTo(2);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString())
        .startsWith("offtake: Unknown option: '--no-such-thing'")
        .doesNotContain("\tat ");
  }

  @Test
  void theAnswerOfACommandIsItsExitCode() {
    assertThat(run(Exit.NO::code)).isEqualTo(1);
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void whatAPersonCanMendIsOneLineWithTheMending() {
    assertThat(fail(new QuantityProblem("12 ppm is no flow", "write 12 lb/min"))).isEqualTo(2);
    assertThat(err.toString())
        .isEqualToNormalizingNewlines("offtake: 12 ppm is no flow; write 12 lb/min\n");
  }

  @Test
  void aMissingFileIsNamed() {
    assertThat(fail(new NoSuchFileException("engine.yaml"))).isEqualTo(2);
    assertThat(err.toString())
        .isEqualToNormalizingNewlines(
            "offtake: there is no file engine.yaml; check its name and folder\n");
  }

  @Test
  void aForbiddenFileIsNamed() {
    assertThat(fail(new AccessDeniedException("engine.yaml"))).isEqualTo(2);
    assertThat(Told.line(err)).contains("no permission for engine.yaml");
  }

  @Test
  void otherFileTroubleKeepsItsReason() {
    assertThat(fail(new FileSystemException("engine.yaml", null, "Is a folder"))).isEqualTo(2);
    assertThat(Told.line(err)).contains("file trouble: engine.yaml: Is a folder");
  }

  @Test
  void aFaultOfOursIsOneLineWithoutATrace() {
    assertThat(fail(new IllegalStateException("two\n  lines"))).isEqualTo(3);
    assertThat(Told.complaint(err))
        .isEqualTo(
            "offtake: a fault in Offtake, not in your input: IllegalStateException: two lines");
  }

  @Test
  void aFaultWithoutAMessageIsStillASentence() {
    assertThat(fail(new NullPointerException())).isEqualTo(3);
    assertThat(Told.line(err)).contains("NullPointerException: no further word");
  }

  private int fail(Exception wrong) {
    return run(
        () -> {
          throw wrong;
        });
  }

  private int run(Callable<Integer> body) {
    commands.addSubcommand(new Probe(body));
    return execute("probe");
  }

  private int execute(String... arguments) {
    return Main.prepare(commands, new PrintWriter(out, true), new PrintWriter(err, true))
        .execute(arguments);
  }

  @Command(name = "probe")
  private record Probe(Callable<Integer> body) implements Callable<Integer> {
    @Override
    public Integer call() throws Exception {
      return body.call();
    }
  }
}

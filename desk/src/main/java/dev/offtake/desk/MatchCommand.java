package dev.offtake.desk;

import dev.offtake.cause.Readings;
import dev.offtake.cause.ReadingsRead;
import dev.offtake.cause.find.Match;
import dev.offtake.cause.find.Matcher;
import dev.offtake.explain.Columns;
import dev.offtake.explain.MatchFile;
import dev.offtake.explain.MatchJson;
import dev.offtake.explain.MatchText;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.FileText;
import dev.offtake.system.Problem;
import dev.offtake.system.Problems;
import dev.offtake.system.SystemReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code match}: what a healthy run tells of the numbers that the file leaves loose. */
@Command(
    name = "match",
    mixinStandardHelpOptions = true,
    description =
        "Estimates loose and unknown numbers of the file from a run on which nothing was wrong, and"
            + " says which of them the readings cannot tell.",
    footer = {
      "",
      "Examples:",
      "  offtake match demo-twin.yaml readings/healthy-run.yaml",
      "  offtake match demo-twin.yaml readings/healthy-run.yaml --write matched.yaml",
      "  offtake match demo-twin.yaml --recorded run.csv --profile run.yaml",
      "",
      "Exit code 1: the run does not look like that of a sound engine.",
    })
final class MatchCommand implements Callable<Integer> {
  @Mixin private SystemOptions options = new SystemOptions();

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "READINGS",
      description =
          "a file (.yaml, .yml, .csv), or lines such as \"ground idle: left duct 15 psig\"")
  private List<String> texts = List.of();

  @Option(
      names = "--write",
      paramLabel = "FILE",
      description =
          "write the system with the matched numbers into a new file, if the run looks sound")
  private @Nullable Path write;

  @Mixin private RecordedOptions recorded = new RecordedOptions();

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() throws IOException, QuantityProblem {
    if (write != null) {
      WholeFile.folder(write);
      if (Files.exists(write)) {
        throw new FileAlreadyExistsException(write.toString());
      }
    }
    Optional<BleedSystem> system = options.read();
    if (system.isEmpty()) {
      return Exit.BAD_INPUT.code();
    }
    RecordedOptions.Given run = recorded.read(system.get());
    ReadingsRead read = readings(system.get());
    tell(run.problems());
    tell(read.problems());
    if (read.readings().isEmpty() || !run.problems().isEmpty()) {
      return Exit.BAD_INPUT.code();
    }
    Readings readings = RecordedOptions.with(read.readings().get(), run);
    PrintWriter err = spec.commandLine().getErr();
    Progress progress = new Progress(err, 1);
    Match match = Matcher.match(system.get(), readings, progress);
    progress.end();
    PrintWriter out = spec.commandLine().getOut();
    out.print(printed(match));
    out.flush();
    if (write != null && match.healthy()) {
      write(match, write);
      err.println("Wrote " + write + ".");
    } else if (write != null) {
      String why = "Did not write " + write + ": the run does not look like a sound engine's.";
      err.print(Columns.wrap(why, options.width(), 0, 2));
      err.flush();
    }
    return (match.healthy() ? Exit.DONE : Exit.NO).code();
  }

  private ReadingsRead readings(BleedSystem system) throws QuantityProblem {
    if (!texts.isEmpty()) {
      return new GivenReadings(texts).read(system);
    }
    if (recorded.given()) {
      return new ReadingsRead(Optional.of(Readings.none()), List.of());
    }
    throw new QuantityProblem(
        "nothing is given to match to",
        "give readings of a run on which nothing was wrong, or --recorded with --profile");
  }

  private String printed(Match match) {
    List<String> notes = notes(match.readings());
    return options.json()
        ? MatchJson.print(match, notes) + System.lineSeparator()
        : MatchText.print(match, options.width(), options.style(), notes);
  }

  private void tell(List<Problem> problems) {
    PrintWriter err = spec.commandLine().getErr();
    problems.forEach(p -> err.print(Columns.wrap(p.toString(), options.width(), 0, 2)));
    err.flush();
  }

  private void write(Match match, Path target) throws IOException, QuantityProblem {
    String name = options.file().toString();
    String text = FileText.read(options.file(), name, new Problems());
    String readings = new GivenReadings(texts).name();
    String matched = MatchFile.text(match, text == null ? "" : text, readings);
    Path folder = target.toAbsolutePath().getParent();
    List<Problem> problems = SystemReader.readText(target.toString(), matched, folder).problems();
    if (!problems.isEmpty()) {
      throw new QuantityProblem(
          target + " would not be read again (" + problems.get(0) + "), so it is not written",
          "keep it in the folder of " + name + ", or write the numbers in by hand");
    }
    byte[] bytes = matched.getBytes(StandardCharsets.UTF_8);
    WholeFile.write(target, new ByteArrayInputStream(bytes), false);
  }

  private List<String> notes(Readings readings) {
    List<String> notes = new ArrayList<>(GivenReadings.notes(readings, options.file()));
    if (!readings.squawk().isEmpty()) {
      notes.add(
          "The readings came with a complaint (\""
              + readings.squawk()
              + "\"): make sure that"
              + " nothing was wrong.");
    }
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    readings.cautions(today).forEach(caution -> notes.add(caution + "."));
    return notes;
  }
}

package dev.offtake.desk;

import dev.offtake.cause.Readings;
import dev.offtake.cause.ReadingsRead;
import dev.offtake.cause.TripMoment;
import dev.offtake.cause.find.Finder;
import dev.offtake.cause.find.Found;
import dev.offtake.cause.find.Prior;
import dev.offtake.explain.Columns;
import dev.offtake.explain.FindJson;
import dev.offtake.explain.FindText;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Problem;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code find}: what can be wrong by what was read, and the check that would tell. */
@Command(
    name = "find",
    mixinStandardHelpOptions = true,
    description =
        "What can be wrong by what was read, what cannot be told apart, and the check that would"
            + " tell. Without readings they are asked for one by one.",
    footer = {
      "",
      "Examples:",
      "  offtake find demo-twin.yaml \"ground idle: left duct 15 psig\"",
      "  offtake find demo-twin.yaml readings.yaml --all",
      "  offtake find demo-twin.yaml",
      "  offtake find demo-twin.yaml --recorded run.csv --profile run.yaml",
      "",
      "Exit code 1: nothing on the list explains the readings.",
    })
final class FindCommand implements Callable<Integer> {
  /** Where the draws of a search begin: the same question has the same answer. */
  private static final long DRAWS = 1;

  @Mixin private SystemOptions options = new SystemOptions();

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "READINGS",
      description =
          "a file (.yaml, .yml, .csv), or lines such as \"ground idle: left duct 15 psig\"")
  private List<String> texts = List.of();

  @Option(
      names = "--because",
      paramLabel = "REASON",
      description = "why you look: squawk (as without the option), maintenance or routine")
  private Because because = Because.SQUAWK;

  @Option(names = "--all", description = "list every failure that is still possible")
  private boolean all;

  @Mixin private RecordedOptions recorded = new RecordedOptions();

  @Spec private CommandSpec spec = CommandSpec.create();

  /** Why somebody looks, in one word each. */
  enum Because {
    /** Somebody complained. */
    SQUAWK(Prior.Reason.SQUAWK),
    /** After work on the system. */
    MAINTENANCE(Prior.Reason.AFTER_MAINTENANCE),
    /** Nobody complained. */
    ROUTINE(Prior.Reason.ROUTINE);

    private final Prior.Reason reason;

    Because(Prior.Reason reason) {
      this.reason = reason;
    }

    /** The option's own word. */
    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  @Override
  public Integer call() throws IOException, QuantityProblem {
    Optional<BleedSystem> system = options.read();
    if (system.isEmpty()) {
      return Exit.BAD_INPUT.code();
    }
    PrintWriter err = spec.commandLine().getErr();
    RecordedOptions.Given run = recorded.read(system.get());
    ReadingsRead read = readings(system.get());
    List<Problem> problems = new ArrayList<>(run.problems());
    problems.addAll(read.problems());
    problems.forEach(p -> err.print(Columns.wrap(p.toString(), options.width(), 0, 2)));
    err.flush();
    if (!problems.isEmpty()) {
      return Exit.BAD_INPUT.code();
    }
    Readings readings =
        read.readings()
            .map(one -> RecordedOptions.with(one, run))
            .filter(FindCommand::tells)
            .orElseThrow(this::nothing);
    Progress progress = new Progress(err, 1);
    Found found = Finder.find(system.get(), readings, Prior.of(because.reason), DRAWS, progress);
    progress.end();
    PrintWriter out = spec.commandLine().getOut();
    out.print(printed(found));
    out.flush();
    return (found.explained() ? Exit.DONE : Exit.NO).code();
  }

  private ReadingsRead readings(BleedSystem system) throws IOException, QuantityProblem {
    if (texts.isEmpty() && recorded.given()) {
      return new ReadingsRead(Optional.of(Readings.none()), List.of());
    }
    if (texts.isEmpty()) {
      BufferedReader in =
          new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
      return new Asker(system, in, spec.commandLine().getErr()).ask();
    }
    return new GivenReadings(texts).read(system);
  }

  /** Whether there is anything to weigh. */
  private static boolean tells(Readings readings) {
    boolean trip =
        readings.occasions().stream().anyMatch(o -> o.trip().when() != TripMoment.When.NONE);
    boolean recorded = !readings.recordings().isEmpty();
    return readings.count() > 0 || trip || recorded || !readings.seen().isEmpty();
  }

  private QuantityProblem nothing() {
    return new QuantityProblem(
        "nothing was read, so there is nothing to go by",
        "give at least one reading, such as \"ground idle: left duct 15 psig\"");
  }

  private String printed(Found found) {
    FindText.Manner manner =
        new FindText.Manner(
            options.width(),
            options.style(),
            all,
            LocalDate.now(ZoneId.systemDefault()),
            GivenReadings.notes(found.readings(), options.file()));
    return options.json()
        ? FindJson.print(found, manner) + System.lineSeparator()
        : FindText.print(found, manner);
  }
}

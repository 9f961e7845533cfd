package dev.offtake.desk;

import dev.offtake.cause.Readings;
import dev.offtake.cause.ReadingsRead;
import dev.offtake.cause.find.Finder;
import dev.offtake.cause.find.Found;
import dev.offtake.cause.find.Prior;
import dev.offtake.explain.BleedInquiry;
import dev.offtake.explain.Columns;
import dev.offtake.explain.PlayAnswer;
import dev.offtake.explain.PlayCsv;
import dev.offtake.explain.PlayInquiry;
import dev.offtake.explain.PlayJson;
import dev.offtake.explain.PlayText;
import dev.offtake.explain.Question;
import dev.offtake.profile.Profile;
import dev.offtake.profile.ProfileRead;
import dev.offtake.profile.ProfileReader;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.study.Fault;
import dev.offtake.study.FaultReader;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Problem;
import dev.offtake.time.Played;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code play}: the course over time of what a profile does, or of a bleed-down. */
@Command(
    name = "play",
    mixinStandardHelpOptions = true,
    description =
        "The course over time: start, acceleration, trip, bleed-down. A profile says what is done;"
            + " --bleed-down only shuts the engine down and waits for trapped air to leave.",
    footer = {
      "",
      "Examples:",
      "  offtake play demo-twin.yaml profiles/slam.yaml",
      "  offtake play demo-twin.yaml profiles/slam.yaml --picture slam.png \\",
      "      --if \"left high stage valve slow 5\"",
      "  offtake play demo-twin.yaml profiles/slam.yaml --csv slam.csv \\",
      "      --of \"left duct pressure, left high stage valve opening\"",
      "  offtake play demo-twin.yaml --bleed-down --at take-off --to \"1 psig\"",
      "  offtake play demo-twin.yaml --bleed-down --likely readings/low-at-idle.yaml",
      "",
      "Exit code 1: a start hangs, or trapped air does not leave within an hour.",
    })
final class PlayCommand implements Callable<Integer> {
  /** Chance from which a cause is still likely. */
  private static final double LIKELY = 0.05;

  private static final long DRAWS = 1;

  @Mixin private SystemOptions options = new SystemOptions();

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "PROFILE",
      description = "profile file, such as profiles/slam.yaml")
  private @Nullable Path file;

  @Option(
      names = "--if",
      paramLabel = "\"PART MODE [EXTENT]\"",
      description =
          "a part that is broken from the beginning; with --bleed-down a cause that may be there,"
              + " each for itself; may be given several times")
  private List<String> faults = List.of();

  @Option(
      names = "--of",
      paramLabel = "VALUES",
      description = "values to show: \"left duct pressure, left pack flow\"")
  private String show = "";

  @Option(
      names = "--csv",
      paramLabel = "FILE",
      description = "write comma-separated values as well")
  private @Nullable Path csv;

  @Option(
      names = "--picture",
      paramLabel = "FILE",
      description = "draw a picture over time, .svg or .png")
  private @Nullable Path picture;

  @Option(
      names = "--bleed-down",
      description = "shut the engine down and wait for trapped air to leave")
  private boolean bleedDown;

  @Option(
      names = "--to",
      paramLabel = "PRESSURE",
      description = "pressure to which trapped air must fall (else 1 psig)")
  private String to = "1 psig";

  @Option(
      names = "--likely",
      paramLabel = "READINGS",
      description = "bleed down with each cause that is still likely by these readings as well")
  private @Nullable Path likely;

  @Option(
      names = "--at",
      paramLabel = "POWER",
      description = "with --bleed-down: power from which it is shut down")
  private String at = "";

  @Option(names = "--day", paramLabel = "DAY", description = "with --bleed-down: as for state")
  private String day = "";

  @Option(
      names = "--line-up",
      paramLabel = "LINE-UP",
      description = "with --bleed-down: a line-up of the file")
  private String lineUp = "";

  @Option(
      names = "--set",
      paramLabel = "\"SWITCH: POSITION\"",
      description = "with --bleed-down: one switch, or a valve, as for state")
  private List<String> sets = List.of();

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() throws IOException, QuantityProblem {
    checkOptions();
    Optional<BleedSystem> system = options.read();
    Optional<Profile> profile = system.isEmpty() ? Optional.empty() : profile(system.get());
    if (system.isEmpty() || profile.isEmpty()) {
      return Exit.BAD_INPUT.code();
    }
    Optional<List<List<Fault>>> causes = causes(system.get());
    if (causes.isEmpty()) {
      return Exit.BAD_INPUT.code();
    }
    PlayInquiry.Request request =
        new PlayInquiry.Request(bleedDown ? List.of() : faults, causes.get(), show, pressure());
    Progress progress = new Progress(spec.commandLine().getErr(), 1);
    PlayAnswer answer =
        PlayInquiry.answer(system.get(), profile.get(), request, options.style(), progress);
    progress.end();
    say(answer);
    return code(answer).code();
  }

  /** Options that do not go together, and files that could not be written in the end. */
  private void checkOptions() throws IOException, QuantityProblem {
    if (file == null && !bleedDown) {
      throw new QuantityProblem(
          "nothing says what is done",
          "give a profile, or --bleed-down to shut the engine down and wait");
    }
    if (file != null && bleedDown) {
      throw new QuantityProblem(
          "--bleed-down does not go with a profile",
          "leave it out: a profile that ends shut down bleeds down by itself");
    }
    boolean begins = !at.isEmpty() || !day.isEmpty() || !lineUp.isEmpty() || !sets.isEmpty();
    if (file != null && begins) {
      throw new QuantityProblem(
          "--at, --day, --line-up and --set do not go with a profile", "its `start:` says them");
    }
    if (csv != null) {
      WholeFile.folder(csv);
    }
    if (picture != null) {
      WholeFile.folder(picture);
      if (!drawn(".svg") && !drawn(".png")) {
        throw new QuantityProblem(
            "a picture is written as .svg or .png, not as " + picture,
            "end its name with one of them");
      }
    }
  }

  private boolean drawn(String ending) {
    return String.valueOf(picture).toLowerCase(Locale.ROOT).endsWith(ending);
  }

  private double pressure() throws QuantityProblem {
    double above = QuantityReader.read(to, Dimension.GAUGE_PRESSURE).nominal();
    if (!(above > 0)) {
      throw new QuantityProblem(
          "trapped air nears " + to + " for ever", "say a pressure above zero, such as 1 psig");
    }
    return above;
  }

  private Optional<Profile> profile(BleedSystem system) throws QuantityProblem {
    if (file == null) {
      return Optional.of(BleedInquiry.shutDown(Question.of(system, at, day, lineUp, sets)));
    }
    ProfileRead read = ProfileReader.read(file, system);
    tell(read.problems());
    return read.profile();
  }

  private void tell(List<Problem> problems) {
    PrintWriter err = spec.commandLine().getErr();
    problems.forEach(p -> err.print(Columns.wrap(p.toString(), options.width(), 0, 2)));
    err.flush();
  }

  /** What may be broken while air bleeds down; empty with problems told. */
  private Optional<List<List<Fault>>> causes(BleedSystem system) throws QuantityProblem {
    List<List<Fault>> causes = new ArrayList<>();
    if (bleedDown) {
      FaultReader reader = new FaultReader(system);
      for (String fault : faults) {
        causes.add(reader.read(fault));
      }
    }
    if (likely != null) {
      ReadingsRead read = new GivenReadings(List.of(likely.toString())).read(system);
      tell(read.problems());
      if (read.readings().isEmpty()) {
        return Optional.empty();
      }
      found(system, read.readings().get()).ranked().stream()
          .filter(ranked -> ranked.chance() >= LIKELY)
          .forEach(ranked -> causes.add(ranked.best()));
    }
    return Optional.of(causes);
  }

  private Found found(BleedSystem system, Readings readings) {
    Progress progress = new Progress(spec.commandLine().getErr(), 1);
    Found found = Finder.find(system, readings, Prior.of(Prior.Reason.SQUAWK), DRAWS, progress);
    progress.end();
    return found;
  }

  private void say(PlayAnswer answer) throws IOException, QuantityProblem {
    PrintWriter out = spec.commandLine().getOut();
    out.print(
        options.json()
            ? PlayJson.print(answer) + System.lineSeparator()
            : PlayText.print(answer, options.width(), options.style()));
    out.flush();
    if (csv != null) {
      write(csv, PlayCsv.print(answer, options.style()).getBytes(StandardCharsets.UTF_8));
    }
    if (picture != null && !answer.curve().curve().up().isEmpty()) {
      write(picture, Drawn.of(List.of(answer.curve()), options.style(), drawn(".svg")));
    }
  }

  private void write(Path target, byte[] content) throws IOException {
    WholeFile.write(target, new ByteArrayInputStream(content), true);
    spec.commandLine().getErr().println("Wrote " + target + ".");
  }

  private static Exit code(PlayAnswer answer) {
    boolean looked =
        answer.bleed().stream()
            .allMatch(
                bleed ->
                    bleed.healthy().end() == Played.End.DONE
                        && bleed.causes().stream().allMatch(PlayAnswer.Caused::done));
    if (!answer.done() || !looked) {
      return Exit.NOT_SOLVED;
    }
    boolean holds =
        answer.bleed().stream()
            .flatMap(bleed -> bleed.worst().stream())
            .anyMatch(worst -> Double.isInfinite(worst.worst()));
    boolean hangs = answer.story().stream().anyMatch(told -> told.says().contains("HANGS"));
    return holds || hangs ? Exit.NO : Exit.DONE;
  }
}

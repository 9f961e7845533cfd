package dev.offtake.desk;

import dev.offtake.cause.Readings;
import dev.offtake.cause.Recording;
import dev.offtake.cause.RecordingRead;
import dev.offtake.cause.RecordingReader;
import dev.offtake.profile.ProfileRead;
import dev.offtake.profile.ProfileReader;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Problem;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** A recording and the profile that was run meanwhile, for commands that weigh readings. */
final class RecordedOptions {
  @Option(
      names = "--recorded",
      paramLabel = "FILE",
      description =
          "what a recorder kept (.csv: \"time s\", then \"left duct pressure psig\" and so on);"
              + " needs --profile")
  private @Nullable Path recorded;

  @Option(
      names = "--profile",
      paramLabel = "FILE",
      description = "with --recorded: what was done meanwhile, a profile as for play")
  private @Nullable Path profile;

  /**
   * What came of reading both.
   *
   * @param recordings one, or none when none was given
   * @param problems mistakes by line; with any there is no recording
   */
  record Given(List<Recording> recordings, List<Problem> problems) {}

  /** Whether a recording is given. */
  boolean given() {
    return recorded != null || profile != null;
  }

  /**
   * Reads them.
   *
   * @throws QuantityProblem when only one of the two is given
   */
  Given read(BleedSystem system) throws QuantityProblem {
    if (!given()) {
      return new Given(List.of(), List.of());
    }
    if (recorded == null || profile == null) {
      throw new QuantityProblem(
          recorded == null
              ? "--profile is given without a recording"
              : "nothing says what was done",
          "give both: --recorded run.csv --profile run.yaml");
    }
    ProfileRead run = ProfileReader.read(profile, system);
    List<Problem> problems = new ArrayList<>(run.problems());
    Optional<Recording> recording = Optional.empty();
    if (run.profile().isPresent()) {
      String name = String.valueOf(profile.getFileName());
      RecordingRead read = RecordingReader.read(recorded, system, run.profile().get(), name);
      problems.addAll(read.problems());
      recording = read.recording();
    }
    return new Given(recording.stream().toList(), problems);
  }

  /** Readings with what was recorded. */
  static Readings with(Readings readings, Given given) {
    return given.recordings().isEmpty() ? readings : readings.with(given.recordings());
  }
}

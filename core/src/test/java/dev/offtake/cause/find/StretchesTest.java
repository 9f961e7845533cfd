package dev.offtake.cause.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.cause.Recording;
import dev.offtake.cause.RecordingReader;
import dev.offtake.part.Kinds;
import dev.offtake.profile.Profile;
import dev.offtake.profile.ProfileReader;
import dev.offtake.profile.Sequence;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.study.FaultReader;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A stretch that swings ends where the next thing is done, be it at once or by and by. */
class StretchesTest {
  private static Recording recording(String fault) throws QuantityProblem {
    return RecordedBench.creeping(new FaultReader(RecordedBench.SYSTEM).read(fault))
        .recordings()
        .get(0);
  }

  private static List<Stretches.Stretch> stretches(Recording recording) {
    return Stretches.of(
        recording, Sequence.of(RecordedBench.SYSTEM, recording.profile(), List.of()).drive());
  }

  @Test
  void aSwingThatPowerPutsAnEndToIsSeen() throws QuantityProblem {
    List<Stretches.Stretch> found = stretches(recording("regulator moves in jerks 8 %"));

    assertThat(found).isNotEmpty();
    assertThat(found.get(0).from()).isCloseTo(10 + 0.25 * 20, within(1e-9));
    assertThat(found.get(0).until()).isCloseTo(30, within(1e-9));
  }

  /** Where on its way the swing was met nobody knows: one more swing is not weighed. */
  @Test
  void noInstantIsWeighedUntilTheSwingThatWasMetIsOver() throws QuantityProblem {
    Recording recording = recording("regulator moves in jerks 8 %");
    List<Stretches.Stretch> found = stretches(recording);
    double over = found.get(0).until() + found.get(0).period();

    assertThat(found.get(0).period()).isGreaterThan(0.1);
    assertThat(Instants.of(recording, found))
        .isNotEmpty()
        .noneMatch(at -> at >= found.get(0).from() && at <= over);
  }

  @Test
  void whatStandsStillHasNone() throws QuantityProblem {
    assertThat(stretches(recording("regulator slow 3"))).isEmpty();
  }

  /** A duct that cools after a slam crosses its straight line three times and swings never. */
  @Test
  void whatComesToRestByAndByDoesNotSwing() {
    Path demo = Path.of("..", "demo");
    BleedSystem system =
        SystemReader.read(demo.resolve("demo-twin.yaml"), Kinds.all()).system().orElseThrow();
    String slam = "slam-from-ground-idle";
    Profile profile =
        ProfileReader.read(demo.resolve("profiles").resolve(slam + ".yaml"), system)
            .profile()
            .orElseThrow();
    Recording recording =
        RecordingReader.read(
                demo.resolve("recordings").resolve(slam + ".csv"), system, profile, slam)
            .recording()
            .orElseThrow();

    assertThat(Stretches.of(recording, Sequence.of(system, profile, List.of()).drive())).isEmpty();
  }
}

package dev.offtake.cause;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.network.Demos;
import dev.offtake.profile.Profile;
import dev.offtake.profile.ProfileReader;
import dev.offtake.quantity.Dimension;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Problem;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecordingReaderTest {
  private static final BleedSystem SYSTEM = Demos.demo("twin");

  private static final Profile SLAM =
      profile(
          """
          offtake profile: 1
          start: {power: ground idle}
          actions:
            at 5 s: {accelerate: ground idle -> take-off}
          """);

  private static Profile profile(String text) {
    return ProfileReader.readText("run.yaml", text, SYSTEM).profile().orElseThrow();
  }

  private static RecordingRead read(String text) {
    return RecordingReader.readText("run.csv", text, SYSTEM, SLAM, "run.yaml");
  }

  private static List<String> told(RecordingRead read) {
    return read.problems().stream().map(Problem::toString).toList();
  }

  @Test
  void valuesComeInSiByTheirHeads() {
    String text =
        """
        time (ms),left duct pressure [psig],right duct psia,left duct test port temperature degC,altitude ft
        0,23.0,37.7,,0
        500,24.0,,160,0

        event at s,done or came,what happens
        0.300,done,something
        """;

    Recording recording = read(text).recording().orElseThrow();

    assertThat(recording.channels()).hasSize(3);
    Recording.Channel left = recording.channels().get(0);
    assertThat(left.about().name()).isEqualTo("left duct pressure");
    assertThat(left.at(0.25, 3)).isCloseTo(23.5 * 6894.757293, within(0.1));
    assertThat(left.at(0.6, 3)).isNaN();
    assertThat(left.at(0.25, 0.4)).as("in a gap").isNaN();
    Recording.Channel right = recording.channels().get(1);
    assertThat(right.dimension()).isEqualTo(Dimension.ABSOLUTE_PRESSURE);
    assertThat(right.count()).isEqualTo(1);
    assertThat(recording.channels().get(2).at(0.5, 3)).isCloseTo(433.15, within(1e-9));
    assertThat(recording.notes()).singleElement().asString().contains("altitude ft");
    assertThat(recording.step()).isCloseTo(0.5, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "left duct pressure psig,time s\\n1,2 | first column of a recording is the time",
        "time s,left duct pressure psi\\n0,2 | does not say whether it is gauge or absolute",
        "time s,left dukt pressure psig\\n0,2 | There is no gauge, light or port",
        "time s,left duct pressure degF\\n0,2 | is not measured in",
        "time s,left duct pressure psig\\n1,2\\n0.5,3 | runs back or stands still",
        "time s,left duct pressure psig\\n1,2\\n2,x | is no number of a recording",
        "time s,left duct pressure psig\\n1,1e300 | is no number of a recording",
        "time s,left duct pressure psig\\n1, | holds no value",
        "time s,altitude ft\\n1,2 | No column of the recording can be weighed",
        "time s,left duct pressure psig,left duct psig\\n1,2,3 | is recorded twice",
      })
  void whatCannotBeIsToldWithItsLine(String text, String wrong) {
    RecordingRead read = read(text.replace("\\n", "\n"));

    assertThat(read.recording()).isEmpty();
    assertThat(told(read)).anyMatch(problem -> problem.contains(wrong));
    assertThat(told(read)).allMatch(problem -> problem.startsWith("run.csv:"));
  }

  @Test
  void aProfileThatBreaksSomethingIsNoRunOfARecording() {
    Profile broken =
        profile(
            """
            offtake profile: 1
            start: {power: ground idle, broken: left high stage valve slow 10}
            actions:
              at 5 s: {accelerate: ground idle -> take-off}
            """);

    RecordingRead read =
        RecordingReader.readText(
            "run.csv", "time s,left duct pressure psig\n1,2\n", SYSTEM, broken, "run.yaml");

    assertThat(told(read)).singleElement().asString().contains("breaks something");
  }
}

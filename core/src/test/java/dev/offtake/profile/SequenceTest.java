package dev.offtake.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.network.Demos;
import dev.offtake.solve.Setup;
import dev.offtake.system.BleedSystem;
import dev.offtake.time.Drive;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a profile asks of the solver. */
class SequenceTest {
  private static final BleedSystem TWIN = Demos.demo("twin");

  private static Profile profile(String text) {
    ProfileRead read = ProfileReader.readText("p.yaml", "offtake profile: 1\n" + text, TWIN);
    assertThat(read.problems()).isEmpty();
    return read.profile().orElseThrow();
  }

  private static Sequence sequence(String text) {
    return Sequence.of(TWIN, profile(text), List.of());
  }

  /** What is asked at a time; at a jump what is asked after it. */
  private static Setup at(Drive drive, double time) {
    double begins = 0;
    Setup asked = drive.start();
    for (Drive.Span span : drive.spans()) {
      if (begins > time) {
        break;
      }
      double share = span.seconds() == 0 ? 1 : Math.min(1, (time - begins) / span.seconds());
      asked = span.begins().at(span.begins().conditions().toward(span.ends().conditions(), share));
      begins += span.seconds();
    }
    return asked;
  }

  @Test
  void switchesJumpWhileTheCoreMoves() {
    Sequence sequence =
        sequence(
            "start: {power: ground idle, isolation: OPEN}\n"
                + "actions:\n"
                + "  from 4 s to 9 s: {core: ground idle -> take-off}\n"
                + "  at 6 s: {left pack switch: OFF}\n"
                + "  at 7 s: {breaks: left high stage valve stuck 1/3}\n"
                + "ends at: 20 s\n");
    Drive drive = sequence.drive();
    assertThat(drive.seconds()).isCloseTo(20, within(1e-12));
    assertThat(drive.start().positions()).containsEntry("isolation", "OPEN");
    assertThat(at(drive, 2).conditions().core()).isEqualTo(0.62);
    // Half-way between 62 % and 99 %, recomputed.
    assertThat(at(drive, 6.5).conditions().core()).isCloseTo(0.805, within(1e-12));
    assertThat(at(drive, 5.9).positions()).containsEntry("left pack switch", "ON");
    assertThat(at(drive, 6.1).positions()).containsEntry("left pack switch", "OFF");
    Setup.PartNumber stuck = new Setup.PartNumber("left high stage valve", "stuck at");
    assertThat(at(drive, 6.9).changed()).doesNotContainKey(stuck);
    assertThat(at(drive, 7.1).changed()).containsEntry(stuck, 1.0 / 3);
    assertThat(at(drive, 20).conditions().core()).isEqualTo(0.99);
  }

  @Test
  void anAccelerationTakesTheTimeThatIsCommonPractice() {
    Profile profile =
        profile("actions:\n  at 4 s: {accelerate: ground idle -> take-off}\nends at: 30 s\n");
    // 5 to 8 s: common practice, no source; the middle is played.
    assertThat(((Action.Ramp) profile.actions().get(0)).until()).isEqualTo(10.5);
    assertThat(profile.assumes())
        .containsExactly(
            "Time from ground idle to full power: 6.5 s (anything from 5 to 8 s); common practice,"
                + " no source.");
  }

  @Test
  void aLineOfTheProfileCountsMore() {
    Profile profile =
        profile(
            "acceleration: {descent -> take-off: unknown 1..2 s}\n"
                + "start: {power: descent}\n"
                + "actions:\n  at 4 s: {accelerate: descent -> take-off}\n");
    assertThat(((Action.Ramp) profile.actions().get(0)).until()).isEqualTo(5.5);
    assertThat(profile.end()).isEqualTo(35.5);
    assertThat(profile.assumes()).anyMatch(says -> says.contains("as the profile says"));
  }

  @Test
  void aHoseThatIsOffGivesNoAir() {
    Drive drive =
        sequence(
                "actions:\n"
                    + "  at 1 s: {ground supply switch: ON}\n"
                    + "  at 5 s: {remove: ground supply}\n"
                    + "  at 9 s: {connect: ground supply}\n")
            .drive();
    Setup.PartNumber comes = new Setup.PartNumber("ground supply", "comes on");
    assertThat(at(drive, 4).changed()).doesNotContainKey(comes);
    assertThat(at(drive, 6).changed()).containsEntry(comes, 0.0);
    assertThat(at(drive, 10).changed()).doesNotContainKey(comes);
  }

  @Test
  void anEngineRunsDownToStandstill() {
    Sequence sequence = sequence("actions:\n  from 5 s to 25 s: shut down\nends at: 60 s\n");
    assertThat(sequence.core().at(15).core()).isCloseTo(0.31, within(1e-12));
    assertThat(sequence.core().at(30).core()).isZero();
    assertThat(sequence.happenings())
        .extracting(Happening::says)
        .containsExactly(
            "fuel off, the engine runs down from ground idle in 20 s", "the engine stands");
  }
}

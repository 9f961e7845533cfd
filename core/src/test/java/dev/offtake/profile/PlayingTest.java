package dev.offtake.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.network.Demos;
import dev.offtake.system.BleedSystem;
import dev.offtake.time.Cycle;
import dev.offtake.time.Played;
import dev.offtake.time.Settings;
import dev.offtake.time.Transient;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Steps are short where something hunts, and only there. */
class PlayingTest {
  private static final BleedSystem TWIN = Demos.demo("twin");
  private static final double PSI = 6894.757;

  private static Sequence slam(String power) {
    String text =
        "offtake profile: 1\nstart: {power: ground idle}\n"
            + "actions:\n  from 2 s to 8 s: {core: ground idle -> "
            + power
            + "}\nends at: 40 s\n";
    ProfileRead read = ProfileReader.readText("p.yaml", text, TWIN);
    assertThat(read.problems()).isEmpty();
    return Sequence.of(TWIN, read.profile().orElseThrow(), List.of());
  }

  private static Played play(Sequence sequence) {
    Played played = Playing.of(sequence, s -> true);
    assertThat(played.end()).isEqualTo(Played.End.DONE);
    return played;
  }

  private static Map<String, Cycle> hunts(Sequence sequence, Played played) {
    return Cycle.in(played, sequence.network()).stream()
        .filter(Cycle::drives)
        .collect(Collectors.toMap(Cycle::part, cycle -> cycle));
  }

  /** What is not followed to its end is told as if it were, and is cheaper. */
  @Test
  void whatHasSettledIsNoLongerFollowed() {
    Sequence sequence = slam("take-off");
    Played played = play(sequence);
    Map<String, Cycle> hunts = hunts(sequence, played);
    assertThat(hunts).containsOnlyKeys("left bleed regulator", "right bleed regulator");
    assertThat(played.unfollowed()).hasSize(1);

    double longest = 1 / (20 * 5.05);
    Settings.Fine whole = new Settings.Fine(0, 40, longest, Double.POSITIVE_INFINITY);
    Settings settings = sequence.settings().withFine(List.of(whole));
    Played followed = new Transient(sequence.network()).run(sequence.drive(), settings, s -> true);
    assertThat(followed.unfollowed()).isEmpty();
    assertThat(played.cost().steps()).isLessThan(followed.cost().steps() / 2);
    Map<String, Cycle> same = hunts(sequence, followed);
    assertThat(same).containsOnlyKeys("left bleed regulator", "right bleed regulator");
    for (Cycle cycle : hunts.values()) {
      Cycle other = same.get(cycle.part());
      assertThat(cycle.pressure()).isBetween(0.7 * PSI, 1.2 * PSI);
      assertThat(cycle.pressure()).isCloseTo(other.pressure(), within(0.1 * other.pressure()));
      assertThat(cycle.swing()).isBetween(0.002, 0.004);
      assertThat(cycle.hertz()).isCloseTo(other.hertz(), within(0.05 * other.hertz()));
      assertThat(cycle.until()).isCloseTo(40, within(0.5));
      assertThat(cycle.followed()).isLessThan(30);
    }
  }

  @Test
  void whereNothingGrowsStepsStayLong() {
    Sequence sequence = slam("82 %");
    Played played = play(sequence);
    assertThat(hunts(sequence, played)).isEmpty();
    assertThat(played.cost().steps()).isLessThan(400);
  }
}

package dev.offtake.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.network.Demos;
import dev.offtake.profile.Profile;
import dev.offtake.profile.ProfileRead;
import dev.offtake.profile.ProfileReader;
import dev.offtake.profile.Shortage;
import dev.offtake.profile.Watch;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.study.Curve;
import dev.offtake.system.BleedSystem;
import dev.offtake.time.Cycle;
import dev.offtake.time.Event;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What the stories of the demo profiles must say, by the physics of what is done. */
class PlayStoriesTest {
  private static final BleedSystem TWIN = Demos.demo("twin");
  private static final BleedSystem STAND = Demos.demo("stand");
  private static final double PSI = 6894.757;

  static PlayAnswer play(BleedSystem system, String name, String show) throws QuantityProblem {
    ProfileRead read = ProfileReader.read(Path.of("../demo/profiles/" + name + ".yaml"), system);
    assertThat(read.problems()).isEmpty();
    return play(system, read.profile().orElseThrow(), show);
  }

  static PlayAnswer play(BleedSystem system, Profile profile, String show) throws QuantityProblem {
    PlayInquiry.Request request = new PlayInquiry.Request(List.of(), List.of(), show, PSI);
    PlayAnswer answer = PlayInquiry.answer(system, profile, request, Style.SHOP, share -> {});
    assertThat(answer.trouble()).isEmpty();
    assertThat(answer.done()).isTrue();
    assertThat(PlayText.print(answer, 80, Style.SHOP).lines())
        .allMatch(line -> line.length() <= 80)
        .noneMatch(line -> line.matches("(?i).*\\bsafe\\b.*"));
    return answer;
  }

  /** The value of a column at a time, SI. */
  private static double value(PlayAnswer answer, String column, double at) {
    Curve curve = answer.curve().curve();
    int which =
        IntStream.range(0, curve.columns().size())
            .filter(i -> curve.columns().get(i).name().equals(column))
            .findFirst()
            .orElseThrow();
    Curve.Row nearest = curve.up().get(0);
    for (Curve.Row row : curve.up()) {
      nearest = Math.abs(row.x() - at) < Math.abs(nearest.x() - at) ? row : nearest;
    }
    return nearest.values().get(which);
  }

  private static Watch.Seen limit(PlayAnswer answer, String part) {
    return answer.limits().stream()
        .filter(seen -> seen.watch().part().equals(part))
        .findFirst()
        .orElseThrow();
  }

  private static double first(PlayAnswer answer, String part, String after) {
    return answer.events().stream()
        .filter(event -> event.part().equals(part) && event.after().equals(after))
        .mapToDouble(Event::seconds)
        .findFirst()
        .orElseThrow();
  }

  /**
   * The high stage feeds at idle, the mid stage at take-off, and on the way down the high stage
   * again; while the core speeds up the high stage valve is late, so that the interstage passes its
   * set.
   */
  @Test
  void aSlamHandsTheStagesOver() throws QuantityProblem {
    PlayAnswer answer = play(TWIN, "slam-from-ground-idle", "left interstage pressure");
    double shut = first(answer, "left high stage valve", "shut by pressure");
    double opens = first(answer, "left mid check valve", "partly open");
    assertThat(shut).isBetween(5.0, 11.5);
    assertThat(opens).isBetween(shut, 11.5);
    assertThat(value(answer, "left interstage pressure", 9) / PSI).isGreaterThan(35);
    // Settled at both ends where the steady states are.
    assertThat(value(answer, "left interstage pressure", 2))
        .isCloseTo(value(answer, "left interstage pressure", 49), within(0.3 * PSI));
    assertThat(answer.headline()).noneMatch(says -> says.contains("TRIPS"));
    assertThat(answer.assumes()).anyMatch(says -> says.contains("5 to 8 s"));
  }

  /** From the idle of descent the core has less far to go, and the mid stage feeds already. */
  @Test
  void aSlamFromDescentIsMilder() throws QuantityProblem {
    PlayAnswer ground = play(TWIN, "slam-from-ground-idle", "");
    PlayAnswer descent = play(TWIN, "slam-from-descent", "");
    assertThat(limit(descent, "left overheat trip").most())
        .isLessThan(limit(ground, "left overheat trip").most());
    assertThat(descent.events()).noneMatch(event -> event.kind() == Event.Kind.TRIP);
  }

  /** A valve ten times slower lets the high stage through until the other end of the ramp. */
  @Test
  void aSlowHighStageValveTripsOverpressureOnItsSideOnly() throws QuantityProblem {
    PlayAnswer sound = play(TWIN, "slam-from-ground-idle", "");
    PlayAnswer slow = play(TWIN, "slam-with-a-slow-valve", "");
    assertThat(limit(sound, "left overpressure trip").room()).isPositive();
    assertThat(limit(slow, "left overpressure trip").room()).isNegative();
    assertThat(limit(slow, "right overpressure trip").room()).isPositive();
    assertThat(slow.headline())
        .anyMatch(says -> says.startsWith("The left overpressure trip TRIPS"));
    // The trip shuts the bleed regulator, and nothing else feeds the left pack.
    assertThat(slow.shortages()).extracting(Shortage::user).containsOnly("left pack");
    assertThat(slow.shortages().get(slow.shortages().size() - 1).lasts()).isTrue();
  }

  /**
   * Without cooling air the duct passes 490 degF; the trip waits 3 s (demo file), then shuts the
   * bleed regulator, and the left pack has no other source.
   */
  @Test
  void aStuckCoolingAirValveTripsOverheatAfterItsDelay() throws QuantityProblem {
    PlayAnswer answer = play(TWIN, "overheat-trip", "");
    double trips = first(answer, "left overheat trip", "tripped");
    Watch.Seen seen = limit(answer, "left overheat trip");
    assertThat(trips).isBetween(13.0, 20.0);
    assertThat(seen.room()).isNegative();
    assertThat(seen.beyond()).isGreaterThan(3);
    assertThat(first(answer, "left bleed regulator", "shut by command"))
        .isBetween(trips - 0.05, trips + 0.05);
    assertThat(answer.shortages()).extracting(Shortage::user).containsExactly("left pack");
    assertThat(answer.shortages().get(0).from()).isGreaterThan(trips);
    assertThat(limit(answer, "right overheat trip").room()).isPositive();
  }

  /** What is done stands in the story in order, and each thing that follows after its cause. */
  @Test
  void aStartComesToIdleAndItsAirStaysBehind() throws QuantityProblem {
    PlayAnswer answer = play(STAND, "start-on-shop-air", "stand duct pressure");
    List<String> says = answer.story().stream().map(PlayAnswer.Told::says).toList();
    int lights = index(says, "the engine lights");
    int cuts = index(says, "the starter cuts out at core 50");
    int idle = index(says, "ground idle is reached");
    int off = index(says, "fuel off");
    assertThat(lights).isLessThan(cuts);
    assertThat(cuts).isLessThan(idle);
    assertThat(idle).isLessThan(off);
    assertThat(answer.shortages()).isEmpty();
    // The supply's table: 46 psig without flow; less while the starter turns.
    assertThat(value(answer, "stand duct pressure", 9) / PSI).isBetween(45.0, 46.5);
    assertThat(value(answer, "stand duct pressure", 20) / PSI).isBetween(30.0, 42.0);
    PlayAnswer.Bleeding bleed = answer.bleed().orElseThrow();
    PlayAnswer.Worst slowest = bleed.worst().get(0);
    assertThat(slowest.pocket()).contains("stand duct");
    assertThat(slowest.worst()).isGreaterThan(60);
    assertThat(bleed.proof()).anyMatch(one -> one.contains("a zero needle is no evidence below"));
    assertThat(bleed.open()).anyMatch(one -> one.startsWith("dump"));
    assertThat(answer.headline()).anyMatch(one -> one.endsWith("Prove it with a gauge."));
  }

  private static int index(List<String> all, String begins) {
    return IntStream.range(0, all.size())
        .filter(i -> all.get(i).startsWith(begins))
        .findFirst()
        .orElseThrow(() -> new AssertionError(begins + " is not in " + all));
  }

  /** Three lags in a loop hunt when the line is slow; the steady judgement says so as well. */
  @Test
  void aLateRegulatorHunts() throws QuantityProblem {
    PlayAnswer answer = play(STAND, "hunting-regulator", "");
    assertThat(answer.hunts()).isNotEmpty();
    Cycle hunt = answer.hunts().get(0);
    assertThat(hunt.part()).isEqualTo("bleed regulator");
    assertThat(hunt.hertz()).isBetween(0.3, 4.0);
    assertThat(hunt.until()).isGreaterThan(37);
    assertThat(answer.end()).anyMatch(says -> says.contains("HUNTS: bleed regulator"));
  }

  /**
   * Where both stages feed, the check valve stands part open. Air that it lets through takes the
   * pressure away that opens it, a little late: that drives a flapper with little damping. The air
   * is a spring beside its own, so that it swings faster than freely.
   */
  @Test
  void aCheckValveWithInertiaFluttersNearTheChangeover() throws QuantityProblem {
    PlayAnswer answer = play(STAND, "fluttering-check-valve", "interstage pressure");
    Event flutter =
        answer.events().stream()
            .filter(event -> event.kind() == Event.Kind.FLUTTER)
            .findFirst()
            .orElseThrow();
    assertThat(flutter.part()).isEqualTo("mid check valve");
    Matcher hertz = Pattern.compile("flutters at ([0-9]+) Hz").matcher(flutter.word());
    assertThat(hertz.find()).isTrue();
    assertThat(Double.parseDouble(hertz.group(1))).isBetween(30.0, 90.0);
    double high = first(answer, "high stage valve", "shut by pressure");
    assertThat(flutter.seconds()).isBetween(high - 5, high + 5);
    assertThat(answer.headline()).anyMatch(says -> says.contains("flutters at"));
  }

  /** A sound engine is hotter than the packs' limit for a moment while it accelerates. */
  @Test
  void aLimitThatMayBePassedForAMomentIsTold() throws QuantityProblem {
    PlayAnswer slam = play(TWIN, "slam-from-ground-idle", "");
    assertThat(limit(slam, "left pack inlet limit").room()).isNegative();
    assertThat(slam.headline()).noneMatch(says -> says.contains("PASSED"));
    assertThat(slam.story()).noneMatch(told -> told.says().contains("pack inlet limit"));
    assertThat(play(TWIN, "overheat-trip", "").headline())
        .anyMatch(says -> says.startsWith("The left pack inlet limit IS PASSED for 10 s"));
  }

  /** The cart stands at more than a starter may get until the starter draws on it. */
  @Test
  void aLimitCountsOnlyWhileItsConditionHolds() throws QuantityProblem {
    String text =
        """
        offtake profile: 1
        start: {power: ground idle, ground supply switch: ON}
        actions:
          at 4 s:
            right start switch: ON
          at 12 s:
            right start switch: OFF
        ends at: 16 s
        """;
    ProfileRead read = ProfileReader.readText("start.yaml", text, TWIN);
    assertThat(read.problems()).isEmpty();
    PlayAnswer answer = play(TWIN, read.profile().orElseThrow(), "");
    Watch.Seen seen = limit(answer, "right starter limit");
    assertThat(seen.at()).isBetween(4.0, 12.0);
    assertThat(seen.beyond()).isLessThan(8.1);
    assertThat(answer.limits())
        .noneMatch(other -> other.watch().part().equals("left starter limit"));
  }
}

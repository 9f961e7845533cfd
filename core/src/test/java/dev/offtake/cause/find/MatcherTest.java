package dev.offtake.cause.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.cause.Readings;
import dev.offtake.cause.ReadingsRead;
import dev.offtake.cause.ReadingsReader;
import dev.offtake.network.Demos;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.system.BleedSystem;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Numbers of a small invented system, shifted and read, are found again. */
class MatcherTest {
  private static final double PSI = 6894.757293168;

  /** Its standby regulator is shut by the pressure that the other one holds. */
  private static final String BENCH =
      """
      power settings:
        idle: {core: 62 %%, fan: 24 %%}
      switches:
        pack switch: [ON, OFF]
        wing switch: [ON, OFF]
      model error: {pressure: 0.5 %%, temperature: 5 degF; invented}
      parts:
        supply:
          kind: supply
          to: line
          temperature: 300 degF
          table: {columns: [psig, lb/min], rows: [[75, 0], [70, 150]]}
        regulator:
          kind: regulator
          path: line -> duct
          bore: 3 in
          holds: duct pressure
          set to: %s
          droop: %s
        standby regulator:
          kind: regulator
          path: line -> duct
          bore: 3 in
          holds: duct pressure
          set to: 25 psig +/- 3
          droop: unknown 3..6 psi
        pack: {kind: flow user, takes from: duct, takes: 60 lb/min when pack switch is ON, needs: 5 psig}
        wing: {kind: flow user, takes from: duct, takes: 70 lb/min when wing switch is ON, needs: 5 psig}
      gauges:
        duct gauge: {reads: duct pressure, step: 0.2 psi, good to: {constant: 0.3 psi, each reading: 0.1 psi}}
      trips:
        overpressure trip: {watches: duct pressure, above: 70 psig, shuts: pack, resets: by hand}
      lights:
        trip light: {lit when: overpressure trip is tripped}
      """;

  private static final String SET = "42 psig +4 -2";
  private static final String DROOP = "unknown 3..9 psi";

  private static BleedSystem bench(String set, String droop) {
    return Demos.text(BENCH.replace("shuts: pack, ", "").formatted(set, droop));
  }

  private static Readings readings(BleedSystem system, String text) {
    String head = "offtake readings: 1\n";
    ReadingsRead read = ReadingsReader.readText("run.yaml", head + text, system);
    assertThat(read.problems()).isEmpty();
    return read.readings().orElseThrow();
  }

  /** Readings at each way of two switches, twice each. */
  private static String run(double... psig) {
    StringBuilder text = new StringBuilder("readings:\n");
    int i = 0;
    for (String pack : List.of("ON", "OFF")) {
      for (String wing : List.of("ON", "OFF")) {
        text.append("  - at: idle\n    set: {pack switch: ")
            .append(pack)
            .append(", wing switch: ")
            .append(wing)
            .append("}\n    duct pressure: ")
            .append(String.format(Locale.ROOT, "%.1f psig\n", psig[i++]));
      }
    }
    return text.toString();
  }

  /** What the gauge shows at each way of two switches, Pa. */
  private static double[] shown(BleedSystem truth) {
    ClueMaker maker = new ClueMaker(truth, readings(truth, run(40, 40, 40, 40)));
    List<SceneState> states = new Forecaster(truth).sound(maker.scenes());
    assertThat(states).allMatch(SceneState::solved);
    return maker.clues(states).stream().mapToDouble(clue -> clue.value(states)).toArray();
  }

  private static Match match(BleedSystem system, String text) throws QuantityProblem {
    return Matcher.match(system, readings(system, text), share -> {});
  }

  private static MatchedNumber number(Match match, String part, String key) {
    return match.numbers().stream()
        .filter(n -> n.number().part().equals(part) && n.statement().key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  /** Thirty engines from within their bands, with gauges and a model that err as they may. */
  @Test
  void shiftedNumbersAreFoundAgainWithinTwiceTheirError() throws QuantityProblem {
    BleedSystem system = bench(SET, DROOP);
    SplittableRandom random = new SplittableRandom(20_261_129);
    List<Boolean> sets = new ArrayList<>();
    List<Boolean> droops = new ArrayList<>();
    for (int draw = 0; draw < 30; draw++) {
      double set = 40 + 6 * random.nextDouble();
      double droop = 3 + 6 * random.nextDouble();
      double constant = 0.3 * (2 * random.nextDouble() - 1);
      double[] psig = shown(bench(set + " psig", droop + " psi"));
      for (int i = 0; i < psig.length; i++) {
        double exact = psig[i] / PSI * (1 + 0.005 * random.nextGaussian());
        double read = exact + constant + 0.1 * random.nextGaussian();
        psig[i] = Math.round(read / 0.2) * 0.2;
      }
      Match match = match(system, run(psig));
      assertThat(match.settled()).isTrue();
      sets.add(near(number(match, "regulator", "set to"), set));
      droops.add(near(number(match, "regulator", "droop"), droop));
    }
    assertThat(sets.stream().filter(near -> near).count()).isGreaterThanOrEqualTo(27);
    assertThat(droops.stream().filter(near -> near).count()).isGreaterThanOrEqualTo(27);
  }

  private static boolean near(MatchedNumber number, double psi) {
    return Math.abs(number.value() / PSI - psi) <= 2 * number.deviation() / PSI;
  }

  @Test
  void whatNoReadingFeelsIsNotTold() throws QuantityProblem {
    Match match = match(bench(SET, DROOP), run(39.4, 41.2, 41.4, 44.0));
    MatchedNumber set = number(match, "regulator", "set to");
    assertThat(set.verdict()).isEqualTo(MatchedNumber.Verdict.TOLD_WELL);
    for (String key : List.of("set to", "droop")) {
      MatchedNumber unfelt = number(match, "standby regulator", key);
      assertThat(unfelt.verdict()).isEqualTo(MatchedNumber.Verdict.NOT_TOLD);
      assertThat(unfelt.told()).isLessThan(0.02);
      assertThat(unfelt.value())
          .isCloseTo(unfelt.statement().stated().nominal(), within(0.02 * PSI));
      assertThat(unfelt.deviation()).isCloseTo(unfelt.sigma(), within(0.01 * unfelt.sigma()));
    }
    assertThat(match.worthWriting()).doesNotContain(number(match, "standby regulator", "droop"));
  }

  /** With one flow alone a set and a droop cannot be told apart, only their sum. */
  @Test
  void oneFlowTellsSetAndDroopOnlyTogether() throws QuantityProblem {
    BleedSystem system = bench("42 psig +/- 3", "unknown 0.5..33 psi");
    double[] shown = shown(bench("42 psig", "16.75 psi"));
    String one =
        """
        readings:
          - at: idle
            duct pressure: %.1f psig
        """;
    Match match = match(system, one.formatted(shown[0] / PSI + 0.2));
    MatchedNumber set = number(match, "regulator", "set to");
    MatchedNumber droop = number(match, "regulator", "droop");
    assertThat(set.told()).isBetween(0.4, 0.5);
    assertThat(droop.told()).isBetween(0.4, 0.5);
    assertThat(match.together()).hasSize(1);
    Match.Together pair = match.together().get(0);
    assertThat(List.of(match.numbers().get(pair.one()), match.numbers().get(pair.other())))
        .containsExactly(set, droop);
    // What one reading tells lies all in one direction.
    assertThat(pair.told()).isCloseTo(set.told() + droop.told(), within(0.02));
    assertThat(match.pressure().told()).isFalse();
    assertThat(match.pressure().after()).isEqualTo(0.005);
  }

  @Test
  void aNumberOutsideItsBandIsSaid() throws QuantityProblem {
    double[] psig = shown(bench("50 psig", "6 psi"));
    for (int i = 0; i < psig.length; i++) {
      psig[i] /= PSI;
    }
    Match match = match(bench(SET, DROOP), run(psig));
    MatchedNumber set = number(match, "regulator", "set to");
    assertThat(set.beyond()).isGreaterThan(2 * PSI);
    assertThat(set.faulty()).isTrue();
    assertThat(match.healthy()).isFalse();
  }

  @Test
  void aReadingThatDoesNotFitIsCalledOut() throws QuantityProblem {
    double[] psig = shown(bench("43 psig", "6 psi"));
    for (int i = 0; i < psig.length; i++) {
      psig[i] /= PSI;
    }
    psig[2] += 8;
    Match match = match(bench(SET, DROOP), run(psig));
    assertThat(match.left().get(2).fits()).isFalse();
    assertThat(match.healthy()).isFalse();
  }

  @Test
  void aLightThatShouldBeDarkIsCalledOut() throws QuantityProblem {
    String run = "readings:\n  - at: idle\n    duct pressure: 40 psig\n    trip light: on\n";
    Match match = match(bench(SET, DROOP), run);
    assertThat(match.ignored()).hasSize(1);
    assertThat(match.otherwise()).hasSize(1);
    assertThat(match.healthy()).isFalse();
  }

  @Test
  void whatIsNoHealthyRunIsRefused() {
    BleedSystem system = bench(SET, DROOP);
    String number = "    duct pressure: 40 psig\n";
    assertThatThrownBy(
            () ->
                match(
                    system,
                    "readings:\n  - at: idle\n    trip: after overpressure trip\n" + number))
        .isInstanceOf(QuantityProblem.class)
        .hasMessageContaining("overpressure trip");
    assertThatThrownBy(
            () ->
                match(
                    system,
                    "readings:\n  - at: idle\n" + number + "seen:\n  regulator: stuck shut\n"))
        .isInstanceOf(QuantityProblem.class)
        .hasMessageContaining("regulator");
    assertThatThrownBy(() -> match(system, "readings:\n  - at: idle\n    trip light: off\n"))
        .isInstanceOf(QuantityProblem.class)
        .hasMessageContaining("no number");
  }

  /** The demo's run was made with these numbers: see demo/truth/healthy-run.yaml. */
  @Test
  void theDemosRunTellsWhatItWasMadeWith() throws QuantityProblem {
    BleedSystem twin = Demos.demo("twin");
    Path file = Path.of("../demo/readings/healthy-run.yaml");
    Readings run = ReadingsReader.read(file, twin).readings().orElseThrow();
    Match match = Matcher.match(twin, run, share -> {});
    assertThat(match.healthy()).isTrue();
    assertThat(near(number(match, "left high stage valve", "set to"), 33.5)).isTrue();
    assertThat(near(number(match, "right high stage valve", "set to"), 28.8)).isTrue();
    assertThat(near(number(match, "left bleed regulator", "set to"), 41.0)).isTrue();
    assertThat(near(number(match, "right bleed regulator", "set to"), 44.5)).isTrue();
    assertThat(match.pressure().told()).isTrue();
    assertThat(match.temperature().told()).isFalse();
  }
}

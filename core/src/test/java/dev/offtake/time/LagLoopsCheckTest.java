package dev.offtake.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.network.Demos;
import dev.offtake.network.Network;
import dev.offtake.part.Conditions;
import dev.offtake.part.Part;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Quantity;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Setup.PartNumber;
import dev.offtake.solve.Solution;
import dev.offtake.stability.Lags;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A regulator whose loop is three lags (sense line, servo, disc) around air that follows at once:
 * its volume is a tenth of a litre, held at the temperature outside by a wall of 10⁶ W/K.
 *
 * <p>Source: the criterion of Routh and Hurwitz for (1 + τ₁s)(1 + τ₂s)(1 + τ₃s) + K = 0, which
 * holds while K &lt; (τ₁ + τ₂ + τ₃)(1/τ₁ + 1/τ₂ + 1/τ₃) − 1: 8 for equal lags. Two lags hold at any
 * gain.
 */
class LagLoopsCheckTest {
  private static final String TEXT =
      """
      parts:
        cart:
          kind: supply
          to: duct
          temperature: 59 degF
          table: {columns: [psig, lb/min], rows: [[120, 0], [119.9, 300]]}
        regulator:
          kind: regulator
          path: duct -> load
          bore: 10 in
          flow coefficient: 0.04
          law: nozzle
          holds: load pressure
          set to: 30 psig
          droop: 4 psi
        nozzle:
          kind: orifice user
          takes from: load
          bore: 1.2 in
      points:
        duct: {wall: 1000000 W/K, volume: 0.1 l}
        load: {wall: 1000000 W/K, volume: 0.1 l}
      """;

  private static final Network NETWORK = Demos.text(TEXT).network();
  private static final int LOAD = NETWORK.point("load");
  private static final int REGULATOR = NETWORK.part("regulator");
  private static final double SET = 30 * 6894.757293168;

  private static Setup setup(double droop, double set) {
    return new Setup(
        Conditions.standardDay(0.8, 0.8),
        Map.of(),
        Map.of(),
        Map.of(
            new PartNumber("regulator", "droop"), droop,
            new PartNumber("regulator", "set"), set));
  }

  private static Solution solve(Setup setup) {
    Solution solution = new Settler(NETWORK).solve(setup);
    assertThat(solution.solved()).isTrue();
    return solution;
  }

  /** Rise of the held pressure for the whole stroke, Pa, about the opening at a droop. */
  private static double perStroke(double droop) {
    Solution middle = solve(setup(droop, SET));
    double opening = middle.view(REGULATOR, Style.SHOP).observed(0);
    double[] p = new double[2];
    for (int i = 0; i < 2; i++) {
      double stuck = opening + (i == 0 ? -1e-3 : 1e-3);
      Setup held =
          new Setup(
              middle.conditions(),
              Map.of(),
              Map.of(),
              Map.of(new PartNumber("regulator", "stuck at"), stuck));
      p[i] = solve(held).pressure(LOAD);
    }
    return (p[1] - p[0]) / 2e-3;
  }

  /** A droop at which the loop gain is as wanted. */
  private static double droop(double gain) {
    double droop = 2e4;
    for (int i = 0; i < 40; i++) {
      droop = perStroke(droop) / gain;
    }
    return droop;
  }

  private static Function<Part, Pace> paces(double sense, double servo, double disc) {
    return part -> new Pace(new Lags(sense, 0, servo, disc), Double.POSITIVE_INFINITY, 0, 0, 0.1);
  }

  /** Half the swing of the held pressure within some seconds. */
  private static double swing(Played played, double from, double until) {
    double[] seconds = new double[800];
    for (int k = 0; k < seconds.length; k++) {
      seconds[k] = from + (until - from) * k / (seconds.length - 1);
    }
    double[] p = played.course(List.of(Quantity.pressure(LOAD)), seconds)[0];
    double least = p[0];
    double most = p[0];
    for (double each : p) {
      least = Math.min(least, each);
      most = Math.max(most, each);
    }
    return (most - least) / 2;
  }

  private static Played upset(double gain, Function<Part, Pace> paces) {
    double droop = droop(gain);
    Drive drive = Drive.from(setup(droop, SET)).jump(setup(droop, SET + 0.02 * droop)).hold(60);
    Settings settings = Settings.usual().withTolerance(1e-5).withWalls(false).withPaces(paces);
    Played played = new Transient(NETWORK).run(drive, settings, s -> true);
    assertThat(played.end()).isEqualTo(Played.End.DONE);
    return played;
  }

  @ParameterizedTest
  @CsvSource({"0.2, 0.2, 0.2", "0.1, 0.4, 0.2", "0.05, 0.5, 0.1"})
  void threeLagsHoldUpToTheirGain(double sense, double servo, double disc) {
    double limit = (sense + servo + disc) * (1 / sense + 1 / servo + 1 / disc) - 1;
    Played below = upset(0.93 * limit, paces(sense, servo, disc));
    assertThat(swing(below, 50, 60)).isLessThan(0.6 * swing(below, 2, 12));
    Played above = upset(1.07 * limit, paces(sense, servo, disc));
    assertThat(swing(above, 50, 60)).isGreaterThan(1.5 * swing(above, 0.2, 1.5));
    assertThat(Cycle.in(above, NETWORK)).extracting(Cycle::part).containsExactly("regulator");
  }

  /** However near below its limit: it swings for long, but it is not told to hunt. */
  @ParameterizedTest
  @ValueSource(doubles = {0.7, 0.9, 0.95, 0.98})
  void belowItsLimitItDoesNotHunt(double share) {
    assertThat(Cycle.in(upset(share * 8, paces(0.2, 0.2, 0.2)), NETWORK)).isEmpty();
  }

  @Test
  void equalLagsHaveAGainOfEight() {
    double limit = 3 * 0.2 * 3 / 0.2 - 1;
    assertThat(limit).isCloseTo(8, within(1e-12));
  }

  @Test
  void twoLagsNeverHunt() {
    Played played = upset(60, paces(0, 0.2, 0.2));
    assertThat(swing(played, 20, 60)).isLessThan(0.05 * swing(played, 0, 10));
  }

  /** Equal lags at their limit swing at tan 60° over their time: Nyquist. */
  @Test
  void swingsAtTheFrequencyOfTheLimit() {
    Played played = upset(8 * 1.07, paces(0.2, 0.2, 0.2));
    double[] seconds = new double[20_001];
    for (int k = 0; k < seconds.length; k++) {
      seconds[k] = 20 + 0.002 * k;
    }
    double[] p = played.course(List.of(Quantity.pressure(LOAD)), seconds)[0];
    double mean = 0;
    for (double each : p) {
      mean += each / p.length;
    }
    int turns = 0;
    for (int k = 1; k < p.length; k++) {
      turns += p[k - 1] < mean && p[k] >= mean ? 1 : 0;
    }
    double circular = 2 * Math.PI * turns / 40;
    assertThat(circular).isCloseTo(Math.sqrt(3) / 0.2, within(0.1 * Math.sqrt(3) / 0.2));
  }

  /** A servo that is commanded goes to its new place as 1 − e^(−t/τ), or at its rate. */
  @Test
  void aServoFillsExponentially() {
    double shut = setup(2e4, SET).changed().get(new PartNumber("regulator", "set"));
    Function<Part, Pace> paces = paces(0, 2, 1e-4);
    Played played = jumpOpen(shut, paces);
    double[] opening = opening(played, 1, 2, 5);
    for (int k = 0; k < 3; k++) {
      double t = new double[] {1, 2, 5}[k];
      assertThat(opening[k]).isCloseTo(0.5 + 0.5 * (1 - Math.exp(-t / 2)), within(2e-3));
    }
  }

  @Test
  void aRateLimitsIt() {
    Function<Part, Pace> paces = part -> paces(0, 0.05, 1e-4).apply(part).withRate(0.1);
    double[] opening = opening(jumpOpen(SET, paces), 1, 2, 3);
    assertThat(opening[0]).isCloseTo(0.6, within(2e-3));
    assertThat(opening[2]).isCloseTo(0.8, within(2e-3));
  }

  /** With friction it stays a share of its stroke short of where its servo wants it. */
  @Test
  void frictionKeepsItShort() {
    Function<Part, Pace> paces = part -> paces(0, 0.5, 0.01).apply(part).withFriction(0.04);
    double full = opening(jump(SET, SET - 7000, paces(0, 0.5, 0.01)), 9, 9.5, 10)[2];
    double[] opening = opening(jump(SET, SET - 7000, paces), 8, 9, 10);
    assertThat(full).isBetween(0.6, 0.9);
    assertThat(opening[2]).isCloseTo(full - 0.04, within(2e-3));
  }

  /** All the force of its servo brings it to its stop. */
  @Test
  void frictionDoesNotKeepItFromItsStop() {
    Function<Part, Pace> paces = part -> paces(0, 0.5, 0.01).apply(part).withFriction(0.04);
    double[] opening = opening(jumpOpen(SET, paces), 8, 9, 10);
    assertThat(opening[2]).isCloseTo(1, within(2e-3));
  }

  /**
   * A regulator at half its stroke that feels nothing of what it does, told to open: its sense line
   * is blocked, with the set trapped in it, and lets go of it all.
   */
  private static Played jumpOpen(double set, Function<Part, Pace> paces) {
    return jump(set, 0, paces);
  }

  private static Played jump(double set, double to, Function<Part, Pace> paces) {
    Drive drive = Drive.from(blocked(set)).jump(blocked(to)).hold(10);
    Settings settings = Settings.usual().withTolerance(1e-4).withPaces(paces);
    Played played = new Transient(NETWORK).run(drive, settings, s -> true);
    assertThat(played.end()).isEqualTo(Played.End.DONE);
    return played;
  }

  private static Setup blocked(double trapped) {
    double outside = Conditions.standardDay(0.8, 0.8).ambientP();
    return new Setup(
        Conditions.standardDay(0.8, 0.8),
        Map.of(),
        Map.of(),
        Map.of(
            new PartNumber("regulator", "sense line open"),
            0.0,
            new PartNumber("regulator", "sense line holds"),
            trapped + outside));
  }

  private static double[] opening(Played played, double... seconds) {
    return played.course(List.of(Quantity.observed(REGULATOR, 0)), seconds)[0];
  }
}

package dev.offtake.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.stability.Motion.State;
import dev.offtake.stability.Motion.What;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionNonSymmetric;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Modes of loops whose characteristic polynomial is known. */
class ModesTest {
  private static List<Mode> modes(double[][] rates) {
    return Modes.of(new Motion(rates, states(rates.length)));
  }

  private static List<State> states(int count) {
    return IntStream.range(0, count).mapToObj(i -> new State("v" + i, What.VALVE)).toList();
  }

  /** Lags in a row, the first one fed back from the last one with a gain: Π(τ s + 1) + K = 0. */
  private static double[][] loop(double gain, double... seconds) {
    int n = seconds.length;
    double[][] rates = new double[n][n];
    for (int i = 0; i < n; i++) {
      rates[i][i] -= 1 / seconds[i];
      rates[i][(i + n - 1) % n] += (i == 0 ? -gain : 1) / seconds[i];
    }
    return rates;
  }

  /** s² + 2 ζ ω s + ω² = 0 (textbook form). */
  @ParameterizedTest
  @ValueSource(doubles = {-0.3, 0.0, 0.01, 0.2, 0.7, 0.95})
  void aLoopOfSecondOrderHasItsDamping(double damping) {
    double natural = 31;
    double[][] rates = {{0, 1}, {-natural * natural, -2 * damping * natural}};
    Mode mode = modes(rates).get(0);
    assertThat(mode.damping()).isCloseTo(damping, within(1e-12));
    double hertz = natural * Math.sqrt(1 - damping * damping) / (2 * Math.PI);
    assertThat(mode.frequency()).isCloseTo(hertz, within(1e-12 * natural));
  }

  /** Two lags: (τ₁ s + 1)(τ₂ s + 1) + K has no root on the right for any K above −1. */
  @Property(tries = 300, seed = "20240501")
  void twoLagsNeverHunt(
      @ForAll @DoubleRange(min = -3, max = 8) double decades,
      @ForAll @DoubleRange(min = -4, max = 2) double one,
      @ForAll @DoubleRange(min = -4, max = 2) double two) {
    double gain = Math.pow(10, decades);
    for (Mode mode : modes(loop(gain, Math.pow(10, one), Math.pow(10, two)))) {
      assertThat(mode.growth()).isNegative();
    }
  }

  /** Routh–Hurwitz for three lags: K &lt; (τ₁+τ₂+τ₃)(1/τ₁+1/τ₂+1/τ₃) − 1 (derived by hand). */
  @Property(tries = 300, seed = "20240502")
  void threeLagsHuntFromTheLimitOfRouthAndHurwitz(
      @ForAll @DoubleRange(min = -2, max = 1) double one,
      @ForAll @DoubleRange(min = -2, max = 1) double two,
      @ForAll @DoubleRange(min = -2, max = 1) double three) {
    double[] seconds = {Math.pow(10, one), Math.pow(10, two), Math.pow(10, three)};
    double sum = Arrays.stream(seconds).sum();
    double rates = Arrays.stream(seconds).map(t -> 1 / t).sum();
    double limit = sum * rates - 1;
    assertThat(modes(loop(0.999 * limit, seconds)).get(0).growth()).isNegative();
    Mode hunting = modes(loop(1.001 * limit, seconds)).get(0);
    assertThat(hunting.growth()).isPositive();
    double product = seconds[0] * seconds[1] * seconds[2];
    double circular = Math.sqrt(sum / product);
    assertThat(hunting.circular()).isCloseTo(circular, within(0.002 * circular));
  }

  /** Equal lags: 8 for three, 4 for four (sec(π/n)ⁿ, textbook). */
  @Test
  void equalLagsHuntFromEightAndFour() {
    assertThat(modes(loop(7.99, 0.3, 0.3, 0.3)).get(0).growth()).isNegative();
    assertThat(modes(loop(8.01, 0.3, 0.3, 0.3)).get(0).growth()).isPositive();
    assertThat(modes(loop(3.99, 0.3, 0.3, 0.3, 0.3)).get(0).growth()).isNegative();
    assertThat(modes(loop(4.01, 0.3, 0.3, 0.3, 0.3)).get(0).growth()).isPositive();
  }

  /** Equal lags without feedback have one eigenvector for all; the circles never see that. */
  @Test
  void lagsInARowWithoutFeedbackStayApart() {
    List<Mode> modes = modes(loop(0, 0.5, 0.5, 0.5));
    assertThat(modes).hasSize(3).allMatch(mode -> mode.growth() == -2 && mode.shares().size() == 1);
  }

  @Test
  void groupsHaveTheEigenvaluesOfTheWhole() {
    Random random = new Random(7);
    double[][] rates = new double[12][12];
    for (int r = 0; r < 12; r++) {
      for (int c = 0; c < 12; c++) {
        boolean coupled = c / 4 <= r / 4 && random.nextInt(3) > 0;
        rates[r][c] = r == c || coupled ? random.nextGaussian() * Math.pow(10, (r % 4) - 1) : 0;
      }
    }
    assertThat(Circles.of(rates).size()).isGreaterThan(2);
    EigenDecompositionNonSymmetric whole =
        new EigenDecompositionNonSymmetric(new Array2DRowRealMatrix(rates, true));
    double[] expected =
        Arrays.stream(whole.getEigenvalues())
            .filter(value -> value.getImaginary() >= 0)
            .mapToDouble(value -> -value.getReal())
            .sorted()
            .toArray();
    double[] found = modes(rates).stream().mapToDouble(mode -> -mode.growth()).toArray();
    assertThat(found).hasSameSizeAs(expected);
    for (int i = 0; i < found.length; i++) {
      assertThat(found[i])
          .isCloseTo(expected[i], within(1e-9 * Math.max(1, Math.abs(expected[i]))));
    }
  }

  /**
   * [[−1, a], [b, −1]]: modes −1 ± √(ab), both states take half of each, whatever their units (by
   * hand).
   */
  @ParameterizedTest
  @ValueSource(doubles = {1, 1e3, 1e-4})
  void participationDoesNotDependOnUnits(double unit) {
    double[][] rates = {{-1, 0.25 * unit}, {1 / unit, -1}};
    List<Mode> modes = modes(rates);
    assertThat(modes.get(0).growth()).isCloseTo(-0.5, within(1e-12));
    assertThat(modes.get(1).growth()).isCloseTo(-1.5, within(1e-12));
    assertThat(modes).allMatch(mode -> Math.abs(mode.shares().get(0).share() - 0.5) < 1e-9);
  }

  /** Weakly coupled twins: each mode belongs to both sides, and both are named. */
  @Test
  void twinsAreNamedTogether() {
    double[][] rates = {{-1, 1e-7}, {1e-7, -1}};
    assertThat(modes(rates).get(0).driver()).isEqualTo("v0 and v1");
    double[][] apart = {{-1, 1e-7}, {1e-7, -2}};
    assertThat(modes(apart).get(0).driver()).isEqualTo("v0");
  }

  @Test
  void sidesAreNamedInOne() {
    Mode twins =
        new Mode(-1, 0, List.of(new Mode.Share("right bleed regulator", true, 0.5), left(0.4)));
    assertThat(twins.driver()).isEqualTo("left and right bleed regulator");
  }

  private static Mode.Share left(double share) {
    return new Mode.Share("left bleed regulator", true, share);
  }
}

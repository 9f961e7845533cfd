package dev.offtake.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.cause.chance.Information;
import dev.offtake.cause.chance.Repair;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Test order, information and Bayes' rule against published cases and closed forms. */
class DiagnosisCheckTest {
  /** Five units; every value follows from the formula of {@link Repair}, recomputed here. */
  private static final double[] CHANCE = {0.40, 0.25, 0.20, 0.10, 0.05};

  private static final double[] MINUTES = {60, 20, 35, 5, 15};

  /** Kadane and Simon 1977; Heckerman, Breese and Rommelse 1995: falling chance over cost. */
  @Test
  void theOrderOfChanceOverMinutesIsTheBestOfAllOrders() {
    List<Integer> order = Repair.order(CHANCE, MINUTES);

    assertThat(order).containsExactly(3, 1, 0, 2, 4);
    assertThat(Repair.minutes(CHANCE, MINUTES)).isCloseTo(71.5, within(1e-9));
    List<List<Integer>> all = orders(List.of(0, 1, 2, 3, 4));
    assertThat(all).hasSize(120);
    assertThat(all.stream().mapToDouble(o -> Repair.minutes(o, CHANCE, MINUTES)).min())
        .hasValueCloseTo(71.5, within(1e-9));
    assertThat(all.stream().mapToDouble(o -> Repair.minutes(o, CHANCE, MINUTES)).max())
        .hasValueCloseTo(100.75, within(1e-9));
  }

  @Test
  void theOrderOfChanceAloneAndOfInformationAreWorse() {
    assertThat(Repair.minutes(List.of(0, 1, 2, 3, 4), CHANCE, MINUTES))
        .isCloseTo(85.75, within(1e-9));
    assertThat(Repair.minutes(List.of(3, 1, 2, 4, 0), CHANCE, MINUTES))
        .isCloseTo(76.5, within(1e-9));
  }

  /** Ross, A First Course in Probability: check 1 first exactly when (1 − p)·C1 ≤ p·C2. */
  @Test
  void ofTwoCausesTheFirstIsTheOneThatRossSays() {
    for (double p = 0.05; p < 1; p += 0.05) {
      for (double second : new double[] {1, 7, 30}) {
        double first = 10;
        List<Integer> order = Repair.order(new double[] {p, 1 - p}, new double[] {first, second});
        double margin = (1 - p) * first - p * second;
        if (Math.abs(margin) > 1e-9) {
          assertThat(order.get(0)).isEqualTo(margin < 0 ? 0 : 1);
        }
      }
    }
  }

  /**
   * Quinlan's fourteen days of weather (Induction of Decision Trees, Machine Learning 1, 1986):
   * entropy 0.940, gains 0.246, 0.029, 0.151 and 0.048 bits.
   */
  @Test
  void theGainsOfTheWeatherTableAreThoseThatArePublished() {
    double[] yes = {9 / 14.0, 5 / 14.0};
    assertThat(Information.entropy(yes)).isCloseTo(0.940, within(5e-4));
    assertThat(gain(new int[][] {{2, 3}, {4, 0}, {3, 2}})).isCloseTo(0.246, within(1e-3));
    assertThat(gain(new int[][] {{2, 2}, {4, 2}, {3, 1}})).isCloseTo(0.029, within(1e-3));
    assertThat(gain(new int[][] {{3, 4}, {6, 1}})).isCloseTo(0.151, within(1e-3));
    assertThat(gain(new int[][] {{6, 2}, {3, 3}})).isCloseTo(0.048, within(1e-3));
  }

  /** Gain by a column of a table with counts of yes and no for each of its values. */
  private static double gain(int[][] counts) {
    double[] before = {9 / 14.0, 5 / 14.0};
    double[][] outcomes = new double[counts.length][];
    for (int i = 0; i < counts.length; i++) {
      outcomes[i] = new double[] {counts[i][0] / 9.0, counts[i][1] / 5.0};
    }
    return Information.gain(before, outcomes);
  }

  /**
   * Twelve balls, one odd, heavy or light (MacKay, Information Theory, Inference, and Learning
   * Algorithms, 2003, exercise 4.1): 4 against 4 gains log2 3, 6 against 6 one bit.
   */
  @Test
  void weighingFourAgainstFourTellsMost() {
    assertThat(weighing(6)).isCloseTo(1, within(1e-12));
    assertThat(weighing(5)).isCloseTo(1.483356, within(1e-6));
    assertThat(weighing(4)).isCloseTo(Math.log(3) / Math.log(2), within(1e-12));
    assertThat(weighing(3)).isCloseTo(1.5, within(1e-12));
  }

  private static double weighing(int each) {
    double[] before = new double[24];
    double[][] outcomes = new double[3][24];
    for (int i = 0; i < 24; i++) {
      before[i] = 1 / 24.0;
      int ball = i / 2;
      boolean heavy = i % 2 == 0;
      int pan = ball < each ? 0 : ball < 2 * each ? 1 : 2;
      int falls = pan == 2 ? 2 : heavy == (pan == 0) ? 0 : 1;
      outcomes[falls][i] = 1;
    }
    return Information.gain(before, outcomes);
  }

  /** Bayes' rule and expected information, recomputed from their formulas. */
  @Test
  void chancesAfterAnOutcomeFollowBayesRule() {
    double[] before = {0.5, 0.3, 0.2};
    double[] positive = {0.9, 0.2, 0.1};
    double[] negative = {0.1, 0.8, 0.9};

    assertThat(Information.chance(before, positive)).isCloseTo(0.53, within(1e-12));
    assertThat(Information.after(before, positive))
        .containsExactly(new double[] {0.45 / 0.53, 0.06 / 0.53, 0.02 / 0.53}, within(1e-12));
    assertThat(Information.after(before, negative))
        .containsExactly(new double[] {0.05 / 0.47, 0.24 / 0.47, 0.18 / 0.47}, within(1e-12));
    assertThat(Information.entropy(before)).isCloseTo(1.485475, within(1e-6));
    assertThat(Information.gain(before, new double[][] {positive, negative}))
        .isCloseTo(0.452526, within(1e-6));
  }

  private static List<List<Integer>> orders(List<Integer> left) {
    if (left.isEmpty()) {
      return List.of(List.of());
    }
    List<List<Integer>> all = new ArrayList<>();
    for (Integer first : left) {
      List<Integer> rest = new ArrayList<>(left);
      rest.remove(first);
      for (List<Integer> order : orders(rest)) {
        List<Integer> whole = new ArrayList<>(List.of(first));
        whole.addAll(order);
        all.add(whole);
      }
    }
    return all;
  }
}

package dev.offtake.measure.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Who knows the plant's laws. */
class InsiderTest {
  private static final int PLANTS = 60;
  private static final Healthy HEALTHY = new Healthy(PLANTS);

  private static final Item NEEDLE = new Item(Item.Kind.DUCT, Side.LEFT);
  private static final Item LAMP = new Item(Item.Kind.LEAK_LIGHT, Side.LEFT);

  private static Sheet told(Item item, String words) {
    Occasion occasion = new Occasion(Stop.IDLE, false, List.of(item));
    return new Sheet(new Schedule(List.of(occasion)), List.of(List.of(words)));
  }

  private static double log(Item item, String words, double shown, double around) {
    Sheet sheet = told(item, words);
    Spread spread = Spread.of(HEALTHY, sheet.schedule());
    return new Glance(sheet, HEALTHY, spread, around).log(new Shown(List.of(new double[] {shown})));
  }

  /** The closed form: a normal density, and four more for a number read five or ten marks off. */
  @Test
  void oneNeedleIsWeighedByTheDensityOfItsGauge() {
    double variance = (0.8 * 0.8 + 0.3 * 0.3) / 3 + 1.0 / 12;
    double sum = 0.98 * normal(20 - 18.6, variance);
    for (int off : new int[] {-10, -5, 5, 10}) {
      sum += 0.005 * normal(20 - off - 18.6, variance);
    }
    assertThat(log(NEEDLE, "20 psig", 18.6 * Shop.PSI, 0)).isCloseTo(Math.log(sum), within(1e-9));
  }

  private static double normal(double off, double variance) {
    return Math.exp(-off * off / (2 * variance)) / Math.sqrt(2 * Math.PI * variance);
  }

  @Test
  void aLampIsToldWrongAsOftenAsEyesTellItWrong() {
    assertThat(log(LAMP, "on", 1, 0.4)).isCloseTo(Math.log(0.985), within(1e-12));
    assertThat(log(LAMP, "off", 1, 0.4)).isCloseTo(Math.log(0.015), within(1e-12));
  }

  @Test
  void theRootOfACovarianceGivesItBack() {
    double[][] a = {{4, 2, 0.4}, {2, 5, 1}, {0.4, 1, 3}};
    double[][] root = Dense.root(a);
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        double sum = 0;
        for (int k = 0; k < 3; k++) {
          sum += root[i][k] * root[j][k];
        }
        assertThat(sum).isCloseTo(a[i][j], within(1e-12));
      }
    }
    assertThat(Dense.under(root, new double[] {root[0][0], root[1][0], root[2][0]}))
        .containsExactly(1, 0, 0);
  }

  /** With three modes that show in different ways the drawn one is told from the others. */
  @Test
  void whatShowsInDifferentWaysIsToldApart() {
    List<ModeLine> modes =
        Stream.of(
                "left leak light lit by a wiring fault",
                "left mid check valve stuck shut",
                "right pack stuck shut")
            .map(InsiderTest::mode)
            .toList();
    Insider insider = new Insider(HEALTHY, modes, 24, 5, share -> {});
    Cases cases = new Cases(PLANTS);
    int right = 0;
    int drawn = 0;
    for (int m = 0; m < modes.size(); m++) {
      for (long number = 0; number < 4; number++) {
        Optional<Case> one = cases.listed(modes.get(m), Bin.PLAIN, 10 * m + number);
        if (one.isPresent()) {
          double[] chances = insider.of(one.get()).chances(0.3, mode -> 1);
          drawn++;
          right += chances[m] > 0.5 ? 1 : 0;
        }
      }
    }
    assertThat(drawn).isGreaterThanOrEqualTo(8);
    assertThat(right).isGreaterThanOrEqualTo(drawn - 1);
  }

  @Test
  void aSoundPlantIsTakenForOne() {
    List<ModeLine> modes = List.of(mode("left mid check valve stuck shut"));
    Insider insider = new Insider(HEALTHY, modes, 40, 6, share -> {});
    Cases cases = new Cases(PLANTS);
    int sound = 0;
    for (long number = 0; number < 8; number++) {
      double[] chances = insider.of(cases.healthy(number)).chances(0.5, mode -> 1);
      assertThat(chances[0] + chances[1]).isCloseTo(1, within(1e-12));
      sound += chances[1] > 0.5 ? 1 : 0;
    }
    assertThat(sound).isGreaterThanOrEqualTo(7);
  }

  private static ModeLine mode(String name) {
    return Lists.modes().stream().filter(m -> m.name().equals(name)).findFirst().orElseThrow();
  }
}

package dev.offtake.measure.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.cause.ReadingsRead;
import dev.offtake.cause.ReadingsReader;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** What is drawn. */
class CasesTest {
  private static final int PLANTS = 60;
  private static final int SOME = 40;

  private final Cases cases = new Cases(PLANTS);

  private List<Case> some() {
    List<Case> all = new ArrayList<>();
    SplittableRandom numbers = new SplittableRandom(11);
    for (int i = 0; i < SOME; i++) {
      all.add(cases.byRate(numbers.nextLong()));
      all.add(cases.healthy(numbers.nextLong()));
      all.add(cases.stranger(numbers.nextLong()));
    }
    return all;
  }

  @Test
  void theSameNumberGivesTheSameCaseWhateverWasDrawnBefore() {
    Case first = cases.byRate(5);
    cases.stranger(6);
    assertThat(cases.byRate(5)).isEqualTo(first);
    assertThat(new Cases(PLANTS).byRate(5)).isEqualTo(first);
    assertThat(cases.byRate(7)).isNotEqualTo(first);
  }

  @Test
  void everyCaseIsAReadingsFileThatIsUnderstood() {
    BleedSystem system =
        SystemReader.read(Path.of("../demo/demo-twin.yaml")).system().orElseThrow();
    List<Case> all = some();
    for (int i = 0; i < SOME; i++) {
      all.add(cases.listed(line("left overheat trip", "false"), i));
    }
    for (Case one : all) {
      ReadingsRead read = ReadingsReader.readText("case.yaml", one.readings(), system);
      assertThat(read.problems()).as(one.readings()).isEmpty();
    }
    assertThat(all).anySatisfy(one -> assertThat(one.readings()).contains("after a trip"));
  }

  @Test
  void hardlyARunFindsNoRest() {
    some();
    assertThat(cases.runs()).isGreaterThanOrEqualTo(3 * SOME);
    assertThat(cases.restless()).isLessThanOrEqualTo(2);
  }

  @Test
  void aRunHasSixToTenReadingsAtTwoPowersAndBreaksNoRule() {
    LongStream.range(0, 500)
        .mapToObj(number -> Schedule.draw(new SplittableRandom(number)))
        .forEach(CasesTest::assertUsual);
  }

  private static void assertUsual(Schedule schedule) {
    int readings = schedule.occasions().stream().mapToInt(o -> o.items().size()).sum();
    assertThat(readings).isBetween(6, 10);
    assertThat(schedule.occasions().stream().map(o -> o.stop().power()).distinct().count())
        .isGreaterThanOrEqualTo(2);
    for (Occasion occasion : schedule.occasions()) {
      Stop stop = occasion.stop();
      // The two lines under "never:" of the demo.
      assertThat(stop.has(Stop.Switch.AUX_ON) && stop.has(Stop.Switch.GROUND_ON)).isFalse();
      assertThat(stop.has(Stop.Switch.WING_HEAT) && stop.power().ground()).isFalse();
      boolean port = occasion.items().stream().anyMatch(i -> i.kind() == Item.Kind.INTERSTAGE);
      assertThat(port && !stop.power().ground()).isFalse();
    }
  }

  @Test
  void aBinHoldsWhatItSays() {
    ModeLine line = line("left mid check valve", "stuck");
    for (Bin bin : List.of(Bin.NEAR, Bin.CLEAR, Bin.PLAIN)) {
      Optional<Case> one = cases.listed(line, bin, 3);
      assertThat(one).as(bin.name()).isPresent();
      assertThat(bin.holds(one.get().shift())).isTrue();
      assertThat(one.get().truth().part()).isEqualTo("left mid check valve");
    }
  }

  private static ModeLine line(String part, String mode) {
    return Lists.modes().stream()
        .filter(l -> l.part().equals(part) && l.mode().equals(mode))
        .findFirst()
        .orElseThrow();
  }

  /**
   * One needle 4 psi off and nothing else read: the distance is 4 psi over the scatter of that
   * needle among healthy plants and of its gauge, by the textbook formula.
   */
  @Test
  void theShiftOfOneReadingIsInSigmas() {
    Healthy healthy = new Healthy(PLANTS);
    Item needle = new Item(Item.Kind.DUCT, Side.LEFT);
    Schedule one = new Schedule(List.of(new Occasion(Stop.IDLE, false, List.of(needle))));
    double[] psi =
        healthy.at(Stop.IDLE).stream()
            .flatMap(Optional::stream)
            .mapToDouble(state -> state.left().duct() / Shop.PSI)
            .toArray();
    double mean = java.util.Arrays.stream(psi).average().orElseThrow();
    double scatter =
        java.util.Arrays.stream(psi).map(p -> (p - mean) * (p - mean)).sum() / (psi.length - 1);
    double gauge = (0.8 * 0.8 + 0.3 * 0.3) / 3 + 1.0 / 12;
    double shift = Spread.of(healthy, one).between(shown(20 * Shop.PSI), shown(24 * Shop.PSI));
    assertThat(shift).isCloseTo(4 / Math.sqrt(scatter + gauge), within(1e-9));
  }

  /** A crew's "low" tells no more of 30 psi than of 4, and nothing of 2. */
  @Test
  void aWordCountsLikeALight() {
    Item needle = new Item(Item.Kind.DUCT, Side.LEFT);
    Schedule said = new Schedule(List.of(new Occasion(Stop.IDLE, true, List.of(needle))));
    Spread spread = Spread.of(new Healthy(PLANTS), said);
    double word = Math.sqrt(2 * Math.log(0.85 / 0.15));
    Shown usual = shown(30 * Shop.PSI);
    assertThat(spread.between(usual, shown(26 * Shop.PSI))).isEqualTo(word);
    assertThat(spread.between(usual, shown(1 * Shop.PSI))).isEqualTo(word);
    assertThat(spread.between(usual, shown(28 * Shop.PSI))).isZero();
  }

  private static Shown shown(double value) {
    return new Shown(List.of(new double[] {value}));
  }

  @Test
  void healthyPlantsScatterByPsiAndNotByTens() {
    Healthy healthy = new Healthy(PLANTS);
    double usual = healthy.usual(Stop.TAKE_OFF).left().duct();
    assertThat(healthy.at(Stop.TAKE_OFF))
        .allSatisfy(
            state ->
                assertThat(state.orElseThrow().left().duct())
                    .isCloseTo(usual, within(7 * Shop.PSI)));
    assertThat(healthy.at(Stop.TAKE_OFF).stream().map(s -> s.orElseThrow().left().duct()))
        .doesNotHaveDuplicates();
    assertThat(healthy.at(Stop.TAKE_OFF)).noneMatch(state -> state.orElseThrow().left().tripped());
  }
}

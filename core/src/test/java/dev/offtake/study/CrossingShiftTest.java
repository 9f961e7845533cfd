package dev.offtake.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.explain.Question;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Quantity;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Solution;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Shifts of changeovers by slopes against those that are found by solving with each number at the
 * end of its band, on the demo at ground idle. The two may differ by what a straight line leaves
 * out over a whole band: a tenth of a percent of core speed, a tenth of what is printed.
 */
class CrossingShiftTest {
  private static final double STRAIGHT = 0.001;
  private static final double SOLVED_EXACT = 2e-5;

  private static BleedSystem system;

  @BeforeAll
  static void read() {
    system = SystemReader.read(Path.of("../demo/demo-twin.yaml")).system().orElseThrow();
  }

  private static Course course() throws Exception {
    Question question = Question.of(system, "ground idle", "", "", List.of());
    return new Course(new Settler(system.network()), question.setup(), question.fanLine());
  }

  private static void compare(
      Course course, Predicate<Solution> happened, double core, Shifts slopes) {
    double most = 0;
    for (Band band : Crossing.bands(course, core)) {
      Course other = course.with(band.number(), band.value() + band.end());
      double solved = Crossing.shift(other::at, happened, core, SOLVED_EXACT);
      assertThat(slopes.of(band)).as(band.toString()).isCloseTo(solved, within(STRAIGHT));
      most = Math.max(most, Math.abs(solved));
    }
    assertThat(most).as("some band moves it").isGreaterThan(5 * STRAIGHT);
  }

  @Test
  void aHandoverMovesAsSolvingSays() throws Exception {
    Course course = course();
    List<String> left = List.of("left mid tap", "left high tap");
    double core = Handover.find(course, List.of(left), 1.05).get(0).core();
    int mid = system.network().part("left mid tap");
    int high = system.network().part("left high tap");
    Quantity ahead = Quantity.flow(mid, 0).minus(Quantity.flow(high, 0));
    Shifts slopes = ReadingShifts.of(course, ahead, core).orElseThrow();
    compare(course, s -> s.flow(mid, 0) > s.flow(high, 0), core, slopes);
  }

  @Test
  void aChangeMovesAsSolvingSays() throws Exception {
    Course course = course();
    int valve = system.network().part("right high stage valve");
    Predicate<Solution> regulates = s -> s.doing(valve, Style.SHOP).regime().equals("regulating");
    Crossing.Between between = Crossing.bisect(course, regulates, 0.63, 0.64);
    Shifts slopes = PictureShifts.of(course, regulates, valve, between.before()).orElseThrow();
    double core = between.middle();
    compare(course, regulates, core, slopes);
  }
}

package dev.offtake.solve;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.explain.CurveAnswer;
import dev.offtake.explain.Question;
import dev.offtake.network.Demos;
import dev.offtake.quantity.Style;
import dev.offtake.study.Curve;
import dev.offtake.system.BleedSystem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.LongFunction;
import org.junit.jupiter.api.Test;

/**
 * Questions drawn at random on the demo twin: every one is balanced or refused, few are refused,
 * none throws.
 *
 * <p>The build asks a tenth of them; {@code -Dofftake.draws=20000} asks all (own case, no outside
 * source).
 */
class DrawsTest {
  private static final int ANYTHING = Integer.getInteger("offtake.draws", 2000);
  private static final BleedSystem TWIN = Demos.demo("twin");

  @Test
  void anythingIsBalancedOrRefused() {
    List<Long> refused = refused(ANYTHING, number -> Draw.anything(TWIN, number));
    assertThat(refused).hasSizeLessThanOrEqualTo(ANYTHING / 200);
  }

  @Test
  void soIsWhatLiesWithinAThousandthOfAChange() throws Exception {
    Question question = Question.of(TWIN, "", "", "", List.of());
    CurveAnswer.Request request = new CurveAnswer.Request("core=56..99", 0, "");
    Curve curve = CurveAnswer.of(question, request, Style.SHOP, share -> {}).curve();
    List<Double> speeds = curve.events().stream().map(Curve.Event::x).toList();
    assertThat(speeds).hasSizeGreaterThan(10);
    int draws = ANYTHING / 10;
    List<Long> refused = refused(draws, number -> Draw.near(TWIN, number, speeds));
    assertThat(refused).hasSizeLessThanOrEqualTo(draws / 200);
  }

  @Test
  void soIsWhatIsShutOrNearlyStill() {
    int draws = ANYTHING / 10;
    List<Long> refused = refused(draws, number -> Draw.still(TWIN, number));
    assertThat(refused).hasSizeLessThanOrEqualTo(draws / 200);
  }

  /**
   * Draws that are known to resist, kept with what is known of them. One that is answered has to
   * leave the list, so that the list stays true.
   */
  @Test
  void theHardCasesStillResist() throws IOException {
    try (InputStream in =
        Objects.requireNonNull(DrawsTest.class.getResourceAsStream("hard/cases.csv"))) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      List<String> rows = text.lines().filter(row -> !row.startsWith("#")).skip(1).toList();
      assertThat(rows).isNotEmpty();
      for (String row : rows) {
        long number = Long.parseLong(row.substring(0, row.indexOf(',')));
        assertThat(cold(new Settler(TWIN.network()), Draw.anything(TWIN, number)))
            .as("draw " + number)
            .isFalse();
      }
    }
  }

  private static List<Long> refused(int draws, LongFunction<Setup> draw) {
    Settler settler = new Settler(TWIN.network());
    List<Long> refused = new ArrayList<>();
    for (long number = 0; number < draws; number++) {
      if (!cold(settler, draw.apply(number))) {
        refused.add(number);
      }
    }
    System.out.printf("%d draws, refused: %s%n", draws, refused);
    return refused;
  }

  /** Whether there is an answer from a start that knows no other. */
  private static boolean cold(Settler settler, Setup setup) {
    settler.forget();
    Solution solution = settler.solve(setup);
    return solution.outcome().way() != SteadySolver.Way.NOT_SOLVED
        || !solution.outcome().cycle().isEmpty();
  }
}

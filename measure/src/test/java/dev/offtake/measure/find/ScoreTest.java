package dev.offtake.measure.find;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A short run of the score with seeds fixed beforehand; the long run is {@code measure/run}. */
class ScoreTest {
  private final List<String> lines = new ArrayList<>();
  private final Score score = new Score(Path.of("..", "demo", "demo-twin.yaml"), lines::add);

  @Test
  void mostPlainFailuresAreInTheFirstGroup() {
    assertThat(score.ranking(5, 20_261_126)).as(String.join("\n", lines)).isGreaterThan(0.3);
  }

  @Test
  void healthyPlantsAreSeldomCalledBroken() {
    assertThat(score.healthy(5, 20_261_127)).as(String.join("\n", lines)).isLessThan(0.25);
  }

  /** The aim is 0.6; the long run is {@code measure/repairs}. */
  @Test
  void checksShortenRepairs() {
    Repairs repairs = new Repairs(Path.of("..", "demo", "demo-twin.yaml"), lines::add);
    assertThat(repairs.mend(4, 20_261_127)).as(String.join("\n", lines)).isLessThan(0.6);
  }
}

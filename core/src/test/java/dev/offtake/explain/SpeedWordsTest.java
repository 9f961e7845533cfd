package dev.offtake.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.quantity.QuantityProblem;
import dev.offtake.study.Sweep;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** N2 is the core's speed; what a curve may run over is any number of any part. */
class SpeedWordsTest {
  private static final BleedSystem TWIN =
      SystemReader.read(Path.of("../demo/demo-twin.yaml")).system().orElseThrow();

  private static Question at(String power) throws QuantityProblem {
    return Question.of(TWIN, power, "", "", List.of());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "N2 85 %",
        "n2=85 %",
        "core 85 %",
        "core speed: 85 %",
        "85 %",
        "core=85",
        "N2 85.0"
      })
  void n2IsTheCore(String power) throws QuantityProblem {
    assertThat(at(power).setup().conditions().core()).isCloseTo(0.85, within(1e-12));
  }

  /** A bare number may be a share or a percentage: what is meant is asked back. */
  @ParameterizedTest
  @CsvSource({"85, say 85 %", "0.85, say 85 %", "core 0.85, say 85 %", "core=1, say 1 % or 100 %"})
  void aBareShareIsAskedBack(String power, String mend) {
    assertThatThrownBy(() -> at(power))
        .isInstanceOfSatisfying(
            QuantityProblem.class, problem -> assertThat(problem.mend()).isEqualTo(mend));
  }

  @ParameterizedTest
  @ValueSource(strings = {"N1 85 %", "fan 85 %"})
  void n1AloneIsAskedBack(String power) {
    assertThatThrownBy(() -> at(power)).hasMessageContaining("fan speed (N1)");
    assertThatThrownBy(() -> Over.read(at(""), "N1=40..90", 0)).hasMessageContaining("(N1)");
  }

  @ParameterizedTest
  @CsvSource({
    "N2=60..95, 0.6, 0.95",
    "isolation valve stuck at=0..1, 0, 1",
    "isolation valve opening=0..100, 0, 1",
    "isolation valve stuck at=20..80 %, 0.2, 0.8",
    "left bleed regulator droop=1..6 psi, 6894.757, 41368.54",
    "duct gauge bias=-2..2 psi, -13789.51, 13789.51"
  })
  void anyNumberOfAnyPartMayMove(String over, double from, double to) throws QuantityProblem {
    Sweep sweep = Over.read(at(""), over, 0);
    assertThat(sweep.from()).isCloseTo(from, within(0.01));
    assertThat(sweep.to()).isCloseTo(to, within(0.01));
  }

  @Test
  void everyParameterIsAcceptedByItsFullName() throws QuantityProblem {
    Question question = at("");
    for (var part : TWIN.parts()) {
      for (var p : part.parameters()) {
        String asked = part.name() + " " + p.name();
        // Without a range it is asked for one, which only a known name is.
        assertThatThrownBy(() -> Over.read(question, asked, 0))
            .as(asked)
            .hasMessageContaining("nothing says from where to where");
      }
    }
  }
}

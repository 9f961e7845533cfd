package dev.offtake.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.flow.NozzleLaw;
import dev.offtake.network.Network;
import dev.offtake.network.Passage;
import dev.offtake.network.PointSpec;
import dev.offtake.part.Part;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Two vessels that fill and empty, choked and not, with a stream that turns round, against SciPy's
 * Radau.
 *
 * <p>Source: own case; {@code transient_network.py} beside the table is written from the published
 * formulas and shares nothing with Offtake. Its first lines hold the command that made the table.
 */
class TransientCheckTest {
  private static final double SAME = 1e-6;

  private static Vessels vessels() {
    List<Part> parts =
        List.of(
            Passage.between("in", "a", "a", 3e-4, NozzleLaw::new).fromReservoir(6e5, 620),
            Passage.between("between", "a", "b", 2e-4, NozzleLaw::new),
            Passage.between("out", "b", "ambient", 2.5e-4, NozzleLaw::new),
            Passage.between("hole", "a", "ambient", 3e-5, NozzleLaw::new));
    List<PointSpec> points = List.of(new PointSpec("a", 40, 0.02), new PointSpec("b", 5, 0.05));
    return new Vessels(new Network(points, parts)).with("a", 1.2e5, 300).with("b", 3.5e5, 350);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/dev/offtake/checks/transient-network.csv", numLinesToSkip = 1)
  void sciPyFindsTheSame(double seconds, double pA, double tA, double pB, double tB) {
    Vessels vessels = vessels();
    vessels.run(0, seconds, 1e-8);
    assertThat(vessels.p("a")).isCloseTo(pA, within(SAME * pA));
    assertThat(vessels.t("a")).isCloseTo(tA, within(SAME * tA));
    assertThat(vessels.p("b")).isCloseTo(pB, within(SAME * pB));
    assertThat(vessels.t("b")).isCloseTo(tB, within(SAME * tB));
  }

  /** A tolerance is that of one step: over all of them it errs by a few times as much. */
  @ParameterizedTest
  @CsvFileSource(resources = "/dev/offtake/checks/transient-network.csv", numLinesToSkip = 1)
  void atTheUsualToleranceTheSameToAHundredth(
      double seconds, double pA, double tA, double pB, double tB) {
    Vessels vessels = vessels();
    vessels.run(0, seconds, Settings.USUAL_TOLERANCE);
    assertThat(vessels.p("a")).isCloseTo(pA, within(1e-2 * pA));
    assertThat(vessels.t("a")).isCloseTo(tA, within(1e-2 * tA));
    assertThat(vessels.p("b")).isCloseTo(pB, within(1e-2 * pB));
    assertThat(vessels.t("b")).isCloseTo(tB, within(1e-2 * tB));
  }
}

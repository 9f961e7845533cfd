package dev.offtake.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.flow.NozzleLaw;
import dev.offtake.network.Network;
import dev.offtake.network.Passage;
import dev.offtake.network.PointSpec;
import dev.offtake.part.Part;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** In a closed system neither air nor energy is lost: first law, own cases. */
class ConservationCheckTest {
  private static final double SHARE = 1e-8;

  private static Network tanks() {
    List<Part> parts =
        List.of(
            Passage.between("one", "a", "b", 1e-4, NozzleLaw::new),
            Passage.between("two", "b", "c", 3e-4, NozzleLaw::new),
            Passage.between("three", "c", "a", 5e-5, NozzleLaw::new));
    List<PointSpec> points = new ArrayList<>();
    for (PointSpec point : Network.of(parts).points()) {
      points.add(new PointSpec(point.name(), 0, 0.02));
    }
    return new Network(points, parts);
  }

  @Test
  void nothingIsLostAtTheUsualTolerance() {
    Vessels vessels =
        new Vessels(tanks()).with("a", 8e5, 500).with("b", 2e5, 300).with("c", 1e5, 260);
    double mass = vessels.sum(0);
    double energy = vessels.sum(1);
    double before = vessels.mass("a");
    int steps = vessels.run(0, 20, Settings.USUAL_TOLERANCE);
    double passed = Math.abs(vessels.mass("a") - before);
    double heat = passed * 3e5;
    assertThat(passed).isGreaterThan(0.02);
    assertThat(vessels.sum(0)).isCloseTo(mass, within(SHARE * passed));
    assertThat(vessels.sum(1)).isCloseTo(energy, within(SHARE * heat));
    assertThat(steps).isLessThan(400);
  }

  /** In the end all pressures are equal, and the energy is what it was. */
  @Test
  void comesToRest() {
    Vessels vessels =
        new Vessels(tanks()).with("a", 8e5, 500).with("b", 2e5, 300).with("c", 1e5, 260);
    vessels.run(0, 1e3, 1e-4);
    double p = vessels.p("a");
    assertThat(vessels.p("b")).isCloseTo(p, within(1e-6 * p));
    assertThat(vessels.p("c")).isCloseTo(p, within(1e-6 * p));
  }
}

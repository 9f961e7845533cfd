package dev.offtake.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.flow.NozzleLaw;
import dev.offtake.network.Demos;
import dev.offtake.network.Network;
import dev.offtake.network.Passage;
import dev.offtake.network.PointSpec;
import dev.offtake.part.Part;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

  private static final String CLOSED =
      """
      switches:
        load switch: [OFF, ON]
      parts:
        pipe: {kind: duct, path: a -> b, bore: 4 in, length: 120 in}
        user:
          kind: flow user
          takes from: b
          takes: 60 lb/min when load switch is ON
          needs: 12 psig
      points:
        a: {volume: 10 l, wall: 0.3 W/K}
        b: {volume: 12 l, wall: 0.5 W/K}
      """;

  /**
   * Two vessels that a wide pipe joins and that nothing leaves, one hot and one cold, keep their
   * air for an hour, however long the steps are, while they cool.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.5, 2, 10, 60, 600, 3600})
  void stillAirStaysAtAnyStep(double longest) {
    Network network = Demos.text(CLOSED).network();
    Vessels vessels = new Vessels(network).with("a", 1.02e5, 360).with("b", 1.02e5, 286);
    double mass = vessels.sum(0);
    int steps = vessels.run(3600, longest);
    assertThat(steps).isLessThan((int) (3600 / longest + 200));
    assertThat(vessels.sum(0)).isCloseTo(mass, within(1e-8 * mass));
    assertThat(vessels.p("a")).isCloseTo(vessels.p("b"), within(10.0));
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

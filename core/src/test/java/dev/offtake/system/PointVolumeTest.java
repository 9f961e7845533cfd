package dev.offtake.system;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.network.Demos;
import dev.offtake.network.Network;
import dev.offtake.network.PointSpec;
import org.junit.jupiter.api.Test;

/** Where nobody gives the volume of a point, it follows from the ducts that end there. */
class PointVolumeTest {
  private static final double INCH = 0.0254;

  private static final Network NETWORK =
      Demos.text(
              """
              power settings:
                idle: {core: 62 %, fan: 24 %}
              parts:
                supply: {kind: supply, to: start, temperature: 300 degF, table: {columns: [psig, lb/min], rows: [[40, 0], [35, 100]]}}
                first duct: {kind: duct, path: start -> middle, bore: 3 in, length: 10 ft}
                second duct: {kind: duct, path: middle -> told, bore: 2 in, length: 4 ft}
                third duct: {kind: duct, path: told -> end, bore: 2 in, length: 4 ft}
                user: {kind: flow user, takes from: end, takes: 20 lb/min, needs: 5 psig}
              points:
                told: {volume: 7 l}
              """)
          .network();

  private static double volume(String point) {
    return NETWORK.points().get(NETWORK.point(point)).volume();
  }

  private static double cylinder(double boreInches, double lengthFeet) {
    return Math.PI / 4 * Math.pow(boreInches * INCH, 2) * lengthFeet * 12 * INCH;
  }

  @Test
  void halfOfEachDuctIsAtEitherEnd() {
    assertThat(volume("start")).isCloseTo(cylinder(3, 10) / 2, within(1e-12));
    assertThat(volume("middle")).isCloseTo((cylinder(3, 10) + cylinder(2, 4)) / 2, within(1e-12));
    assertThat(volume("end")).isCloseTo(cylinder(2, 4) / 2, within(1e-12));
  }

  @Test
  void whatIsToldCounts() {
    assertThat(volume("told")).isCloseTo(0.007, within(1e-12));
  }

  @Test
  void withoutDuctsItIsAsUsual() {
    Network twin = Demos.demo("twin").network();

    assertThat(twin.points().get(twin.point("left duct")).volume())
        .isEqualTo(PointSpec.USUAL_VOLUME);
  }
}

package dev.offtake.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.network.Demos;
import dev.offtake.network.Network;
import dev.offtake.part.Conditions;
import dev.offtake.solve.Setup;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A flapper with inertia before a small volume feeds its own swing. */
class FlutterTest {
  private static final String TEXT =
      """
      parts:
        cart:
          kind: supply
          to: duct
          temperature: 59 degF
          table: {columns: [psig, lb/min], rows: [[41, 0], [40, 100], [5, 101]]}
        flapper:
          kind: check valve
          path: duct -> load
          bore: 3 in
          cracks at: 0.1 psid
          full at: 1.1 psid
        nozzle:
          kind: orifice user
          takes from: load
          bore: 1 in
      points:
        duct: {volume: 2 l}
        load: {volume: 2 l}
      """;

  private static Played play(double hertz) {
    Network network = Demos.text(TEXT).network();
    Setup start = Setup.healthy(Conditions.standardDay(0.8, 0.8));
    Setup then =
        new Setup(
            start.conditions(),
            start.positions(),
            start.locks(),
            Map.of(new Setup.PartNumber("nozzle", "flow area"), 2e-4));
    Settings settings =
        Settings.usual()
            .withPaces(
                part ->
                    part.kind().equals("check valve")
                        ? Pace.usual(part).swinging(hertz, 0.02)
                        : Pace.usual(part));
    Drive drive = Drive.from(start).hold(0.1).jump(then).hold(10);
    return new Transient(network).run(drive, settings, s -> true);
  }

  @Test
  void isToldAndAveraged() {
    Played played = play(60);
    assertThat(played.end()).isEqualTo(Played.End.DONE);
    List<Event> flutters =
        played.events().stream().filter(e -> e.kind() == Event.Kind.FLUTTER).toList();
    assertThat(flutters).hasSize(1);
    assertThat(flutters.get(0).word()).startsWith("flutters at ");
    assertThat(played.cost().steps()).isLessThan(5000);
  }

  /** A flapper that swings freely does so at its own frequency. */
  @Test
  void countsTurns() {
    Swings swings = new Swings(1);
    double hertz = 0;
    for (int k = 0; k < 2000 && hertz == 0; k++) {
      double t = k * 1e-3;
      hertz = swings.look(0, t, 0.5 + 0.2 * Math.sin(2 * Math.PI * 40 * t));
    }
    assertThat(hertz).isCloseTo(40, within(2.0));
    Swings slow = new Swings(1);
    for (int k = 0; k < 5000; k++) {
      double t = k * 1e-3;
      assertThat(slow.look(0, t, 0.5 + 0.2 * Math.sin(2 * Math.PI * 10 * t))).isZero();
    }
  }
}

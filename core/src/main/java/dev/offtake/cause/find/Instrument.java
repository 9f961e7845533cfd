package dev.offtake.cause.find;

import dev.offtake.part.Access;
import dev.offtake.part.Gauge;
import dev.offtake.part.Leg;
import dev.offtake.part.Light;
import dev.offtake.part.Part;
import dev.offtake.part.TestPort;
import dev.offtake.quantity.Dimension;
import dev.offtake.solve.Solution;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleBiFunction;

/**
 * Something that can be read on a check.
 *
 * @param name as a person calls it
 * @param access what it takes to get there
 * @param dimension of what it shows; {@link Dimension#NUMBER} for a light
 * @param deviation of one reading, SI: the constant error of a gauge of the system, which is one of
 *     the unknowns, left out; 0 for a light
 * @param step distance of its marks, SI; 0 for none
 * @param low lowest mark; −∞ for none
 * @param high highest mark; ∞ for none
 */
public record Instrument(
    String name,
    Access access,
    Dimension dimension,
    double deviation,
    double step,
    double low,
    double high) {

  /** Minutes of reading it once one is there (common practice, no source). */
  static final double MINUTES = 5;

  /** A reading of a gauge that the flight deck does not show is taken at a test port. */
  private static final String FLIGHT_DECK = "flight deck";

  /** Whether it is lit or not. */
  public boolean lamp() {
    return dimension == Dimension.NUMBER;
  }

  /** An instrument with what it looks at. */
  record Looked(Instrument instrument, Probe probe) {
    /** How far what it shows may not have settled in some states, SI; 0 for a pressure. */
    double unsettled(List<SceneState> states) {
      return states.stream().mapToDouble(s -> by(s, Settling::error)).max().orElse(0);
    }

    /** How far it is uncertain whatever has failed, SI; 0 for a pressure. */
    double least(SceneState sound) {
      return by(sound, Settling::least);
    }

    private double by(SceneState state, ToDoubleBiFunction<Solution, Integer> error) {
      return probe
          .sense(state)
          .filter(sense -> sense.hot() != Probe.Sense.NONE)
          .map(sense -> sense.weight() * error.applyAsDouble(state.seen(), sense.hot()))
          .orElse(0.0);
    }
  }

  static List<Looked> all(BleedSystem system) {
    List<Looked> all = new ArrayList<>();
    for (Part part : system.parts()) {
      if (part instanceof Gauge gauge) {
        gauge(gauge, all);
      } else if (part instanceof Light light) {
        all.add(lamp(light));
      }
    }
    for (Part part : system.parts()) {
      if (part.kind().equals(TestPort.KIND.name())) {
        port(part, all);
      }
    }
    return all;
  }

  private static void gauge(Gauge gauge, List<Looked> all) {
    Access access = gauge.seen().equals(FLIGHT_DECK) ? Access.FLIGHT_DECK : Access.TEST_PORT;
    for (int i = 0; i < gauge.needles().size(); i++) {
      Instrument instrument =
          new Instrument(
              gauge.needles().get(i).reads().name(),
              access,
              gauge.dimension(),
              gauge.each(),
              gauge.step(),
              gauge.scale().low(),
              gauge.scale().high());
      all.add(new Looked(instrument, new Probe.Needle(gauge, i, true)));
    }
  }

  private static Looked lamp(Light light) {
    return new Looked(
        new Instrument(
            light.name(),
            Access.FLIGHT_DECK,
            Dimension.NUMBER,
            0,
            0,
            Double.NEGATIVE_INFINITY,
            Double.POSITIVE_INFINITY),
        new Probe.Stands(light.name(), "on"));
  }

  private static void port(Part port, List<Looked> all) {
    Leg leg = port.legs().get(0);
    all.add(
        new Looked(
            new Instrument(
                port.name(),
                Access.TEST_PORT,
                Dimension.GAUGE_PRESSURE,
                Unknowns.TEST_GAUGE / Math.sqrt(2),
                0,
                Double.NEGATIVE_INFINITY,
                Double.POSITIVE_INFINITY),
            new Probe.Port(leg.from(), false, false)));
  }
}

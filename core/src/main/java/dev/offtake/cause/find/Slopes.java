package dev.offtake.cause.find;

import dev.offtake.network.Network;
import dev.offtake.part.Conditions;
import dev.offtake.part.Gauge;
import dev.offtake.part.Part;
import dev.offtake.solve.Quantity;
import dev.offtake.solve.Sensitivities;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How what is looked at answers to what nobody knows: a row for each clue, a column for each
 * unknown, in the unit of the clue per standard deviation of the unknown.
 */
final class Slopes {
  private final List<Unknown> unknowns;
  private final List<Clue> clues;
  private final double[][] rows;

  private Slopes(List<Unknown> unknowns, List<Clue> clues) {
    this.unknowns = unknowns;
    this.clues = clues;
    rows = new double[clues.size()][unknowns.size()];
  }

  /**
   * Differentiates.
   *
   * @param unknowns columns
   * @param clues rows
   * @param states solved scenes
   */
  static double[][] of(List<Unknown> unknowns, List<Clue> clues, List<SceneState> states) {
    Slopes slopes = new Slopes(unknowns, clues);
    for (int scene = 0; scene < states.size(); scene++) {
      slopes.scene(scene, states.get(scene));
    }
    return slopes.rows;
  }

  /**
   * Differentiates what is looked at in one scene only.
   *
   * @param scene its number
   * @param state solved
   */
  static double[][] of(List<Unknown> unknowns, List<Clue> clues, int scene, SceneState state) {
    Slopes slopes = new Slopes(unknowns, clues);
    slopes.scene(scene, state);
    return slopes.rows;
  }

  /** A term of a clue in one scene. */
  private record Place(int clue, double weight, Probe.Sense sense, String testGauge) {}

  private void scene(int scene, SceneState state) {
    List<Place> places = new ArrayList<>();
    for (int c = 0; c < clues.size(); c++) {
      for (Clue.Term term : clues.get(c).terms()) {
        Optional<Probe.Sense> sense =
            term.scene() == scene ? term.probe().sense(state) : Optional.empty();
        if (sense.isPresent()) {
          places.add(new Place(c, term.weight(), sense.get(), term.testGauge()));
        }
      }
    }
    if (places.isEmpty()) {
      return;
    }
    List<Quantity> quantities = places.stream().map(place -> place.sense().quantity()).toList();
    // What stands on its way has no slopes of a state at rest: see RunSlopes.
    Optional<Sensitivities.Gradients> gradients =
        state.moving()
            ? Optional.empty()
            : Sensitivities.at(state.seen()).map(at -> at.of(quantities));
    for (int u = 0; u < unknowns.size(); u++) {
      column(u, scene, state, places, gradients.orElse(null));
    }
  }

  private void column(
      int u,
      int scene,
      SceneState state,
      List<Place> places,
      Sensitivities.@Nullable Gradients gradients) {
    Unknown unknown = unknowns.get(u);
    if (unknown instanceof Unknown.TestGauge gauge) {
      for (Place place : places) {
        boolean own = place.testGauge().equals(gauge.name());
        rows[place.clue()][u] += own ? place.weight() * gauge.sigma() : 0;
      }
    } else if (unknown instanceof Unknown.Unsettled here && here.scene() == scene) {
      unsettled(u, here, state, places);
    } else if (unknown instanceof Unknown.OfPart number) {
      number(u, number, state.seen().network(), places, gradients);
    } else if (unknown instanceof Unknown.Outside outside
        && outside.felt(scene)
        && !state.moving()) {
      outside(u, outside, state.seen().conditions(), places, gradients);
    }
  }

  private void unsettled(int u, Unknown.Unsettled here, SceneState state, List<Place> places) {
    double error = Math.max(here.least(), Settling.error(state.seen(), here.point()));
    for (Place place : places) {
      boolean own = place.sense().hot() == here.point();
      rows[place.clue()][u] += own ? place.weight() * place.sense().weight() * error : 0;
    }
  }

  private void number(
      int u,
      Unknown.OfPart number,
      Network network,
      List<Place> places,
      Sensitivities.@Nullable Gradients gradients) {
    int part = network.part(number.number().part());
    int which = part < 0 ? -1 : which(network.parts().get(part), number.number().parameter());
    if (which < 0) {
      return;
    }
    boolean gauge = network.parts().get(part) instanceof Gauge && which == 0;
    double[] by =
        gauge || gradients == null ? new double[places.size()] : gradients.byNumber(part, which);
    for (int i = 0; i < by.length; i++) {
      Place place = places.get(i);
      boolean own = place.sense().gauge().equals(number.number().part());
      boolean shares = own || shares(place.testGauge(), number.number().part());
      double slope = gauge && shares ? 1 : by[i] * place.sense().weight();
      rows[place.clue()][u] += place.weight() * slope * number.sigma();
    }
  }

  /** Whether a test gauge sits on the sender of a gauge of the system. */
  private boolean shares(String testGauge, String gauge) {
    return unknowns.stream()
        .anyMatch(
            other ->
                other instanceof Unknown.TestGauge test
                    && test.name().equals(testGauge)
                    && test.sender().equals(gauge));
  }

  private static int which(Part part, String parameter) {
    for (int i = 0; i < part.parameters().size(); i++) {
      if (part.parameters().get(i).name().equals(parameter)) {
        return i;
      }
    }
    return -1;
  }

  private void outside(
      int u,
      Unknown.Outside outside,
      Conditions here,
      List<Place> places,
      Sensitivities.@Nullable Gradients gradients) {
    Conditions there = outside.away(here, 1);
    double[] moved = gradients == null ? new double[places.size()] : gradients.toward(there);
    for (int i = 0; i < moved.length; i++) {
      Place place = places.get(i);
      double change =
          place.sense().weight() * moved[i]
              + place.sense().ambient() * (there.ambientP() - here.ambientP());
      rows[place.clue()][u] += place.weight() * change;
    }
  }
}

package dev.offtake.cause.find;

import dev.offtake.cause.Reading;
import java.util.List;
import java.util.Optional;

/**
 * A reading made ready to be compared with a forecast.
 *
 * @param occasion number of the occasion it was made on
 * @param reading as it was made; empty for what the occasion itself says, such as a trip
 * @param terms what is looked at; the value is their weighted sum
 * @param likelihood how well a value agrees with what was read
 */
record Clue(int occasion, Optional<Reading> reading, List<Term> terms, Likelihood likelihood) {
  Clue {
    terms = List.copyOf(terms);
  }

  /**
   * Something that is looked at.
   *
   * @param scene number of the scene
   * @param probe what
   * @param weight in the value of the clue
   * @param testGauge test gauge with which; empty for none
   */
  record Term(int scene, Probe probe, double weight, String testGauge) {}

  boolean measured() {
    return likelihood instanceof Likelihood.Measured;
  }

  double value(List<SceneState> states) {
    double sum = 0;
    for (Term term : terms) {
      sum += term.weight() * term.probe().of(states.get(term.scene()));
    }
    return sum;
  }
}

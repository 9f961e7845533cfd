package dev.offtake.cause.find;

import dev.offtake.part.Conditions;
import dev.offtake.solve.Setup;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * Moves what is asked by what nobody knows exactly.
 *
 * @param unknowns what is moved; test gauges move no question
 */
record Moving(List<Unknown> unknowns) {

  /**
   * How the question of each scene changes.
   *
   * @param scenes how many
   * @param theta of each unknown, in its standard deviations
   */
  List<UnaryOperator<Setup>> of(int scenes, double[] theta) {
    List<UnaryOperator<Setup>> moved = new ArrayList<>();
    for (int scene = 0; scene < scenes; scene++) {
      int number = scene;
      moved.add(setup -> moved(setup, number, theta));
    }
    return moved;
  }

  /** The value of a number of a part, within what is possible. */
  static double value(Unknown.OfPart number, double theta) {
    double value = number.value() + number.sigma() * theta;
    return Math.max(number.low(), Math.min(number.high(), value));
  }

  private Setup moved(Setup setup, int scene, double[] theta) {
    Map<Setup.PartNumber, Double> changed = new LinkedHashMap<>(setup.changed());
    Conditions conditions = setup.conditions();
    for (int u = 0; u < theta.length; u++) {
      Unknown unknown = unknowns.get(u);
      if (unknown instanceof Unknown.OfPart own) {
        changed.put(own.number(), value(own, theta[u]));
      } else if (unknown instanceof Unknown.Outside outside && outside.felt(scene)) {
        conditions = outside.away(conditions, theta[u]);
      }
    }
    return new Setup(conditions, setup.positions(), setup.locks(), changed);
  }
}

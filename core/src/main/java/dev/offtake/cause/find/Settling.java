package dev.offtake.cause.find;

import dev.offtake.network.Network;
import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import dev.offtake.solve.Solution;
import java.util.List;

/**
 * How far the temperature of air that hardly moves may be from where it would come to rest: the
 * walls give their warmth away in minutes, longer than most people wait (an assumption). Where air
 * flows it is soon carried along.
 */
final class Settling {
  /** Standard deviation where nothing flows, K (90 °F): an assumption. */
  private static final double STILL = 50;

  /** Air that settles a point's temperature, kg/s (2 lb/min): an assumption. */
  private static final double SETTLES = 2 * 0.45359237 / 60;

  private Settling() {}

  /** The standard deviation at an inner point of a solved state, K. */
  static double error(Solution state, int point) {
    double flow = through(state, point) / SETTLES;
    return STILL / (1 + flow * flow);
  }

  /** Air that passes a point, kg/s. */
  private static double through(Solution state, int point) {
    Network network = state.network();
    double sum = 0;
    for (int i = 0; i < network.parts().size(); i++) {
      Part part = network.parts().get(i);
      List<Leg> legs = part.legs();
      for (int k = 0; k < legs.size(); k++) {
        boolean touches =
            network.point(legs.get(k).from()) == point || network.point(legs.get(k).to()) == point;
        sum += touches ? Math.abs(state.flow(i, k)) : 0;
      }
    }
    return sum / 2;
  }
}

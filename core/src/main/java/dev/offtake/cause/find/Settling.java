package dev.offtake.cause.find;

import dev.offtake.network.Network;
import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import dev.offtake.solve.Solution;
import java.util.List;

/**
 * How far the temperature of air that hardly moves may be from what is foretold: the walls give
 * their warmth away in minutes, longer than most people wait. Where air flows it is soon carried
 * along.
 *
 * <p>A duct that is under pressure and shut at its end stands anywhere between the day's air and
 * the hot air at its beginning, by what little seeps through joints that nobody lists. Such a
 * temperature tells nothing, of no failure: one that would bring hot air there does what an
 * unlisted joint does.
 */
final class Settling {
  /** Standard deviation where nothing flows and nothing presses, K (90 °F): an assumption. */
  private static final double STILL = 50;

  /** Standard deviation in a shut duct, K (900 °F): more than any duct is hot. */
  private static final double SHUT = 500;

  /** A duct is under pressure from here, Pa (1 psi above the air outside): an assumption. */
  private static final double PRESSED = 6894.757;

  /** Air that settles a point's temperature, kg/s (2 lb/min): an assumption. */
  private static final double SETTLES = 2 * 0.45359237 / 60;

  private Settling() {}

  /** The standard deviation at an inner point of a solved state, K. */
  static double error(Solution state, int point) {
    double flow = through(state, point) / SETTLES;
    double square = flow * flow;
    return pressed(state, point) ? SHUT / (1 + square * square) : STILL / (1 + square);
  }

  /**
   * The standard deviation whatever has failed, K: 0 but where a duct is shut in a sound system.
   */
  static double least(Solution sound, int point) {
    return pressed(sound, point) ? error(sound, point) : 0;
  }

  private static boolean pressed(Solution state, int point) {
    return state.pressure(point) - state.conditions().ambientP() > PRESSED;
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

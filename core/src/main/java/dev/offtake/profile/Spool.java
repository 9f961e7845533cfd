package dev.offtake.profile;

import dev.offtake.network.Network;
import dev.offtake.part.Part;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * How a starter turns an engine up to idle.
 *
 * <p>The torque of the starter less the drag of the engine speeds the core up: J dω/dt = T − D
 * (Newton). The drag of the cold engine grows with the square of speed; after light-off the
 * engine's own torque grows with speed so that it carries itself at the self-sustaining speed. Both
 * shapes are assumptions. Ducts fill in tenths of a second and a start takes tens of seconds, so
 * that the starter's torque is that of the steady state at each speed.
 */
final class Spool {
  /** Speed at which the drag is stated, a fraction. */
  private static final double STATED = 0.25;

  /** A start that gains less than this in a second hangs, a fraction of full speed. */
  private static final double HANGS = 5e-4;

  private static final double STEP = 0.25;
  private static final String STARTER = "starter";

  private final Inputs inputs;
  private final Network network;
  private final Settler settler;
  private final DoubleUnaryOperator fan;

  /** How a start went. */
  enum End {
    /** It came to idle. */
    IDLE,
    /** It stayed below. */
    HUNG,
    /** Something else began, or the profile ended, before it came to idle. */
    CUT_SHORT
  }

  /**
   * A start.
   *
   * @param knots core and fan from its beginning on
   * @param lit when it lit, s; NaN if it did not
   * @param cutOut when the starter let go, s; NaN if it did not
   * @param end how it went
   */
  record Run(List<CoreLine.Knot> knots, double lit, double cutOut, End end) {}

  /** What a start is asked to do. */
  interface Asked {
    /** The question at a time and speed, while the starter turns. */
    Setup at(double time, double core, double fan);
  }

  /**
   * Prepares.
   *
   * @param fan fan speed that belongs to a core speed
   */
  Spool(Inputs inputs, Network network, DoubleUnaryOperator fan) {
    this.inputs = inputs;
    this.network = network;
    this.fan = fan;
    settler = new Settler(network);
  }

  /**
   * Turns the engine up.
   *
   * @param from when it begins, s
   * @param until when it must end, s
   * @param to idle core speed, a fraction
   * @param core speed from which it begins, a fraction
   */
  Run run(double from, double until, double to, double core, Asked asked) {
    double cutOut = Double.NaN;
    double lit = Double.NaN;
    double time = from;
    double speed = core;
    List<CoreLine.Knot> knots = new ArrayList<>();
    knots.add(new CoreLine.Knot(time, speed, fan.applyAsDouble(speed)));
    while (time < until && speed < to) {
      double step = Math.min(STEP, until - time);
      boolean turns = Double.isNaN(cutOut);
      boolean fire = !Double.isNaN(lit);
      double first = gain(turns, fire, time, speed, asked);
      double second = gain(turns, fire, time + step, Math.max(0, speed + step * first), asked);
      double mean = (first + second) / 2;
      if (mean < HANGS) {
        return new Run(knots, lit, cutOut, End.HUNG);
      }
      step = Math.min(step, (to - speed) / mean);
      speed = Math.min(to, speed + step * mean);
      time += step;
      knots.add(new CoreLine.Knot(time, speed, fan.applyAsDouble(speed)));
      lit = fire || speed < inputs.value(Inputs.LIGHT_OFF) ? lit : time;
      cutOut = !turns || speed < inputs.value(Inputs.CUT_OUT) ? cutOut : time;
    }
    return new Run(knots, lit, cutOut, speed < to ? End.CUT_SHORT : End.IDLE);
  }

  /** Core speed that is gained in a second, a fraction of full speed. */
  private double gain(boolean turns, boolean fire, double time, double core, Asked asked) {
    double torque = own(fire, core);
    if (turns) {
      torque += starter(asked.at(time, core, fan.applyAsDouble(core)));
    }
    double full = 2 * Math.PI * inputs.value(Inputs.FULL_SPEED);
    return torque / (inputs.value(Inputs.INERTIA) * full);
  }

  /** Torque of the engine itself, N m; negative while it drags. */
  private double own(boolean fire, double core) {
    double drag = inputs.value(Inputs.DRAG) * (core / STATED) * (core / STATED);
    if (!fire) {
      return -drag;
    }
    double light = inputs.value(Inputs.LIGHT_OFF);
    double carries = Math.max(light + 0.01, inputs.value(Inputs.SELF_SUSTAINING));
    return drag * ((core - light) / (carries - light) - 1);
  }

  /** Torque of the starters that turn, N m: their mean, since each turns an engine of its own. */
  private double starter(Setup setup) {
    Solution state = settler.solve(setup);
    double sum = 0;
    int turning = 0;
    for (int i = 0; i < network.parts().size(); i++) {
      Part part = network.parts().get(i);
      if (part.kind().equals(STARTER)) {
        double torque = state.view(i, Style.SHOP).observed(part.name(), "torque");
        sum += torque;
        turning += torque > 0 ? 1 : 0;
      }
    }
    return turning == 0 ? 0 : sum / turning;
  }
}

package dev.offtake.solve;

import dev.offtake.network.Equations;
import dev.offtake.part.Conditions;
import dev.offtake.part.Evaluation;
import java.util.Arrays;

/**
 * Goes from the last question to the present one in smaller changes of conditions and parameters,
 * where one jump was too far. Possible only while no command, lock or memory differs: what stands
 * open or shut does not change by degrees.
 */
final class Bridge {
  private static final double LARGEST_STRIDE = 0.25;
  private static final int MOST_STEPS = 40;

  private final Equations equations;
  private final March march;
  private final double[] controls;
  private final double[] parameters;
  private final double[] target;
  private Conditions conditions;
  private boolean known;

  Bridge(Equations equations, March march) {
    this.equations = equations;
    this.march = march;
    Evaluation e = equations.evaluation();
    controls = e.controls.clone();
    parameters = e.parameters.clone();
    target = e.parameters.clone();
    conditions = e.conditions;
  }

  /** Remembers the question that has just been answered. */
  void remember() {
    Evaluation e = equations.evaluation();
    System.arraycopy(e.controls, 0, controls, 0, controls.length);
    System.arraycopy(e.parameters, 0, parameters, 0, parameters.length);
    conditions = e.conditions;
    known = true;
  }

  /** Whether there is a way from the last question to the present one. */
  boolean possible() {
    Evaluation e = equations.evaluation();
    return known
        && Arrays.equals(controls, e.controls)
        && conditions.corrected() == e.conditions.corrected();
  }

  /**
   * Goes all the way from the last state, which the variables hold.
   *
   * @return whether the present question's state balances; conditions and parameters are the
   *     present ones again in either case
   */
  boolean run() {
    Evaluation e = equations.evaluation();
    Conditions asked = e.conditions;
    System.arraycopy(e.parameters, 0, target, 0, target.length);
    March.Path path = place -> at(place, asked);
    path.at(0);
    equations.evaluate();
    return march.run(path, 0, 1, LARGEST_STRIDE, MOST_STEPS);
  }

  private void at(double share, Conditions asked) {
    Evaluation e = equations.evaluation();
    for (int i = 0; i < target.length; i++) {
      e.parameters[i] = share == 1 ? target[i] : mix(parameters[i], target[i], share);
    }
    e.conditions = share == 1 ? asked : conditions.toward(asked, share);
    equations.refreshBoundary();
  }

  /** Exactly {@code a} where both are equal. */
  private static double mix(double a, double b, double share) {
    return a + share * (b - a);
  }
}

package dev.offtake.solve;

import dev.offtake.network.Equations;
import dev.offtake.part.Conditions;
import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import java.util.Arrays;

/**
 * Something outside the unknowns that can be moved a little to either side, to see what follows.
 *
 * <p>The laws that feel it are evaluated a little above and a little below it.
 */
sealed interface Change {
  /** How far a number is moved, as a share of its size. */
  double SMALL = 1e-5;

  /** How far the conditions are moved, as a share of the way to the others. */
  double SMALL_SHARE = 1e-4;

  /** How far it is moved up, in its own unit; 0 or more. */
  double up();

  /** How far it is moved down, in its own unit; 0 or more, and not 0 when {@link #up} is. */
  double down();

  /**
   * Moves it away from where it was; the boundary stays as it is until it is refreshed.
   *
   * @param away in its own unit
   */
  void set(Equations equations, double away);

  /**
   * Evaluates the laws that feel it.
   *
   * @param residual receives the part of the residual that feels it
   */
  void residual(Equations equations, double[] residual);

  /**
   * A number of a part.
   *
   * @param parts numbers of the parts whose laws feel it
   * @param at position among all parameters
   * @param value where it was
   */
  record OfNumber(int[] parts, int at, double value, double up, double down) implements Change {
    static OfNumber of(Equations equations, int part, int which) {
      Part owner = equations.network().parts().get(part);
      Parameter p = owner.parameters().get(which);
      int at = equations.firstParameter(part) + which;
      double value = equations.evaluation().parameters[at];
      double band = Math.max(p.high() - p.low(), 0);
      double size = Math.max(Math.abs(value), band);
      double step = SMALL * (size > 0 ? size : Math.min(p.max() - p.min(), 1));
      double up = Math.max(0, Math.min(step, p.max() - value));
      double down = Math.max(0, Math.min(step, value - p.min()));
      if (up + down == 0) {
        // A number without room is still a number: how the state answers to it is asked.
        return new OfNumber(felt(equations, part), at, value, step, step);
      }
      return new OfNumber(felt(equations, part), at, value, up, down);
    }

    /** A part that is attached to another acts through that one's law. */
    private static int[] felt(Equations equations, int part) {
      String host = equations.network().parts().get(part).attachedTo();
      int other = host.isEmpty() ? -1 : equations.network().part(host);
      return other < 0 ? new int[] {part} : new int[] {part, other};
    }

    @Override
    public void set(Equations equations, double away) {
      equations.evaluation().parameters[at] = value + away;
    }

    @Override
    public void residual(Equations equations, double[] residual) {
      Arrays.fill(residual, 0);
      for (int part : parts) {
        equations.addShare(part, residual);
      }
    }
  }

  /** The conditions, along the way to others; the whole way is 1. */
  record OfConditions(Conditions here, Conditions there) implements Change {
    @Override
    public double up() {
      return SMALL_SHARE;
    }

    @Override
    public double down() {
      return SMALL_SHARE;
    }

    @Override
    public void set(Equations equations, double away) {
      equations.evaluation().conditions = away == 0 ? here : here.toward(there, away);
    }

    @Override
    public void residual(Equations equations, double[] residual) {
      equations.evaluate();
      equations.residual(residual);
    }
  }
}

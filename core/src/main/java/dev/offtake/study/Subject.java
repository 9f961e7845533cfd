package dev.offtake.study;

import dev.offtake.part.Doing;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;

/**
 * Something that is in one of a few states at each point of a curve; where the state changes there
 * is an event.
 */
sealed interface Subject {
  /** What it is called. */
  String name();

  /** The state that it is in, a stable word. */
  String state(Solution solution);

  /** Numbers of the parts whose streams decide it; empty when that is not known. */
  int[] parts();

  /** Which kind of change it tells. */
  Curve.What what();

  /** What a part does. */
  record Regime(String name, int part) implements Subject {
    @Override
    public String state(Solution solution) {
      return solution.doing(part, Style.SHOP).regime();
    }

    @Override
    public int[] parts() {
      return new int[] {part};
    }

    @Override
    public Curve.What what() {
      return Curve.What.PART;
    }

    Doing doing(Solution solution) {
      return solution.doing(part, Style.SHOP);
    }
  }

  /** On which side of its table a tap works. */
  record Table(String name, int part, String observable) implements Subject {
    static final String WITHIN = "within its table";
    static final String ABOVE = "above its table";
    static final String BELOW = "below its table";

    @Override
    public String state(Solution solution) {
      double beyond = solution.view(part, Style.SHOP).observed(name, observable);
      return beyond > 0 ? ABOVE : beyond < 0 ? BELOW : WITHIN;
    }

    @Override
    public int[] parts() {
      return new int[] {part};
    }

    @Override
    public Curve.What what() {
      return Curve.What.TABLE;
    }
  }

  /** Which source of a group gives most. */
  record Leader(String name, Feeders feeders) implements Subject {
    @Override
    public String state(Solution solution) {
      return feeders.leader(solution);
    }

    @Override
    public int[] parts() {
      return feeders.parts();
    }

    @Override
    public Curve.What what() {
      return Curve.What.LEADER;
    }
  }
}

package dev.offtake.part;

import java.util.List;

/**
 * The law of one part at work in one network: fills its branches from the present variables.
 *
 * <p>An element belongs to one set of equations and one thread. {@link #evaluate} must not
 * allocate, must not throw, and must be a pure function of what the {@link Evaluation} holds.
 */
public abstract class Element {
  /** Makes an element. */
  protected Element() {}

  /** The streams of air through the part; the same objects for the element's life. */
  public abstract List<Branch> branches();

  /**
   * Evaluates the law.
   *
   * @param e present variables, parameters, controls and conditions
   */
  public abstract void evaluate(Evaluation e);

  /**
   * Sets the variables of the part's own boundary points.
   *
   * @param e conditions to read, variables to write
   */
  public void boundary(Evaluation e) {}

  /**
   * Lets a part with memory (trip, relief valve) look at a solved state and change its own
   * controls.
   *
   * @param e solved state to read, controls to write
   * @return true when a control changed
   */
  public boolean settle(Evaluation e) {
    return false;
  }

  /**
   * Writes what a person would want to know of the part, in the order of {@link
   * Part#observables()}.
   *
   * @param e solved state
   * @param out receives the values
   * @param at position of the first
   */
  public void observe(Evaluation e, double[] out, int at) {}
}

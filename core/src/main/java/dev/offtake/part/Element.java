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
   * Evaluates the law. Never called on an element without streams and lags, which has none.
   *
   * @param e present variables, parameters, controls and conditions
   */
  public abstract void evaluate(Evaluation e);

  /**
   * What of the part comes late while time passes; in a steady state it passes its input on. The
   * same objects for the element's life.
   */
  public List<Lag> lags() {
    return List.of();
  }

  /**
   * Tells its lags their inputs, as {@link #evaluate} does, and nothing else: no stream is
   * computed.
   *
   * @param e present variables, parameters, controls and conditions
   */
  public void follow(Evaluation e) {}

  /**
   * How long {@link #settle} must find the same before its change counts, s.
   *
   * @param e of which the controls are read
   */
  public double patience(Evaluation e) {
    return 0;
  }

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

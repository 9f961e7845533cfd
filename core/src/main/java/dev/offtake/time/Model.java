package dev.offtake.time;

import dev.offtake.sparse.SparsePattern;

/**
 * A system dS(y)/dt = F(t, y), some of whose rows may store nothing (S = 0 there: 0 = F).
 *
 * <p>The first {@link #columns} of its states are the unknowns of a sparse system; the others,
 * which follow from those within a stage, are states <i>aside</i>, with S = y.
 *
 * <p>Nothing here allocates once it is made.
 */
interface Model {
  /** Number of states, those aside included. */
  int size();

  /** Number of unknowns of the sparse system. */
  int columns();

  /** Where the Jacobian of the sparse system can differ from zero. */
  SparsePattern pattern();

  /** Whether a row of the sparse system stores something. */
  boolean stores(int row);

  /**
   * Prepares a stage, whose end y fulfils S(y) = kept + H·F(time, y).
   *
   * @param time of its end, s
   * @param inverse 1/H, 1/s; 0 for an endless stage, whose end is steady
   * @param kept one for each state
   */
  void begin(double time, double inverse, double[] kept);

  /** Evaluates the prepared stage at the unknowns of a state. */
  void evaluate(double[] y);

  /** Writes F − (S − kept)/H of the last evaluation, a row for each unknown. */
  void residual(double[] out);

  /** Writes the slopes of the residual of the last evaluation, one for each slot. */
  void jacobian(double[] values);

  /**
   * Writes what rows store after the last step of an iteration, to first order from the last
   * evaluation, so that sums over rows are kept exactly.
   *
   * @param move the step from the last evaluation
   * @param owed the residual of the last evaluation, its sign changed
   * @param out receives S of each row
   */
  void gained(double[] move, double[] owed, double[] out);

  /** Completes a state from its unknowns: writes those aside. */
  void finish(double[] y);

  /** Writes S(y). */
  void stored(double[] y, double[] out);

  /**
   * Writes dS/dt at a state, and corrects the unknowns whose rows store nothing.
   *
   * @param time s
   * @param y state; what stores nothing is written
   */
  void rates(double time, double[] y, double[] out);

  /** Turns dS/dt into dy/dt; 0 for what stores nothing. */
  void slopes(double[] y, double[] rates, double[] out);

  /** Turns dy/dt into dS/dt. */
  void unslope(double[] y, double[] slopes, double[] out);

  /** Writes the error that each state may have, for a tolerance. */
  void allowed(double[] y, double tolerance, double[] out);

  /**
   * Turns errors of S at the last evaluation into what they leave over in the rows of the residual;
   * those of states aside into such as a stage leaves, since what comes late quickly forgets them.
   *
   * @param inverse 1/H of the last stage
   * @param errors of S, one for each state; written
   */
  void leave(double inverse, double[] errors);
}

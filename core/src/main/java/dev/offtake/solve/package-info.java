/**
 * From equations to a solved state: start, damped Newton, and what to do when that does not
 * suffice.
 *
 * <p>The steady state is looked for by a ladder; each rung is tried only when the one before did
 * not reach a balance:
 *
 * <ol>
 *   <li>Newton from the last state or from a linear network in p² ({@link
 *       dev.offtake.solve.LinearStart}), the whole step shortened, never clipped component by
 *       component, and halved until the scaled residual falls;
 *   <li>pseudo-transient continuation over the points' volumes (Kelley and Keyes 1998, switched
 *       evolution relaxation), which is the network filling up in time with ever larger steps;
 *   <li>a march: the engine is slowed until a state is found, then brought up in adaptive steps
 *       with a secant predictor.
 * </ol>
 *
 * <p>Around the continuous state stands a finite one: commands, electrical power, trips, reliefs
 * ({@link dev.offtake.solve.Settler}). It is solved by asking all conditions at the solved state,
 * changing the commands that differ and solving again; a set of commands that comes back is a
 * cycle, and is told as such.
 *
 * <p>Promises: an answer is balanced (see {@link dev.offtake.network.Balance}) or it is called not
 * solved and names the place that resists. Nothing throws for a network that has no answer.
 */
@NullMarked
package dev.offtake.solve;

import org.jspecify.annotations.NullMarked;

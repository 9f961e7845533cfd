/**
 * From equations to a solved state: start, damped Newton, and what to do when that does not
 * suffice.
 *
 * <p>The steady state is looked for by a ladder; each rung is tried only when the one before did
 * not reach a balance:
 *
 * <ol>
 *   <li>from the last state: what changed outside is followed to first order ({@link
 *       dev.offtake.solve.Track} guesses along a parabola instead), then Newton, the whole step
 *       shortened, never clipped component by component, and halved while that pays; a step is also
 *       good that shortens the one that would follow ({@link dev.offtake.solve.Nearness}), but not
 *       from nothing, where that may lead to the other of two states;
 *   <li>again from the last state, in which what is all but still goes along with its source
 *       ({@link dev.offtake.network.Carry}), if anything changed outside;
 *   <li>again from the last state, air first: steps on the balances of air with temperatures held,
 *       then of heat with pressures held, then on all ({@code Newton.sort});
 *   <li>a bridge from the last question to the present one, in smaller changes, where no command
 *       differs;
 *   <li>from the last state in pseudo-time, as air moves on when a part fails;
 *   <li>from nothing: pressures of a linear network in p² ({@link dev.offtake.solve.LinearStart}),
 *       the points filled with air and then with heat in pseudo-time, each point by a step of its
 *       own, then Newton;
 *   <li>a rise: every source is brought up from almost no pressure, along the tangent, in steps
 *       that grow and shrink ({@link dev.offtake.solve.Rise});
 *   <li>pseudo-transient continuation over the points' volumes (Kelley and Keyes 1998, switched
 *       evolution relaxation), from the linear network and from still air;
 *   <li>from a state that is found at a speed close by, over a bridge;
 *   <li>the rise begun elsewhere, more steps in pseudo-time, and speeds farther off.
 * </ol>
 *
 * <p>Around the continuous state stands a finite one: commands, electrical power, trips, reliefs
 * ({@link dev.offtake.solve.Settler}). It is solved by asking all conditions at the solved state,
 * changing the commands that differ and solving again; a set of commands that comes back is a
 * cycle, and is told as such.
 *
 * <p>How a solved state answers to its numbers and to the conditions is told by {@link
 * dev.offtake.solve.Sensitivities}, forward and adjoint, without solving anew; {@link
 * dev.offtake.solve.Picture} draws the states near it to first order.
 *
 * <p>Promises: an answer is balanced (see {@link dev.offtake.network.Balance}) or it is called not
 * solved and names the place that resists. Nothing throws for a network that has no answer.
 */
@NullMarked
package dev.offtake.solve;

import org.jspecify.annotations.NullMarked;

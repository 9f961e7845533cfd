/**
 * Points and parts joined: the residual of mass and energy at each inner point, and its Jacobian.
 *
 * <p>A {@link dev.offtake.network.Network} is the immutable description. {@link
 * dev.offtake.network.Equations} are its workings for one thread: elements, variables and arrays,
 * laid out once. For inner point <i>i</i> with streams <i>b</i> (sign s = +1 where the stream
 * arrives, −1 where it leaves)
 *
 * <pre>
 *   mass:    Σ s ṁ_b = 0
 *   energy:  Σ s ṁ_b (h_b − h_i) − UA_i (T_i − T_surroundings) = 0
 * </pre>
 *
 * where h_b is the enthalpy that the stream carries at that end. What leaves a point carries the
 * point's own enthalpy, however slowly, so that only arriving air counts and no point becomes
 * warmer than the air that feeds it. The wall conductance UA_i pins the temperature of a dead leg.
 * A sensed static pressure is a variable of its own with
 *
 * <pre>
 *   sense:   ln p_static − ln p_total + L(ṁ, p_total, T) = 0
 * </pre>
 *
 * so that a regulator that feels its own stream is an ordinary row of the system.
 *
 * <p>Promises: the pattern of the Jacobian is fixed for a network; evaluation and assembly allocate
 * nothing; the balance of an answer is computed from streams alone and shares nothing with the
 * Jacobian.
 */
@NullMarked
package dev.offtake.network;

import org.jspecify.annotations.NullMarked;

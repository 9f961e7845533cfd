/**
 * The parts of the trade: one file for each kind, with its keys in the system file, its law and its
 * words.
 *
 * <p>A {@link dev.offtake.part.Kind} makes an immutable {@link dev.offtake.part.Part} from what a
 * file says. A part names its {@link dev.offtake.part.Leg}s (ways of air), its {@link
 * dev.offtake.part.Parameter}s (numbers that may drift or break) and its {@link
 * dev.offtake.part.Control}s (what logic and memory decide). For one network it makes an {@link
 * dev.offtake.part.Element}, which fills {@link dev.offtake.part.Branch}es with flow, carried
 * enthalpy and their partial derivatives by the variables of the network.
 *
 * <p>Variables are ln(p/1 bar) and T of each point, and the logarithm of static pressures felt by
 * sense lines. With ln p a pressure cannot become negative and small differences survive rounding.
 *
 * <p>Promises: an element's evaluation is a pure function of what it is shown, allocates nothing
 * and does not throw; every partial derivative is exact except at clamps, where it is that of one
 * side.
 *
 * <p>To add a kind, write its file and add its line in {@link dev.offtake.part.Kinds}.
 */
@NullMarked
package dev.offtake.part;

import org.jspecify.annotations.NullMarked;

/**
 * What happens between steady states: a network played over time.
 *
 * <p>A {@link dev.offtake.time.Drive} says what is asked as time goes: speeds and numbers that move
 * in straight lines, and instants at which switches, locks or numbers jump. {@link
 * dev.offtake.time.Transient} plays it and gives a {@link dev.offtake.time.Played}, from which the
 * state at any instant, the course of any number and the events can be asked.
 */
@NullMarked
package dev.offtake.time;

import org.jspecify.annotations.NullMarked;

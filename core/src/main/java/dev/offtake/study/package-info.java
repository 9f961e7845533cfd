/**
 * Questions that need more than one answer of the solver, or a second look at one: where each
 * user's air comes from, at which power something changes, and how far the bands of the parts move
 * that power.
 *
 * <p>How far a band moves a changeover ahead follows from the slopes of the state at it; only where
 * the state jumps is it looked for anew ({@code Crossing}).
 *
 * <p>Promises: an event is located by bisection on what parts are doing, never read off a grid; a
 * study throws nothing for a network without an answer, it says so.
 */
@NullMarked
package dev.offtake.study;

import org.jspecify.annotations.NullMarked;

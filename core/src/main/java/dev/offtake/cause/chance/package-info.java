/**
 * Chances: how well numbers that were read agree with numbers that were foretold.
 *
 * <p>Nothing in here knows an engine. Readings y = g + G·θ + ε are foretold with what nobody knows
 * exactly (θ, standard normal) and with errors ε of their own. {@link
 * dev.offtake.cause.chance.LinearModel} tells the evidence of such a forecast in closed form,
 * {@link dev.offtake.cause.chance.Slip} that somebody may have misread one of them, {@link
 * dev.offtake.cause.chance.Extents} integrates over how far a fault goes, {@link
 * dev.offtake.cause.chance.Draws} checks all of it by drawing where the forecast bends, and {@link
 * dev.offtake.cause.chance.Repair} tells what a ranking is worth in minutes.
 *
 * <p>Evidence is always a natural logarithm of a density; chances sum to one.
 */
@NullMarked
package dev.offtake.cause.chance;

import org.jspecify.annotations.NullMarked;

/**
 * Heat: exchangers and the walls of ducts.
 *
 * <p>{@link dev.offtake.heat.CrossFlow} is the law of a cross-flow core, both streams unmixed, by
 * the exact series. {@link dev.offtake.heat.Exchanger} adds how the surface conductances follow the
 * flows, fouling, and heat that depends on temperature; a {@link dev.offtake.heat.RatedPoint} sizes
 * one. {@link dev.offtake.heat.DuctHeat} cools air along a duct; {@link
 * dev.offtake.heat.CylinderLoss} tells with what conductance.
 *
 * <p>Legal inputs: flows are magnitudes (who calls decides which end is the inlet), zero included;
 * temperatures and heat as in {@link dev.offtake.air.Air}; fouling from 0 up to but not 1.
 *
 * <p>Promises: what one side loses the other gains, to rounding; no outlet leaves the span of the
 * inlets; every output is finite and smooth down to zero flow of one or both sides and through
 * equal heat capacity rates; derivatives are exact; evaluating allocates nothing.
 *
 * <p>References: Mason, Heat transfer in crossflow, Proc. 2nd U.S. National Congress of Applied
 * Mechanics (1955), from memory; Churchill and Chu (1975); Incropera and DeWitt, Fundamentals of
 * Heat and Mass Transfer.
 */
@NullMarked
package dev.offtake.heat;

import org.jspecify.annotations.NullMarked;

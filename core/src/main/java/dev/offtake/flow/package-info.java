/**
 * Flow laws: mass flow between two points from their total pressures and temperatures.
 *
 * <p>Every law answers the flow and its exact partial derivatives by ln p and T of both ends and by
 * the law's size. Reverse flow swaps the ends; the ratio of heat capacities is that of the upstream
 * end. With r = p₂/p₁ the laws are
 *
 * <ul>
 *   <li>{@link dev.offtake.flow.NozzleLaw}: ideal nozzle, ṁ = CdA·p₁/√(R·T₁)·ψ(r, γ);
 *   <li>{@link dev.offtake.flow.ValveLaw}: IEC 60534 gas form on the low-Δp effective area;
 *   <li>{@link dev.offtake.flow.VenturiLaw}: nozzle with recovery;
 *   <li>{@link dev.offtake.flow.Iso6358Law}: sonic conductance and critical ratio;
 *   <li>{@link dev.offtake.flow.DuctLaw}: adiabatic pipe flow with friction (Fanno), Churchill 1977
 *       friction.
 * </ul>
 *
 * <p>Promises:
 *
 * <ul>
 *   <li>Flow is continuous with continuous first derivatives everywhere, the choke and zero flow
 *       included, and never falls when p₁ rises or p₂ falls.
 *   <li>Within |1 − r| &lt; 1e-4 an odd cubic replaces the law ({@link dev.offtake.flow.NearZero}),
 *       so the slope at zero flow is finite.
 *   <li>Finite answers for any finite input. The laws are stateless and allocate nothing.
 *   <li>Differences near r = 1 are written with {@code expm1} and {@code log1p}.
 * </ul>
 *
 * <p>{@link dev.offtake.flow.Isentropic}, {@link dev.offtake.flow.Fanno}, {@link
 * dev.offtake.flow.NormalShock}, {@link dev.offtake.flow.FrictionFactor} and {@link
 * dev.offtake.flow.Iec60534} hold the textbook functions behind them.
 */
@NullMarked
package dev.offtake.flow;

import org.jspecify.annotations.NullMarked;

/**
 * Air and the day.
 *
 * <p>Air is dry, an ideal gas with heat that depends on temperature: {@link dev.offtake.air.Air}
 * holds heat capacity, enthalpy, entropy (NASA Glenn polynomials of the mixture "Air"), viscosity
 * and conductivity (Lemmon and Jacobsen 2004 at low density). {@link dev.offtake.air.GasState} is
 * the same for one point of a network, refreshed without allocation. {@link
 * dev.offtake.air.Atmosphere} is the U.S. Standard Atmosphere 1976 and {@link dev.offtake.air.Day}
 * what a technician says of the weather.
 *
 * <p>Legal inputs: 200 to 2000 K. Outside, heat goes on along its tangent and every value stays
 * finite, so that a solver finds its way back; {@link dev.offtake.air.Air#inRange} tells, and who
 * shows an answer asks it. Pressure has no part in the properties: air of 20 bar and 800 K is 0.7 %
 * less dense than this says. The page on air in the documents shows the size of that error.
 *
 * <p>Promises: SI units, absolute pressures; enthalpy strictly increasing; heat capacity continuous
 * at all joints (to 1e-9 at 1000 K, where the report's two ranges meet), its derivative at the ends
 * of the range as well.
 */
@NullMarked
package dev.offtake.air;

import org.jspecify.annotations.NullMarked;

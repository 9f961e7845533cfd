/**
 * Units of the shop at the edge: read, convert, print.
 *
 * <p>Inside Offtake everything is SI. Gauge, absolute and differential pressure are three
 * dimensions, and a temperature and a difference of temperatures are two, so that one can never
 * pass for the other: {@code 32 psi} is a difference and is asked back where a gauge pressure is
 * expected. The tolerance of a gauge or absolute pressure is a difference of pressures, that of a
 * temperature a difference of temperatures.
 *
 * <p>{@link dev.offtake.quantity.QuantityReader} holds the grammar, {@link
 * dev.offtake.quantity.Units} the table of units with the source of each factor, {@link
 * dev.offtake.quantity.Style} what is printed, and {@link dev.offtake.quantity.Nearest} guesses a
 * misspelt word. A plain inHg, hPa or mbar is absolute only where nothing but an absolute pressure
 * is expected, as for a barometer. A standard cubic foot is a mass only with its reference day.
 *
 * <p>Promises: a text is read or refused with a {@link dev.offtake.quantity.QuantityProblem} that
 * says how to mend it, never anything else; a value that was read is finite, or NaN for a bare
 * {@code unknown}, with {@code low ≤ nominal ≤ high}; neither reading nor printing depends on the
 * language of the computer.
 */
@NullMarked
package dev.offtake.quantity;

import org.jspecify.annotations.NullMarked;

/**
 * Units of the shop at the edge: read, convert, print.
 *
 * <p>Inside Offtake everything is SI. Gauge, absolute and differential pressure are three
 * dimensions, and a temperature and a difference of temperatures are two, so that one can never
 * pass for the other.
 */
@NullMarked
package dev.offtake.quantity;

import org.jspecify.annotations.NullMarked;

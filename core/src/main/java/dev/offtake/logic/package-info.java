/**
 * Switches, line-ups and the conditions that join them to parts.
 *
 * <p>A system file says when a valve is shut, when a user draws air and when a light is lit in
 * short sentences such as {@code bleed switch is OFF or overheat trip is tripped}. Here such a
 * sentence is parsed once into a {@link dev.offtake.logic.Condition} and asked many times against a
 * {@link dev.offtake.logic.Situation}. There is no arithmetic and no memory in a condition: what
 * remembers (a trip, a relief valve) is a part.
 *
 * <p>Promises: a condition never throws while it is asked, names everything that it depends on, and
 * prints back as it was written.
 */
@NullMarked
package dev.offtake.logic;

import org.jspecify.annotations.NullMarked;

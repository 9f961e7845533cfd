package dev.offtake.system;

import dev.offtake.quantity.Stated;

/**
 * A number that a file states.
 *
 * @param part full name of what it is about
 * @param key line of the file that states it, such as {@code set to}
 * @param file name of the file
 * @param line line in it
 * @param stated value, tolerance, text and source
 * @param paper short name of the paper; empty when the source is none of the papers or not given
 * @param inForce whether it is the one that is used
 */
public record Statement(
    String part, String key, String file, int line, Stated stated, String paper, boolean inForce) {}

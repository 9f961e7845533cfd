package dev.offtake.system;

/**
 * A line of {@code only left:} that replaces what {@code each side:} says.
 *
 * @param side side on which it holds
 * @param part name of the part within the side
 * @param key the line that is replaced
 * @param file name of the file
 * @param line line in it
 */
public record SideOverride(String side, String part, String key, String file, int line) {}

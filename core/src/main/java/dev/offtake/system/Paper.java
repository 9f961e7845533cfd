package dev.offtake.system;

/**
 * A paper that statements come from; a system lists the ones that count most first.
 *
 * @param id short name used in sources, such as {@code SD}
 * @param title as printed on it
 * @param revision as printed on it; empty when not given
 * @param date as printed on it; empty when not given
 */
public record Paper(String id, String title, String revision, String date) {}

package dev.offtake.profile;

/**
 * Something that a profile does, in words.
 *
 * @param at s
 * @param says one sentence without a full stop
 */
public record Happening(double at, String says) {}

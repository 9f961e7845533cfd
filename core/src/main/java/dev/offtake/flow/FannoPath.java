package dev.offtake.flow;

/** Scratch of {@link DuctLaw}. */
final class FannoPath {}

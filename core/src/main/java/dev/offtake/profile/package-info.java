/**
 * Profiles: what is done to a system over time, read from a file and played.
 *
 * <p>{@link dev.offtake.profile.ProfileReader} reads a file in three steps: the tree of the text
 * ({@link dev.offtake.system.YamlTree}), each action under its time, and what no single action can
 * see: the order of times, ramps that overlap, switches that contradict each other, what the system
 * file forbids. No text, however broken, makes it throw; each mistake is told once with its line.
 *
 * <p>Core speed moves on a straight line from one speed to another. How long an acceleration takes
 * is an input with a range ({@link dev.offtake.profile.Inputs}); where the file says nothing, times
 * that are common practice are taken and said to be so.
 */
@NullMarked
package dev.offtake.profile;

import org.jspecify.annotations.NullMarked;

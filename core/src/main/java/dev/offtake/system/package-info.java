/**
 * The system file: read, checked, and unfolded into a network.
 *
 * <p>{@link dev.offtake.system.SystemReader} goes through a file in six steps, each in its own
 * class:
 *
 * <ol>
 *   <li>{@link dev.offtake.system.YamlTree}: bytes to a tree of {@link dev.offtake.system.Item}s.
 *       Every scalar stays the text that was typed and knows its line, so that {@code ON}, {@code
 *       3.10} and {@code 22:40} mean what they say.
 *   <li>{@link dev.offtake.system.Draft}: sections sorted into things that are declared, sides
 *       unfolded, overrides of {@code only left:} laid over them.
 *   <li>{@link dev.offtake.system.NameBook}: which full name a short name means, its own side
 *       first, then outside.
 *   <li>{@link dev.offtake.system.PartFacts}: the keys of a part read against its kind.
 *   <li>The kinds build their parts.
 *   <li>{@link dev.offtake.system.Checks}: what no single part can see; {@link
 *       dev.offtake.system.Doubts}: what is possible and looks like a slip, which is asked back and
 *       never refused.
 * </ol>
 *
 * <p>{@link dev.offtake.system.YamlTree}, {@link dev.offtake.system.Item} and {@link
 * dev.offtake.system.Problems} are there for the other files that people write as well: they know
 * nothing of systems.
 *
 * <p>Promises: no file, however broken, makes the reader throw; each mistake is told once, with its
 * line and how to mend it; at most {@value dev.offtake.system.Problems#MOST} are told. A system
 * comes out only when no mistake was found. Where two papers state the same number, the one that
 * {@code papers:} lists first is in force and both are kept.
 */
@NullMarked
package dev.offtake.system;

import org.jspecify.annotations.NullMarked;

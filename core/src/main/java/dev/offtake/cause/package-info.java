/**
 * What was read on an engine, to be set against what a system could do.
 *
 * <p>A reading is one value of one thing on one occasion. {@link dev.offtake.cause.About} is the
 * thing: a needle, a test port, a light, the position of a valve, an engine gauge, the skin of a
 * duct. {@link dev.offtake.cause.Value} is what was read: a number, a word such as low, a swinging
 * or pegged needle, a comparison with another reading. {@link dev.offtake.cause.Occasion} is when:
 * the power, the day, how switches stand, before or after a trip, and who says so. {@link
 * dev.offtake.cause.Readings} keeps the occasions with the squawk, the item, the test gauges and
 * what an inspection found.
 *
 * <p>They come in four ways: one line on the command line, a YAML file, a CSV table, or one by one
 * ({@link dev.offtake.cause.Interview}). Each way only cuts text into pieces that know their line;
 * the meaning is given by the same four readers whichever way they came:
 *
 * <ol>
 *   <li>{@link dev.offtake.cause.HeadReader}: power, line-up, switches, trip.
 *   <li>{@link dev.offtake.cause.Vocabulary}: which thing a name means.
 *   <li>{@link dev.offtake.cause.ValueReader}: what was read of it.
 *   <li>{@link dev.offtake.cause.Bounds}: whether that can be: not under vacuum, not beyond the
 *       needle.
 * </ol>
 *
 * <p>Promises: no text, however broken, makes a reader throw; several problems are told at once,
 * each with file and line and how to mend it; readings come out only when there is none. {@link
 * dev.offtake.cause.ReadingsWriter} writes readings so that the same are read again. No reader
 * computes or shows what a gauge should read: people would read it into the needle.
 */
@NullMarked
package dev.offtake.cause;

import org.jspecify.annotations.NullMarked;

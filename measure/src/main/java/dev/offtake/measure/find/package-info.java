/**
 * Scores {@code find} on cases whose truth is known and that were made by other laws than its own.
 *
 * <p>{@link dev.offtake.measure.find.Score} draws them and prints the figures; docs/finding.md
 * keeps the last long run.
 */
@NullMarked
package dev.offtake.measure.find;

import org.jspecify.annotations.NullMarked;

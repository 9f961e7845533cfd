/**
 * Ranks what can be wrong with a system by what was read on it.
 *
 * <p>The way of the data: readings become {@link dev.offtake.cause.find.Scene scenes} that can be
 * solved and {@link dev.offtake.cause.find.Clue clues} that can be foretold; each {@link
 * dev.offtake.cause.find.Cause} is solved in each scene to several extents ({@link
 * dev.offtake.cause.find.Course}); {@link dev.offtake.cause.find.Weigher} sets the forecasts
 * against the readings with everything that nobody knows exactly ({@link
 * dev.offtake.cause.find.Unknown}); {@link dev.offtake.cause.find.Finder} sums up and {@link
 * dev.offtake.cause.find.Found} is what comes out: a ranking, what cannot be told apart, which
 * reading does not fit, and how much of it stands on what is taken for granted ({@link
 * dev.offtake.cause.find.Prior}).
 *
 * <p>{@link dev.offtake.cause.find.Matcher} goes the other way: from a run on which nothing was
 * wrong to the numbers that the file leaves loose and to the error of the model, with the same
 * scenes, clues and unknowns ({@link dev.offtake.cause.find.Run}, {@link
 * dev.offtake.cause.find.GaussNewton}, {@link dev.offtake.cause.find.Leftover}); what comes out is
 * a {@link dev.offtake.cause.find.Match}.
 *
 * <p>Nothing here reads a file or prints a word to a person.
 */
@NullMarked
package dev.offtake.cause.find;

import org.jspecify.annotations.NullMarked;

/**
 * What a person touches: the command line, and what it prints.
 *
 * <p>{@link dev.offtake.desk.Main} joins the commands, one class each, and turns what they return
 * or throw into an {@link dev.offtake.desk.Exit} code. A command reads files, asks {@code core} and
 * writes the answer with its cautions to standard output; progress and complaints go to standard
 * error. No physics lives here.
 *
 * <p>Promises: a person never sees a stack trace; every complaint says what is wrong and, where it
 * is known, how to mend it; the exit code alone tells a script how it went.
 */
@NullMarked
package dev.offtake.desk;

import org.jspecify.annotations.NullMarked;

/**
 * The answer in sentences.
 *
 * <p>A {@link dev.offtake.explain.StateAnswer} is what a person is told about one solved state: who
 * feeds, what each valve does and why, the air at sources and users, room left, the next change,
 * what it stands on, balance, caution. It is a value; {@link dev.offtake.explain.StateText} prints
 * it in columns and {@link dev.offtake.explain.StateJson} as JSON.
 *
 * <p>Promises: every answer carries its caution; a state that does not balance is told as not
 * solved, with the place that resists, and without numbers.
 */
@NullMarked
package dev.offtake.explain;

import org.jspecify.annotations.NullMarked;

/**
 * The page: a server on the person's own machine, and what it answers.
 *
 * <p>{@link dev.offtake.desk.page.PageServer} opens one system file and answers questions about it
 * over HTTP: {@code /} and its assets, and {@code /api/…} as JSON (docs/page-api.md). It reads
 * nothing but that file, the readings beside it and what lies in the jar, and sends nothing
 * anywhere.
 *
 * <p>Promises: the answer to one question never depends on what was asked before; it is the answer
 * of {@code offtake state}. What a person or a stranger sends can at worst be refused, with one
 * message and how to mend it ({@link dev.offtake.desk.page.Refusal}); no stack trace ever leaves.
 * Nobody but this machine is let in unless a person says so, and then only by a key that was
 * printed ({@link dev.offtake.desk.page.Gate}).
 */
@NullMarked
package dev.offtake.desk.page;

import org.jspecify.annotations.NullMarked;

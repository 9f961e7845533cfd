/** Comparisons with published values: one file for each topic, the source beside each value. */
@NullMarked
package dev.offtake.checks;

import org.jspecify.annotations.NullMarked;

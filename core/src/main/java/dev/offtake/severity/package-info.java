/**
 * How bad it is: the classes of MIL-STD-1629A, what a failure can lead to, and which of it means
 * which class. The classes are published; which criterion means which is an assumption that a
 * system file may replace.
 *
 * <p>Reference: MIL-STD-1629A, Procedures for performing a failure mode, effects and criticality
 * analysis, 1980, paragraph 4.4.3 (paragraph number from memory).
 */
@NullMarked
package dev.offtake.severity;

import org.jspecify.annotations.NullMarked;

/**
 * Failure effects: what each way to fail does at each named power and line-up, how bad that is, and
 * whether a person could tell.
 *
 * <p><b>The table.</b> Every mode of every part (to its usual extent) is put into the network at
 * every {@link dev.offtake.study.effect.Occasion}, solved from the healthy state of the same
 * occasion, and compared with it. What follows is judged by {@link
 * dev.offtake.study.effect.Criterion criteria}, each with a class of {@link
 * dev.offtake.study.effect.Severity severity}; the worst of them is the class of the row. Classes
 * are those of MIL-STD-1629A; which criterion means which class is an assumption that the file may
 * replace.
 *
 * <p><b>Dormant failures</b> change nothing that anyone sees and nothing that matters, at no
 * occasion, until something else fails. They are found by putting each of them beside each other
 * mode: a pair bites where it is worse than the worse of its two.
 *
 * <p>Reference: MIL-STD-1629A, Procedures for performing a failure mode, effects and criticality
 * analysis, 1980; IEC 60812:2018, Failure modes and effects analysis.
 */
@NullMarked
package dev.offtake.study.effect;

import org.jspecify.annotations.NullMarked;

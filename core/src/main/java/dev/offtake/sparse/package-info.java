/**
 * Sparse matrices of a fixed pattern, factored again and again.
 *
 * <p>The matrices of Newton's method on a network are small, unsymmetric, very sparse and all of
 * one pattern. The costly questions (which pivots, what fills in) are therefore asked once per
 * network and the answer is kept:
 *
 * <ol>
 *   <li>{@link dev.offtake.sparse.SparseLu#order order} scales one real matrix, chooses a sequence
 *       of pivots with few neighbours (Markowitz, <i>Management Science</i> 3 (1957) 255–269) among
 *       those that are at least half as large as the largest of their column, and writes the
 *       elimination out as a flat list of multiply–subtract operations;
 *   <li>{@link dev.offtake.sparse.SparseLu#refactor refactor} scatters new values and runs the
 *       list: no search, no allocation;
 *   <li>{@link dev.offtake.sparse.SparseLu#solve solve} substitutes and refines once with the
 *       values that were factored (Skeel, <i>Mathematics of Computation</i> 35 (1980) 817–832).
 * </ol>
 *
 * <p>With the scaled matrix S = R A C, whose rows have unit sum of magnitudes, and the permutations
 * P and Q of the pivot sequence, the factors are P S Q = L U with a unit diagonal in U. R is
 * computed anew with each factorisation, C belongs to the sequence.
 *
 * <p>A kept sequence can turn bad when the values drift. The monitor is the growth, the largest
 * |l<sub>ij</sub> / l<sub>jj</sub>|: at most 2 with a fresh sequence, and a refactorisation that
 * exceeds a thousand, or whose pivot has all but vanished, is refused. The caller then orders anew.
 *
 * <p>Promises: legal input is any finite matrix; a matrix that is singular to working precision or
 * holds a NaN is told as such, with a row to blame, and never yields factors. Rows and columns may
 * be scaled by any factors that leave the values and their row sums in the normal range. Nothing
 * here is shared between threads.
 */
@NullMarked
package dev.offtake.sparse;

import org.jspecify.annotations.NullMarked;

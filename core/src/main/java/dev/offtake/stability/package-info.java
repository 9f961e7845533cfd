/**
 * Whether a steady answer stays: what happens after a small upset.
 *
 * <p>The transient is made linear about the answer. Its states are ln p and ln T of each point and
 * the lags of each valve that moves freely. With m = pV/(RT) the air at a point, what its rows of
 * the residual leave over is stored as differences of mass and internal energy,
 *
 * <pre>
 *   Σ ṁ                 = dm/dt             = m (d ln p/dt − d ln T/dt)
 *   Σ ṁ (h − h_i) − UAΔT = d(m u)/dt − h dm/dt = m cp T d ln T/dt − m R T d ln p/dt
 * </pre>
 *
 * <p>A valve stands where its lags have brought it. A regulator feels the held pressure through a
 * sense line, a temperature through a sensor; all that it feels fills its servo chamber, and the
 * chamber moves the disc. Each of these is a lag τ ds/dt = input − s ({@link
 * dev.offtake.stability.Lags}); friction in a valve makes those of chamber and disc longer, water
 * in a sense line that of the line. A check or relief valve has only the last, and so has a flow
 * user, which keeps its flow by a valve of its own. A valve at a stop, stuck or locked, and a user
 * that is wide open, are no more than holes. Sensed static pressures follow at once and are
 * eliminated.
 *
 * <p>The rates fall apart into groups of states that act on each other in a circle; the eigenvalues
 * are those of the groups, found by the QR algorithm (Golub and Van Loan, Matrix Computations,
 * §7.5, as in Hipparchus). What drives a mode is told by participation factors |w_k v_k| of its
 * left and right eigenvectors (Pérez-Arriaga, Verghese and Schweppe, IEEE Trans. PAS-101 (1982)
 * 3117, from memory), which do not depend on units.
 *
 * <p>Promises: nothing is thrown for a state that cannot be judged, it is told. Friction is not
 * modelled, which holds small upsets still; nor is the heat stored in walls, which slows
 * temperatures down. Volumes and lags that the file does not say are assumptions, and so is every
 * time in the words.
 */
@NullMarked
package dev.offtake.stability;

import org.jspecify.annotations.NullMarked;

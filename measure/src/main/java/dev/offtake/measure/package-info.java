/**
 * How fast Offtake is, and where the time goes.
 *
 * <p>Every benchmark runs under JMH in a process of its own. What is reported is <b>time of the
 * processor</b>, not of the clock on the wall, so that a busy machine disturbs little, and
 * <b>ratios</b> to two things measured in the same run, so that another machine does:
 *
 * <ul>
 *   <li>the {@link Yardstick}, a fixed piece of arithmetic, timed around each iteration;
 *   <li>a dense LU factorisation and solution of the demo twin's own Jacobian by EJML.
 * </ul>
 *
 * <p>{@link WarmState} and {@link ColdState} are whole states, {@link StatePieces} and {@link
 * PartLaws} what a state is made of, {@link PlayedTime} two minutes of engine time, {@link Growth}
 * the same for synthetic networks of any size, and {@link KinsolState} the same equations solved by
 * SUNDIALS KINSOL with KLU. {@link Measure} runs them and prints the table of docs/performance.md.
 */
@NullMarked
package dev.offtake.measure;

import org.jspecify.annotations.NullMarked;

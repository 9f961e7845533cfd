/**
 * What happens between steady states: a network played over time.
 *
 * <p>A {@link dev.offtake.time.Drive} says what is asked as time goes: speeds and numbers that move
 * in straight lines, and instants at which switches, locks or numbers jump. {@link
 * dev.offtake.time.Transient} plays it and gives a {@link dev.offtake.time.Played}, from which the
 * state at any instant, the course of any number and the events can be asked.
 *
 * <p>The residual is that of the steady state ({@link dev.offtake.network.Equations}). A point of
 * volume V stores m = pV/(RT) and U = m u(T); what its rows leave over is what these gain, as
 * differences between two instants and never by the chain rule. Beside them are states the metal of
 * each point's walls and all that comes late ({@link dev.offtake.part.Lag}): the pressure at the
 * end of a sense line, the temperature at a sensor, the filling of a servo chamber that is limited
 * in rate, the disc with friction as play or with inertia, the valve of a flow user. How quick they
 * are says a {@link dev.offtake.time.Pace}, by default with the lags of {@link
 * dev.offtake.stability.Lags}. Within a stage each of them is a function of pressures and
 * temperatures, so that the sparse system is the one of the steady state, and an endless step with
 * latches frozen is the steady state itself.
 *
 * <p>The method is an L-stable singly diagonally implicit one of third order with an embedded one
 * of second for the length of steps, full Newton in each stage, and a cubic between the ends of a
 * step. Rules, trips with their delays and relief valves are asked after each step; where one would
 * act, its instant is found on the cubic by bisection and stepped to. What parts begin to do
 * otherwise is found afterwards on the same cubics, looking every hundredth of a second at most. A
 * position that turns round more than fifty times a second is said to flutter, and is followed by
 * its mean from there on.
 *
 * <p>Promises: air and energy of a closed system are kept to 10⁻⁸ of what passes; nothing is thrown
 * for a drive that cannot go on, it ends with the reason; the loop of Newton's iteration allocates
 * nothing. Tolerances are those of one step. Steps that are long beside a swing damp it: whether a
 * quiet state hunts is judged by {@link dev.offtake.stability}, and a limit cycle is followed only
 * at a tolerance of 10⁻⁵ and less or in a stretch of short steps ({@link
 * dev.offtake.time.Settings.Fine}), there until it stays small and no longer grows. {@link
 * dev.offtake.time.Cycle} finds it in what was played. Streams and heat exchange within parts have
 * no inertia or storage of their own, and trips feel the air itself.
 */
@NullMarked
package dev.offtake.time;

import org.jspecify.annotations.NullMarked;

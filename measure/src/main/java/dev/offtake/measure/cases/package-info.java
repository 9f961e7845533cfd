/**
 * Cases for {@code find} from a plant that is not Offtake's.
 *
 * <p>Scores of a diagnosis mean little when the same code makes the cases and judges them. So this
 * package knows nothing of Offtake: it imports none of it (a test holds that), shares no law with
 * it, and meets it only in two texts, the list of failure modes ({@code modes.txt}, which a test
 * compares with Offtake's own) and the readings files that it writes.
 *
 * <h2>The plant</h2>
 *
 * {@link dev.offtake.measure.cases.Plant} is the invented demo twin at rest: two engines, the
 * isolation valve, the auxiliary unit and the ground supply, numbers typed from
 * demo/demo-twin.yaml. Other laws on purpose:
 *
 * <ul>
 *   <li>one heat capacity; openings by conductance and critical ratio ({@code Gas}); stages by a
 *       monotone cubic in corrected speed ({@code Tap}); the heights' air by the short formula;
 *   <li>regulators follow an S-curve, stand anywhere within a band of friction, and give area by a
 *       power of their stroke ({@code Controller}); the flapper's spring gives way by an
 *       exponential;
 *   <li>the cooler by two films and a closed formula of effectiveness; supplies by a parabola;
 *   <li>joints that seep though no paper says so, zones that lose heat through their louvres.
 * </ul>
 *
 * Holes of parts other than the joints blow outside the zones, and the high stage valve stays live
 * with the bleed switched off: the file says no more.
 *
 * <h2>A case</h2>
 *
 * A healthy plant is drawn within the file's bands ({@code Scatter}); one listed mode ({@code
 * Effects}, from the words of docs/failure-modes.md), or a stranger that no list has ({@code
 * strangers.txt}, each with the parts that a fair judge accepts), or nothing is broken; a run of
 * two to four stops is drawn ({@code Schedule}); speeds, barometer and air are a little off what is
 * said ({@code Running}); a person reads the gauges, with bias, rounding, slips and lamps told
 * wrong ({@code Eyes}), before temperatures have settled ({@code State#unsettled}). The {@linkplain
 * dev.offtake.measure.cases.Case#shift() shift} tells how far the truth stands out of healthy
 * scatter. A run without a state of rest is drawn again and counted.
 *
 * <p>{@link dev.offtake.measure.cases.ShowCases} prints some: {@code java -cp
 * measure/target/classes dev.offtake.measure.cases.ShowCases 1 8}.
 */
@NullMarked
package dev.offtake.measure.cases;

import org.jspecify.annotations.NullMarked;

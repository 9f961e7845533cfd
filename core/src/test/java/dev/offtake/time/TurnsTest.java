package dev.offtake.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Turning points of a course, on swings whose formula is known. */
class TurnsTest {
  private static final double[] TIMES =
      IntStream.rangeClosed(0, 4000).mapToDouble(i -> i / 400.0).toArray();

  private static double[] course(DoubleUnaryOperator of) {
    return IntStream.range(0, TIMES.length).mapToDouble(i -> of.applyAsDouble(TIMES[i])).toArray();
  }

  private static List<Cycle> hunts(double[] opening, double[] pressure) {
    return new Cycle.Course(TIMES, opening, pressure).cycles("valve", "duct");
  }

  @Test
  void aSineTurnsTwiceAPeriod() {
    double[] values = course(t -> 0.5 + 0.1 * Math.sin(2 * Math.PI * 1.5 * t));
    List<Cycle.Turn> turns = Cycle.turns(TIMES, values, 0.005);
    // 1.5 Hz for 10 s: 30 turning points, the first at a quarter period; the start counts as one.
    assertThat(turns).hasSizeBetween(30, 31);
    assertThat(turns.get(turns.size() - 1).at() - turns.get(turns.size() - 3).at())
        .isCloseTo(1 / 1.5, within(0.01));
    List<Cycle> hunts = hunts(values, course(t -> 1e4 * Math.sin(9.42 * t)));
    assertThat(hunts).hasSize(1);
    assertThat(hunts.get(0).hertz()).isCloseTo(1.5, within(0.03));
    assertThat(hunts.get(0).swing()).isCloseTo(0.2, within(0.01));
    assertThat(hunts.get(0).pressure()).isCloseTo(2e4, within(200.0));
  }

  @Test
  void aSwingThatFadesIsAValveThatSettles() {
    double[] values = course(t -> 0.5 + 0.2 * Math.exp(-t) * Math.cos(2 * Math.PI * 2 * t));
    assertThat(hunts(values, course(t -> 1e5 * Math.cos(12.6 * t)))).isEmpty();
  }

  /** A loop just below its limit swings for long, and yet comes to rest. */
  @Test
  void aSwingThatFadesSlowlyIsNoHunt() {
    double[] values = course(t -> 0.5 + 0.2 * Math.exp(-0.06 * t) * Math.cos(2 * Math.PI * 2 * t));
    assertThat(hunts(values, course(t -> 1e5 * Math.cos(12.6 * t)))).isEmpty();
  }

  /** It counts where a gauge shows it, be the valve as still as it may, or the valve itself. */
  @Test
  void aSwingCountsWhereAnythingShowsIt() {
    double[] little = course(t -> 0.5 + 0.001 * Math.sin(2 * Math.PI * 1.5 * t));
    double[] much = course(t -> 0.5 + 0.1 * Math.sin(2 * Math.PI * 1.5 * t));
    assertThat(hunts(little, course(t -> 1700 * Math.sin(9.42 * t)))).isEmpty();
    assertThat(hunts(little, course(t -> 1800 * Math.sin(9.42 * t)))).hasSize(1);
    assertThat(hunts(much, course(t -> 100 * Math.sin(9.42 * t)))).hasSize(1);
    assertThat(hunts(much, new double[0])).hasSize(1);
  }

  /** Small ripples while a large swing goes on are not another swing. */
  @Test
  void aRippleOnASwingIsPartOfIt() {
    double[] values =
        course(t -> 0.5 + 0.2 * Math.sin(2 * Math.PI * t) + 0.001 * Math.sin(2 * Math.PI * 9 * t));
    List<Cycle> hunts = hunts(values, course(t -> 1e4 * Math.sin(6.283 * t)));
    assertThat(hunts).hasSize(1);
    assertThat(hunts.get(0).hertz()).isCloseTo(1, within(0.02));
  }

  @Test
  void oneStrokeIsNoHunt() {
    double[] values = course(t -> t < 4 ? 0 : t < 6 ? (t - 4) / 2 : 1);
    assertThat(hunts(values, course(t -> 1e4 * t))).isEmpty();
  }
}

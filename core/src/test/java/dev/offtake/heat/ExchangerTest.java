package dev.offtake.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.air.Air;
import dev.offtake.air.GasState;
import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ExchangerTest {
  private static final RatedPoint POINT = new RatedPoint(1.2, 720, 480, 1.5, 310);

  private final Exchanger exchanger = POINT.exchanger(Exchanger.USUAL_EXPONENT);

  private static GasState air(double t) {
    GasState air = new GasState();
    air.set(0, t);
    return air;
  }

  private static Exchange exchange(Exchanger of, double fouling, double... in) {
    Exchange out = new Exchange();
    out.fouling = fouling;
    of.evaluate(in[0], air(in[1]), in[2], air(in[3]), out);
    return out;
  }

  /** Central difference of sixth order by one input. */
  private static double slope(
      Exchanger of, ToDoubleFunction<Exchange> f, double[] in, int place, double step) {
    double[] weights = {45, -9, 1};
    double sum = 0;
    for (int i = 1; i <= 3; i++) {
      double[] up = in.clone();
      up[place] += i * step;
      double[] down = in.clone();
      down[place] -= i * step;
      double difference =
          f.applyAsDouble(exchange(of, 0.2, up)) - f.applyAsDouble(exchange(of, 0.2, down));
      sum += weights[i - 1] * difference;
    }
    return sum / (60 * step);
  }

  @Test
  void meetsItsRatedPoint() {
    Exchange out = exchange(exchanger, 0, 1.2, 720, 1.5, 310);
    assertThat(Air.temperature(out.hHotOut)).isCloseTo(480, within(1e-8));
    assertThat(out.ua).isCloseTo(exchanger.ua(), within(1e-9 * out.ua));
  }

  @ParameterizedTest
  @CsvSource({
    "1.2, 720, 1.5, 310",
    "0.4, 800, 0.9, 250",
    "0.02, 640, 1.1, 300",
    "1.1, 640, 0.003, 300",
    "0.7, 300, 0.7, 560",
    "0.5, 400.2, 0.6, 400",
    "0.5, 500, 0.5, 300",
    "1e-6, 500, 0.5, 300",
    "0.5, 500, 1e-6, 300",
    "2e-6, 500, 1e-6, 300",
    "0, 500, 0.5, 300",
    "0.5, 500, 0, 300",
    "0, 500, 0, 300"
  })
  void derivativesAreThoseOfTheValues(double mHot, double tHot, double mCold, double tCold) {
    double[] in = {mHot, tHot, mCold, tCold};
    Exchange out = exchange(exchanger, 0.2, in);
    for (int place = 0; place < 4; place++) {
      boolean byFlow = place % 2 == 0;
      double step = byFlow ? Math.hypot(in[place] * 2e-3, 2e-8) : 0.02;
      // Rounding of enthalpies of some 1e5 J/kg over the step, besides three parts in ten million.
      double noise = 3e-8 / step;
      double q = slope(exchanger, e -> e.q, in, place, step);
      assertThat(out.dq[place]).isCloseTo(q, within(3e-7 * Math.abs(q) + noise));
      double hot = slope(exchanger, e -> e.hHotOut, in, place, step);
      assertThat(out.dHHotOut[place]).isCloseTo(hot, within(3e-7 * Math.abs(hot) + noise));
      double cold = slope(exchanger, e -> e.hColdOut, in, place, step);
      assertThat(out.dHColdOut[place]).isCloseTo(cold, within(3e-7 * Math.abs(cold) + noise));
    }
  }

  @Property(tries = 500, seed = "8")
  void keepsBothLawsOfThermodynamics(
      @ForAll @DoubleRange(min = -12, max = 1) double lnHot,
      @ForAll @DoubleRange(min = -12, max = 1) double lnCold,
      @ForAll @DoubleRange(min = 210, max = 900) double tHot,
      @ForAll @DoubleRange(min = 210, max = 900) double tCold) {
    double mHot = Math.pow(10, lnHot);
    double mCold = Math.pow(10, lnCold);
    Exchange out = exchange(exchanger, 0.1, mHot, tHot, mCold, tCold);
    double low = Air.h(Math.min(tHot, tCold)) - 1e-6;
    double high = Air.h(Math.max(tHot, tCold)) + 1e-6;
    assertThat(out.hHotOut).isBetween(low, high);
    assertThat(out.hColdOut).isBetween(low, high);
    double given = mHot * (Air.h(tHot) - out.hHotOut);
    double taken = mCold * (out.hColdOut - Air.h(tCold));
    double rounding = 1e-9 * (mHot + mCold);
    assertThat(given).isCloseTo(out.q, within(1e-12 * Math.abs(out.q) + rounding));
    assertThat(taken).isCloseTo(out.q, within(1e-12 * Math.abs(out.q) + rounding));
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "0, 1", "1, 0", "1e-300, 1e-300", "1e-12, 1", "1, 1e-12"})
  void isFiniteWithoutFlow(double mHot, double mCold) {
    Exchange out = exchange(exchanger, 0, mHot, 700, mCold, 300);
    assertThat(out.q).isFinite();
    assertThat(Arrays.stream(out.dq)).allMatch(Double::isFinite);
    assertThat(Arrays.stream(out.dHHotOut)).allMatch(Double::isFinite);
    assertThat(Arrays.stream(out.dHColdOut)).allMatch(Double::isFinite);
  }

  @Test
  void passesAirUnchangedWhenTheOtherSideIsStill() {
    Exchange out = exchange(exchanger, 0, 1.2, 700, 0, 300);
    assertThat(out.q).isZero();
    assertThat(out.hHotOut).isEqualTo(Air.h(700));
    out = exchange(exchanger, 0, 0, 700, 1.2, 300);
    assertThat(out.hColdOut).isEqualTo(Air.h(300));
    assertThat(Air.temperature(out.hHotOut)).isCloseTo(300, within(0.1));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.1, 0.5, 0.9})
  void foulingTakesItsShareAtTheRatedPoint(double share) {
    Exchange out = exchange(exchanger, share, 1.2, 720, 1.5, 310);
    assertThat(out.ua).isCloseTo((1 - share) * exchanger.ua(), within(1e-9 * exchanger.ua()));
  }

  @Test
  void surfaceFollowsThePowerOfTheFlow() {
    double scale = Math.pow(0.5, 0.6);
    Exchange out = exchange(exchanger, 0, 0.6, 720, 0.75, 310);
    assertThat(out.ua).isCloseTo(scale * exchanger.ua(), within(1e-9 * out.ua));
    Exchanger lopsided = new Exchanger(1000, 1.2, 1.5, 0.6, 0.8);
    out = exchange(lopsided, 0, 0.6, 720, 1.5, 310);
    assertThat(1 / out.ua).isCloseTo((0.8 / scale + 0.2) / 1000, within(1e-12));
  }

  @Test
  void refusesARatingThatNoCoreCanMeet() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new RatedPoint(1, 700, 310, 0.5, 300).exchanger(0.6))
        .withMessageContaining("check the flows");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new RatedPoint(1, 700, 290, 0.5, 300))
        .withMessageContaining("which side is the hot one");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new RatedPoint(0, 700, 500, 0.5, 300))
        .withMessageContaining("hot side");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Exchanger(-1, 1, 1, 0.6, 0.5))
        .withMessageContaining("conductance");
  }

  @Property(tries = 100, seed = "9")
  void findsTheSizeOfAnyRating(@ForAll @DoubleRange(min = 0.01, max = 0.97) double effectiveness) {
    double drop = effectiveness * (Air.h(700) - Air.h(300));
    double tOut = Air.temperature(Air.h(700) - drop);
    Exchanger sized = new RatedPoint(1, 700, tOut, 1.3, 300).exchanger(0.6);
    Exchange out = exchange(sized, 0, 1, 700, 1.3, 300);
    assertThat(Air.temperature(out.hHotOut)).isCloseTo(tOut, within(1e-7));
  }
}

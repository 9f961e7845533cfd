package dev.offtake.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AirTest {

  /** Central difference of sixth order. */
  private static double slope(DoubleUnaryOperator f, double x, double step) {
    double one = f.applyAsDouble(x + step) - f.applyAsDouble(x - step);
    double two = f.applyAsDouble(x + 2 * step) - f.applyAsDouble(x - 2 * step);
    double three = f.applyAsDouble(x + 3 * step) - f.applyAsDouble(x - 3 * step);
    return (45 * one - 9 * two + three) / (60 * step);
  }

  @ParameterizedTest
  @ValueSource(doubles = {120, 190, 210, 288.15, 500, 800, 990, 1010, 1500, 1990, 2010, 2600})
  void derivativesAreThoseOfTheValues(double t) {
    double step = 0.5;
    assertThat(Air.cp(t)).isCloseTo(slope(Air::h, t, step), within(1e-7));
    assertThat(Air.cp(t) / t).isCloseTo(slope(Air::s0, t, step), within(1e-9));
    assertThat(Air.dCp(t)).isCloseTo(slope(Air::cp, t, step), within(1e-9));
    assertThat(Air.dGamma(t)).isCloseTo(slope(Air::gamma, t, step), within(1e-12));
    assertThat(Air.dViscosity(t) * 1e6)
        .isCloseTo(slope(x -> 1e6 * Air.viscosity(x), t, step), within(1e-11));
  }

  @ParameterizedTest
  @ValueSource(doubles = {200, 1000, 2000})
  void valuesMeetAtTheJoints(double joint) {
    double below = Math.nextDown(joint);
    double above = Math.nextUp(joint);
    // The two ranges of the report part by 2e-9 of cp at 1000 K, as printed.
    assertThat(Air.cp(above)).isCloseTo(Air.cp(below), within(4e-9 * Air.cp(joint)));
    assertThat(Air.h(above)).isCloseTo(Air.h(below), within(1e-8));
    assertThat(Air.s0(above)).isCloseTo(Air.s0(below), within(1e-10));
  }

  @ParameterizedTest
  @ValueSource(doubles = {200, 2000})
  void slopesMeetAtTheEndsOfTheRange(double joint) {
    assertThat(Air.dCp(Math.nextUp(joint))).isCloseTo(Air.dCp(Math.nextDown(joint)), within(1e-12));
  }

  @Property(tries = 300, seed = "1")
  void enthalpyIsInverted(@ForAll @DoubleRange(min = 50, max = 4000) double t) {
    assertThat(Air.temperature(Air.h(t))).isCloseTo(t, within(1e-11 * t));
  }

  @Property(tries = 300, seed = "2")
  void enthalpyRises(
      @ForAll @DoubleRange(min = -500, max = 6000) double t,
      @ForAll @DoubleRange(min = 0.01, max = 100) double step) {
    assertThat(Air.h(t + step)).isGreaterThan(Air.h(t));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-300, 0, 1, 19, 5000})
  void staysFiniteOutOfRange(double t) {
    GasState state = new GasState();
    state.set(0, t);
    double[] all = {state.h, state.cp, state.dcp, state.gamma, state.dGamma};
    assertThat(Arrays.stream(all)).allMatch(Double::isFinite);
    assertThat(state.gamma).isGreaterThan(1);
    assertThat(Air.viscosity(t)).isFinite().isPositive();
    assertThat(Air.dViscosity(t)).isFinite();
    assertThat(Air.conductivity(t)).isFinite();
    assertThat(Air.inRange(t)).isFalse();
  }

  @Test
  void knowsItsRange() {
    assertThat(Air.inRange(200)).isTrue();
    assertThat(Air.inRange(2000)).isTrue();
    assertThat(Air.inRange(199.9)).isFalse();
    assertThat(Air.inRange(Double.NaN)).isFalse();
    assertThat(Air.temperature(Double.NaN)).isNaN();
  }

  @Property(tries = 100, seed = "3")
  void stateHoldsTheSameAsTheFunctions(
      @ForAll @DoubleRange(min = -3, max = 4) double lnP,
      @ForAll @DoubleRange(min = 150, max = 2200) double t) {
    GasState state = new GasState();
    state.set(lnP, t);
    assertThat(state.p).isEqualTo(1e5 * Math.exp(lnP));
    assertThat(state.lnP).isEqualTo(lnP);
    assertThat(state.t).isEqualTo(t);
    assertThat(state.h).isEqualTo(Air.h(t));
    assertThat(state.cp).isEqualTo(Air.cp(t));
    assertThat(state.dcp).isEqualTo(Air.dCp(t));
    assertThat(state.gamma).isEqualTo(Air.gamma(t));
    assertThat(state.dGamma).isEqualTo(Air.dGamma(t));
  }
}

package dev.offtake.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.offtake.stability.Mode.Share;
import dev.offtake.stability.Stability.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Modes in words. */
class JudgementTest {
  private static Mode valve(double growth, double circular) {
    return new Mode(growth, circular, List.of(new Share("bleed regulator", true, 1)));
  }

  private static Mode air(double growth) {
    return new Mode(growth, 0, List.of(new Share("start duct", false, 1)));
  }

  @ParameterizedTest
  @CsvSource({
    "-1.0, 0, STEADY",
    "-1.0, 6, STEADY",
    "-1.0, 7, RINGS",
    "-7.0, 60, STEADY",
    "-0.1, 9, RINGS",
    "-0.1, 11, BARELY_STEADY",
    "1e-9, 11, BARELY_STEADY",
    "0.1, 11, HUNTS",
    "0.1, 0, LEAVES",
  })
  void theVerdictFollowsDampingAndGrowth(double growth, double circular, Verdict verdict) {
    assertThat(Judgement.of(List.of(valve(growth, circular))).verdict()).isEqualTo(verdict);
  }

  @Test
  void aSteadyAnswerIsOneLineAndStillAirIsToldApart() {
    Stability stability = Judgement.of(List.of(air(-0.01), valve(-1, 0)));
    assertThat(stability.says())
        .containsExactly("steady: an upset is gone in about 3 s; in still air about 5 min");
  }

  @Test
  void aSlowValveIsNamed() {
    assertThat(Judgement.of(List.of(valve(-0.25, 0))).says())
        .containsExactly("steady: an upset is gone in about 10 s (bleed regulator)");
  }

  @Test
  void whatGrowsIsNamed() {
    assertThat(Judgement.of(List.of(valve(2, 25))).says())
        .containsExactly(
            "HUNTS: bleed regulator, about 4.0 Hz, grows threefold in about 0.5 s until a stop"
                + " ends it");
    assertThat(Judgement.of(List.of(valve(3.5, 0))).says())
        .containsExactly(
            "WOULD NOT STAY HERE: bleed regulator runs away, threefold in about 0.3 s");
  }

  @Test
  void twoModesOfOneDriverAreToldOnce() {
    assertThat(Judgement.of(List.of(valve(2, 25), valve(1, 25))).says()).hasSize(1);
  }

  @Test
  void aNetworkWithoutStatesIsSteady() {
    assertThat(Judgement.of(List.of()).says()).containsExactly("steady");
  }

  @Test
  void lagsThatDecideAreSaid() {
    Stability usual = Judgement.of(List.of(valve(-1, 5)));
    Stability slower = Judgement.of(List.of(valve(2, 25)));
    Stability stability = Judgement.mayHunt(usual, slower);
    assertThat(stability.verdict()).isEqualTo(Verdict.MAY_HUNT);
    assertThat(stability.verdict().words()).isEqualTo("may hunt");
    assertThat(stability.says()).hasSize(2);
    assertThat(stability.says().get(1)).contains("bleed regulator, about 4.0 Hz, if sense line");
    assertThat(Judgement.mayHunt(slower, usual).says().get(0)).contains("twice as quick");
  }

  @ParameterizedTest
  @CsvSource({
    "0.02, under 0.1 s",
    "0.44, about 0.4 s",
    "0.97, about 1 s",
    "12, about 10 s",
    "100, about 2 min",
    "9000, about 3 h",
    "400000, days",
  })
  void timesAreNoFinerThanTheyAreWorth(double seconds, String says) {
    assertThat(Times.seconds(seconds)).isEqualTo(says);
  }

  @ParameterizedTest
  @CsvSource({"0.05, once in about 20 s", "4.37, about 4.4 Hz", "22.4, about 22 Hz"})
  void frequenciesToo(double hertz, String says) {
    assertThat(Times.hertz(hertz)).isEqualTo(says);
  }

  @Test
  void lagsAreNotNegative() {
    assertThatThrownBy(() -> new Lags(0, 0, -1, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Lags(0, 0, 0, 0)).isInstanceOf(IllegalArgumentException.class);
  }
}

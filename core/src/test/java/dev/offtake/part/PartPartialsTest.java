package dev.offtake.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every partial of every stream against central differences, both ways round. */
class PartPartialsTest {
  private static final double CLOSE = 2e-6;

  @ParameterizedTest
  @ValueSource(doubles = {1.2e5, 2.5e5, 3.6e5, 4.5e5})
  void tapWithoutAndWithDroop(double duct) {
    new Rig(CompressorTap.KIND.build(Samples.tapFacts()))
        .set("duct", duct, 500)
        .comparePartials(CLOSE);
    new Rig(CompressorTap.KIND.build(Samples.drooping()))
        .set("duct", duct, 500)
        .comparePartials(CLOSE);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 20, 30, 42, 44.69, 44.71, 60})
  void supply(double psig) {
    Rig rig = new Rig(Supply.KIND.build(Samples.supply()));
    rig.set("duct", 101325 + psig * Samples.PSI, 400).comparePartials(1e-5);
  }

  @ParameterizedTest
  @CsvSource({"3e5, 2.9e5", "2.9e5, 3e5", "3e5, 1.2e5", "3e5, 2.9999e5", "2.9999e5, 3e5"})
  void duct(double up, double down) {
    Rig rig = new Rig(Duct.KIND.build(Samples.duct()));
    rig.set("up", up, 520).set("down", down, 470).comparePartials(5e-5, 1e-8);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.9e5, 1.2e5, 1.6e5, 1.84e5, 2e5, 4e5})
  void flowUser(double duct) {
    Rig rig = userRig();
    rig.set("duct", duct, 450).comparePartials(CLOSE);
  }

  @ParameterizedTest
  @CsvSource({"1, 1", "-1, 1", "1, -1", "-1, -1"})
  void exchanger(int hotWay, int coldWay) {
    Rig rig = new Rig(HeatExchanger.KIND.build(Samples.exchanger()));
    set(rig, hotWay, coldWay).comparePartials(2e-5);
  }

  @Test
  void exchangerGivesWhatItTakesEitherWayRound() {
    Rig rig = new Rig(HeatExchanger.KIND.build(Samples.exchanger()));
    for (int way = 0; way < 4; way++) {
      set(rig, way % 2 == 0 ? 1 : -1, way < 2 ? 1 : -1).run();
      Branch hot = rig.element.branches().get(0);
      Branch cold = rig.element.branches().get(1);
      double lost = hot.mdot * (hot.hFrom - hot.hTo);
      double won = cold.mdot * (cold.hTo - cold.hFrom);
      assertThat(lost).isGreaterThan(5e4).isCloseTo(won, within(1e-6 * lost));
    }
  }

  @Test
  void exchangerMeetsItsRatedPoint() {
    Rig rig = new Rig(HeatExchanger.KIND.build(Samples.exchanger()));
    double hot = 101325 + 40 * Samples.PSI;
    double cold = 101325 + 4 * Samples.PSI;
    rig.set("hot in", hot, 650).set("hot out", hot - 2 * Samples.PSI, 480);
    rig.set("cold in", cold, 320).set("cold out", cold - 0.8 * Samples.PSI, 430);
    Branch branch = rig.run();
    double[] seen = new double[3];
    rig.element.observe(rig.e, seen, 0);
    assertThat(branch.mdot).isCloseTo(0.7, within(1e-9));
    assertThat(seen[1]).isCloseTo(480, within(1e-6));
  }

  static Rig userRig() {
    Rig rig = new Rig(FlowUser.KIND.build(Samples.user()));
    rig.e.controls[0] = 52 * Samples.LB_MIN;
    return rig;
  }

  private static Rig set(Rig rig, int hotWay, int coldWay) {
    rig.set("hot in", 3e5 + 5e3 * hotWay, 640).set("hot out", 3e5 - 5e3 * hotWay, 620);
    return rig.set("cold in", 1.2e5 + 3e3 * coldWay, 320)
        .set("cold out", 1.2e5 - 3e3 * coldWay, 350);
  }
}

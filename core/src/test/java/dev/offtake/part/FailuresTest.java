package dev.offtake.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.air.Air;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Failures of single parts: exchangers, gauges, users, supplies, and the slopes of broken laws. */
class FailuresTest {
  private static final double CLOSE = 2e-6;

  private static Mode mode(Part part, String name) {
    return part.modes().stream().filter(m -> m.name().equals(name)).findFirst().orElseThrow();
  }

  /** Sets the numbers of a part as a mode does. */
  private static void fail(Part part, String name, double extent, double[] parameters) {
    for (Mode.Shift shift : mode(part, name).shifts()) {
      int at = 0;
      while (!part.parameters().get(at).name().equals(shift.parameter())) {
        at++;
      }
      parameters[at] = shift.becomes().of(part.parameters().get(at).value(), extent);
    }
  }

  /**
   * Equal flows, core rated to NTU = 2, fouled to NTU = 2·(1 − f): effectiveness of a cross-flow
   * core with both streams unmixed. Source: the values of {@code CrossFlowCheckTest} (two
   * independent series; Kays and London's table, from memory, is these rounded).
   */
  @ParameterizedTest
  @CsvSource({"0.25, 0.56017293", "0.5, 0.47622239", "0.75, 0.32632998", "0.875, 0.19854393"})
  void fouledCoreHasTheEffectivenessOfItsTransferUnits(double fouling, double effectiveness) {
    double rated = 0.61424724;
    double hotIn = Air.h(650);
    double span = hotIn - Air.h(320);
    KindFacts facts =
        Samples.exchanger()
            .si("rated hot flow", 0.7, Dimension.MASS_FLOW)
            .si("rated cold flow", 0.7, Dimension.MASS_FLOW)
            .si("rated hot outlet", Air.temperature(hotIn - rated * span), Dimension.TEMPERATURE);
    Part part = HeatExchanger.KIND.build(facts);
    Rig rig = new Rig(part);
    double hot = 101325 + 40 * Samples.PSI;
    double cold = 101325 + 4 * Samples.PSI;
    rig.set("hot in", hot, 650).set("hot out", hot - 2 * Samples.PSI, 480);
    rig.set("cold in", cold, 320).set("cold out", cold - 0.8 * Samples.PSI, 430);
    fail(part, "fouled", fouling, rig.e.parameters);
    Branch branch = rig.run();
    assertThat((branch.hFrom - branch.hTo) / span).isCloseTo(effectiveness, within(2e-8));
    rig.comparePartials(2e-5);
  }

  @Test
  void blockedSideOfACorePassesItsShare() {
    Part part = HeatExchanger.KIND.build(Samples.exchanger());
    Rig rig = new Rig(part).set("hot in", 3e5, 640).set("hot out", 2.9e5, 500);
    rig.set("cold in", 1.2e5, 320).set("cold out", 1.18e5, 400);
    double sound = rig.run().mdot;
    fail(part, "hot side blocked", 0.4, rig.e.parameters);
    assertThat(rig.run().mdot).isCloseTo(0.6 * sound, within(1e-12));
  }

  /** Opening follows the air's temperature; the slope by it is exact on both sides of a stop. */
  @ParameterizedTest
  @ValueSource(doubles = {380, 400, 450, 500, 520})
  void hotHoleAgainstItsDifferences(double kelvin) {
    Rig rig = new Rig(HotHole.tight("gap", "duct", "zone"));
    rig.e.parameters[0] = 2e-4;
    rig.set("duct", 2.5e5, kelvin).set("zone", 1.02e5, 310).comparePartials(CLOSE);
    rig.set("duct", 1.0e5, kelvin).set("zone", 1.02e5, 310).comparePartials(CLOSE);
    double share = Math.max(0, Math.min(1, (kelvin - 394.261) / (505.372 - 394.261)));
    double expected = ClosedForms.nozzle(share * 2e-4, 2.5e5, kelvin, 1.02e5);
    rig.set("duct", 2.5e5, kelvin);
    assertThat(rig.run().mdot).isCloseTo(expected, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"30, 1e-4, 0", "42, 1e-4, 0", "44.9, 1e-4, 1e-4", "60, 0, 2e-4", "44, 8e-4, 0"})
  void brokenSupplyAgainstItsDifferences(double psig, double hose, double back) {
    Rig rig = new Rig(Supply.KIND.build(Samples.supply()));
    rig.e.parameters[SupplyPart.HOSE_LEAK] = hose;
    rig.e.parameters[SupplyPart.BACK_LEAK] = back;
    rig.set("duct", 101325 + psig * Samples.PSI, 400).comparePartials(1e-5);
  }

  @ParameterizedTest
  @CsvSource({
    "0, stuck on, 1",
    "1, stuck shut, 0",
    "1, takes too much, 1.5",
    "1, takes too little, 0.5"
  })
  void userThatDoesNotObey(double asked, String name, double times) {
    KindFacts facts = Samples.user();
    facts.with(
        "takes",
        List.of(
            new Facts.When(
                Stated.of(52 * Samples.LB_MIN, Dimension.MASS_FLOW),
                new BenchFacts.Words("pack switch is ON"))));
    Bench bench = new Bench(FlowUser.KIND.build(facts)).at("duct", 60, 450);
    bench.control(0, asked * 52 * Samples.LB_MIN);
    fail(bench.part, name, 0.5, bench.e.parameters);
    double wants = times * 52 * Samples.LB_MIN;
    assertThat(bench.run().mdot).isCloseTo(wants, within(1e-3 * 52 * Samples.LB_MIN));
    assertThat(bench.part.is("on", bench.view())).isTrue();
    assertThat(bench.part.is("starved", bench.view())).isEqualTo(times == 0);
    String told = bench.doing().word() + " " + bench.doing().why();
    assertThat(told).containsPattern("stuck|% of its schedule");
    assertThat(bench.worstPartial()).isLessThan(1e-5);
  }

  /** Where the duct is too low for its schedule, the hole rules: a hole passes by its area. */
  @ParameterizedTest
  @CsvSource({"takes too much, 1.5", "takes too little, 0.5"})
  void userThatIsStarvedTakesTooMuchOrTooLittleAsWell(String name, double times) {
    KindFacts facts = Samples.user();
    facts.with(
        "takes",
        List.of(
            new Facts.When(
                Stated.of(52 * Samples.LB_MIN, Dimension.MASS_FLOW),
                new BenchFacts.Words("pack switch is ON"))));
    Bench bench = new Bench(FlowUser.KIND.build(facts)).at("duct", 3, 450);
    bench.control(0, 52 * Samples.LB_MIN);
    double sound = bench.run().mdot;
    assertThat(sound).isLessThan(0.8 * 52 * Samples.LB_MIN);
    fail(bench.part, name, 0.5, bench.e.parameters);
    assertThat(bench.run().mdot / sound).isCloseTo(times, within(1e-9));
  }

  private static Bench twoNeedles() {
    KindFacts facts =
        new KindFacts()
            .with("scale", "0..80 psig")
            .with("good to", "1 psi")
            .with("relative to", "ambient")
            .with(
                "needles",
                List.of(
                    new Facts.Needle("L", new Facts.Reading("left duct", false)),
                    new Facts.Needle("R", new Facts.Reading("right duct", false))));
    return new Bench(Gauge.KIND.build(facts)).at("left duct", 15, 500).at("right duct", 22, 500);
  }

  @ParameterizedTest
  @CsvSource({
    "reads high, 3, 18, 25, reads 3.0 psi too high",
    "reads low, 3, 12, 19, reads 3.0 psi too low",
    "L needle reads high, 3, 18, 22, needle L reads 3.0 psi too high",
    "R needle reads low, 3, 15, 19, needle R reads 3.0 psi too low",
    "L needle stuck, 40, 40, 22, needle L no longer moves",
    "R sender line blocked, 7, 15, 7, needle R no longer moves",
    "needles crossed, 1, 22, 15, its lines are crossed"
  })
  void gaugeThatMisleads(String name, double psi, double left, double right, String why) {
    Bench bench = twoNeedles();
    fail(bench.part, name, psi * Bench.PSI, bench.e.parameters);
    Gauge gauge = (Gauge) bench.part;
    assertThat(gauge.shows(0, bench.view())).isCloseTo(left * Bench.PSI, within(1e-6));
    assertThat(gauge.shows(1, bench.view())).isCloseTo(right * Bench.PSI, within(1e-6));
    assertThat(bench.doing().why()).contains(why);
  }

  @Test
  void senderLineLosesItsShareOfTheGaugePressure() {
    Bench bench = twoNeedles();
    fail(bench.part, "R sender line leaks", 0.3, bench.e.parameters);
    Gauge gauge = (Gauge) bench.part;
    assertThat(gauge.shows(1, bench.view())).isCloseTo(0.7 * 22 * Bench.PSI, within(1e-6));
    assertThat(bench.doing().why()).contains("line of needle R loses 30 % of 22.0 psig");
  }

  /** A vacuum gauge, one as coarse as its scale, and one that is said to be exact. */
  @ParameterizedTest
  @CsvSource({"-14..0 psig, 1 psi", "0..1 psig, 2 psi", "0..80 psig, 0 psi"})
  void oddGaugesFailInReachOfTheirNumbers(String scale, String good) {
    KindFacts facts =
        new KindFacts()
            .with("reads", new Facts.Reading("duct", false))
            .with("scale", scale)
            .with("good to", good)
            .with("relative to", "ambient");
    Part gauge = Gauge.KIND.build(facts);
    for (Mode mode : gauge.modes()) {
      double[] parameters = new double[gauge.parameters().size()];
      fail(gauge, mode.name(), mode.usualExtent(), parameters);
      for (int i = 0; i < parameters.length; i++) {
        Parameter parameter = gauge.parameters().get(i);
        assertThat(parameters[i]).as(mode.name()).isBetween(parameter.min(), parameter.max());
      }
    }
    assertThat(gauge.modes()).hasSizeGreaterThan(4);
  }

  @Test
  void heldNeedleSaysSo() {
    Bench bench = twoNeedles();
    fail(bench.part, "L needle stuck", 40 * Bench.PSI, bench.e.parameters);
    assertThat(bench.doing().word()).isEqualTo("L stuck at 40.0 psig, R 22.0 psig");
  }

  @Test
  void thermometerDriftsByItsSensor() {
    KindFacts facts =
        new KindFacts()
            .with("reads", new Facts.Reading("duct", true))
            .with("good to", "5 degF")
            .with("relative to", "ambient");
    Bench bench = new Bench(Gauge.KIND.build(facts)).at("duct", 10, 500);
    fail(bench.part, "sensor drifted low", 20, bench.e.parameters);
    assertThat(((Gauge) bench.part).shows(0, bench.view())).isCloseTo(480, within(1e-9));
  }

  /** The bulb is only what is seen: logic goes by the wires. */
  @ParameterizedTest
  @CsvSource({"1, bulb out, off, on", "0, lit by a wiring fault, on, off"})
  void lightIsSeenByItsBulbAndKnownByItsWires(
      double wired, String name, String seen, String carried) {
    KindFacts facts =
        new KindFacts().with("lit when", new BenchFacts.Words("overheat trip is tripped"));
    Bench bench = new Bench(Light.KIND.build(facts)).control(0, wired);
    fail(bench.part, name, 1, bench.e.parameters);
    assertThat(bench.part.is(seen, bench.view())).isTrue();
    assertThat(bench.part.is(carried, bench.view())).isFalse();
    assertThat(bench.part.carries(carried, bench.view())).isTrue();
    assertThat(bench.part.carries(seen, bench.view())).isFalse();
    assertThat(bench.doing().word()).isEqualTo(seen);
  }

  @ParameterizedTest
  @CsvSource({
    "450, dead, 1, off, the loop is dead",
    "300, false alarm, 1, on, a false alarm",
    "410, alarm drifted high, 20, off, is not over its alarm of 417 K",
    "390, alarm drifted low, 20, on, is over its alarm of 377 K"
  })
  void leakLoopThatMisleads(double t, String name, double extent, String word, String why) {
    KindFacts facts =
        new KindFacts()
            .with("watches", new Facts.Reading("zone", true))
            .with("alarm", new Facts.Limit(Stated.of(397, Dimension.TEMPERATURE), 5));
    Bench bench = new Bench(LeakLoop.KIND.build(facts)).at("zone", 0, t);
    fail(bench.part, name, extent, bench.e.parameters);
    assertThat(bench.part.is(word, bench.view())).isTrue();
    assertThat(bench.doing().word()).isEqualTo(word);
    assertThat(bench.doing().why()).contains(why);
  }

  /** Only an insulated duct can lose its insulation; it then loses what a bare one does. */
  @Test
  void bareDuctHasNoInsulationToLose() {
    Part insulated = Duct.KIND.build(Samples.duct());
    Part bare = Duct.KIND.build(Samples.duct().si("insulation thickness", 0, Dimension.LENGTH));
    assertThat(bare.modes()).noneMatch(mode -> mode.name().equals("insulation gone"));
    double times = mode(insulated, "insulation gone").usualExtent();
    double loss = insulated.parameters().get(DuctPart.LOSS).value();
    assertThat(times * loss)
        .isCloseTo(bare.parameters().get(DuctPart.LOSS).value(), within(1e-9 * loss));
  }
}

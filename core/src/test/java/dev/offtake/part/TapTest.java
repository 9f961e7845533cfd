package dev.offtake.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.air.GasState;
import dev.offtake.flow.Flow;
import dev.offtake.flow.NozzleLaw;
import java.util.List;
import org.junit.jupiter.api.Test;

class TapTest {
  @Test
  void givesItsTableBackOnTheDayOfTheTable() {
    Rig rig = new Rig(CompressorTap.KIND.build(Samples.tapFacts()));
    rig.e.conditions = Conditions.standardDay(0.62, 0.3);
    rig.element.boundary(rig.e);
    rig.set("duct", 1.2e5, 400).run();
    double[] seen = new double[3];
    rig.element.observe(rig.e, seen, 0);
    assertThat(seen[Tap.STAGE_P]).isCloseTo(101325 + 8.1 * Samples.PSI, within(1e-6));
    assertThat(seen[Tap.STAGE_T]).isCloseTo(360, within(1e-9));
    assertThat(seen[Tap.BEYOND]).isZero();
  }

  /** 62 % as read at −20 °C counts as 66 % corrected (worked case of the design). */
  @Test
  void coldDayRaisesTheCorrectedSpeed() {
    Conditions cold = new Conditions(101325, 253.15, 101325, 253.15, 0.62, 0.3, false);
    assertThat(cold.coreCorrected()).isCloseTo(0.6615, within(5e-5));
    Rig rig = new Rig(CompressorTap.KIND.build(Samples.tapFacts()));
    rig.e.conditions = cold;
    rig.element.boundary(rig.e);
    rig.run();
    double[] seen = new double[3];
    rig.element.observe(rig.e, seen, 0);
    assertThat((seen[Tap.STAGE_P] - 101325) / (8.1 * Samples.PSI)).isGreaterThan(1.3);
  }

  @Test
  void droopSolvesItsOwnEquation() {
    Rig rig = new Rig(CompressorTap.KIND.build(Samples.drooping()));
    Branch branch = rig.set("duct", 3e5, 450).run();
    double[] seen = new double[4];
    rig.element.observe(rig.e, seen, 0);
    double full = Math.exp(rig.e.variables[branch.variables[Branch.LN_P_FROM]]) * 1e5;
    assertThat(seen[Tap.STAGE_P]).isLessThan(0.99 * full);
    GasState stage = new GasState();
    stage.set(Math.log(seen[Tap.STAGE_P] / 1e5), seen[Tap.STAGE_T]);
    Flow flow = new Flow();
    new NozzleLaw().evaluate(stage, rig.e.gas[branch.to], rig.e.parameters[Tap.AREA], flow);
    assertThat(flow.mdot).isCloseTo(branch.mdot, within(1e-12));
  }

  /**
   * A table that was read in the manifold with bleed: run at that manifold pressure, the tap gives
   * that bleed, and the stage behind the port is what drives it through.
   */
  @Test
  void tableReadInTheManifoldIsCorrectedForThePort() {
    double bleed = 60 * Samples.LB_MIN;
    KindFacts facts = Samples.tapFacts().with("read", "in manifold").with("with", "60 lb/min");
    Part part = CompressorTap.KIND.build(facts);
    assertThat(facts.problems).isEmpty();
    Rig rig = new Rig(part);
    rig.e.conditions = Conditions.standardDay(0.80, 0.3);
    rig.element.boundary(rig.e);
    double manifold = 101325 + 40 * Samples.PSI;
    assertThat(rig.set("duct", manifold, 470).run().mdot).isCloseTo(bleed, within(1e-9));
    double[] seen = new double[3];
    rig.element.observe(rig.e, seen, 0);
    double area = 0.8 * ClosedForms.circle(0.0762);
    assertThat(seen[Tap.STAGE_P]).isGreaterThan(manifold);
    assertThat(ClosedForms.nozzle(area, seen[Tap.STAGE_P], 470, manifold))
        .isCloseTo(bleed, within(1e-9));
  }

  @Test
  void tableReadInTheManifoldCannotHaveMoreBleedThanItsPortPasses() {
    KindFacts facts = Samples.tapFacts().with("read", "in manifold").with("with", "900 lb/min");
    CompressorTap.KIND.build(facts);
    assertThat(facts.problems).isNotEmpty().allMatch(p -> p.startsWith("with: so much air"));
  }

  /** At the table's own speed the core passes the stated 25 kg/s. */
  @Test
  void tellsItsShareOfCoreFlowWhereThatIsKnown() {
    Part part = CompressorTap.KIND.build(Samples.drooping());
    Rig rig = new Rig(part);
    rig.e.conditions = Conditions.standardDay(0.99, 0.9);
    rig.element.boundary(rig.e);
    Branch branch = rig.set("duct", 7e5, 500).run();
    double[] seen = new double[4];
    rig.element.observe(rig.e, seen, 0);
    assertThat(part.observables().get(Tap.SHARE)).isEqualTo(Tap.SHARE_OF_CORE);
    assertThat(seen[Tap.SHARE]).isCloseTo(branch.mdot / 25, within(1e-12)).isPositive();
    assertThat(CompressorTap.KIND.build(Samples.tapFacts()).observables()).hasSize(3);
  }

  @Test
  void stoppedEngineStandsAtItsInlet() {
    Rig rig = new Rig(CompressorTap.KIND.build(Samples.tapFacts()));
    rig.e.controls[0] = 0;
    rig.element.boundary(rig.e);
    assertThat(rig.run().mdot).isZero();
  }

  @Test
  void refusesATableThatDoesNotRise() {
    KindFacts facts =
        Samples.tapFacts()
            .with("table", List.of(new double[] {0.6, 2e5, 400}, new double[] {0.9, 1.9e5, 500}));
    CompressorTap.KIND.build(facts);
    assertThat(facts.problems).singleElement().asString().contains("does not rise");
  }
}

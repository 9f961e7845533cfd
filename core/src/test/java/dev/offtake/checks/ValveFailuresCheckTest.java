package dev.offtake.checks;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.explain.Question;
import dev.offtake.network.Demos;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Solution;
import dev.offtake.study.Broken;
import dev.offtake.study.FaultReader;
import dev.offtake.system.BleedSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the trade says of broken valves; all of it is common practice, no source. */
class ValveFailuresCheckTest {
  private static final BleedSystem TWIN = Demos.demo("twin");
  private static final double PSI = 6894.757293168361;

  private static Solution at(String power, String fault, String... sets) throws Exception {
    return solved(power, "", fault, sets);
  }

  private static Solution solved(String power, String day, String fault, String... sets)
      throws Exception {
    FaultReader reader = new FaultReader(TWIN);
    Broken broken =
        Broken.of(TWIN.network(), TWIN.sides(), fault.isEmpty() ? List.of() : reader.read(fault));
    Question question = Question.of(TWIN, power, day, "", List.of(sets));
    Solution solution = new Settler(broken.network()).solve(broken.setup(question.setup()));
    assertThat(solution.solved()).as(fault + " at " + power).isTrue();
    return solution;
  }

  private static double psig(Solution solution, String point) {
    return (solution.sensed(solution.network().point(point)) - 101325) / PSI;
  }

  private static double degF(Solution solution, String point) {
    return solution.temperature(solution.network().point(point)) * 1.8 - 459.67;
  }

  private static String does(Solution solution, String part) {
    return solution.doing(solution.network().part(part), Style.SHOP).regime();
  }

  /** A line that loses a tenth of its gauge pressure balances a tenth over the set. */
  @Test
  void aLeakingSenseLineRegulatesHigh() throws Exception {
    double healthy = psig(at("take-off", ""), "left regulated duct");
    double leaking =
        psig(at("take-off", "left bleed regulator sense line leaking 10 %"), "left regulated duct");
    assertThat(leaking / healthy).isBetween(1.08, 1.12);
  }

  @Test
  void lossOfMuscleShuts() throws Exception {
    Solution lost = at("take-off", "left bleed regulator muscle lost");
    assertThat(does(lost, "left bleed regulator")).isEqualTo("no muscle");
    assertThat(psig(lost, "left duct")).isLessThan(2);
  }

  @Test
  void aCheckValveStuckOpenIsLowAtIdleAndNormalAtTakeOff() throws Exception {
    String fault = "left mid check valve stuck open";
    double lost =
        psig(at("ground idle", ""), "left duct") - psig(at("ground idle", fault), "left duct");
    assertThat(lost).isGreaterThan(3);
    double high = psig(at("take-off", ""), "left duct") - psig(at("take-off", fault), "left duct");
    assertThat(Math.abs(high)).isLessThan(0.5);
  }

  @Test
  void aHighStageValveStuckShutIsLowAtIdleOnly() throws Exception {
    String fault = "left high stage valve stuck shut";
    double lost =
        psig(at("ground idle", ""), "left duct") - psig(at("ground idle", fault), "left duct");
    assertThat(lost).isGreaterThan(3);
    double high = psig(at("take-off", ""), "left duct") - psig(at("take-off", fault), "left duct");
    assertThat(Math.abs(high)).isLessThan(0.5);
  }

  /** Before its trip shuts the side: high pressure between the stages, and hot air. */
  @Test
  void aHighStageValveStuckOpenShowsAtHighPowerAsPressureAndHeat() throws Exception {
    String fault = "left high stage valve stuck open";
    Solution idle = at("ground idle", fault);
    assertThat(psig(idle, "left interstage"))
        .isBetween(
            psig(at("ground idle", ""), "left interstage") - 1,
            psig(at("ground idle", ""), "left interstage") + 1);
    Solution high = at("take-off", fault);
    Solution before = high.outcome().before().orElse(high);
    Solution healthy = at("take-off", "");
    assertThat(psig(before, "left interstage"))
        .isGreaterThan(psig(healthy, "left interstage") + 30);
    assertThat(degF(before, "left interstage"))
        .isGreaterThan(degF(healthy, "left interstage") + 100);
  }

  /** The thermostat trims first; where its most is not enough, the trip shuts the side. */
  @Test
  void aCoolingAirValveStuckShutEndsInTheThermostatAndThenTheTrip() throws Exception {
    Solution high = at("take-off", "left cooling air valve stuck shut");
    Solution before = high.outcome().before().orElseThrow();
    assertThat(does(before, "left regulator thermostat")).isEqualTo("at its most");
    assertThat(does(high, "left overheat trip")).isEqualTo("tripped");
    assertThat(does(high, "left bleed regulator")).isEqualTo("shut by command");
  }

  /** The vent holds the air of the ground: at height the set stands too high by the difference. */
  @Test
  void aBlockedVentRegulatesHighInHeightAndNotOnTheGround() throws Exception {
    String fault = "left bleed regulator vent blocked 14.7 psia";
    double ground = psig(at("take-off", fault), "left regulated duct");
    assertThat(ground - psig(at("take-off", ""), "left regulated duct")).isBetween(-0.1, 0.1);
    Solution high = aloft(fault);
    Solution healthy = aloft("");
    double raised = psig(high, "left regulated duct") - psig(healthy, "left regulated duct");
    // 14.696 psia on the ground, 10.108 psia at 10,000 ft (U.S. Standard Atmosphere 1976).
    assertThat(raised).isBetween(4.588 - 0.4, 4.588 + 0.2);
  }

  private static Solution aloft(String fault) throws Exception {
    return solved("take-off", "10000 ft, ISA +0 degF", fault);
  }

  @Test
  void crossedSenseLinesFeelTheOtherSide() throws Exception {
    String fault = "left bleed regulator sense lines crossed";
    Solution off = at("take-off", fault, "right bleed switch: OFF");
    assertThat(does(off, "left bleed regulator")).isEqualTo("wide open");
    assertThat(psig(off, "left regulated duct"))
        .isGreaterThan(psig(at("take-off", ""), "left regulated duct") + 10);
  }

  @Test
  void aSolenoidStuckOpenHearsNoSwitch() throws Exception {
    String fault = "left bleed regulator solenoid stuck open";
    Solution on = at("take-off", fault, "left bleed switch: OFF");
    assertThat(does(on, "left bleed regulator")).isEqualTo("regulating");
    int part = on.network().part("left bleed regulator");
    assertThat(on.doing(part, Style.SHOP).why()).contains("its solenoid does not shut it");
  }

  /** A hand still opens what a dead actuator does not, but not a stuck body. */
  @Test
  void aHandMovesAValveWhoseActuatorIsDead() throws Exception {
    String lock = "isolation valve: locked open";
    Solution dead = at("ground idle", "isolation valve actuator stuck shut", lock);
    assertThat(does(dead, "isolation valve")).isEqualTo("locked open");
    Solution stuck = at("ground idle", "isolation valve stuck shut", lock);
    assertThat(does(stuck, "isolation valve")).isEqualTo("stuck");
  }

  @Test
  void aFalseTripShutsTheSideFromTheStart() throws Exception {
    Solution tripped = at("ground idle", "left overheat trip false");
    assertThat(does(tripped, "left bleed regulator")).isEqualTo("shut by command");
    assertThat(does(tripped, "left bleed trip light")).isEqualTo("on");
    assertThat(tripped.outcome().before()).isEmpty();
  }
}

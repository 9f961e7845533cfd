package dev.offtake.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.explain.Question;
import dev.offtake.network.Network;
import dev.offtake.part.Conditions;
import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import dev.offtake.system.SystemReader;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Slopes by the implicit function theorem against differences of answers that were solved with the
 * number a little above and a little below, and the adjoint against the forward form, on the demo.
 */
class SensitivitiesTest {
  /** Share of a number by which it is moved; what is solved is known to about 1e-9. */
  private static final double MOVE = 1e-3;

  private static Network network;
  private static Setup setup;
  private static Solution solution;
  private static Sensitivities slopes;

  @BeforeAll
  static void solve() throws Exception {
    var system = SystemReader.read(Path.of("../demo/demo-twin.yaml")).system().orElseThrow();
    network = system.network();
    setup = Question.of(system, "95 %", "", "", List.of()).setup();
    solution = new Settler(network).solve(setup);
    slopes = Sensitivities.at(solution).orElseThrow();
  }

  private static Solution with(Setup asked, String part, String number, double value) {
    Map<Setup.PartNumber, Double> changed = new HashMap<>();
    changed.put(new Setup.PartNumber(part, number), value);
    return new Settler(network)
        .goOn(solution, new Setup(asked.conditions(), asked.positions(), asked.locks(), changed));
  }

  private static int which(Part part, String number) {
    return part.parameters().stream().map(Parameter::name).toList().indexOf(number);
  }

  private static void check(String partName, String number, String point) {
    int part = network.part(partName);
    int which = which(network.parts().get(part), number);
    Parameter parameter = network.parts().get(part).parameters().get(which);
    double move = MOVE * Math.max(Math.abs(parameter.value()), parameter.high() - parameter.low());
    int at = network.point(point);
    Solution high = with(setup, partName, number, parameter.value() + move);
    Solution low = with(setup, partName, number, parameter.value() - move);
    double solved = (high.pressure(at) - low.pressure(at)) / (2 * move);
    double forward = slopes.byNumber(part, which)[2 * at] * solution.pressure(at);
    double adjoint = slopes.of(Quantity.pressure(at)).byNumber(part, which);
    assertThat(Math.abs(solved) * move).as("the number is felt, Pa").isGreaterThan(1);
    assertThat(forward / solved).as(number).isCloseTo(1, within(2e-3));
    assertThat(adjoint / forward).as(number).isCloseTo(1, within(1e-6));
  }

  @Test
  void aRegulatorsSetAndDroopMoveThePressureThatItHolds() {
    check("left bleed regulator", "set", "left regulated duct");
    check("left bleed regulator", "droop", "left regulated duct");
  }

  @Test
  void aTapsCurveMovesItsManifold() {
    check("left mid tap", "curve between points", "left mid duct");
  }

  @Test
  void powerMovesPressureAndTemperatureAsSolvingSays() {
    Conditions here = setup.conditions();
    Conditions there = here.withSpeeds(here.core() + 1e-3, here.fan() + 1e-3);
    Conditions back = here.withSpeeds(here.core() - 1e-3, here.fan() - 1e-3);
    Solution high = new Settler(network).goOn(solution, setup.at(there));
    Solution low = new Settler(network).goOn(solution, setup.at(back));
    double[] move = slopes.toward(there);
    int at = network.point("left duct");
    double solved = (high.temperature(at) - low.temperature(at)) / 2;
    assertThat(Math.abs(solved)).isGreaterThan(0.01);
    assertThat(move[2 * at + 1] / solved).isCloseTo(1, within(2e-3));
    assertThat(slopes.of(Quantity.temperature(at)).toward(there) / solved)
        .isCloseTo(1, within(2e-3));
    Quantity gauge = Quantity.sensed(at);
    double read = (high.sensed(at) - low.sensed(at)) / 2;
    assertThat(slopes.of(gauge).toward(there) / read).isCloseTo(1, within(2e-3));
  }

  @Test
  void theFlowOfATapFollowsTheOpeningOfItsUser() {
    int tap = network.part("left mid tap");
    int pack = network.part("left pack");
    int which = which(network.parts().get(pack), "demand");
    assertThat(which).isNotNegative();
    Parameter takes = network.parts().get(pack).parameters().get(which);
    double move = MOVE * takes.value();
    double high = with(setup, "left pack", "demand", takes.value() + move).flow(tap, 0);
    double low = with(setup, "left pack", "demand", takes.value() - move).flow(tap, 0);
    double slope = slopes.of(Quantity.flow(tap, 0)).byNumber(pack, which);
    assertThat(slope).isCloseTo((high - low) / (2 * move), within(2e-3));
    assertThat(slope).isGreaterThan(0.1);
  }
}

package dev.offtake.solve;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.network.Demos;
import dev.offtake.study.Broken;
import dev.offtake.study.FaultReader;
import dev.offtake.system.BleedSystem;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lights read the position that a valve tells, which a broken switch makes the wrong one. */
class ValvePositionsTest {
  private static final BleedSystem BENCH =
      Demos.text(
          """
          switches:
            valve switch: [SHUT, OPEN]
          parts:
            cart:
              kind: supply
              to: duct
              table: {columns: [psig, lb/min], rows: [[45, 0], [38, 120]]}
            valve:
              kind: shutoff valve
              path: duct -> load
              bore: 2 in
              open when: valve switch is OPEN
            nozzle: {kind: orifice user, takes from: load, bore: 1 in}
          lights:
            open light: {lit when: valve is open}
            shut light: {lit when: valve is shut}
            transit light: {lit when: valve is not shut and not valve is open}
          """);

  @ParameterizedTest
  @CsvSource({
    "OPEN, '', on, off, off",
    "SHUT, '', off, on, off",
    "OPEN, valve stuck shut, off, on, off",
    "OPEN, valve stuck 1/2, off, off, on",
    "OPEN, valve actuator stuck shut, off, on, off",
    "SHUT, valve actuator stuck open, on, off, off",
    "SHUT, valve position switch out of adjustment, off, off, on",
    "OPEN, valve position switch out of adjustment, off, off, on",
    "SHUT, valve position switch failed at open, on, off, off",
    "OPEN, valve position switch failed at shut, off, on, off",
  })
  void areTold(String position, String fault, String open, String shut, String transit)
      throws Exception {
    FaultReader reader = new FaultReader(BENCH);
    Broken broken =
        Broken.of(BENCH.network(), BENCH.sides(), fault.isEmpty() ? List.of() : reader.read(fault));
    Setup setup = Answers.setup(BENCH, "80 %", "valve switch: " + position);
    Solution solution = new Settler(broken.network()).solve(broken.setup(setup));
    assertThat(solution.solved()).isTrue();
    Answers answers = Answers.of(solution);
    assertThat(answers.doing("open light").word()).isEqualTo(open);
    assertThat(answers.doing("shut light").word()).isEqualTo(shut);
    assertThat(answers.doing("transit light").word()).isEqualTo(transit);
  }
}

package dev.offtake.system;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.part.Kinds;
import org.junit.jupiter.api.Test;

/** Flows with conditions: the same condition twice is a conflict, another condition is none. */
class WhenConflictTest {
  private static final String FILE =
      """
      offtake: 1
      papers: {SD: {title: System description}, TR: {title: Test record}}
      switches: {pack switch: [ON, OFF], high flow: [OFF, ON]}
      parts:
        supply:
          kind: supply
          to: duct
          table: {columns: [psig, lb/min], rows: [[44, 0], [30, 180]]}
        pack:
          kind: flow user
          takes from: duct
          takes:
            - 60 lb/min when high flow is ON; TR p.1
            - 50 lb/min when pack switch is ON; TR p.2
            - 52 lb/min when pack switch  is ON; SD p.12
          needs: 12 psig; SD p.12
      """;

  private static BleedSystem read(String text) {
    Reading reading = SystemReader.readText("pack.yaml", text, Kinds.all());
    assertThat(reading.problems()).isEmpty();
    return reading.system().orElseThrow();
  }

  @Test
  void thePaperListedFirstIsInForceForEachCondition() {
    BleedSystem system = read(FILE);
    assertThat(system.conflicts()).hasSize(1);
    Conflict conflict = system.conflicts().get(0);
    assertThat(conflict.key()).isEqualTo("takes");
    assertThat(conflict.statements())
        .extracting(s -> s.stated().text() + " " + s.paper() + " " + s.inForce())
        .containsExactly("52 lb/min SD true", "50 lb/min TR false");
    assertThat(system.statements())
        .filteredOn(s -> s.key().equals("takes") && s.inForce())
        .extracting(s -> s.stated().text())
        .containsExactly("60 lb/min", "52 lb/min");
  }

  @Test
  void papersThatAgreeAreNoConflict() {
    assertThat(read(FILE.replace("50 lb/min", "52 lb/min")).conflicts()).isEmpty();
  }
}

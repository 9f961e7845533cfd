package dev.offtake.system;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.part.Kinds;
import dev.offtake.part.Mode;
import dev.offtake.part.Part;
import dev.offtake.severity.Criterion;
import dev.offtake.severity.Severity;
import org.junit.jupiter.api.Test;

/** What a file says about failures: how often and how bad. */
class FailureReaderTest {
  private static final String PARTS =
      """
      offtake: 1
      title: One engine
      sides: {left: L, right: R}
      each side:
        parts:
          mid tap:
            kind: compressor tap
            to: mid duct
            bore: 3 in
            table: {columns: [core %, psig, degF], rows: [[62, 8, 188], [99, 103, 610]]}
          mid check valve: {kind: check valve, path: mid duct -> duct, bore: 3 in}
          pack: {kind: flow user, takes from: duct, takes: 52 lb/min, needs: 12 psig}
      """;

  private static Reading read(String more) {
    return SystemReader.readText("failures.yaml", PARTS + more, Kinds.all());
  }

  private static double rate(BleedSystem system, String part, String mode) {
    Part found = system.parts().stream().filter(p -> p.name().equals(part)).findFirst().get();
    return system.modes(found).stream()
        .filter(m -> m.name().equals(mode))
        .mapToDouble(Mode::rate)
        .findFirst()
        .getAsDouble();
  }

  @Test
  void aPartsOwnRateCountsMoreThanItsKinds() {
    BleedSystem system =
        read("""
                failure rates:
                  check valve stuck open: 12 per million hours; RR p.4
                  left mid check valve stuck open: 0.5 per million hours
                """)
            .system()
            .orElseThrow();
    assertThat(rate(system, "left mid check valve", "stuck open")).isEqualTo(0.5e-6);
    assertThat(rate(system, "right mid check valve", "stuck open")).isEqualTo(12e-6);
  }

  @Test
  void aRateMayStandOnASide() {
    BleedSystem system =
        read("  failure rates:\n    mid check valve stuck shut: 3 per million hours\n")
            .system()
            .orElseThrow();
    assertThat(rate(system, "left mid check valve", "stuck shut")).isEqualTo(3e-6);
    assertThat(rate(system, "right mid check valve", "stuck shut")).isEqualTo(3e-6);
  }

  @Test
  void theFileDecidesHowBadItIs() {
    BleedSystem system = read("severity:\n  a user goes short: II\n").system().orElseThrow();
    assertThat(system.severity().of(Criterion.SHORT)).isEqualTo(Severity.CRITICAL);
    assertThat(system.severity().of(Criterion.LEAK)).isEqualTo(Criterion.LEAK.usual());
  }

  @Test
  void aMisspeltFailureIsToldWithTheNearest() {
    Reading reading =
        read("failure rates:\n  left mid check valve stuck opn: 1 per million hours\n");
    assertThat(reading.problems()).hasSize(1);
    assertThat(reading.problems().get(0).toString())
        .contains("failures.yaml:14", "Did you mean `left mid check valve stuck open`?");
  }

  @Test
  void aRateNeedsItsHours() {
    Reading reading = read("failure rates:\n  left mid check valve stuck open: 12; RR p.4\n");
    assertThat(reading.problems()).hasSize(1);
    assertThat(reading.problems().get(0).toString())
        .contains("is no rate of failures", "`12 per million hours; source`");
  }
}

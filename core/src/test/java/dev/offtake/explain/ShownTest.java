package dev.offtake.explain;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.part.Kinds;
import dev.offtake.study.Column;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import org.junit.jupiter.api.Test;

/** What a curve shows unasked. */
class ShownTest {
  @Test
  void withoutAUserTheRegulatedDuctIsShown() throws Exception {
    String text =
        """
        offtake: 1
        title: Bench
        parts:
          cart: {kind: supply, to: inlet, table: {columns: [psig, lb/min], rows: [[60, 0], [9, 90]]}}
          valve: {kind: shutoff valve, path: inlet -> interstage, bore: 3 in}
          bypass: {kind: shutoff valve, path: inlet -> interstage, bore: 1 in}
          regulator:
            kind: regulator
            path: interstage -> duct
            bore: 3 in
            holds: duct pressure
            set to: 42 psig
          hole: {kind: leak, at: duct, area: 0.5 in2}
        """;
    BleedSystem system = SystemReader.readText("b.yaml", text, Kinds.all()).system().orElseThrow();
    assertThat(Shown.read(system, ""))
        .extracting(Column::name)
        .containsExactly("interstage pressure", "duct pressure");
  }
}

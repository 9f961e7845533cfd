package dev.offtake.system;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.part.Kinds;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Values are changed in a text, everything else stays as it was typed. */
class SystemEditorTest {
  private static final double PSI = 6894.757293168;

  private static final String TEXT =
      """
      # Invented. °F before a mark counts as one sign.
      offtake: 1
      papers: {SD: {title: Description}, TR: {title: Record}}
      sides: {left: L, right: R}
      each side:
        parts:
          tap: {kind: supply, to: line, table: {columns: [psig, lb/min], rows: [[75, 0], [70, 150]]}}
          valve:                       # held by a spring
            kind: regulator
            path: line -> duct
            bore: 3 in
            holds: duct pressure
            set to:
              - 32 psig +/- 3; SD p.7  # the newer
              - 29 psig; TR p.2
          pack: {kind: flow user, takes from: duct, takes: 50 lb/min, needs: 5 psig}
      between sides:
        # joins both
        cross valve:
          kind: regulator
          path: left duct -> right duct
          bore: 2 in
          holds: right duct pressure
          set to:        # two papers
            - 20 psig; SD p.9
            # older
            - 19 psig; TR p.3
          droop: 4 psi   # a guess
      only right:
        valve: {set to: 30 psig +/- 3; SD p.7 note 2}   # differs
      # the end
      """;

  private final SystemEditor editor = new SystemEditor(TEXT, List.of("left", "right"));

  private BleedSystem read() {
    Reading reading = SystemReader.readText("edited.yaml", editor.text(), Kinds.all());
    assertThat(reading.problems()).isEmpty();
    return reading.system().orElseThrow();
  }

  private static void assertSet(BleedSystem system, String part, double psig) {
    List<Statement> all =
        system.statements().stream()
            .filter(s -> s.part().equals(part) && s.key().equals("set to") && s.inForce())
            .toList();
    assertThat(all).hasSize(1);
    assertThat(all.get(0).stated().nominal()).isCloseTo(psig * PSI, within(1.0));
  }

  @Test
  void sidedAndUnsidedValuesAreChanged() {
    editor.set(
        "left valve", "set to", "31 psig; matched to a run, {1}: it (was 32 psig from SD p.7)");
    editor.set("right valve", "set to", "28 psig; run, of May");
    editor.set("right valve", "droop", "5 psi; run");
    editor.set("cross valve", "set to", "21 psig; matched to a run (was 20 psig)");
    editor.set("cross valve", "droop", "6 psi; run");
    editor.set("left pack", "needs", "7 psig; run");
    editor.modelError("{pressure: 2 %; run}");
    BleedSystem system = read();
    assertSet(system, "left valve", 31);
    assertSet(system, "right valve", 28);
    assertSet(system, "cross valve", 21);
    assertThat(system.modelError().pressure()).isCloseTo(0.02, within(1e-12));
    assertThat(system.modelError().source()).isEqualTo("run");
    assertThat(system.doubts()).isEmpty();
    assertThat(editor.text())
        .contains("# held by a spring", "# the newer", "# joins both", "# two papers", "# older")
        .contains("# - 20 psig; SD p.9", "# - 19 psig; TR p.3", "# a guess", "# differs")
        .contains("- 32 psig +/- 3; SD p.7  # the newer\n", "# the end");
  }

  @Test
  void aSecondChangeReplacesTheFirst() {
    editor.set("left valve", "set to", "31 psig; run");
    editor.set("left valve", "set to", "33 psig; another run");
    editor.modelError("{pressure: 2 %; run}");
    editor.modelError("{pressure: 1 %; another run}");
    assertSet(read(), "left valve", 33);
    assertThat(editor.text()).doesNotContain("31 psig", "2 %");
    assertThat(read().modelError().pressure()).isCloseTo(0.01, within(1e-12));
  }

  @Test
  void aBlockOfOneSideIsAddedTo() {
    String text =
        TEXT.replace(
            "only right:\n  valve: {set to: 30 psig +/- 3; SD p.7 note 2}   # differs\n",
            "only right:\n  valve:\n    set to: 30 psig; SD p.8   # differs\n  parts: {}\n");
    assertThat(text).isNotEqualTo(TEXT);
    SystemEditor own = new SystemEditor(text, List.of("left", "right"));
    own.set("right valve", "droop", "5 psi; run");
    own.set("right pack", "needs", "6 psig; run");
    own.set("right valve", "set to", "27 psig; run");
    Reading reading = SystemReader.readText("edited.yaml", own.text(), Kinds.all());
    assertThat(reading.problems()).isEmpty();
    assertSet(reading.system().orElseThrow(), "right valve", 27);
    assertThat(own.text()).contains("27 psig; run   # differs\n    droop: 5 psi; run\n");
  }

  @Test
  void aPartThatIsNotThereIsAMistakeOfTheProgram() {
    assertThatThrownBy(() -> editor.set("no part", "set to", "1 psig"))
        .isInstanceOf(IllegalArgumentException.class);
  }
}

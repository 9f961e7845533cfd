package dev.offtake.explain;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.part.Kinds;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the readback tells of the demo's planted gap, its units and its forbidden things. */
class ReadbackTest {
  private static final BleedSystem TWIN =
      SystemReader.read(Path.of("../demo/demo-twin.yaml")).system().orElseThrow();

  private static String wide(BleedSystem system) {
    return new Readback(system, Style.SHOP).text(400);
  }

  @Test
  void thePlantedGapIsStillToBeLookedUp() {
    String text = wide(TWIN);
    int section = text.indexOf("STILL TO BE LOOKED UP");
    assertThat(text.indexOf("left high stage valve: shut when is unknown (SD p.7 does not say"))
        .isBetween(section, text.indexOf("PAPERS DISAGREE"));
  }

  @Test
  void thePlantedConflictIsToldOnce() {
    assertThat(TWIN.conflicts()).hasSize(1);
    assertThat(wide(TWIN))
        .contains("left high stage valve, set to: 29.0..35.0 psig (SD p.7, used)");
  }

  /** A value without a source is shown as such, not as {@code ()}. */
  @Test
  void aConflictWithoutASourceSaysSo() throws Exception {
    String text =
        Files.readString(Path.of("../demo/demo-twin.yaml"))
            .replace("- 29 psig; TR p.2", "- 29 psig");
    BleedSystem system = SystemReader.readText("t.yaml", text, Kinds.all()).system().orElseThrow();
    assertThat(wide(system))
        .contains("(SD p.7, used) against 29.0 psig (no source)")
        .contains("29 psig has no source, beside values that have one")
        .doesNotContain("()");
  }

  @Test
  void theMiddleOfTheDroopIsSaidOnce() {
    String text = wide(TWIN);
    String says = "every regulator, set to: the set is the middle of the droop";
    assertThat(text).containsOnlyOnce(says);
    assertThat(text.indexOf(says)).isGreaterThan(text.indexOf("ASSUMED"));
  }

  @Test
  void oneIsNotMany() {
    String text =
        """
        offtake: 1
        title: Cart
        switches: {cart switch: [ON, OFF]}
        parts:
          cart: {kind: supply, to: duct, table: {columns: [psig, lb/min], rows: [[45, 0], [9, 9]]}}
          port: {kind: test port, at: duct}
        """;
    BleedSystem system = SystemReader.readText("c.yaml", text, Kinds.all()).system().orElseThrow();
    assertThat(wide(system)).contains("1 point, 2 parts, 1 switch, 0 power settings");
  }

  @Test
  void removableUnitsAreListedWithTheirNumbers() {
    assertThat(wide(TWIN))
        .contains("REMOVABLE UNITS")
        .contains(
            "left high stage valve: valve body (", "control head (set, droop, ", "; solenoid");
  }

  @Test
  void forbiddenThingsSayWhoJudgesThem() {
    assertThat(wide(TWIN))
        .contains("ground supply switch is ON and aux bleed is ON (SD p.11): understood")
        .contains("wing anti-ice is ON on ground above 30 s (SD p.13): judged by you");
  }

  @Test
  void aSlipIsAskedBackHereAndInEveryAnswer() throws QuantityProblem {
    String text =
        """
        offtake: 1
        title: Cart
        power settings: {on: {core: 100 %, holds: physical}}
        parts:
          cart:
            kind: supply
            to: duct
            table: {columns: [psig, lb/min], rows: [[45, 0], [38, 120]]}
          regulator:
            kind: regulator
            path: duct -> load
            bore: 3 in
            holds: load pressure
            set to: 60 psig
          load user: {kind: flow user, takes from: load, takes: 20 lb/min, needs: 5 psig}
        """;
    BleedSystem system = SystemReader.readText("c.yaml", text, Kinds.all()).system().orElseThrow();
    String asked =
        "Set 60 psig of regulator is above what cart gives at any power: 45.0 psig at most, at on.";
    assertThat(wide(system)).contains("LOOKS LIKE A SLIP", asked, "(line 14)");
    assertThat(Question.of(system, "", "", "", List.of()).asked(Style.SHOP).warnings())
        .anyMatch(warning -> warning.startsWith(asked) && warning.endsWith("(c.yaml, line 14)"));
  }

  @Test
  void aDayMayBeGivenByItsValues() throws QuantityProblem {
    Question question = Question.of(TWIN, "cruise", "0 ft, ISA +27 degF", "", List.of());
    assertThat(question.setup().conditions().ambientT() * 1.8 - 459.67).isBetween(85.9, 86.1);
    assertThat(question.asked(Style.SHOP).day()).startsWith("0 ft, ISA +27 degF, 14.7 psia");
  }
}

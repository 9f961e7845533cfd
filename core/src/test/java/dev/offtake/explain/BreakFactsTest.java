package dev.offtake.explain;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.study.effect.Effects;
import dev.offtake.study.effect.EffectsStudy;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What answers about broken systems say must be what their numbers say. */
class BreakFactsTest {
  private static BleedSystem twin;
  private static BleedSystem rotor;

  @BeforeAll
  static void read() throws Exception {
    twin = SystemReader.read(Path.of("../demo/demo-twin.yaml")).system().orElseThrow();
    rotor = SystemReader.read(Path.of("../demo/demo-rotor.yaml")).system().orElseThrow();
  }

  private static BreakAnswer answer(
      BleedSystem system, String at, List<String> sets, String... faults) throws QuantityProblem {
    Question question = Question.of(system, at, "", "", sets).broken(List.of(faults));
    return BreakInquiry.answer(question, Style.SHOP);
  }

  private static BreakAnswer answer(String at, String... faults) throws QuantityProblem {
    return answer(twin, at, List.of(), faults);
  }

  @Test
  void aValveThatControlsIsNotCalledShut() throws QuantityProblem {
    BreakAnswer broken = answer("cruise", "left bleed regulator set spring broken");
    assertThat(broken.state().why())
        .filteredOn(row -> row.because().contains("is within its"))
        .isNotEmpty()
        .noneMatch(row -> row.word().equals("shut"));
  }

  @Test
  void piecesOfAReliefValveBlowOut() throws QuantityProblem {
    BreakAnswer broken = answer("take-off", "left relief valve spring broken");
    assertThat(broken.look())
        .filteredOn(look -> look.what().equals("pieces"))
        .hasSize(1)
        .allMatch(look -> look.says().endsWith("the air carries them to the air outside."));
  }

  /** What has to be done before a part is looked at is told before it. */
  @Test
  void whatComesFirstStandsBeforeTheJob() throws QuantityProblem {
    List<String> looks =
        answer("ground idle", "left mid check valve stuck open").look().stream()
            .map(look -> look.what())
            .toList();
    assertThat(looks).containsSubsequence("caution", "inspection");
    assertThat(looks.indexOf("inspection")).isGreaterThan(looks.indexOf("caution"));
  }

  @Test
  void aStuckReliefValveDoesNotMove() throws QuantityProblem {
    BreakAnswer stuck =
        answer("take-off", "left bleed regulator stuck open", "left relief valve stuck shut");
    assertThat(stuck.state().memory()).noneMatch(says -> says.contains("relief valve moved"));
    BreakAnswer free = answer("take-off", "left bleed regulator stuck open");
    assertThat(free.state().memory()).anyMatch(says -> says.contains("relief valve moved"));
  }

  @Test
  void aStuckUserIsNotSaidToHaveEnough() throws QuantityProblem {
    BreakAnswer stuck =
        answer(twin, "descent", List.of("wing anti-ice: ON"), "left wing heat stuck shut");
    assertThat(stuck.noticed())
        .noneMatch(row -> row.says().contains("has enough"))
        .anyMatch(row -> row.says().contains("left wing heat takes nothing, healthy it is short"));
  }

  @Test
  void aUserThatIsShorterThanBeforeIsNotShortAsBefore() throws QuantityProblem {
    List<String> start =
        List.of("ground supply switch: ON", "left start switch: ON", "isolation: OPEN");
    BreakAnswer shut = answer(twin, "ground idle", start, "isolation valve stuck shut");
    assertThat(shut.follows())
        .anyMatch(step -> step.startsWith("Left starter is shorter than before, "))
        .noneMatch(step -> step.contains("short as before"));
  }

  @Test
  void aLongNameDoesNotPushTheColumns() throws QuantityProblem {
    BreakAnswer joint = answer("take-off", "left pylon joint clamp loose when hot");
    assertThat(BreakText.print(joint, 80, Style.SHOP).lines())
        .anyMatch(line -> line.equals("  left pylon joint loose clamp when hot"))
        .noneMatch(line -> line.strip().equals("nowhere"))
        .allMatch(line -> line.length() <= 80);
  }

  /** The plug stops the air; the regulator before it is shut because its duct is full. */
  @Test
  void valvesThatShutAsAConsequenceAreNotBlamed() throws QuantityProblem {
    BreakAnswer plug =
        answer(rotor, "hover", List.of("cabin heat: ON"), "heater line blanking plug left in");
    assertThat(plug.beside())
        .anyMatch(says -> says.contains("something stops it on the way"))
        .noneMatch(says -> says.contains("anti-ice valve") || says.contains("mixing valve"));
    assertThat(plug.state().nextChange()).doesNotContain("0.0 lb/min, choked");
    BreakAnswer stuck = answer("take-off", "both bleed regulator stuck shut");
    assertThat(stuck.beside())
        .contains("No air flows to the left side: the bleed regulator is shut.");
  }

  /** A regulator that feels the static pressure of its own fast stream holds itself open. */
  @Test
  void aSecondStateIsTold() throws QuantityProblem {
    BreakAnswer two = answer("cruise", "left mid check valve stuck open");
    assertThat(two.state().memory())
        .anyMatch(
            says ->
                says.startsWith("A second state is possible: if it fails at this power, ")
                    && says.contains("left high stage valve is shut"));
    BreakAnswer one = answer("ground idle", "left mid check valve stuck open");
    assertThat(one.state().memory()).noneMatch(says -> says.contains("second state"));
  }

  /** Only the shift is known: the needle's own place would be read as an exhaust temperature. */
  @Test
  void theTableTellsAnEngineGaugeByItsShift() {
    String part = "left mid check valve";
    Effects effects = EffectsStudy.of(twin, Set.of(part), false, Style.SHOP, done -> {});
    assertThat(EffectsPage.print(twin, effects, Set.of(part), 80, Style.SHOP))
        .containsPattern("left exhaust\\s+gauge\\s+reads\\s+\\d+\\s+°F\\s+higher")
        .doesNotContainPattern("exhaust\\s+gauge\\s+\\d+\\s+->");
  }

  @Test
  void airThatRunsBackIsToldAsAShareOfTheCoreFlow() throws QuantityProblem {
    BreakAnswer back = answer("ground idle", "left mid check valve stuck 1/3 open");
    assertThat(back.back().get(0)).endsWith("% of the core flow.");
    assertThat(back.back().get(1)).contains("the left exhaust gauge stands", "comes on top");
    assertThat(back.follows())
        .anyMatch(s -> s.matches("Left exhaust gauge reads \\d+ °F higher.*"));
    BreakAnswer loop = answer("cruise", "left mid check valve stuck open");
    assertThat(loop.back().get(1)).contains("the left exhaust gauge does not move");
  }
}

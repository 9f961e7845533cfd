package dev.offtake.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.part.Kinds;
import dev.offtake.quantity.Style;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Where the air goes besides users, and what is said when only leak flows. */
class OutletsTest {
  private static final double LB_MIN = 0.45359237 / 60;

  private static final String STAND =
      """
      offtake: 1
      title: Stand
      power settings: {on: {core: 80 %, holds: physical}}
      switches: {bleed switch: [ON, OFF], dump switch: [OFF, ON]}
      parts:
        tap:
          kind: compressor tap
          to: tap duct
          bore: 3 in
          with: no bleed
          table: {columns: [core %, psig, degF], rows: [[62, 26, 322], [99, 285, 950]]}
        regulator:
          kind: regulator
          path: tap duct -> duct
          bore: 3 in
          holds: duct pressure
          set to: 42 psig
          shut when: bleed switch is OFF
          leak: 0.02 lb/min at 30 psid
        dump valve:
          kind: shutoff valve
          path: duct -> ambient
          bore: 1 in
          open when: dump switch is ON
        bleed hole: {kind: orifice, path: duct -> ambient, bore: 0.5 in}
        spray orifice: {kind: orifice, path: duct -> spray duct, bore: 0.5 in}
        crack: {kind: leak, at: duct, area: 0.1 in2}
        joint: {kind: leak, at: duct, area: 0 in2}
        relief valve: {kind: relief valve, path: duct -> ambient, bore: 1 in, cracks at: 70 psig}
        pack: {kind: flow user, takes from: duct, takes: 20 lb/min, needs: 12 psig}
        spray tube: {kind: flow user, takes from: spray duct, takes: 2 lb/min, needs: 5 psig}
      """;

  private static StateAnswer answer(String text, String... sets) throws Exception {
    BleedSystem system = SystemReader.readText("s.yaml", text, Kinds.all()).system().orElseThrow();
    Question question = Question.of(system, "on", "", "", List.of(sets));
    return StateInquiry.answer(question, Style.SHOP);
  }

  private static Optional<StateAnswer.Air> row(StateAnswer answer, String name) {
    return answer.air().stream().filter(row -> row.name().equals(name)).findFirst();
  }

  private static double flow(StateAnswer answer, String name) {
    return row(answer, name).orElseThrow().flow();
  }

  /**
   * Choked air: 0.532 · area · pressure / √T in lb/s, in², psia, °R (Fliegner's formula, textbook
   * matter). 0.6 of a half-inch hole at 44 psig and 569 °F; hot air passes up to 2 % less.
   */
  @Test
  void aHoleToTheOutsideIsShownWithItsFlow() throws Exception {
    StateAnswer.Air hole = row(answer(STAND), "bleed hole").orElseThrow();
    double area = 0.6 * Math.PI / 4 * 0.25;
    double p = hole.gaugePressure() / 6894.757 + 14.696;
    double fliegner = 60 * 0.532 * area * p / Math.sqrt(hole.temperature() * 1.8);
    assertThat(hole.flow() / LB_MIN).isCloseTo(fliegner, within(0.025 * fliegner));
    assertThat(hole.note()).isEqualTo("to the air outside, choked");
  }

  @Test
  void whatTheTapGivesIsWhatGoesOut() throws Exception {
    for (String position : List.of("OFF", "ON")) {
      StateAnswer answer = answer(STAND, "dump switch: " + position);
      double out = flow(answer, "bleed hole") + flow(answer, "crack") + flow(answer, "pack");
      out +=
          flow(answer, "spray orifice") + row(answer, "dump valve").map(r -> r.flow()).orElse(0.0);
      assertThat(out)
          .isCloseTo(flow(answer, "tap"), within(0.002 * flow(answer, "tap") + LB_MIN / 10));
      assertThat(row(answer, "dump valve").isPresent()).isEqualTo(position.equals("ON"));
      assertThat(flow(answer, "spray orifice")).isCloseTo(2 * LB_MIN, within(1e-5));
    }
  }

  @Test
  void tightJointsAndShutReliefsAreNotShown() throws Exception {
    assertThat(answer(STAND).air())
        .extracting(StateAnswer.Air::name)
        .contains("crack", "spray orifice")
        .doesNotContain("joint", "relief valve", "regulator");
  }

  @Test
  void aShutRegulatorsLeakFeedsNobody() throws Exception {
    String leaky = STAND.replace("leak: 0.02 lb/min", "leak: 0.4 lb/min");
    assertThat(answer(leaky, "bleed switch: OFF").headline().get(0))
        .startsWith("Nothing but leak passes to the system, ")
        .endsWith(" lb/min: the regulator is shut.");
    assertThat(answer(STAND).headline().get(0)).isEqualTo("The TAP feeds the system.");
  }

  /** Under half a tenth of a pound a minute nothing that is printed flows. */
  @Test
  void aCappedValveIsSaidToBeCappedAndPassesNothing() throws Exception {
    StateAnswer answer = answer(STAND, "regulator: removed and capped");
    assertThat(answer.headline().get(0))
        .isEqualTo("No air flows to the system: the regulator is capped.");
    assertThat(answer.why().get(0).word()).isEqualTo("capped");
    assertThat(flow(answer, "tap") / LB_MIN).isBetween(0.0, 0.05);
    assertThat(row(answer, "tap duct").orElseThrow().note()).isEqualTo("still");
    assertThat(row(answer, "duct").orElseThrow().note()).isEqualTo("still");
  }

  @Test
  void usersThatAreOffTakeNone() throws Exception {
    BleedSystem demo = SystemReader.read(Path.of("../demo/demo-twin.yaml")).system().orElseThrow();
    Question off = Question.of(demo, "take-off", "", "packs off", List.of());
    List<String> said = StateInquiry.answer(off, Style.SHOP).headline();
    assertThat(said.get(0)).endsWith(": nothing takes any.");
    List<String> both = List.of("left bleed switch: OFF", "right bleed switch: OFF");
    Question shut = Question.of(demo, "take-off", "", "", both);
    assertThat(StateInquiry.answer(shut, Style.SHOP).headline())
        .anyMatch(s -> s.contains("the left side") && s.endsWith("the bleed regulator is shut."));
  }
}

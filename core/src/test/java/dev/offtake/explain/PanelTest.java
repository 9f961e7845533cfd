package dev.offtake.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.part.Kinds;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Solution;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Needles stand at their marks and at the ends of their scales; lights tell when they are lit. */
class PanelTest {
  private static final double PSI = 6894.757293168;

  /**
   * The supply gives 41.5 psig at 60 lb/min, half-way between its two points, of which its check
   * valve takes the usual 0.3 psi: 41.2 psig.
   */
  static final String CART =
      """
      offtake: 1
      title: Cart
      power settings: {on: {core: 80 %, holds: physical}}
      switches: {cart switch: [ON, OFF]}
      parts:
        cart:
          kind: supply
          to: duct
          on when: cart switch is ON
          temperature: 391 degF
          table: {columns: [psig, lb/min], rows: [[45, 0], [38, 120]]}
        user: {kind: flow user, takes from: duct, takes: 60 lb/min, needs: 5 psig}
        tap:
          kind: compressor tap
          to: tap duct
          bore: 3 in
          core flow: 600 lb/min at 80 %
          with: no bleed
          table: {columns: [core %, psig, degF], rows: [[62, 26, 322], [99, 285, 950]]}
        tap user: {kind: flow user, takes from: tap duct, takes: 30 lb/min, needs: 5 psig}
        exhaust gauge:
          kind: engine gauge
          shows: exhaust temperature
          shifts: 3 degF per 1 % of core flow
          counts: tap
      lights:
        low light: {lit when: duct pressure below 20 psig}
        high light: {lit when: duct pressure above 41 psig}
      gauges:
        bench gauge: {reads: duct pressure, seen: interstage test port}
        small gauge: {reads: duct pressure, scale: 0..40 psig, step: 2 psi, seen: wheel well}
        duct gauge:
          needles: {D: duct pressure, T: tap duct pressure}
          scale: 0..80 psig
          step: 2 psi
          seen: flight deck
        thermometer: {reads: duct temperature, step: 20 degF, good to: 5 degF, seen: flight deck}
      """;

  static StateAnswer cart(Style style, String... sets) throws Exception {
    BleedSystem system =
        SystemReader.readText("cart.yaml", CART, Kinds.all()).system().orElseThrow();
    return StateInquiry.answer(Question.of(system, "on", "", "", List.of(sets)), style);
  }

  private static Panel.Needle needle(Panel panel, String gauge, String mark) {
    return panel.needles().stream()
        .filter(n -> n.gauge().equals(gauge) && n.mark().equals(mark))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void needlesStandAtTheNearestMark() throws Exception {
    Panel panel = cart(Style.SHOP).panel();
    Panel.Needle duct = needle(panel, "duct gauge", "D");
    assertThat(duct.says()).isEqualTo("42 psig");
    assertThat(duct.value()).isCloseTo(42 * PSI, within(1e-6));
    assertThat(duct.pegged()).isFalse();
    assertThat(needle(panel, "bench gauge", "").says()).isEqualTo("41.2 psig");
  }

  /** Marks 20 °F apart stand at 380 and 400 °F; counted from 0 °C there would be one at 392 °F. */
  @Test
  void marksOfAThermometerCountFromItsOwnZero() throws Exception {
    Panel.Needle warm = needle(cart(Style.SHOP).panel(), "thermometer", "");
    assertThat(warm.says()).isEqualTo("400 °F");
    assertThat(warm.value()).isCloseTo((400 + 459.67) / 1.8, within(1e-6));
  }

  @Test
  void aValueOffTheScaleIsPegged() throws Exception {
    Panel.Needle small = needle(cart(Style.SHOP).panel(), "small gauge", "");
    assertThat(small.pegged()).isTrue();
    assertThat(small.value()).isCloseTo(40 * PSI, within(1e-6));
    assertThat(small.says()).isEqualTo("40 psig, pegged: 41.2 psig is over its scale");
    String tap = needle(cart(Style.SHOP).panel(), "duct gauge", "T").says();
    assertThat(tap).startsWith("80 psig, pegged: ").endsWith(" psig is over its scale");
  }

  @Test
  void theFlightDeckComesFirstAndTestPortsLast() throws Exception {
    assertThat(cart(Style.SHOP).panel().needles())
        .extracting(Panel.Needle::gauge)
        .containsExactly("duct gauge", "duct gauge", "thermometer", "small gauge", "bench gauge");
  }

  /** 30 of 600 lb/min are 5 %, at 3 °F each: 15 °F. */
  @Test
  void lightsAndEngineGaugesAreTold() throws Exception {
    Panel panel = cart(Style.SHOP).panel();
    assertThat(panel.lights()).extracting(Panel.Lamp::lit).containsExactly(false, true);
    assertThat(panel.engine().get(0).says()).isEqualTo("exhaust temperature 15 °F up");
    String text = StateText.print(cart(Style.SHOP), 80, Style.SHOP);
    assertThat(text)
        .contains("GAUGES\n", "D 42 psig; T 80 psig, pegged: ", "(flight deck)")
        .containsPattern("high light +LIT: ")
        .containsPattern("exhaust gauge +exhaust temperature 15 °F up")
        .doesNotContainPattern("low light +LIT");
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void lightsThatAreOutTakeOneLine() throws Exception {
    Panel dark = new Panel(List.of(), List.of(new Panel.Lamp("a light", false, "")), List.of());
    assertThat(dark.lines()).extracting(Panel.Line::says).containsExactly("the one is out");
    BleedSystem demo = SystemReader.read(Path.of("../demo/demo-twin.yaml")).system().orElseThrow();
    Solution solution =
        new Settler(demo.network()).solve(Question.of(demo, "", "", "", List.of()).setup());
    assertThat(Panel.of(solution, Style.SHOP).lines())
        .extracting(Panel.Line::says)
        .contains("all 4 are out");
  }

  /** Marks 2 psi apart are 0.14 bar: two decimals, as many as the style has. */
  @Test
  void metricIsNoFinerThanItsMarks() throws Exception {
    String says = needle(cart(Style.METRIC).panel(), "duct gauge", "D").says();
    assertThat(says).isEqualTo("2.90 bar g"); // 42 psi = 2.896 bar
    assertThat(needle(cart(Style.METRIC).panel(), "thermometer", "").says())
        .isEqualTo("204 °C"); // 400 °F = 204.4 °C
  }
}

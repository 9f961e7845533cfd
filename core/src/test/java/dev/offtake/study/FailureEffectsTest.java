package dev.offtake.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.network.Demos;
import dev.offtake.network.Network;
import dev.offtake.network.Passage;
import dev.offtake.part.ClosedForms;
import dev.offtake.part.Conditions;
import dev.offtake.part.Doing;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Single failures in small networks against closed forms: choked nozzles in a row pass the same air
 * at the same temperature, so that pressures stand as the inverse of the areas; what flows in flows
 * out.
 */
class FailureEffectsTest {
  private static final double AMBIENT = 101325;
  private static final double PSI = 6894.757293168;
  private static final double IN2 = 0.0254 * 0.0254;
  private static final double CLOSE = 1e-8;

  /** Stage at 99 % core: 400 psig, 700 °F. */
  private static final double STAGE_P = AMBIENT + 400 * PSI;

  private static final double STAGE_T = (700 + 459.67) / 1.8;
  private static final double TAP = 0.8 * ClosedForms.circle(0.0254);

  private static final String TAP_LINES =
      """
        tap:
          kind: compressor tap
          to: duct
          bore: 1 in
          flow coefficient: 0.8
          table: {columns: [core %, psig, degF], rows: [[60, 50, 400], [99, 400, 700]]}
      """;

  private static final String HEAD =
      """
      parts:
      """
          + TAP_LINES;

  private static Solution broken(String said, Map<String, String> switches, String... faults)
      throws Exception {
    BleedSystem system = Demos.text(said);
    Network healthy = Passage.adiabatic(system.network().parts());
    FaultReader reader = new FaultReader(system);
    List<Fault> read = new ArrayList<>();
    for (String fault : faults) {
      read.addAll(reader.read(fault));
    }
    Broken broken = Broken.of(healthy, List.of(), read);
    Conditions day = Conditions.standardDay(0.99, 0.96);
    Setup setup = broken.setup(new Setup(day, switches, Map.of(), Map.of()));
    Solution solution = new Settler(broken.network()).solve(setup);
    assertThat(solution.solved()).isTrue();
    return solution;
  }

  private static Solution broken(String said, String... faults) throws Exception {
    return broken(said, Map.of(), faults);
  }

  private static double p(Solution solution, String point) {
    return solution.pressure(solution.network().point(point));
  }

  private static double t(Solution solution, String point) {
    return solution.temperature(solution.network().point(point));
  }

  private static double flow(Solution solution, String part) {
    return solution.flow(solution.network().part(part), 0);
  }

  private static Doing doing(Solution solution, String part) {
    return solution.doing(solution.network().part(part), Style.SHOP);
  }

  private static void agrees(double value, double expected) {
    assertThat(value).isCloseTo(expected, within(CLOSE * Math.abs(expected)));
  }

  private static final String SPRAY =
      "  spray: {kind: orifice user, takes from: duct, bore: 2 in, flow coefficient: 0.7}\n";

  private static final double USER = 0.7 * ClosedForms.circle(2 * 0.0254);

  /** The choked tap gives the same whatever leaks: p = p₀·A_tap/(A_user + 0.6·A_hole). */
  @ParameterizedTest
  @CsvSource({"leaks, 0.3", "leaks, 1", "clamp loose, 1", "clamp loose, 0.05"})
  void aLeakBehindAChokedTap(String mode, double in2) throws Exception {
    String said = HEAD + SPRAY + "  joint: {kind: leak, at: duct, area: 0 in2}\n";
    Solution sound = broken(said);
    agrees(p(sound, "duct"), STAGE_P * TAP / USER);
    Solution leaks = broken(said, "joint " + mode + " " + in2 + " in2");
    double hole = 0.6 * in2 * IN2;
    agrees(p(leaks, "duct"), STAGE_P * TAP / (USER + hole));
    agrees(flow(leaks, "tap"), ClosedForms.nozzle(TAP, STAGE_P, STAGE_T, 0));
    agrees(flow(leaks, "spray"), flow(leaks, "tap") * USER / (USER + hole));
  }

  /** Clamp opens from 250 to 450 °F; the tap's 700 °F have it wide open, 300 °F a quarter. */
  @ParameterizedTest
  @CsvSource({"700, 1", "450, 1", "300, 0.25", "200, 0"})
  void aClampThatIsLooseOnlyWhenHot(double degF, double open) throws Exception {
    String said = HEAD.replace("[99, 400, 700]", "[99, 400, " + degF + "]");
    said = said.replace("[60, 50, 400]", "[60, 50, 150]");
    said += SPRAY + "  joint: {kind: leak, at: duct, area: 0 in2}\n";
    Solution hot = broken(said, "joint clamp loose when hot 1 in2");
    double hole = 0.6 * open * IN2;
    assertThat(p(hot, "duct")).isCloseTo(STAGE_P * TAP / (USER + hole), within(20.0));
    assertThat(doing(hot, "joint loose clamp when hot").word().equals("tight"))
        .isEqualTo(open == 0);
  }

  /** Air that leaves a duct's downstream end: what the choked tap gives, by the areas there. */
  @Test
  void aHoleInADuctBlowsIntoItsZone() throws Exception {
    String said =
        """
        parts:
        """
            + TAP_LINES
            + """
          run: {kind: duct, path: duct -> end, bore: 4 in, length: 60 in, runs in: bay}
          spray: {kind: orifice user, takes from: end, bore: 2 in, flow coefficient: 0.7}
          louvre: {kind: vent, at: bay, bore: 6 in}
        """;
    Solution leaks = broken(said, "run leaks 0.8 in2");
    double hole = 0.6 * 0.8 * IN2;
    double t = t(leaks, "end");
    agrees(flow(leaks, "tap"), ClosedForms.nozzle(TAP, STAGE_P, STAGE_T, 0));
    double perArea = ClosedForms.nozzle(1, 1, t, 0);
    agrees(p(leaks, "end"), flow(leaks, "tap") / (perArea * (USER + hole)));
    agrees(flow(leaks, "run leak"), flow(leaks, "tap") * hole / (USER + hole));
    agrees(flow(leaks, "louvre"), flow(leaks, "run leak"));
  }

  private static final String CHAIN =
      """
      parts:
      """
          + TAP_LINES
          + """
        hole: {kind: orifice, path: duct -> plenum, bore: 1.8 in, flow coefficient: 0.8}
        spray: {kind: orifice user, takes from: plenum, bore: 3 in, flow coefficient: 0.7}
      """;

  /** Three choked nozzles: p₀·A₁ = p₁·A₂ = p₂·A₃; blocking the second raises only p₁. */
  @ParameterizedTest
  @CsvSource({
    "blocked 30 %, 0.7",
    "eroded 5 %, 1.05",
    "too small one fitted 80 %, 0.8",
    "too large one fitted 1.1, 1.1"
  })
  void aChangedHoleInAChokedChain(String mode, double times) throws Exception {
    Solution solution = broken(CHAIN, "hole " + mode);
    double second = times * 0.8 * ClosedForms.circle(1.8 * 0.0254);
    double last = 0.7 * ClosedForms.circle(3 * 0.0254);
    agrees(p(solution, "duct"), STAGE_P * TAP / second);
    agrees(p(solution, "plenum"), STAGE_P * TAP / last);
  }

  /** A tap that lost a share of its rise, and one that is blocked: the chain's pressures follow. */
  @ParameterizedTest
  @CsvSource({"pressure low 10 %, 0.9, 1", "blocked 20 %, 1, 0.8"})
  void aDamagedTapInAChokedChain(String mode, double rise, double area) throws Exception {
    Solution solution = broken(CHAIN, "tap " + mode);
    double stage = AMBIENT + rise * 400 * PSI;
    double last = 0.7 * ClosedForms.circle(3 * 0.0254);
    agrees(p(solution, "plenum"), stage * area * TAP / last);
  }

  private static final String COMMANDED =
      """
      switches:
        lip switch: [OFF, ON]
      """
          + HEAD
          + SPRAY
          + """
        lip: {kind: orifice user, takes from: duct, bore: 1 in, flow coefficient: 0.7, open when: lip switch is ON}
      """;

  private static final double LIP = 0.7 * ClosedForms.circle(0.0254);

  @ParameterizedTest
  @CsvSource({
    "OFF, stuck on, 1",
    "ON, stuck shut, 0",
    "ON, takes too much 40 %, 1.4",
    "ON, takes too little 40 %, 0.6"
  })
  void aUserThatDoesNotObey(String position, String mode, double times) throws Exception {
    Map<String, String> switches = Map.of("lip switch", position);
    Solution solution = broken(COMMANDED, switches, "lip " + mode);
    agrees(p(solution, "duct"), STAGE_P * TAP / (USER + times * LIP));
    String told = doing(solution, "lip").why();
    assertThat(told).contains(mode.startsWith("stuck") ? "stuck" : "% of its area");
  }

  private static final String CART =
      """
      switches:
        cart switch: [ON, OFF]
      parts:
        cart:
          kind: supply
          to: duct
          on when: cart switch is ON
          temperature: 350 degF
          check valve cracks at: 0.3 psid
          table: {columns: [psig, lb/min], rows: [[50, 0], [40, 100], [30, 200]]}
        spray: {kind: orifice user, takes from: duct, bore: 1.5 in, flow coefficient: 0.7}
      """;

  private static final Map<String, String> ON = Map.of("cart switch", "ON");
  private static final double LB_MIN = 0.45359237 / 60;

  /** Straight table: it gives 10 lb/min for each psi under its 50 psig; a weak one shrinks both. */
  @ParameterizedTest
  @CsvSource({"weak 20 %, 0.8, 0", "hose leaks 0.5 in2, 1, 0.5"})
  void aWeakCartAndAHoseThatLeaks(String mode, double factor, double in2) throws Exception {
    Solution solution = broken(CART, ON, "cart " + mode);
    double p = p(solution, "duct");
    double hose = p + 0.3 * PSI;
    double t = (350 + 459.67) / 1.8;
    double gives = 10 * LB_MIN / PSI * (50 * PSI - (hose - AMBIENT) / factor);
    double lost = ClosedForms.nozzle(0.6 * in2 * IN2, hose, t, AMBIENT);
    double user = ClosedForms.nozzle(0.7 * ClosedForms.circle(1.5 * 0.0254), p, t, AMBIENT);
    assertThat(flow(solution, "spray")).isCloseTo(user, within(1e-7 * user));
    assertThat(gives - lost).isCloseTo(user, within(1e-5 * user));
  }

  @Test
  void aCartThatDoesNotComeOnGivesNothing() throws Exception {
    Solution solution = broken(CART, ON, "cart does not come on");
    assertThat(flow(solution, "cart")).isCloseTo(0, within(1e-9));
    assertThat(doing(solution, "cart")).isEqualTo(new Doing("off", "off", "it does not come on"));
    assertThat(solution.is("cart", "on")).isFalse();
  }

  /** Off, it takes back what its check valve's hole passes to the air outside. */
  @ParameterizedTest
  @ValueSource(doubles = {0.1, 1})
  void aCheckValveOfACartThatLeaksBack(double in2) throws Exception {
    String said =
        CART.replace("parts:", "parts:\n" + TAP_LINES).replace("bore: 1.5 in", "bore: 2 in");
    Map<String, String> off = Map.of("cart switch", "OFF");
    Solution solution = broken(said, off, "cart check valve leaks back " + in2 + " in2");
    double hole = 0.6 * in2 * IN2;
    assertThat(p(solution, "duct"))
        .isCloseTo(STAGE_P * TAP / (USER + hole), within(1e-5 * STAGE_P));
    assertThat(doing(solution, "cart").regime()).isEqualTo("takes back");
  }
}

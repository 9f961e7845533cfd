package dev.offtake.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.air.Air;
import dev.offtake.network.Demos;
import dev.offtake.network.Equations;
import dev.offtake.network.Network;
import dev.offtake.part.Conditions;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import dev.offtake.solve.SteadySolver;
import dev.offtake.stability.Stability.Verdict;
import java.util.List;
import java.util.Map;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Small systems whose motions are known in closed form. A wall of 10⁶ W/K holds the air at the
 * temperature outside, so that a volume is one lag: τ = V/(R T) · dp/dṁ.
 */
class LoopsTest {
  private static final double VOLUME = 0.02;

  private static final String SUPPLY =
      """
      parts:
        cart:
          kind: supply
          to: duct
          temperature: 59 degF
          table: {columns: [psig, lb/min], rows: [[120, 0], [119.9, 300]]}
        nozzle:
          kind: orifice user
          takes from: load
          bore: 1.2 in
      """;

  private static final String ISOTHERMAL =
      """
      points:
        duct: {wall: 1000000 W/K, volume: 0.1 l}
        load: {wall: 1000000 W/K, volume: 20 l}
      """;

  /** Its bore is so wide that sensed and total pressure are the same to 10⁻⁵. */
  private static final String REGULATOR =
      """
        regulator:
          kind: regulator
          path: duct -> load
          bore: 10 in
          flow coefficient: 0.04
          law: nozzle
          holds: load pressure
          set to: 30 psig
          droop: 4 psi
      """;

  private static Solution solve(String text) {
    Solution solution =
        new Settler(Demos.text(text).network())
            .solve(Setup.healthy(Conditions.standardDay(0.8, 0.8)));
    assertThat(solution.solved()).isTrue();
    return solution;
  }

  /** Time constant of the isothermal volume that a choked nozzle empties: p V/(R T ṁ). */
  private static double tau(Solution solution) {
    int load = solution.network().point("load");
    double flow = solution.flow(solution.network().part("nozzle"), 0);
    return solution.pressure(load) * VOLUME / (Air.R * solution.temperature(load) * flow);
  }

  private static Mode slowest(Stability stability) {
    return stability.modes().get(0);
  }

  @Test
  void aVolumeEmptiesInItsTimeConstant() {
    String orifice = "  inlet: {kind: orifice, path: duct -> load, bore: 0.7 in}\n";
    Solution solution = solve(SUPPLY + orifice + ISOTHERMAL);
    double growth = slowest(Stability.of(solution)).growth();
    assertThat(growth).isCloseTo(-1 / tau(solution), within(0.001 / tau(solution)));
  }

  /**
   * Without a wall temperature moves as well. With a = ṁ/m, choked inflow and outflow and constant
   * γ the rates have the trace −a (3γ + 1)/2 and the determinant γ a² (by hand; γ varies with
   * temperature, which the closed form leaves out).
   */
  @Test
  void anAdiabaticVolumeHasItsTwoModes() {
    String orifice = "  inlet: {kind: orifice, path: duct -> load, bore: 0.7 in}\n";
    String adiabatic = ISOTHERMAL.replace("load: {wall: 1000000 W/K", "load: {wall: 0.001 W/K");
    Solution solution = solve(SUPPLY + orifice + adiabatic);
    double a = 1 / tau(solution);
    double gamma = 1.4;
    double half = a * (3 * gamma + 1) / 4;
    double root = Math.sqrt(half * half - gamma * a * a);
    List<Mode> modes = Stability.of(solution).modes();
    assertThat(modes.get(0).growth()).isCloseTo(-half + root, within(0.005 * a));
    assertThat(modes.get(1).growth()).isCloseTo(-half - root, within(0.005 * a));
  }

  private static double[] observed(Equations equations, int part) {
    double[] observed = new double[equations.network().parts().get(part).observables().size()];
    equations.element(part).observe(equations.evaluation(), observed, 0);
    return observed;
  }

  /** K = (p/droop)/y for a choked valve of linear area that leaks nothing, and a choked nozzle. */
  private static double gain(Solution solution) {
    int regulator = solution.network().part("regulator");
    Equations equations = solution.equations();
    double[] observed = observed(equations, regulator);
    double leak = equations.evaluation().parameters[equations.parameter(regulator, "leak")];
    double area =
        equations.evaluation().parameters[equations.parameter(regulator, "effective area")];
    double droop = 4 * 6894.757293168;
    double p = solution.pressure(solution.network().point("load"));
    return p / droop / (observed[0] + leak / (area - leak));
  }

  private static Stability judge(Solution solution, double sense, double servo, double position) {
    return Stability.of(
        solution,
        part ->
            part.kind().equals("regulator")
                ? new Lags(sense, 0, servo, position)
                : Lags.usual(part));
  }

  @Test
  void theLoopOfARegulatorHasTheRootsOfItsPolynomial() {
    Solution solution = solve(SUPPLY + REGULATOR + ISOTHERMAL);
    double gain = gain(solution);
    assertThat(gain).isGreaterThan(8);
    double tau = tau(solution);
    double[][] cases = {{0, 0, 0.3}, {0, 0.5, 0.1}, {0.2, 0.5, 0.1}};
    for (double[] lags : cases) {
      int found = 0;
      for (Mode mode : judge(solution, lags[0], lags[1], lags[2]).modes()) {
        if (mode.growth() > -1000) {
          Complex s = new Complex(mode.growth(), mode.circular());
          Complex product = s.multiply(tau).add(1);
          for (double lag : lags) {
            product = product.multiply(s.multiply(lag).add(1));
          }
          assertThat(product.add(gain).norm()).isLessThan(0.01 * gain);
          found += mode.circular() > 0 ? 2 : 1;
        }
      }
      assertThat(found).isEqualTo(2 + (lags[0] > 0 ? 1 : 0) + (lags[1] > 0 ? 1 : 0));
    }
  }

  /** Friction slows servo and disc, water the sense line: the same polynomial with longer lags. */
  @Test
  void aSlowValveHasTheRootsOfLongerLags() {
    Network network = Demos.text(SUPPLY + REGULATOR + ISOTHERMAL).network();
    Map<Setup.PartNumber, Double> slow =
        Map.of(
            new Setup.PartNumber("regulator", "slowness"), 4.0,
            new Setup.PartNumber("regulator", "sense line slowness"), 3.0);
    Conditions conditions = Conditions.standardDay(0.8, 0.8);
    Solution solution = new Settler(network).solve(new Setup(conditions, Map.of(), Map.of(), slow));
    double gain = gain(solution);
    int found = 0;
    for (Mode mode : judge(solution, 0.2, 0.5, 0.1).modes()) {
      if (mode.growth() > -1000) {
        Complex s = new Complex(mode.growth(), mode.circular());
        Complex product = s.multiply(tau(solution)).add(1).multiply(s.multiply(0.6).add(1));
        product = product.multiply(s.multiply(2).add(1)).multiply(s.multiply(0.4).add(1));
        assertThat(product.add(gain).norm()).isLessThan(0.01 * gain);
        found += mode.circular() > 0 ? 2 : 1;
      }
    }
    assertThat(found).isEqualTo(4);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-4, 1e-2, 0.1, 1, 10, 1000})
  void aVolumeAndOneLagNeverHunt(double lag) {
    Solution solution = solve(SUPPLY + REGULATOR + ISOTHERMAL);
    assertThat(slowest(judge(solution, 0, 0, lag)).growth()).isNegative();
  }

  /** Volume, servo chamber and disc are three lags; K = (Στ)(Σ1/τ) − 1 at a servo found by hand. */
  @ParameterizedTest
  @ValueSource(doubles = {0.5, 1, 2})
  void aVolumeAndTwoLagsHuntFromTheLimit(double share) {
    Solution solution = solve(SUPPLY + REGULATOR + ISOTHERMAL);
    double tau = tau(solution);
    double disc = share * tau;
    double limit = slowServo(gain(solution), tau, disc);
    Stability steady = judge(solution, 0, 1.02 * limit, disc);
    Stability hunts = judge(solution, 0, 0.98 * limit, disc);
    assertThat(slowest(steady).growth()).isNegative();
    assertThat(hunts.verdict()).isEqualTo(Verdict.HUNTS);
    assertThat(hunts.says().get(0)).startsWith("HUNTS: regulator, ");
  }

  /** The larger root x of (a + b + x)(1/a + 1/b + 1/x) = K + 1. */
  private static double slowServo(double gain, double a, double b) {
    double second = 1 / a + 1 / b;
    double first = (a + b) * second - gain;
    double root = Math.sqrt(first * first - 4 * second * (a + b));
    return (-first + root) / (2 * second);
  }

  /**
   * A valve that is moved by the air behind it has two states that stay, shut and open. The balance
   * between them, found by holding the valve, does not stay.
   */
  @Test
  void theBalanceBetweenTwoStatesWouldNotStay() {
    String own = "    without muscle: shuts below 5 psig\n    muscle from: load\n";
    String text = SUPPLY + REGULATOR + own.indent(2).replace("      ", "    ") + ISOTHERMAL;
    Equations equations =
        new Equations(Demos.text(text).network(), Conditions.standardDay(0.8, 0.8));
    SteadySolver solver = new SteadySolver(equations);
    int stuck = equations.parameter(equations.network().part("regulator"), "stuck at");
    double high = 1e-3;
    while (excess(solver, stuck, high) < 0) {
      high *= 1.1;
    }
    double low = high / 1.1;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      boolean shuts = excess(solver, stuck, middle) < 0;
      low = shuts ? middle : low;
      high = shuts ? high : middle;
    }
    assertThat(excess(solver, stuck, low)).isCloseTo(0, within(1e-9));
    equations.evaluation().parameters[stuck] = -1;
    equations.evaluate();
    Stability stability = Stability.of(equations, Lags::usual);
    assertThat(stability.verdict()).isEqualTo(Verdict.LEAVES);
    assertThat(stability.says().get(0)).startsWith("WOULD NOT STAY HERE: regulator runs away");
  }

  /** By how much a regulator would open if it were no longer held. */
  private static double excess(SteadySolver solver, int stuck, double held) {
    Equations equations = solver.equations();
    equations.evaluation().parameters[stuck] = held;
    assertThat(solver.solve()).isNotEqualTo(SteadySolver.Way.NOT_SOLVED);
    int regulator = equations.network().part("regulator");
    double[] observed = observed(equations, regulator);
    return observed[1] * observed[2] * observed[3] - held;
  }

  @Test
  void aValveThatIsHeldTakesNoPart() {
    Network network = Demos.text(SUPPLY + REGULATOR + ISOTHERMAL).network();
    Conditions conditions = Conditions.standardDay(0.8, 0.8);
    Setup locked = new Setup(conditions, Map.of(), Map.of("regulator", "locked open"), Map.of());
    Stability stability = Stability.of(new Settler(network).solve(locked));
    assertThat(stability.modes()).noneMatch(Mode::byValve);
  }
}

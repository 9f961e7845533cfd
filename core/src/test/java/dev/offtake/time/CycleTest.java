package dev.offtake.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.explain.Question;
import dev.offtake.network.Demos;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import dev.offtake.stability.Lags;
import dev.offtake.stability.Mode;
import dev.offtake.stability.Stability;
import dev.offtake.system.BleedSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Limit cycles in time, beside what small motions about the steady state say. */
class CycleTest {
  private static final BleedSystem TWIN = Demos.demo("twin");
  private static final double PSI = 6894.757293168;

  private static Setup at(String power) throws QuantityProblem {
    return Question.of(TWIN, power, "", "", List.of()).setup();
  }

  private static List<Cycle> after(String power) throws QuantityProblem {
    Drive drive = Drive.from(at("80 %")).ramp(4, at(power)).hold(24);
    Settings settings = Settings.usual().withTolerance(1e-5);
    Played played = new Transient(TWIN.network()).run(drive, settings, s -> true);
    assertThat(played.end()).isEqualTo(Played.End.DONE);
    return Cycle.in(played, TWIN.network(), 20, 28);
  }

  /** At take-off both bleed regulators hunt with usual lags, as the growing mode says. */
  @Test
  void timeFindsWhatSmallMotionsSay() throws QuantityProblem {
    Solution steady = new Settler(TWIN.network()).solve(at("99 %"));
    Mode mode = Stability.of(steady, Lags::usual).modes().get(0);
    assertThat(mode.growth()).isPositive();
    Cycle cycle =
        after("99 %").stream()
            .filter(c -> c.part().equals("left bleed regulator"))
            .findFirst()
            .orElseThrow();
    assertThat(mode.driver()).contains("bleed regulator");
    assertThat(cycle.hertz()).isCloseTo(mode.frequency(), within(0.2 * mode.frequency()));
    assertThat(cycle.point()).isEqualTo("left regulated duct");
    assertThat(cycle.pressure()).isBetween(0.5 * PSI, 2 * PSI);
  }

  @Test
  void whereSmallMotionsFadeThereIsNone() throws QuantityProblem {
    Solution steady = new Settler(TWIN.network()).solve(at("82 %"));
    assertThat(Stability.of(steady, Lags::usual).verdict()).isEqualTo(Stability.Verdict.STEADY);
    assertThat(after("82 %")).isEmpty();
  }
}

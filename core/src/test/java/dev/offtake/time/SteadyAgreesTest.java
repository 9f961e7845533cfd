package dev.offtake.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.explain.Question;
import dev.offtake.network.Demos;
import dev.offtake.network.Equations;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import dev.offtake.study.Broken;
import dev.offtake.study.Fault;
import dev.offtake.study.Faults;
import dev.offtake.system.BleedSystem;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An endless step, with latches frozen and without friction, is the steady state. */
class SteadyAgreesTest {
  private static final BleedSystem TWIN = Demos.demo("twin");

  private static Setup at(String power) throws QuantityProblem {
    return Question.of(TWIN, power, "", "", List.of()).setup();
  }

  /** A state moved by a thousandth and brought back by one endless stage. */
  private static void assertComesBack(Solution solution) {
    Equations equations = solution.equations();
    Timetable timetable = new Timetable(equations, Drive.from(solution.setup()).hold(1));
    timetable.enter(1);
    AirInTime model = new AirInTime(equations, timetable, true, Pace::usual);
    double[] y = new double[model.size()];
    model.steady(y);
    double[] moved = y.clone();
    Random random = new Random(1);
    for (int k = 0; k < model.columns(); k++) {
      double size = k % 2 == 1 && k < 2 * equations.innerPoints() ? y[k] : 1;
      moved[k] += 1e-6 * size * (2 * random.nextDouble() - 1);
    }
    double[] allowed = new double[y.length];
    model.allowed(y, 1e-9, allowed);
    model.begin(0.5, 0, moved.clone());
    assertThat(new Stage(model).solve(moved, allowed, new double[y.length])).isTrue();
    for (int k = 0; k < y.length; k++) {
      assertThat(moved[k]).isCloseTo(y[k], within(100 * allowed[k]));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"62 %", "70 %", "78 %", "82 %", "90 %", "99 %"})
  void anEndlessStepGivesTheSteadyState(String power) throws QuantityProblem {
    Solution solution = new Settler(TWIN.network()).solve(at(power));
    assertThat(solution.solved()).isTrue();
    assertComesBack(solution);
  }

  @Test
  void withFaultsAsWell() throws QuantityProblem {
    List<Fault> faults = Faults.all(TWIN);
    for (int i = 0; i < faults.size(); i += 7) {
      Broken broken = Broken.of(TWIN.network(), TWIN.sides(), List.of(faults.get(i)));
      Solution solution = new Settler(broken.network()).solve(broken.setup(at("78 %")));
      if (solution.solved()) {
        assertComesBack(solution);
      }
    }
  }

  /** After a change of power, time ends where the steady solver says. */
  @ParameterizedTest
  @ValueSource(strings = {"66 %", "82 %", "95 %"})
  void timeEndsAtTheSteadyState(String power) throws QuantityProblem {
    Setup asked = at(power);
    Drive drive = Drive.from(at("78 %")).ramp(3, asked).hold(20_000);
    Settings settings = Settings.usual().withWalls(false);
    Played played = new Transient(TWIN.network()).run(drive, settings, s -> true);
    assertThat(played.end()).isEqualTo(Played.End.DONE);
    Solution end = played.at(played.seconds());
    Solution steady = new Settler(TWIN.network()).solve(asked);
    for (int i = 0; i < TWIN.network().points().size(); i++) {
      String name = TWIN.network().points().get(i).name();
      double p = steady.pressure(i);
      assertThat(end.pressure(i)).as(name).isCloseTo(p, within(1e-3 * p));
      assertThat(end.temperature(i)).as(name).isCloseTo(steady.temperature(i), within(1.0));
    }
  }

  @Test
  void nothingHappensWhereNothingIsAsked() throws QuantityProblem {
    Drive drive = Drive.from(at("82 %")).hold(100);
    Played played = new Transient(TWIN.network()).run(drive, Settings.usual(), s -> true);
    assertThat(played.events()).isEmpty();
    assertThat(played.cost().steps()).isLessThan(20);
    Solution end = played.at(100);
    Solution start = played.at(0);
    for (int i = 0; i < TWIN.network().points().size(); i++) {
      double p = start.pressure(i);
      assertThat(end.pressure(i)).isCloseTo(p, within(1e-6 * p));
    }
  }
}

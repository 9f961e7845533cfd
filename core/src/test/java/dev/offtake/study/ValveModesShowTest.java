package dev.offtake.study;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.explain.Question;
import dev.offtake.network.Demos;
import dev.offtake.part.Mode;
import dev.offtake.part.Part;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * Every failure of a valve, thermostat or trip shows somewhere in the demo: a pressure, a
 * temperature, a flow or what another part does; or it is said why it does not.
 */
class ValveModesShowTest {
  private static final BleedSystem TWIN = Demos.demo("twin");

  private static final Set<String> KINDS =
      Set.of(
          "regulator",
          "shutoff valve",
          "temperature control valve",
          "relief valve",
          "thermostat",
          "trip",
          "check valve");

  private record Asked(String power, String day, List<String> sets) {
    Setup setup() throws QuantityProblem {
      return Question.of(TWIN, power, day, "", sets).setup();
    }
  }

  private static final List<Asked> ASKED = asked();

  private static final Map<String, String> WHY_NOT =
      Map.of(
          "isolation valve position switch failed at open", "no light of the demo reads it",
          "isolation valve position switch failed at shut", "no light of the demo reads it",
          "isolation valve position switch out of adjustment", "no light of the demo reads it",
          "left overpressure trip latch does not hold",
              "what it shuts does not take the pressure away, so that the limit stays passed",
          "left relief valve does not reseat", "only after it has popped and power has come down");

  /** The demo's powers as they are; then speeds between them, with something out of the way. */
  private static List<Asked> asked() {
    List<Asked> all = new ArrayList<>();
    for (String power : List.of("ground idle", "descent", "take-off", "cruise")) {
      all.add(new Asked(power, "", List.of()));
    }
    all.add(new Asked("ground idle", "", List.of("isolation: OPEN", "left bleed switch: OFF")));
    all.add(new Asked("take-off", "", List.of("left bleed switch: OFF")));
    all.add(new Asked("take-off", "10000 ft, ISA +0 degF", List.of()));
    all.add(new Asked("take-off", "hot day", List.of("wing anti-ice: ON")));
    all.add(new Asked("92 %", "", List.of("left high stage valve: locked open")));
    all.add(new Asked("93 %", "", List.of("left high stage valve: locked open")));
    for (int core = 65; core <= 100; core += 5) {
      for (String set :
          List.of(
              "right bleed switch: OFF",
              "left cooling air valve: locked shut",
              "left bleed regulator: locked open",
              "left high stage valve: locked open")) {
        all.add(new Asked(core + " %", "", List.of(set)));
      }
    }
    return all;
  }

  @Test
  void everyOneShows() throws QuantityProblem {
    List<Solution> healthy = new ArrayList<>();
    Settler settler = new Settler(TWIN.network());
    for (Asked asked : ASKED) {
      healthy.add(solve(settler, asked.setup()));
    }
    Set<String> hidden = new TreeSet<>();
    for (Fault fault : Faults.all(TWIN)) {
      boolean once = !fault.part().name().startsWith("right ");
      if (once && KINDS.contains(fault.part().kind()) && !moving(fault) && !shows(fault, healthy)) {
        hidden.add(fault.name());
      }
    }
    assertThat(hidden).containsExactlyInAnyOrderElementsOf(WHY_NOT.keySet());
  }

  private static boolean moving(Fault fault) {
    return fault.mode().traits().contains(Mode.Trait.MOVING);
  }

  private static boolean shows(Fault fault, List<Solution> healthy) throws QuantityProblem {
    Broken broken = Broken.of(TWIN.network(), TWIN.sides(), List.of(fault));
    Settler settler = new Settler(broken.network());
    for (int i = 0; i < ASKED.size(); i++) {
      Solution now = solve(settler, broken.setup(ASKED.get(i).setup()));
      Solution was = healthy.get(i);
      boolean shows =
          differ(fault.part(), was, now)
              || differ(
                  fault.part(),
                  was.outcome().before().orElse(was),
                  now.outcome().before().orElse(now));
      boolean swings = was.solved() && !now.outcome().cycle().isEmpty();
      if (swings || (was.solved() && now.solved() && shows)) {
        return true;
      }
    }
    return false;
  }

  private static Solution solve(Settler settler, Setup setup) {
    settler.forget();
    return settler.solve(setup);
  }

  /** A thousandth of a bar, a tenth of a kelvin, or another part that does something else. */
  private static boolean differ(Part broken, Solution one, Solution two) {
    for (int i = 0; i < one.network().points().size(); i++) {
      boolean pressure = Math.abs(one.pressure(i) - two.pressure(i)) > 100;
      if (pressure || Math.abs(one.temperature(i) - two.temperature(i)) > 0.1) {
        return true;
      }
    }
    for (int i = 0; i < one.network().parts().size(); i++) {
      boolean other = !one.network().parts().get(i).name().equals(broken.name());
      String does = one.doing(i, Style.SHOP).regime();
      if (other && !does.equals(two.doing(i, Style.SHOP).regime())) {
        return true;
      }
    }
    return false;
  }
}

package dev.offtake.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.network.Demos;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An answer must not depend on what was asked before it. */
class OrderTest {
  private static final String[][] TWIN = {
    {"ground idle"},
    {"take-off"},
    {"cruise"},
    {"78 %"},
    {"ground idle", "left bleed switch: OFF", "isolation: OPEN"},
    {"descent", "wing anti-ice: ON", "isolation: OPEN"},
    {"ground idle", "left bleed switch: OFF", "right bleed switch: OFF", "aux bleed: ON"},
    {"take-off", "left pack switch: OFF", "right pack switch: OFF"}
  };
  private static final String[][] ROTOR = {
    {"ground idle"},
    {"hover", "cabin heat: ON"},
    {"hover", "cabin heat: ON", "inlet anti-ice: ON"},
    {"ground idle", "cart: ON"},
    {"80 %", "inlet anti-ice: ON"}
  };

  /** 200 random orders through one solver that starts warm, against a fresh solver each. */
  @ParameterizedTest
  @ValueSource(strings = {"twin", "rotor"})
  void warmStartsEndWhereColdOnesDo(String demo) {
    BleedSystem system = Demos.demo(demo);
    List<Setup> setups = new ArrayList<>();
    List<Solution> cold = new ArrayList<>();
    for (String[] asked : demo.equals("twin") ? TWIN : ROTOR) {
      String[] sets = List.of(asked).subList(1, asked.length).toArray(String[]::new);
      setups.add(Answers.setup(system, asked[0], sets));
      cold.add(new Settler(system.network()).solve(setups.get(setups.size() - 1)));
      assertThat(cold.get(cold.size() - 1).solved()).as(String.join(", ", asked)).isTrue();
    }
    Random random = new Random(20240613);
    Settler settler = new Settler(system.network());
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < setups.size(); i++) {
      order.add(i);
    }
    for (int draw = 0; draw < 200; draw++) {
      Collections.shuffle(order, random);
      for (int which : order) {
        same(settler.solve(setups.get(which)), cold.get(which), "order " + order + " at " + which);
      }
    }
  }

  private static void same(Solution one, Solution two, String where) {
    assertThat(one.solved()).as(where).isTrue();
    assertThat(one.outcome().memory()).as(where).isEqualTo(two.outcome().memory());
    for (int i = 0; i < one.network().points().size(); i++) {
      String at = where + ": " + one.network().points().get(i).name();
      assertThat(one.pressure(i)).as(at).isCloseTo(two.pressure(i), within(0.1));
      assertThat(one.temperature(i)).as(at).isCloseTo(two.temperature(i), within(1e-3));
    }
  }

  /** Two new solvers agree to the last bit: nothing is left to chance. */
  @Test
  void newSolversAgreeToTheLastBit() {
    BleedSystem system = Demos.demo("twin");
    Setup setup = Answers.setup(system, "cruise");
    Solution one = new Settler(system.network()).solve(setup);
    Solution two = new Settler(system.network()).solve(setup);
    for (int i = 0; i < system.network().points().size(); i++) {
      assertThat(one.pressure(i)).isEqualTo(two.pressure(i));
      assertThat(one.temperature(i)).isEqualTo(two.temperature(i));
    }
  }
}

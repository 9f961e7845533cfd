package dev.offtake.cause.find;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.network.Demos;
import dev.offtake.study.Fault;
import dev.offtake.study.Faults;
import dev.offtake.system.BleedSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** No check is asked for that would pass a limit of the file. */
class RulesTest {
  private static final BleedSystem TWIN = Demos.demo("twin");

  private static String refused(String power, String fault) {
    Forecaster forecaster = new Forecaster(TWIN);
    List<Scene> there =
        Stage.scenes(TWIN).stream().filter(scene -> scene.name().equals(power)).toList();
    assertThat(there).hasSize(1);
    List<SceneState> sound = forecaster.sound(there);
    Fault broken =
        Faults.all(TWIN).stream().filter(one -> one.name().equals(fault)).findFirst().orElseThrow();
    List<SceneState> now = forecaster.states(forecaster.broken(List.of(broken)), there, sound);
    return Rules.limit(TWIN, sound.get(0), now);
  }

  @Test
  void aLimitThatACauseWouldPassForbidsTheRun() {
    assertThat(refused("take-off, left bleed off", "right precooler fouled"))
        .contains("pack inlet limit would be passed");
  }

  @Test
  void aRunWithinAllLimitsIsAllowed() {
    assertThat(refused("ground idle", "left high stage valve stuck shut")).isEmpty();
  }
}

package dev.offtake.explain;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.cause.ReadingsReader;
import dev.offtake.cause.find.Scene;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The head of an occasion that belongs to a scene. */
class SceneHeadTest {
  private static BleedSystem demo;

  @BeforeAll
  static void read() {
    demo = SystemReader.read(Path.of("../demo/demo-twin.yaml")).system().orElseThrow();
  }

  private static SceneHead head(String at) {
    var readings =
        ReadingsReader.readLines(List.of(at + ": left duct 20 psig"), demo)
            .readings()
            .orElseThrow();
    return SceneHead.of(demo, Scene.of(demo, readings.occasions().get(0)));
  }

  @Test
  void asThingsSitThereIsNothingToSay() {
    assertThat(head("ground idle")).isEqualTo(new SceneHead("", Map.of()));
  }

  @Test
  void aLineUpIsCalledByItsName() {
    assertThat(head("take-off, packs off")).isEqualTo(new SceneHead("packs off", Map.of()));
    assertThat(head("ground idle, left pack switch OFF, right pack switch OFF"))
        .isEqualTo(new SceneHead("packs off", Map.of()));
  }

  @Test
  void whatStandsDifferentlyIsListed() {
    assertThat(head("ground idle, left pack switch OFF").set())
        .isEqualTo(Map.of("left pack switch", "OFF"));
    assertThat(head("ground idle, isolation valve locked shut").set())
        .isEqualTo(Map.of("isolation valve", "locked shut"));
  }
}

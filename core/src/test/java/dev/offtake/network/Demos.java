package dev.offtake.network;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.part.Kinds;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Reading;
import dev.offtake.system.SystemReader;
import java.nio.file.Path;

/** Systems for tests: the demos, and texts. */
public final class Demos {
  private Demos() {}

  /** A demo by the middle of its file's name. */
  public static BleedSystem demo(String name) {
    return sound(SystemReader.read(Path.of("../demo/demo-" + name + ".yaml")));
  }

  /** A system with one part of every kind, those between them in a working order. */
  public static BleedSystem everyKind() {
    Path path = Path.of("src/test/resources/dev/offtake/study/every-kind.yaml");
    return sound(SystemReader.read(path));
  }

  /** A system whose file would say this after its head. */
  public static BleedSystem text(String said) {
    String head = "offtake: 1\ntitle: Bench\nabout: Invented for a test.\n";
    return sound(SystemReader.readText("bench.yaml", head + said, Kinds.all()));
  }

  private static BleedSystem sound(Reading reading) {
    assertThat(reading.problems()).isEmpty();
    return reading.system().orElseThrow();
  }
}

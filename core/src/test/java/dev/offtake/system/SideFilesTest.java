package dev.offtake.system;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.offtake.part.Part;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One engine's file serves the aircraft and the stand; what is no readable file is told. */
class SideFilesTest {
  private static final Path SYSTEMS = Path.of("src/test/resources/systems");
  @TempDir private Path folder = Path.of("");

  private static BleedSystem read(String name) {
    Reading reading = SystemReader.read(SYSTEMS.resolve(name));
    assertThat(reading.problems()).isEmpty();
    return reading.system().orElseThrow();
  }

  private static double set(BleedSystem system, String part) {
    Part regulator =
        system.parts().stream().filter(p -> p.name().equals(part)).findFirst().orElseThrow();
    return regulator.parameters().stream()
            .filter(p -> p.name().equals("set"))
            .findFirst()
            .orElseThrow()
            .value()
        / 6894.757293168361;
  }

  @Test
  void theAircraftHasTheEngineTwice() {
    BleedSystem aircraft = read("aircraft.yaml");
    assertThat(aircraft.sides()).containsExactly("left", "right");
    assertThat(aircraft.parts())
        .extracting(Part::name)
        .contains("left tap", "right tap", "left pack", "right pack", "isolation valve")
        .hasSize(7);
    assertThat(aircraft.switches()).containsOnlyKeys("left bleed switch", "right bleed switch");
    assertThat(aircraft.settings()).containsOnlyKeys("idle");
    assertThat(aircraft.papers()).extracting(Paper::id).containsExactly("SD");
    assertThat(aircraft.title()).isEqualTo("Two engines of one file");
  }

  @Test
  void onlyOneSideChangesTheEnginesLine() {
    BleedSystem aircraft = read("aircraft.yaml");
    assertThat(Math.round(set(aircraft, "left bleed regulator"))).isEqualTo(42);
    assertThat(Math.round(set(aircraft, "right bleed regulator"))).isEqualTo(40);
    assertThat(aircraft.overrides())
        .extracting(SideOverride::file)
        .containsExactly("aircraft.yaml");
    assertThat(aircraft.statements()).extracting(Statement::file).contains("engine.yaml");
  }

  @Test
  void theStandHasTheSameEngineOnce() {
    BleedSystem stand = read("stand.yaml");
    assertThat(stand.parts())
        .extracting(Part::name)
        .containsExactlyInAnyOrder("engine tap", "engine bleed regulator", "stand throttle");
    assertThat(Math.round(set(stand, "engine bleed regulator"))).isEqualTo(42);
  }

  @Test
  void aMistakeInTheEnginesFileIsToldOnceAndThere() throws IOException {
    String engine = Files.readString(SYSTEMS.resolve("engine.yaml"));
    Files.writeString(folder.resolve("engine.yaml"), engine.replace("42 psig", "42 psgi"));
    Files.copy(SYSTEMS.resolve("aircraft.yaml"), folder.resolve("aircraft.yaml"));
    Reading reading = SystemReader.read(folder.resolve("aircraft.yaml"));
    assertThat(reading.problems()).hasSize(1);
    assertThat(reading.problems().get(0).toString()).startsWith("engine.yaml:25: ");
  }

  private static String told(Path file) {
    Reading reading = SystemReader.read(file);
    assertThat(reading.problems()).hasSize(1);
    return reading.problems().get(0).toString();
  }

  @Test
  void aFolderSaysSo() {
    assertThat(told(folder)).contains("is a folder. Give the file in it");
  }

  @Test
  void aDeviceSaysSo() {
    assumeTrue(new File("/dev/null").exists());
    assertThat(told(Path.of("/dev/null"))).contains("`/dev/null` is a device or a pipe");
  }

  @Test
  void aForbiddenFileSaysSo() throws IOException {
    Path file = Files.writeString(folder.resolve("secret.yaml"), "offtake: 1\n");
    assumeTrue(file.toFile().setReadable(false));
    assumeFalse(Files.isReadable(file), "this user may read everything");
    assertThat(told(file)).contains("You may not read");
  }

  @Test
  void aMissingFileSaysSo() {
    assertThat(told(folder.resolve("none.yaml"))).startsWith("none.yaml:1: There is no file");
  }
}

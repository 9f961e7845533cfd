package dev.offtake.profile;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.network.Demos;
import dev.offtake.system.BleedSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The reference of profiles is true: each example is read, each line and word is told. */
class ProfilesDocsTest {
  private static final Path DOCS = Path.of("../docs/profiles.md");
  private static final BleedSystem TWIN = Demos.demo("twin");
  private static final BleedSystem STAND = Demos.demo("stand");

  static List<String> examples() throws IOException {
    return Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL)
        .matcher(Files.readString(DOCS))
        .results()
        .map(found -> found.group(1))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyExampleIsRead(String text) {
    BleedSystem system = text.contains("demo-stand.yaml") ? STAND : TWIN;
    assertThat(ProfileReader.readText("p.yaml", text, system).problems()).isEmpty();
  }

  @Test
  void everySectionLineAndActionIsTold() throws IOException {
    String docs = Files.readString(DOCS);
    ProfileReader.SECTIONS.forEach(word -> assertThat(docs).contains("| `" + word + "` |"));
    StartReader.KEYS.forEach(word -> assertThat(docs).contains("| `" + word + "` |"));
    ActionReader.VERBS.forEach(word -> assertThat(docs).contains("| `" + word + "` |"));
    Paces.KEYS.forEach(word -> assertThat(docs).contains("| `" + word + "` |"));
    for (Input input : Inputs.TIMES) {
      assertThat(docs).contains("| `" + input.key() + "` | " + input.usual() + " |");
    }
    for (Input input : Inputs.START_UP) {
      assertThat(docs).containsPattern("\\| `" + input.key() + "` \\| .* \\| " + input.usual());
    }
  }

  @Test
  void everyDemoProfileIsRead() throws IOException {
    try (var files = Files.list(Path.of("../demo/profiles"))) {
      for (Path file : files.toList()) {
        boolean stand = Files.readString(file).contains("system: demo-stand.yaml");
        assertThat(ProfileReader.read(file, stand ? STAND : TWIN).problems()).isEmpty();
      }
    }
  }
}

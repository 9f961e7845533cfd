package dev.offtake.explain;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.offtake.network.Demos;
import dev.offtake.profile.ProfileRead;
import dev.offtake.profile.ProfileReader;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.study.Fault;
import dev.offtake.study.FaultReader;
import dev.offtake.system.BleedSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** {@code docs/json-play.md} tells every field that {@link PlayJson} writes, and no other. */
class PlayDocsTest {
  private static final Path DOCS = Path.of("../docs/json-play.md");
  private static final BleedSystem STAND = Demos.demo("stand");
  private static final BleedSystem TWIN = Demos.demo("twin");

  private static JsonNode json(BleedSystem system, String text)
      throws IOException, QuantityProblem {
    ProfileRead read = ProfileReader.readText("p.yaml", "offtake profile: 1\n" + text, system);
    assertThat(read.problems()).isEmpty();
    List<List<Fault>> causes =
        system.equals(STAND)
            ? List.of(new FaultReader(STAND).read("mid check valve stuck open"))
            : List.of();
    PlayInquiry.Request request = new PlayInquiry.Request(List.of(), causes, "", 7000);
    PlayAnswer answer =
        PlayInquiry.answer(system, read.profile().orElseThrow(), request, Style.SHOP, share -> {});
    return new ObjectMapper().readTree(PlayJson.print(answer));
  }

  @Test
  void everyFieldIsDocumentedAndNoOther() throws IOException, QuantityProblem {
    Set<String> written =
        JsonFields.of(
            json(
                STAND,
                "start: {power: take-off, load switch: ON}\n"
                    + "valves: {bleed regulator: {sense line: 0.2 s, disc: 0.05 s}}\n"
                    + "actions:\n  at 5 s: {load switch: OFF}\n  at 10 s: {load switch: ON}\n"
                    + "ends at: 30 s\n"),
            json(
                STAND,
                "start: {power: ground idle, load switch: ON, broken: high stage valve stuck shut}\n"
                    + "actions:\n  at 1 s: {bleed switch: OFF}\n  from 5 s to 20 s: shut down\n"
                    + "ends at: 30 s\n"),
            json(STAND, "start: {power: 125 %}\nactions:\n  at 1 s: {load switch: ON}\n"),
            json(TWIN, "actions:\n  at 1 s: {isolation: OPEN}\nends at: 3 s\n"));
    assertThat(JsonFields.documented(Files.readString(DOCS))).isEqualTo(written);
  }

  @Test
  void theLayoutHasTheNumberOfItsPage() throws IOException {
    assertThat(Files.readString(DOCS))
        .startsWith("# `offtake play --json`, layout " + PlayJson.LAYOUT + "\n");
  }
}

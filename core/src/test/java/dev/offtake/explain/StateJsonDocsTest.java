package dev.offtake.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** {@code docs/json.md} tells every field that {@link StateJson} writes, and no other. */
class StateJsonDocsTest {
  private static JsonNode broken = new ObjectMapper().createObjectNode();
  private static String docs = "";
  private static JsonNode idle = new ObjectMapper().createObjectNode();
  private static JsonNode tripped = new ObjectMapper().createObjectNode();

  @BeforeAll
  static void answer() throws IOException, QuantityProblem {
    docs = Files.readString(Path.of("../docs/json.md"));
    idle = json("ground idle");
    tripped = json("take-off", "left cooling air valve: locked shut");
    broken = broken("ground idle", "left mid check valve stuck 1/3 open");
  }

  private static JsonNode json(String at, String... sets) throws IOException, QuantityProblem {
    BleedSystem system =
        SystemReader.read(Path.of("../demo/demo-twin.yaml")).system().orElseThrow();
    Question question = Question.of(system, at, "", "", List.of(sets));
    StateAnswer answer = StateInquiry.answer(question, Style.SHOP);
    return new ObjectMapper().readTree(StateJson.print(answer));
  }

  private static JsonNode broken(String at, String fault) throws IOException, QuantityProblem {
    BleedSystem system =
        SystemReader.read(Path.of("../demo/demo-twin.yaml")).system().orElseThrow();
    Question question = Question.of(system, at, "", "", List.of()).broken(List.of(fault));
    return new ObjectMapper().readTree(BreakJson.print(BreakInquiry.answer(question, Style.SHOP)));
  }

  @Test
  void everyFieldIsDocumentedAndNoOther() throws Exception {
    JsonNode cart = new ObjectMapper().readTree(StateJson.print(PanelTest.cart(Style.SHOP)));
    assertThat(JsonFields.documented(docs)).isEqualTo(JsonFields.of(idle, tripped, cart, broken));
  }

  @Test
  void theLayoutHasTheNumberOfItsPage() {
    assertThat(docs).startsWith("# `offtake state --json`, layout " + StateJson.LAYOUT + "\n");
    assertThat(idle.get("offtake state").asInt()).isEqualTo(StateJson.LAYOUT);
  }

  /** The example is a true one: its air is that of the demo's answer, to 1 %. */
  @Test
  void theExampleIsTheDemosAnswer() throws IOException {
    String block = docs.substring(docs.indexOf("```json") + 7, docs.lastIndexOf("```"));
    JsonNode example = new ObjectMapper().readTree(block);
    assertThat(JsonFields.documented(docs)).containsAll(JsonFields.of(example));
    assertThat(example.get("power")).isEqualTo(idle.get("power"));
    assertThat(example.get("caution")).isEqualTo(idle.get("caution"));
    for (JsonNode row : example.get("air")) {
      JsonNode now = named(row.get("name").asText());
      for (String number : List.of("gauge pressure Pa", "temperature K")) {
        double value = row.get(number).asDouble();
        assertThat(now.get(number).asDouble()).isCloseTo(value, within(0.01 * value));
      }
    }
  }

  private static JsonNode named(String name) {
    for (JsonNode row : idle.get("air")) {
      if (row.get("name").asText().equals(name)) {
        return row;
      }
    }
    throw new AssertionError(name);
  }
}

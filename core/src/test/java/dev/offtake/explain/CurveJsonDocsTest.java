package dev.offtake.explain;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.offtake.network.Demos;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** {@code docs/json-curve.md} tells every field that {@link CurveJson} writes, and no other. */
class CurveJsonDocsTest {
  private static final Path DOCS = Path.of("../docs/json-curve.md");

  private static JsonNode json(String over, String... sets) throws IOException, QuantityProblem {
    Question question = Question.of(Demos.demo("twin"), "", "", "", List.of(sets));
    return json(question, over);
  }

  private static JsonNode json(Question question, String over) throws IOException, QuantityProblem {
    CurveAnswer.Request request = new CurveAnswer.Request(over, 12, "");
    List<CurveAnswer> answers = CurveAnswer.all(question, request, Style.SHOP, share -> {});
    return new ObjectMapper().readTree(CurveJson.print(answers));
  }

  private static JsonNode broken() throws IOException, QuantityProblem {
    Question question = Question.of(Demos.demo("twin"), "", "", "", List.of());
    return json(question.broken(List.of("left mid check valve stuck 1/3")), "core=76..90");
  }

  @Test
  void everyFieldIsDocumentedAndNoOther() throws IOException, QuantityProblem {
    Set<String> written =
        JsonFields.of(
            json("core=62..80", "left cooling air valve: locked shut"),
            json("core=40..62"),
            broken());
    Set<String> documented = JsonFields.documented(Files.readString(DOCS));
    assertThat(documented).isEqualTo(written);
  }

  @Test
  void eachCurveSaysWhatIsBroken() throws IOException, QuantityProblem {
    JsonNode curves = broken().get("curves");
    assertThat(curves).hasSize(2);
    assertThat(curves.get(0).get("if")).isEmpty();
    assertThat(curves.get(0).get("who would notice")).isEmpty();
    assertThat(curves.get(1).get("if").get(0).asText())
        .isEqualTo("left mid check valve stuck 33 % open");
    assertThat(curves.get(1).get("who would notice"))
        .extracting(stretch -> stretch.get("verdict").asText())
        .contains("HIDDEN", "lost in the gauge");
  }

  @Test
  void theLayoutHasTheNumberOfItsPage() throws IOException {
    assertThat(Files.readString(DOCS))
        .startsWith("# `offtake curve --json`, layout " + CurveJson.LAYOUT + "\n");
  }
}

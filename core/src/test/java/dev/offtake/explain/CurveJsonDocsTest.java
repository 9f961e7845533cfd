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
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
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

  private static void fields(String path, JsonNode node, Set<String> into) {
    if (node.isArray()) {
      into.add(path + "[]");
      node.forEach(each -> fields(path + "[]", each, into));
    } else if (node.isObject()) {
      String dot = path.isEmpty() ? "" : path + ".";
      node.properties().forEach(f -> fields(dot + f.getKey(), f.getValue(), into));
    } else {
      into.add(path);
    }
  }

  @Test
  void everyFieldIsDocumentedAndNoOther() throws IOException, QuantityProblem {
    Set<String> written = new TreeSet<>();
    fields("", json("core=62..80", "left cooling air valve: locked shut"), written);
    fields("", json("core=40..62"), written);
    fields("", broken(), written);
    Set<String> documented =
        Pattern.compile("(?m)^\\| `([^`]+)` \\|")
            .matcher(Files.readString(DOCS))
            .results()
            .map((MatchResult row) -> row.group(1))
            .collect(Collectors.toCollection(TreeSet::new));
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

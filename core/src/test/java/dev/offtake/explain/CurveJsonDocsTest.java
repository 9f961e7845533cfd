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
    CurveAnswer.Request request = new CurveAnswer.Request(over, 12, "");
    CurveAnswer answer = CurveAnswer.of(question, request, Style.SHOP, share -> {});
    return new ObjectMapper().readTree(CurveJson.print(List.of(answer)));
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
    Set<String> documented =
        Pattern.compile("(?m)^\\| `([^`]+)` \\|")
            .matcher(Files.readString(DOCS))
            .results()
            .map((MatchResult row) -> row.group(1))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(documented).isEqualTo(written);
  }

  @Test
  void theLayoutHasTheNumberOfItsPage() throws IOException {
    assertThat(Files.readString(DOCS))
        .startsWith("# `offtake curve --json`, layout " + CurveJson.LAYOUT + "\n");
  }
}

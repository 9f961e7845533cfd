package dev.offtake.desk.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.study.Fault;
import dev.offtake.study.Faults;
import dev.offtake.system.BleedSystem;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;
import org.junit.jupiter.api.Test;

/** A pocket sheet: what it holds, and that it loads nothing. */
class PocketTest {
  private static final BleedSystem SYSTEM = MadeSheet.SMALL.system();
  private static final String HTML = new String(MadeSheet.HTML, StandardCharsets.UTF_8);

  @Test
  void everyPowerLineUpAndSingleFailureIsInIt() {
    List<Fault> faults = Faults.all(SYSTEM);
    assertThat(MadeSheet.RECORD.get("faults").size()).isEqualTo(faults.size());
    int stops = SYSTEM.settings().size() * SYSTEM.lineUps().size();
    assertThat(MadeSheet.RECORD.get("stops").size()).isEqualTo(stops);
    for (JsonNode stop : MadeSheet.RECORD.get("stops")) {
      assertThat(stop.get("broken").size()).isEqualTo(faults.size());
    }
    assertThat(MadeSheet.RECORD.get("notice").size()).isEqualTo(faults.size());
  }

  /** A state that is put together again says what the server says. */
  @Test
  void aStateOfTheSheetIsTheServersState() {
    States states = new States(SYSTEM);
    List<Fault> faults = Faults.all(SYSTEM);
    for (int s = 0; s < MadeSheet.RECORD.get("stops").size(); s += 5) {
      JsonNode stop = MadeSheet.RECORD.get("stops").get(s);
      for (int f = s; f < faults.size(); f += 37) {
        Ask ask =
            Ask.of(
                Map.of(
                    "power", List.of(stop.get("power").asText()),
                    "lineup", List.of(stop.get("lineUp").asText()),
                    "if", List.of(faults.get(f).name())));
        JsonNode server = Delta.tidy(StateDocument.of(states, ask));
        JsonNode sheet = patched(stop.get("sound"), stop.get("broken").get(f));
        assertThat(sheet.get("headline")).isEqualTo(server.get("headline"));
        assertThat(sheet.get("needles")).hasSameSizeAs(server.get("needles"));
        assertThat(words(sheet, "parts", "word")).isEqualTo(words(server, "parts", "word"));
        assertThat(words(sheet, "points", "says")).isEqualTo(words(server, "points", "says"));
        assertThat(words(sheet, "needles", "says")).isEqualTo(words(server, "needles", "says"));
      }
    }
  }

  private static List<String> words(JsonNode state, String list, String field) {
    return state.has(list) ? state.get(list).findValuesAsText(field) : List.of();
  }

  /** What page/pocket.js does. */
  private static JsonNode patched(JsonNode base, JsonNode delta) {
    if (delta instanceof ArrayNode) {
      return delta.get(0);
    }
    if (base instanceof ArrayNode list) {
      ArrayNode whole = list.deepCopy();
      delta
          .properties()
          .forEach(
              e -> {
                int at = Integer.parseInt(e.getKey());
                whole.set(at, patched(list.get(at), e.getValue()));
              });
      return whole;
    }
    ObjectNode whole = base == null ? JsonNodeFactory.instance.objectNode() : base.deepCopy();
    for (Map.Entry<String, JsonNode> entry : delta.properties()) {
      if (entry.getValue().isNull()) {
        whole.remove(entry.getKey());
      } else {
        JsonNode was = base == null ? null : base.get(entry.getKey());
        whole.set(
            entry.getKey(), patched(Objects.requireNonNullElse(was, whole), entry.getValue()));
      }
    }
    return whole;
  }

  @Test
  void whatIsPackedIsTheRecord() throws IOException {
    Matcher packed =
        Pattern.compile("id=\"pocket-record\">([A-Za-z0-9+/=]+)</script>").matcher(HTML);
    assertThat(packed.find()).isTrue();
    byte[] bytes = Base64.getDecoder().decode(packed.group(1));
    try (var in = new InflaterInputStream(new ByteArrayInputStream(bytes), new Inflater(true))) {
      JsonNode record = new ObjectMapper().readTree(in.readAllBytes());
      assertThat(record.get("stops").size()).isEqualTo(MadeSheet.RECORD.get("stops").size());
      assertThat(record.get("system"))
          .isEqualTo(new ObjectMapper().readTree(MadeSheet.RECORD.get("system").toString()));
    }
  }

  @Test
  void onlyItsOwnScriptAndStyleRunAndNothingIsLoaded() throws NoSuchAlgorithmException {
    assertThat(HTML).contains("default-src 'none'").doesNotContain("unsafe", "{{t");
    for (String tag : List.of("script", "style")) {
      Matcher inline =
          Pattern.compile("<" + tag + ">(.*?)</" + tag + ">", Pattern.DOTALL).matcher(HTML);
      assertThat(inline.find()).isTrue();
      byte[] hash =
          MessageDigest.getInstance("SHA-256")
              .digest(inline.group(1).getBytes(StandardCharsets.UTF_8));
      String policy = tag + "-src 'sha256-" + Base64.getEncoder().encodeToString(hash) + "'";
      assertThat(HTML).contains(policy);
      assertThat(inline.find()).isFalse();
    }
    assertThat(HTML).doesNotContain("<link", "src=\"/", "href=\"/", "@import");
    assertThat(HTML).contains("url(\"data:font/woff2;base64,").doesNotContain("url(\"fonts");
  }

  @Test
  void anExportedVariableStaysAlive() {
    Map<String, String> modules =
        Map.of(
            "a", "export let api = 1;\nexport function set(x) { api = x; }\n",
            "b", "import { api, set } from './a.js';\nexport const read = () => api.name;\n",
            "c", "import { read as get } from './b.js';\nget();\n");
    String bundle = Bundle.of("a", "c", "between();\n", modules::get);
    assertThat(bundle)
        .contains(
            "() => module_a.api.name", "const get = module_b.read;", "const set = module_a.set;")
        .doesNotContain("import ", "export ");
    assertThat(bundle.indexOf("module_a = ")).isLessThan(bundle.indexOf("between()"));
    assertThat(bundle.indexOf("between()")).isLessThan(bundle.indexOf("module_b = "));
  }

  @Test
  void aFormThatIsNotKnownIsToldWhileTheSheetIsMade() {
    for (String odd : List.of("export default 1;\n", "import * as x from './y.js';\n")) {
      assertThatThrownBy(() -> Bundle.of("a", "a", "", name -> odd))
          .isInstanceOf(IllegalStateException.class)
          .hasMessageContaining("a.js");
    }
  }
}

package dev.offtake.system;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import dev.offtake.part.Kinds;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The schema takes a good file and refuses misspelt names. */
class SchemaWriterTest {
  private static final String GOOD =
      """
      {"offtake": 1, "title": "One engine",
       "sides": {"left": "L"},
       "switches": {"bleed switch": ["ON", "OFF"]},
       "each side": {"trips": {"overheat trip": {"watches": "duct temperature",
                               "above": "490 degF for 3 s; SD p.9"}}},
       "only left": {"mid check valve": {"bore": "3 in"}},
       "parts": {
         "mid check valve": {"kind": "check valve", "path": "mid duct -> duct", "bore": "3.5 in"},
         "bleed regulator": {"kind": "regulator", "path": "a -> b", "holds": "duct pressure",
            "set to": ["42 psig; SD p.7", "40 psig"], "without power": "shuts; SD p.8"}},
       "gauges": {"duct gauge": {"needles": {"L": "left duct pressure"},
                  "good to": {"constant": "0.8 psi"}, "on": "each side"}}}
      """;

  private static final String GROUP = "\"set\": {\"to\": \"42 psig\"}";

  private static Set<ValidationMessage> faults(String file) {
    JsonSchema schema =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(SchemaWriter.schema(TradeKinds.ALL));
    return schema.validate(file, InputFormat.JSON);
  }

  @Test
  void takesAGoodFile() {
    assertThat(faults(GOOD)).isEmpty();
  }

  @Test
  void refusesMisspeltNames() {
    assertThat(faults(GOOD.replace("\"bore\": \"3.5", "\"boer\": \"3.5"))).isNotEmpty();
    assertThat(faults(GOOD.replace("\"parts\"", "\"prats\""))).isNotEmpty();
    assertThat(faults(GOOD.replace("check valve\",", "chekc valve\","))).isNotEmpty();
    assertThat(faults(GOOD.replace("shuts;", "shust;"))).isNotEmpty();
    assertThat(faults(GOOD.replace("[\"ON\", \"OFF\"]", "[\"ON\"]"))).isNotEmpty();
    assertThat(faults(GOOD.replace("\"watches\"", "\"wathces\""))).isNotEmpty();
  }

  @Test
  void isItselfValidJsonSchema() throws Exception {
    String text = new ObjectMapper().writeValueAsString(SchemaWriter.schema(TradeKinds.ALL));
    JsonSchema meta =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(
                com.networknt.schema.SchemaLocation.of(
                    "https://json-schema.org/draft/2020-12/schema"));
    assertThat(meta.validate(text, InputFormat.JSON)).isEmpty();
  }

  @Test
  void asksForTheLinesThatHaveNoUsualValue() {
    assertThat(faults(GOOD.replace("\"path\": \"mid duct -> duct\", ", ""))).isNotEmpty();
    assertThat(faults(GOOD.replace("\"holds\": \"duct pressure\",", ""))).isNotEmpty();
    assertThat(faults(GOOD.replace("\"set to\": [\"42 psig; SD p.7\", \"40 psig\"],", "")))
        .isNotEmpty();
    String grouped = GOOD.replace("\"set to\": [\"42 psig; SD p.7\", \"40 psig\"]", GROUP);
    assertThat(grouped).isNotEqualTo(GOOD);
    assertThat(faults(grouped)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"demo-twin.yaml", "demo-rotor.yaml"})
  void takesTheDemos(String demo) throws Exception {
    String yaml = Files.readString(Path.of("../demo").resolve(demo));
    Object tree = new Load(LoadSettings.builder().build()).loadFromString(yaml);
    JsonSchema schema =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(SchemaWriter.schema(Kinds.all()));
    assertThat(schema.validate(new ObjectMapper().valueToTree(tree))).isEmpty();
  }
}

package dev.offtake.desk.page;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import dev.offtake.cause.Readings;
import dev.offtake.cause.ReadingsRead;
import dev.offtake.cause.ReadingsReader;
import dev.offtake.cause.ReadingsWriter;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Item;
import dev.offtake.system.Problem;
import dev.offtake.system.Problems;
import dev.offtake.system.YamlTree;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Readings between the page, which speaks JSON, and their files, which are YAML. */
final class ReadingsDocument {
  private static final String NAME = "your readings";

  private static final YamlTree.Begin BEGIN =
      new YamlTree.Begin("readings file", "Begin with `offtake readings: 1`");

  private static final JsonMapper MAPPER =
      JsonMapper.builder(
              com.fasterxml.jackson.core.JsonFactory.builder()
                  .streamReadConstraints(
                      StreamReadConstraints.builder()
                          .maxNestingDepth(20)
                          .maxStringLength(4000)
                          .maxNameLength(400)
                          .build())
                  .build())
          .disable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(com.fasterxml.jackson.core.JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
          .build();

  /** What stands before the colon of a line. */
  private static final Pattern KEY = Pattern.compile("\\s*\"((?:[^\"\\\\]|\\\\.)*)\" : .*");

  private ReadingsDocument() {}

  /** Readings that could not be taken: what is wrong, and in which line of the page's form. */
  static final class Wrong extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final String where;
    private final String mend;

    Wrong(String message, String where, String mend) {
      super(message, null, false, false);
      this.where = where;
      this.mend = mend;
    }

    /** As it is sent. */
    ObjectNode json() {
      ObjectNode root = new Refusal(Refusal.BAD, String.valueOf(getMessage()), mend).json();
      ((ObjectNode) root.get("problem")).put("where", where);
      return root;
    }
  }

  /**
   * Reads what a page sends.
   *
   * @param body JSON
   * @param system what the readings are of
   */
  static Readings read(byte[] body, BleedSystem system) {
    String text;
    try {
      JsonNode node = MAPPER.readTree(new String(body, StandardCharsets.UTF_8));
      if (!(node instanceof ObjectNode)) {
        throw new Wrong("these are no readings", "", "send the document of docs/readings.md");
      }
      text = MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(words(node)) + "\n";
    } catch (JsonProcessingException no) {
      throw new Wrong("what was sent is no JSON", "", "send the document of docs/readings.md");
    }
    return taken(ReadingsReader.readText(NAME, text, system), text);
  }

  /** A file of readings as the page is sent it. */
  static JsonNode json(String name, String text, BleedSystem system) {
    Readings readings = taken(ReadingsReader.readText(name, text, system), text);
    return tree(ReadingsWriter.yaml(readings, system));
  }

  private static JsonNode tree(String yaml) {
    Item.Section root = YamlTree.read(NAME, yaml, BEGIN, new Problems());
    if (root == null) {
      throw new IllegalStateException("what the writer wrote cannot be read");
    }
    return node(root);
  }

  private static JsonNode node(Item item) {
    if (item instanceof Item.Section section) {
      ObjectNode node = JsonNodeFactory.instance.objectNode();
      section.entries().forEach((name, entry) -> node.set(name, node(entry.value())));
      return node;
    }
    if (item instanceof Item.Listing listing) {
      ArrayNode node = JsonNodeFactory.instance.arrayNode();
      listing.items().forEach(each -> node.add(node(each)));
      return node;
    }
    return TextNode.valueOf(item instanceof Item.Words words ? words.text() : "");
  }

  /** Readings are words; a number that a program sends is meant as it is written. */
  private static JsonNode words(JsonNode node) {
    if (node instanceof ObjectNode object) {
      ObjectNode all = JsonNodeFactory.instance.objectNode();
      object.properties().forEach(entry -> all.set(entry.getKey(), words(entry.getValue())));
      return all;
    }
    if (node instanceof ArrayNode array) {
      ArrayNode all = JsonNodeFactory.instance.arrayNode();
      array.forEach(each -> all.add(words(each)));
      return all;
    }
    return TextNode.valueOf(node.isNull() ? "" : node.asText());
  }

  private static Readings taken(ReadingsRead read, String text) {
    if (!read.problems().isEmpty()) {
      Problem first = read.problems().get(0);
      throw new Wrong(first.wrong(), where(first, text), first.mend());
    }
    return read.readings()
        .orElseThrow(() -> new Wrong("these are no readings", "", "give at least one reading"));
  }

  /** The key of the line at fault. */
  private static String where(Problem problem, String text) {
    String[] lines = text.split("\n", -1);
    int line = problem.line() - 1;
    @Nullable String found = null;
    if (line >= 0 && line < lines.length) {
      Matcher key = KEY.matcher(lines[line]);
      found = key.matches() ? key.group(1) : null;
    }
    return found == null ? problem.file() + ", line " + problem.line() : found;
  }
}

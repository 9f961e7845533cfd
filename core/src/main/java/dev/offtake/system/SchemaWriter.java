package dev.offtake.system;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.part.Form;
import dev.offtake.part.Key;
import dev.offtake.part.Kind;
import java.util.List;

/**
 * Writes the JSON Schema (draft 2020-12) with which an editor completes and checks system files.
 *
 * <p>It is made from the kinds alone and knows names, not units. It is stricter than the reader in
 * one thing: a line without which a part cannot be must stand in the part itself, though the reader
 * also takes it from {@code only left:}.
 */
public final class SchemaWriter {
  private static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";

  private final JsonNodeFactory json = JsonNodeFactory.instance;
  private final List<Kind> kinds;

  private SchemaWriter(List<Kind> kinds) {
    this.kinds = kinds;
  }

  /** The schema of system files with parts of the given kinds. */
  public static ObjectNode schema(List<Kind> kinds) {
    return new SchemaWriter(kinds).file();
  }

  private ObjectNode file() {
    ObjectNode schema = json.objectNode();
    schema.put("$schema", DIALECT).put("title", "Offtake system file");
    schema.set("$defs", definitions());
    schema.put("type", "object");
    schema.putArray("required").add("offtake");
    ObjectNode lines = schema.putObject("properties");
    lines.set("offtake", json.objectNode().put("const", 1));
    for (String words : List.of("title", "about")) {
      lines.set(words, reference("words"));
    }
    for (String open : List.of("papers", "days", "power settings", "severity", "sides")) {
      lines.set(open, json.objectNode().put("type", "object"));
    }
    ObjectNode error = lines.putObject(ModelErrorReader.SECTION).put("type", "object");
    ObjectNode errors = error.putObject("properties");
    errors.set("pressure", reference("words"));
    errors.set("temperature", reference("words"));
    error.put("additionalProperties", false);
    sideLines(lines);
    lines.set("each side", reference("side"));
    lines.set("between sides", json.objectNode().put("type", "object"));
    schema.putObject("patternProperties").putObject("^only ").put("type", "object");
    schema.put("additionalProperties", false);
    return schema;
  }

  private ObjectNode definitions() {
    ObjectNode all = json.objectNode();
    ArrayNode scalar = all.putObject("words").putArray("type");
    List.of("string", "number", "boolean", "null").forEach(scalar::add);
    ObjectNode side = all.putObject("side").put("type", "object");
    sideLines(side.putObject("properties"));
    side.put("additionalProperties", false);
    ObjectNode part = all.putObject("part").put("type", "object");
    part.putArray("required").add("kind");
    ArrayNode names = part.putObject("properties").putObject("kind").putArray("enum");
    ArrayNode choices = part.putArray("allOf");
    for (Kind kind : kinds) {
      names.add(kind.name());
      all.set(kind.name(), kind(kind));
      ObjectNode choice = choices.addObject();
      choice.putObject("if").putObject("properties").putObject("kind").put("const", kind.name());
      choice.set("then", reference(kind.name()));
    }
    return all;
  }

  private void sideLines(ObjectNode lines) {
    ObjectNode switches = lines.putObject("switches").put("type", "object");
    ObjectNode positions = switches.putObject("additionalProperties").put("type", "array");
    positions.put("minItems", 2);
    for (String open : List.of("points", "line-ups", "failure rates")) {
      lines.putObject(open).put("type", "object");
    }
    lines.putObject("never").put("type", "array");
    section(lines, PartSections.PARTS, "part");
    for (String section : PartSections.OF_ONE_KIND) {
      String kind = PartSections.kind(section);
      boolean known = kinds.stream().anyMatch(k -> k.name().equals(kind));
      section(lines, section, known ? kind : "");
    }
  }

  private void section(ObjectNode lines, String name, String definition) {
    ObjectNode section = lines.putObject(name).put("type", "object");
    if (!definition.isEmpty()) {
      section.set("additionalProperties", reference(definition));
    }
  }

  private ObjectNode kind(Kind kind) {
    ObjectNode schema = json.objectNode().put("type", "object").put("description", kind.says());
    ObjectNode lines = schema.putObject("properties");
    lines.putObject("kind").put("const", kind.name());
    if (kind.name().equals("gauge")) {
      lines.putObject("on").put("const", "each side");
    }
    ArrayNode required = schema.putArray("required");
    for (Key key : kind.keys()) {
      lines.set(key.name(), key(key));
      group(lines, key, kind);
      if (key.required()) {
        require(schema, required, key.name());
      }
    }
    schema.put("additionalProperties", false);
    return schema;
  }

  /**
   * A key {@code good to constant} may also be written as line {@code constant} of {@code good to}.
   */
  private void group(ObjectNode lines, Key key, Kind kind) {
    for (int space = key.name().indexOf(' '); space > 0; space = next(key.name(), space)) {
      String outer = key.name().substring(0, space);
      boolean plain = kind.keys().stream().anyMatch(other -> other.name().equals(outer));
      if (!plain && !lines.has(outer)) {
        lines.putObject(outer).put("type", "object");
      }
    }
  }

  /** A key without which a part cannot be, also when it is written as a line of a group. */
  private void require(ObjectNode schema, ArrayNode required, String name) {
    int space = name.indexOf(' ');
    if (space < 0) {
      required.add(name);
      return;
    }
    ArrayNode ways = schema.withArray("allOf").addObject().putArray("anyOf");
    ways.addObject().putArray("required").add(name);
    for (; space > 0; space = next(name, space)) {
      String outer = name.substring(0, space);
      ObjectNode way = ways.addObject();
      way.putArray("required").add(outer);
      ObjectNode group = way.putObject("properties").putObject(outer).put("type", "object");
      group.putArray("required").add(name.substring(space + 1));
    }
  }

  private static int next(String name, int space) {
    return name.indexOf(' ', space + 1);
  }

  private ObjectNode key(Key key) {
    ObjectNode schema = json.objectNode();
    schema.put("description", key.says());
    schema.putArray("examples").add(key.example());
    if (key.form() == Form.TABLE) {
      schema.put("type", "object");
      schema.putArray("required").add("columns").add("rows");
    } else if (key.form() == Form.CHOICE && !key.choices().isEmpty()) {
      schema.put("pattern", "^(" + String.join("|", key.choices()) + ") *(;.*)?$");
    }
    return schema;
  }

  private ObjectNode reference(String definition) {
    return json.objectNode().put("$ref", "#/$defs/" + definition.replace(" ", "%20"));
  }
}

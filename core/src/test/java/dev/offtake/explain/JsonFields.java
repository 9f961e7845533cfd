package dev.offtake.explain;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The fields of an answer in JSON, and those that its page in {@code docs} tells. */
final class JsonFields {
  private JsonFields() {}

  /** Every field of some answers: {@code air[].name}. */
  static Set<String> of(JsonNode... answers) {
    Set<String> fields = new TreeSet<>();
    for (JsonNode answer : answers) {
      walk("", answer, fields);
    }
    return fields;
  }

  /** Every field that a page has a row for. */
  static Set<String> documented(String page) {
    return Pattern.compile("(?m)^\\| `([^`]+)` \\|")
        .matcher(page)
        .results()
        .map((MatchResult row) -> row.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static void walk(String path, JsonNode node, Set<String> into) {
    if (node.isArray()) {
      into.add(path + "[]");
      node.forEach(each -> walk(path + "[]", each, into));
    } else if (node.isObject()) {
      String dot = path.isEmpty() ? "" : path + ".";
      node.properties().forEach(f -> walk(dot + f.getKey(), f.getValue(), into));
    } else {
      into.add(path);
    }
  }
}

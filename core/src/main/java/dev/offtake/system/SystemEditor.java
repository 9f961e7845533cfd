package dev.offtake.system;

import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.CollectionNode;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * Changes values in the text of a system file and leaves everything else as it was typed, comments
 * too.
 *
 * <p>The value of a part outside the sides is replaced where it stands; that of a part of a side
 * goes into {@code only left:}, which is made when it is not there. Where several papers stated the
 * old value one under another, their lines stay as comments.
 */
public final class SystemEditor {
  private static final String BETWEEN = "between sides";

  private final List<String> sides;
  private String text;

  /**
   * Begins with a text.
   *
   * @param text of a system file that is read without problems, with line feeds
   * @param sides names of its sides
   */
  public SystemEditor(String text, List<String> sides) {
    this.text = text.endsWith("\n") ? text : text + "\n";
    this.sides = List.copyOf(sides);
  }

  /** The text as it is now. */
  public String text() {
    return text;
  }

  /**
   * Gives a line of a part another value.
   *
   * @param part full name
   * @param key the line
   * @param value as a person would write it, its source included
   */
  public void set(String part, String key, String value) {
    MappingNode root = root();
    Optional<MappingNode> own = outside(root, part);
    if (own.isPresent()) {
      line(own.get(), key, value);
      return;
    }
    for (String side : sides) {
      if (part.startsWith(side + " ")) {
        sided(root, side, part.substring(side.length() + 1), key, value);
        return;
      }
    }
    throw new IllegalArgumentException("no part " + part + " in the text");
  }

  /**
   * Gives the model error another value.
   *
   * @param value in braces
   */
  public void modelError(String value) {
    MappingNode root = root();
    Optional<NodeTuple> there = entry(root, ModelErrorReader.SECTION);
    if (there.isPresent()) {
      replace(root, there.get(), value);
    } else if (!flow(root)) {
      text = text + "\n" + ModelErrorReader.SECTION + ": " + value + "\n";
    } else {
      add(root, ModelErrorReader.SECTION + ": " + value);
    }
  }

  private MappingNode root() {
    return (MappingNode)
        new Compose(LoadSettings.builder().build()).composeString(text).orElseThrow();
  }

  private static Optional<MappingNode> outside(MappingNode root, String part) {
    Optional<MappingNode> found = ofParts(root, part);
    Optional<MappingNode> between = section(root, BETWEEN);
    return found
        .or(() -> between.flatMap(inner -> section(inner, part)))
        .or(() -> between.flatMap(inner -> ofParts(inner, part)));
  }

  private static Optional<MappingNode> ofParts(MappingNode node, String part) {
    return PartSections.ALL.stream()
        .flatMap(name -> section(node, name).stream())
        .flatMap(section -> section(section, part).stream())
        // A gauge on each side has no name of its own outside.
        .filter(found -> entry(found, "on").isEmpty())
        .findFirst();
  }

  private void sided(MappingNode root, String side, String part, String key, String value) {
    Optional<MappingNode> only = section(root, "only " + side);
    Optional<MappingNode> own =
        only.flatMap(block -> section(block, part).or(() -> ofParts(block, part)));
    if (own.isPresent()) {
      line(own.get(), key, value);
    } else if (only.isPresent()) {
      add(only.get(), part + ": {" + key + ": " + scalar(value, true) + "}");
    } else if (flow(root)) {
      add(root, "only %s: {%s: {%s: %s}}".formatted(side, part, key, scalar(value, true)));
    } else {
      String line = key + ": " + scalar(value, false);
      text = text + "\nonly " + side + ":\n  " + part + ":\n    " + line + "\n";
    }
  }

  private void line(MappingNode part, String key, String value) {
    Optional<Place> place = find(part, key);
    if (place.isPresent()) {
      boolean flow = flow(place.get().in());
      replace(place.get().in(), place.get().entry(), scalar(value, flow));
    } else {
      add(part, key + ": " + scalar(value, flow(part)));
    }
  }

  private record Place(MappingNode in, NodeTuple entry) {}

  /** A line, also where it stands as a line of a group: {@code good to: {constant: 1 psi}}. */
  private static Optional<Place> find(MappingNode part, String key) {
    Optional<NodeTuple> plain = entry(part, key);
    if (plain.isPresent()) {
      return Optional.of(new Place(part, plain.get()));
    }
    for (NodeTuple entry : part.getValue()) {
      String outer = name(entry) + " ";
      if (key.startsWith(outer) && entry.getValueNode() instanceof MappingNode group) {
        return find(group, key.substring(outer.length()));
      }
    }
    return Optional.empty();
  }

  private static Optional<NodeTuple> entry(MappingNode node, String name) {
    return node.getValue().stream().filter(entry -> name(entry).equals(name)).findFirst();
  }

  private static Optional<MappingNode> section(MappingNode node, String name) {
    return entry(node, name)
        .map(NodeTuple::getValueNode)
        .filter(MappingNode.class::isInstance)
        .map(MappingNode.class::cast);
  }

  private static String name(NodeTuple entry) {
    return entry.getKeyNode() instanceof ScalarNode words ? words.getValue().strip() : "";
  }

  private static boolean flow(MappingNode node) {
    return node.getFlowStyle() == FlowStyle.FLOW;
  }

  private void replace(MappingNode in, NodeTuple entry, String value) {
    Node old = entry.getValueNode();
    if (!flow(in) && block(old)) {
      int from = lineStart(at(old.getStartMark()));
      int to = lineEnd(end(old));
      int colon = text.indexOf(':', at(entry.getKeyNode().getEndMark())) + 1;
      String kept = commented(text.substring(from, to));
      text = text.substring(0, colon) + " " + value + text.substring(colon, from) + kept + rest(to);
    } else {
      text = text.substring(0, at(old.getStartMark())) + value + rest(end(old));
    }
  }

  private String rest(int from) {
    return text.substring(from);
  }

  private static boolean block(Node node) {
    return node instanceof CollectionNode<?> many && many.getFlowStyle() == FlowStyle.BLOCK;
  }

  /** Lines turned into comments where they stand. */
  private static String commented(String lines) {
    return lines.replaceAll("(?m)^( *)(?=[^ #\\n])", "$1# ");
  }

  private void add(MappingNode to, String line) {
    if (flow(to)) {
      int end = at(to.getEndMark()) - 1;
      String comma = to.getValue().isEmpty() ? "" : ", ";
      text = text.substring(0, end).stripTrailing() + comma + line + rest(end);
    } else {
      NodeTuple first = to.getValue().get(0);
      int start = at(first.getKeyNode().getStartMark());
      String indent = " ".repeat(start - lineStart(start));
      int end = lineEnd(end(to));
      text = text.substring(0, end) + "\n" + indent + line + rest(end);
    }
  }

  /** Where the last thing in a node ends. */
  private int end(Node node) {
    if (node instanceof MappingNode map && block(node) && !map.getValue().isEmpty()) {
      NodeTuple last = map.getValue().get(map.getValue().size() - 1);
      return Math.max(at(last.getKeyNode().getEndMark()), end(last.getValueNode()));
    }
    if (node instanceof SequenceNode list && block(node) && !list.getValue().isEmpty()) {
      return end(list.getValue().get(list.getValue().size() - 1));
    }
    int start = at(node.getStartMark());
    int end = at(node.getEndMark());
    return Math.max(start, start + text.substring(start, end).stripTrailing().length());
  }

  private int lineStart(int at) {
    return text.lastIndexOf('\n', at - 1) + 1;
  }

  private int lineEnd(int at) {
    int end = text.indexOf('\n', at);
    return end < 0 ? text.length() : end;
  }

  /** Place in the text; marks count code points. */
  private int at(Optional<Mark> mark) {
    return text.offsetByCodePoints(0, mark.orElseThrow().getIndex());
  }

  private static String scalar(String value, boolean flow) {
    boolean plain =
        value.matches("[\\p{L}0-9.+-].*")
            && !value.contains(": ")
            && !value.contains(" #")
            && !value.endsWith(":")
            && !(flow && value.matches(".*[,\\[\\]{}].*"));
    return plain ? value : "'" + value.replace("'", "''") + "'";
  }
}

package dev.offtake.system;

import dev.offtake.quantity.Grammar;
import dev.offtake.system.Item.Entry;
import dev.offtake.system.Item.Listing;
import dev.offtake.system.Item.Section;
import dev.offtake.system.Item.Words;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Makes a tree of {@link Item}s from the text of a file, without giving any scalar a meaning.
 *
 * <p>Anchors, aliases and tags are refused: they hide from a reader what a line says.
 */
public final class YamlTree {
  /** Deepest nesting; a system file needs seven. */
  static final int DEEPEST = 20;

  private static final Begin SYSTEM =
      new Begin("system file", "Begin with `offtake: 1` and sections such as `parts:`");

  private static final Pattern CUT = Pattern.compile("\\s+#\\S.*");

  private final String file;
  private final String[] lines;
  private final Problems problems;
  private final Begin begin;
  private Iterator<Event> events = List.<Event>of().iterator();

  private YamlTree(String file, String text, Begin begin, Problems problems) {
    this.file = file;
    this.lines = text.split("\n", -1);
    this.problems = problems;
    this.begin = begin;
  }

  /** The tree of a text, or null when it is no YAML or not a file of named entries. */
  static @Nullable Section read(String file, String text, Problems problems) {
    return read(file, text, SYSTEM, problems);
  }

  /**
   * The tree of a text, or null when it is no YAML or not a file of named entries.
   *
   * @param file how the text is called in problems
   * @param text with line feeds
   * @param begin what the file should be, for the message when it is something else
   * @param problems takes what is wrong
   */
  public static @Nullable Section read(String file, String text, Begin begin, Problems problems) {
    return new YamlTree(file, text, begin, problems).root(text);
  }

  /**
   * What a file should be.
   *
   * @param what such as {@code system file}
   * @param mend how such a file begins, one sentence without a full stop
   */
  public record Begin(String what, String mend) {}

  private @Nullable Section root(String text) {
    LoadSettings settings =
        LoadSettings.builder().setLabel(file).setMaxAliasesForCollections(1).build();
    try {
      events = new Parse(settings).parseString(text).iterator();
      return documents();
    } catch (Refused e) {
      problems.add(file, e.line, e.wrong, e.mend);
    } catch (MarkedYamlEngineException e) {
      YamlComplaint.tell(file, e, lines, problems);
    } catch (YamlEngineException e) {
      problems.add(file, 1, "This is not a YAML file", "Check the indents and the quotes");
    }
    return null;
  }

  private @Nullable Section documents() {
    Item root = null;
    while (events.hasNext()) {
      Event event = events.next();
      if (event instanceof NodeEvent) {
        if (root != null) {
          throw new Refused(line(event), "A second document begins here", "Remove the line `---`");
        }
        root = item(event, 1);
      }
    }
    if (root instanceof Section section) {
      return section;
    }
    if (root == null) {
      problems.add(file, 1, "The file is empty", begin.mend());
    } else {
      String what = Grammar.capitalA(begin.what());
      problems.add(root, what + " holds named sections, not " + root.words(), begin.mend());
    }
    return null;
  }

  private Item item(Event event, int depth) {
    if (depth > DEEPEST) {
      String wrong = "Nesting is deeper than " + DEEPEST + " levels";
      throw new Refused(line(event), wrong, "No file needs more than seven; check the brackets");
    }
    refuseTricks(event);
    if (event instanceof ScalarEvent scalar) {
      return words(scalar);
    }
    return event instanceof SequenceStartEvent ? listing(event, depth) : section(event, depth);
  }

  private void refuseTricks(Event event) {
    boolean anchored = event instanceof NodeEvent node && node.getAnchor().isPresent();
    if (event instanceof AliasEvent || anchored) {
      String wrong = "`&` anchors and `*` aliases are not read";
      throw new Refused(line(event), wrong, "Write the value out, or put it in quotes");
    }
    Optional<String> tag = Optional.empty();
    if (event instanceof ScalarEvent scalar) {
      tag = scalar.getTag();
    } else if (event instanceof MappingStartEvent mapping) {
      tag = mapping.getTag();
    } else if (event instanceof SequenceStartEvent sequence) {
      tag = sequence.getTag();
    }
    if (tag.isPresent()) {
      throw new Refused(line(event), "`!` tags are not read", "Remove the tag, or use quotes");
    }
  }

  private Words words(ScalarEvent scalar) {
    int hidden = Unprintable.in(scalar.getValue());
    if (hidden >= 0) {
      String which = Unprintable.name(scalar.getValue().charAt(hidden));
      String wrong = "The text holds a character that does not print, " + which;
      throw new Refused(line(scalar), wrong, "Leave it out");
    }
    Words words = new Words(file, line(scalar), scalar.getValue().strip());
    boolean plain = scalar.getScalarStyle() == ScalarStyle.PLAIN;
    if (plain && words.text().contains(";") && cutOff(scalar)) {
      String wrong =
          "The source in `" + words.text() + "` is cut off by `#`, which begins a comment";
      problems.add(words, wrong, "Put the whole value in quotes");
    }
    return words;
  }

  /** Whether a comment starts without a space after its sign, as in {@code SD #4}. */
  private boolean cutOff(ScalarEvent scalar) {
    return scalar
        .getEndMark()
        .map(
            end ->
                lines[Math.min(end.getLine(), lines.length - 1)].substring(
                    Math.min(
                        end.getColumn(),
                        lines[Math.min(end.getLine(), lines.length - 1)].length())))
        .map(rest -> CUT.matcher(rest.stripTrailing()).matches())
        .orElse(false);
  }

  private Listing listing(Event start, int depth) {
    List<Item> items = new ArrayList<>();
    for (Event next = events.next(); more(next, Event.ID.SequenceEnd); next = events.next()) {
      items.add(item(next, depth + 1));
    }
    return new Listing(file, line(start), items);
  }

  private Section section(Event start, int depth) {
    Map<String, Entry> entries = new LinkedHashMap<>();
    for (Event next = events.next(); more(next, Event.ID.MappingEnd); next = events.next()) {
      Item name = item(next, depth + 1);
      Item value = item(events.next(), depth + 1);
      if (!(name instanceof Words words)) {
        problems.add(
            name, "A name must be plain words, not " + name.words(), "Write `name: value`");
        continue;
      }
      Entry before = entries.putIfAbsent(words.text(), new Entry(words, value));
      if (before != null) {
        String wrong =
            "`" + words.text() + "` is given twice, first on line " + before.name().line();
        problems.add(words, wrong, "Keep one of them");
      }
    }
    return new Section(file, line(start), entries);
  }

  private static boolean more(Event event, Event.ID end) {
    return event.getEventId() != end;
  }

  private static int line(Event event) {
    return event.getStartMark().map(mark -> mark.getLine() + 1).orElse(1);
  }

  /** A construct that ends the reading of this file. */
  private static final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;
    final int line;
    final String wrong;
    final String mend;

    Refused(int line, String wrong, String mend) {
      super(wrong);
      this.line = line;
      this.wrong = wrong;
      this.mend = mend;
    }
  }
}

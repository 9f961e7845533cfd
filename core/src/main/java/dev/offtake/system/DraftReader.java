package dev.offtake.system;

import dev.offtake.system.Draft.Sided;
import dev.offtake.system.Item.Entry;
import dev.offtake.system.Item.Listing;
import dev.offtake.system.Item.Section;
import dev.offtake.system.Item.Words;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Sorts the sections of a file into a {@link Draft} and unfolds its sides. */
final class DraftReader {
  /** Sections that may stand on a side as well as outside. */
  static final List<String> ON_A_SIDE =
      List.of(
          "switches",
          "points",
          "parts",
          "trips",
          "limits",
          "lights",
          "gauges",
          "line-ups",
          "never",
          "failure rates");

  /** Sections that stand outside only, in the order in which a file usually has them. */
  static final List<String> OUTSIDE =
      List.of(
          "offtake",
          "title",
          "about",
          "papers",
          "days",
          "power settings",
          "severity",
          ModelErrorReader.SECTION,
          "sides",
          "each side",
          "between sides");

  private static final String ONLY = "only ";

  private final Draft draft = new Draft();
  private final Map<String, Section> sideFiles = new LinkedHashMap<>();
  private final @Nullable Path folder;
  private final Problems problems;

  private DraftReader(@Nullable Path folder, Problems problems) {
    this.folder = folder;
    this.problems = problems;
  }

  /**
   * Reads a file's tree.
   *
   * @param root the tree
   * @param folder where files of sides are looked for; null when there is none
   * @param problems takes what is wrong
   */
  static Draft read(Section root, @Nullable Path folder, Problems problems) {
    DraftReader reader = new DraftReader(folder, problems);
    reader.version(root);
    reader.sides(root.entries().get("sides"));
    problems.unfold(reader.draft.sides);
    reader.unsided(root, "");
    reader.unfold(root);
    return reader.draft;
  }

  private void version(Section root) {
    Entry version = root.entries().get("offtake");
    if (version == null) {
      String mend = "Write `offtake: 1` as the first line";
      problems.add(root, "The file does not say that it is a system file", mend);
    } else if (!(version.value() instanceof Words words && words.text().equals("1"))) {
      String wrong = "This Offtake reads system files of version 1, not " + version.value().words();
      problems.add(version.value(), wrong, "Write `offtake: 1`");
    }
  }

  private void sides(@Nullable Entry sides) {
    if (sides == null) {
      return;
    }
    for (Entry side : section(sides).entries().values()) {
      String name = side.name().text();
      draft.sides.add(name);
      String value = side.value() instanceof Words words ? words.text() : "";
      if (value.endsWith(".yaml") || value.endsWith(".yml")) {
        Section file = sideFile(side.value(), value);
        if (file != null) {
          sideFiles.put(name, file);
        }
      }
    }
  }

  private @Nullable Section sideFile(Item at, String name) {
    for (Section read : sideFiles.values()) {
      if (read.file().equals(name)) {
        return read;
      }
    }
    Path here = folder == null ? Path.of("") : folder;
    Path path = here.resolve(name).normalize();
    if (!path.startsWith(here.normalize()) && folder != null) {
      problems.add(at, "The file `" + name + "` is in another folder", "Keep it beside this file");
      return null;
    }
    Problems own = new Problems();
    String text = FileText.read(path, name, own);
    if (text == null) {
      Problem first = own.sorted().get(0);
      problems.add(at, first.wrong(), first.mend());
      return null;
    }
    return withoutSides(YamlTree.read(name, text, problems));
  }

  private @Nullable Section withoutSides(@Nullable Section file) {
    if (file == null) {
      return null;
    }
    for (Entry entry : file.entries().values()) {
      String name = entry.name().text();
      if ((name.contains("side") && OUTSIDE.contains(name)) || name.startsWith(ONLY)) {
        String mend = "Let the file describe one engine";
        problems.add(entry.name(), "The file of a side cannot have `" + name + "` itself", mend);
      }
    }
    return file;
  }

  /** Sections outside the sides; of the file of a side only what all sides share. */
  private void unsided(Section root, String side) {
    for (Entry entry : root.entries().values()) {
      String name = entry.name().text();
      switch (name) {
        case "title" -> draft.title = draft.title.isEmpty() ? text(entry) : draft.title;
        case "about" -> draft.about = draft.about.isEmpty() ? text(entry) : draft.about;
        case "papers" -> share(entry, draft.papers);
        case "days" -> share(entry, draft.days);
        case "power settings" -> share(entry, draft.settings);
        case "severity" -> share(entry, draft.severity);
        case ModelErrorReader.SECTION ->
            draft.modelError = draft.modelError == null ? entry : draft.modelError;
        case "offtake", "sides", "each side" -> {}
        case "between sides" -> bareParts(entry);
        default -> sectionOf(side, entry);
      }
    }
  }

  private void share(Entry entry, Map<String, Entry> into) {
    section(entry).entries().forEach(into::putIfAbsent);
  }

  private void sectionOf(String side, Entry entry) {
    String name = entry.name().text();
    if (name.startsWith(ONLY) && side.isEmpty()) {
      return;
    }
    switch (name) {
      case "switches" -> sided(side, entry, draft.switches);
      case "points" -> sided(side, entry, draft.points);
      case "line-ups" -> each(side, entry, draft.lineUps);
      case "failure rates" -> each(side, entry, draft.rates);
      case "never" -> never(side, entry);
      default -> {
        if (PartSections.ALL.contains(name)) {
          section(entry).entries().values().forEach(e -> part(side, name, e));
        } else {
          unknownSection(side, entry);
        }
      }
    }
  }

  private void unknownSection(String side, Entry entry) {
    List<String> known = new ArrayList<>(ON_A_SIDE);
    if (side.isEmpty()) {
      known.addAll(0, OUTSIDE);
      draft.sides.forEach(each -> known.add(ONLY + each));
    }
    String name = entry.name().text();
    problems.add(entry.name(), "There is no section `" + name + "`", Hint.of(name, known));
  }

  private void sided(String side, Entry entry, Map<String, Sided> into) {
    for (Entry e : section(entry).entries().values()) {
      Sided sided = new Sided(side, e.name(), e.value());
      if (into.putIfAbsent(sided.name(), sided) != null) {
        twice(e.name());
      }
    }
  }

  private void each(String side, Entry entry, List<Sided> into) {
    section(entry).entries().values().forEach(e -> into.add(new Sided(side, e.name(), e.value())));
  }

  private void never(String side, Entry entry) {
    List<Item> items =
        entry.value() instanceof Listing listing ? listing.items() : List.of(entry.value());
    for (Item item : items) {
      if (item instanceof Words words) {
        draft.never.add(new Sided(side, words, words));
      } else {
        problems.add(item, "A line of `never` is a sentence", "Write `- switch is ON; source`");
      }
    }
  }

  private void part(String side, String section, Entry entry) {
    if (!section.equals(PartSections.GAUGES) || !onEachSide(entry)) {
      put(new PartDraft(side, entry.name(), section, section(entry).entries()));
      return;
    }
    Map<String, Entry> rest = new LinkedHashMap<>(section(entry).entries());
    rest.remove("on");
    if (draft.sides.isEmpty()) {
      problems.add(entry.name(), "The system has no sides", "Remove `on: each side`");
    }
    draft.sides.forEach(each -> put(new PartDraft(each, entry.name(), section, rest)));
  }

  private static boolean onEachSide(Entry entry) {
    Entry on = entry.value() instanceof Section section ? section.entries().get("on") : null;
    return on != null && on.value() instanceof Words words && words.text().equals("each side");
  }

  private void put(PartDraft part) {
    if (part.at().text().isEmpty()) {
      problems.add(part.at(), "A part has no name", "Write its name before the colon");
    } else if (draft.parts.putIfAbsent(part.name(), part) != null) {
      twice(part.at());
    }
  }

  private void twice(Words name) {
    String wrong = "`" + name.text() + "` is declared twice";
    problems.add(name, wrong, "Give one of them another name");
  }

  private void bareParts(Entry entry) {
    for (Entry e : section(entry).entries().values()) {
      if (ON_A_SIDE.contains(e.name().text())) {
        sectionOf("", e);
      } else {
        part("", "parts", e);
      }
    }
  }

  private void unfold(Section root) {
    Entry each = root.entries().get("each side");
    if (each != null && draft.sides.isEmpty()) {
      String mend = "Write `sides: {left: L, right: R}`";
      problems.add(each.name(), "There is `each side` but no `sides`", mend);
    }
    for (String side : draft.sides) {
      Section file = sideFiles.get(side);
      if (file != null) {
        unsided(file, side);
      }
      if (each != null) {
        section(each).entries().values().forEach(entry -> sectionOf(side, entry));
      }
    }
    for (Entry entry : root.entries().values()) {
      if (entry.name().text().startsWith(ONLY)) {
        only(entry);
      }
    }
  }

  private void only(Entry entry) {
    String side = entry.name().text().substring(ONLY.length()).strip();
    if (!draft.sides.contains(side)) {
      String mend = Hint.of(side, draft.sides);
      problems.add(entry.name(), "There is no side `" + side + "`", mend);
      return;
    }
    for (Entry e : section(entry).entries().values()) {
      String name = e.name().text();
      if (PartSections.ALL.contains(name)) {
        section(e).entries().values().forEach(part -> override(side, name, part));
      } else if (ON_A_SIDE.contains(name)) {
        sectionOf(side, e);
      } else {
        override(side, "parts", e);
      }
    }
  }

  private void override(String side, String section, Entry entry) {
    PartDraft part = draft.parts.get(NameBook.full(side, entry.name().text()));
    Map<String, Entry> lines = section(entry).entries();
    if (part == null && (lines.containsKey("kind") || !section.equals("parts"))) {
      put(new PartDraft(side, entry.name(), section, lines));
    } else if (part == null) {
      noPart(side, entry.name());
    } else {
      lines.values().forEach(line -> override(part, line));
    }
  }

  private void override(PartDraft part, Entry line) {
    String key = line.name().text();
    part.entries().put(key, line);
    String file = line.name().file();
    String name = part.at().text();
    draft.overrides.add(new SideOverride(part.side(), name, key, file, line.name().line()));
  }

  private void noPart(String side, Words name) {
    List<String> known =
        draft.parts.values().stream()
            .filter(p -> p.side().equals(side))
            .map(p -> p.at().text())
            .toList();
    String wrong = "There is no part `" + name.text() + "` on the " + side + " side";
    problems.add(name, wrong, Hint.of(name.text(), known));
  }

  private String text(Entry entry) {
    if (entry.value() instanceof Words words) {
      return words.text();
    }
    problems.add(entry.value(), "`" + entry.name().text() + "` is a line of words", "Write words");
    return "";
  }

  private Section section(Entry entry) {
    if (entry.value() instanceof Section section) {
      return section;
    }
    if (!(entry.value() instanceof Words words && words.text().isEmpty())) {
      String name = entry.name().text();
      String wrong = "`" + name + "` needs named lines, not " + entry.value().words();
      problems.add(entry.value(), wrong, "Write `name: value` lines indented under it");
    }
    return Section.emptyAt(entry.value());
  }
}

package dev.offtake.system;

import dev.offtake.air.Day;
import dev.offtake.logic.ConditionProblem;
import dev.offtake.network.Network;
import dev.offtake.part.Kind;
import dev.offtake.part.Kinds;
import dev.offtake.system.Draft.Sided;
import dev.offtake.system.Item.Listing;
import dev.offtake.system.Item.Section;
import dev.offtake.system.Item.Words;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads system files. Never throws for what a file says; see the package for the steps. */
public final class SystemReader {
  private final List<Kind> kinds;
  private final Problems problems = new Problems();

  private SystemReader(List<Kind> kinds) {
    this.kinds = kinds;
  }

  /**
   * Reads a file with all kinds of parts.
   *
   * @param file the system file; the files of its sides are looked for beside it
   * @return the system, or what is wrong with the file
   */
  public static Reading read(Path file) {
    return read(file, Kinds.all());
  }

  /** Reads a file with chosen kinds of parts. */
  public static Reading read(Path file, List<Kind> kinds) {
    SystemReader reader = new SystemReader(kinds);
    Path last = file.getFileName();
    String name = last == null || last.toString().isEmpty() ? file.toString() : last.toString();
    String text = FileText.read(file, name, reader.problems);
    Path folder = file.toAbsolutePath().getParent();
    return reader.reading(text == null ? Optional.empty() : reader.system(name, text, folder));
  }

  /**
   * Reads a text with chosen kinds of parts.
   *
   * @param name how the text is called in problems
   * @param text the text; it cannot have sides in other files
   */
  public static Reading readText(String name, String text, List<Kind> kinds) {
    return readText(name, text, kinds, null);
  }

  /**
   * Reads a text with all kinds of parts.
   *
   * @param name how the text is called in problems
   * @param text the text
   * @param folder where the files of its sides are looked for; null when it cannot have any
   */
  public static Reading readText(String name, String text, @Nullable Path folder) {
    return readText(name, text, Kinds.all(), folder);
  }

  private static Reading readText(
      String name, String text, List<Kind> kinds, @Nullable Path folder) {
    SystemReader reader = new SystemReader(kinds);
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    String checked = FileText.decode(bytes, name, reader.problems);
    return reader.reading(
        checked == null ? Optional.empty() : reader.system(name, checked, folder));
  }

  private Reading reading(Optional<BleedSystem> system) {
    return new Reading(problems.none() ? system : Optional.empty(), problems.sorted());
  }

  private Optional<BleedSystem> system(String name, String text, @Nullable Path folder) {
    Section root = YamlTree.read(name, text, problems);
    if (root == null) {
      return Optional.empty();
    }
    Draft draft = DraftReader.read(root, folder, problems);
    if (draft.parts.isEmpty() && problems.none()) {
      problems.add(root, "The file has no parts", "Write `parts:` and a part under it");
    }
    return Optional.of(system(draft));
  }

  private BleedSystem system(Draft draft) {
    Map<String, Day> days = DayReader.read(draft.days.values(), problems);
    Map<String, List<String>> switches = switches(draft);
    Map<String, LineUp> lineUps =
        LineUpReader.read(draft.lineUps, switches, draft.parts.keySet(), problems);
    Papers papers = new Papers(draft.papers.values(), problems);
    SettingReader.Read settings =
        SettingReader.read(
            draft.settings.values(), days.keySet(), lineUps.keySet(), papers, problems);
    PartBuilder builder = new PartBuilder(draft, kinds, switches, days, papers);
    PartBuilder.Built built = builder.build(problems);
    Context context = built.context();
    context.statements.addAll(0, settings.statements());
    List<NeverLine> never = draft.never.stream().map(line -> never(line, context)).toList();
    FailureReader failures = new FailureReader(problems);
    Network network = PointReader.network(draft.points, built.parts(), problems);
    Checks.all(draft, built.parts(), problems);
    if (problems.none()) {
      new Doubts(built.parts(), context).all(settings.settings().values());
    }
    return new BleedSystem(
        draft.title,
        draft.about,
        papers.all(),
        days,
        settings.settings(),
        switches,
        lineUps,
        draft.sides,
        built.parts(),
        network,
        context.statements,
        context.assumptions,
        context.conflicts,
        draft.overrides,
        never,
        problems.none() ? failures.rates(draft.rates, built.parts()) : Map.of(),
        failures.scale(draft.severity.values()),
        new ModelErrorReader(papers, problems).read(draft.modelError),
        context.doubts.sorted());
  }

  private Map<String, List<String>> switches(Draft draft) {
    Map<String, List<String>> switches = new LinkedHashMap<>();
    draft.switches.forEach((name, sided) -> switches.put(name, positions(sided)));
    return switches;
  }

  private List<String> positions(Sided control) {
    List<String> positions = new ArrayList<>();
    if (control.value() instanceof Listing listing) {
      for (Item item : listing.items()) {
        String position = item instanceof Words words ? words.text() : "";
        if (position.isEmpty() || positions.contains(position)) {
          String wrong = "A position of `" + control.at().text() + "` is empty or given twice";
          problems.add(item, wrong, "Give each position once");
        }
        positions.add(position);
      }
    }
    if (positions.size() < 2) {
      String wrong = "The switch `" + control.at().text() + "` needs two positions or more";
      problems.add(control.at(), wrong, "Write `[ON, OFF]`, the usual one first");
    }
    return positions;
  }

  private static NeverLine never(Sided line, Context context) {
    String text = Values.withoutSource(line.at().text());
    String source = Values.source(line.at().text());
    Logic.Sentence sentence = context.logic.tryRead(line.side(), text);
    ConditionProblem slip = sentence.slip();
    if (slip != null) {
      String wrong = "Only you can judge `" + text + "` under `never:`: " + slip.wrong();
      context.doubts.add(line.at(), wrong, slip.mend());
    }
    return new NeverLine(text, sentence.condition(), source);
  }
}

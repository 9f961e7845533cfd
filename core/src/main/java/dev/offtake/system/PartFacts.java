package dev.offtake.system;

import dev.offtake.air.Day;
import dev.offtake.logic.Condition;
import dev.offtake.part.Conditions;
import dev.offtake.part.Facts;
import dev.offtake.part.Form;
import dev.offtake.part.Key;
import dev.offtake.part.Kind;
import dev.offtake.part.Leg;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Stated;
import dev.offtake.quantity.Stated.Knowledge;
import dev.offtake.system.Item.Listing;
import dev.offtake.system.Item.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a file says about one part, read against its kind. Every line is read once, when the part is
 * made known, so that a mistake is told even in a line that the kind does not ask for.
 */
final class PartFacts implements Facts {
  private static final String UNKNOWN = "unknown";

  private final PartDraft draft;
  private final String name;
  private final Map<String, Key> keys;
  private final Map<String, Item> lines;
  private final Set<String> given;
  private final Context context;
  private final Statements statements;
  private final References references;

  private final Map<String, Stated> quantities = new HashMap<>();
  private final Map<String, At> ats = new HashMap<>();
  private final Map<String, List<When>> whens = new HashMap<>();
  private final Map<String, Limit> limits = new HashMap<>();
  private final Map<String, Below> belows = new HashMap<>();
  private final Map<String, Reset> resets = new HashMap<>();
  private final Map<String, Condition> conditions = new HashMap<>();
  private final Map<String, List<double[]>> tables = new HashMap<>();

  PartFacts(PartDraft draft, Kind kind, Map<String, Item> lines, Context context) {
    this.draft = draft;
    this.name = draft.name();
    this.keys = Lines.keys(kind);
    this.lines = new HashMap<>(lines);
    this.given = Set.copyOf(lines.keySet());
    this.context = context;
    this.statements = new Statements(name, context);
    this.references = new References(draft.side(), context);
    keys.values().forEach(this::read);
  }

  private void read(Key key) {
    Item item = lines.get(key.name());
    if (item == null) {
      missing(key);
    } else if (item instanceof Words words && words.text().isEmpty()) {
      String wrong = "`" + key.name() + "` has no value";
      context.problems.add(words, wrong, "Write it as in `" + key.example() + "`");
    } else if (item instanceof Words words && Values.withoutSource(words.text()).equals(UNKNOWN)) {
      unknown(key, words);
    } else {
      given(key, item);
    }
  }

  private void missing(Key key) {
    if (key.required()) {
      String wrong = "The part `" + draft.at().text() + "` has no line `" + key.name() + "`";
      String mend = "Write `" + key.name() + ": " + key.example() + "` under it";
      context.problems.add(draft.at(), wrong, mend);
    } else if (!key.typical().isEmpty()) {
      assume(key.name(), key.name() + " is not given: " + key.typical() + " is taken");
      typical(key, Knowledge.TYPICAL);
    }
  }

  private void unknown(Key key, Words at) {
    String source = Values.source(at.text());
    String whence = source.isEmpty() ? "" : " (" + source + ")";
    if (key.form() == Form.CONDITION && !key.required()) {
      String says = key.name() + " is unknown" + whence + ": taken as if it were not there";
      context.assumptions.add(new Assumption(name, key.name(), says, true));
      return;
    }
    if (key.typical().isEmpty()) {
      String wrong = "`" + key.name() + "` is unknown, and there is no usual value";
      context.problems.add(at, wrong, "Give a range: `unknown " + key.example() + "`");
      return;
    }
    String says = key.name() + " is unknown" + whence + ": " + key.typical() + " is taken";
    context.assumptions.add(new Assumption(name, key.name(), says, true));
    typical(key, Knowledge.UNKNOWN);
  }

  /** Reads the usual value of a key; a kind's own mistake is told as such. */
  private void typical(Key key, Knowledge knowledge) {
    try {
      switch (key.form()) {
        case QUANTITY -> quantities.put(key.name(), as(knowledge, key.typical(), key));
        case QUANTITY_AT -> ats.put(key.name(), Values.at(key.typical(), key));
        case QUANTITY_WHEN ->
            whens.put(key.name(), List.of(new When(as(knowledge, key.typical(), key), null)));
        case LIMIT -> limits.put(key.name(), Values.limit(key.typical(), key));
        case BELOW -> belows.put(key.name(), Values.below(key.typical(), key));
        case RESET -> resets.put(key.name(), Values.reset(key.typical(), key));
        default -> lines.put(key.name(), new Words(draft.at().file(), line(key), key.typical()));
      }
    } catch (QuantityProblem problem) {
      context.problems.add(draft.at(), problem.wrong(), problem.mend());
    }
  }

  private int line(Key key) {
    return where(key.name()).line();
  }

  private static Stated as(Knowledge knowledge, String text, Key key) throws QuantityProblem {
    Stated s = Values.quantity(text, key);
    return new Stated(s.nominal(), s.low(), s.high(), knowledge, s.dimension(), s.text(), "");
  }

  private void given(Key key, Item item) {
    String at = key.name();
    switch (key.form()) {
      case QUANTITY -> keep(quantities, at, statements.read(item, key, Values::quantity, v -> v));
      case QUANTITY_AT -> keep(ats, at, statements.read(item, key, Values::at, At::value));
      case QUANTITY_WHEN -> whens.put(at, whens(item, key));
      case LIMIT -> keep(limits, at, statements.read(item, key, Values::limit, Limit::value));
      case BELOW -> keep(belows, at, statements.read(item, key, Values::below, Below::value));
      case RESET -> keep(resets, at, statements.read(item, key, Values::reset, Reset::value));
      case CONDITION -> keep(conditions, at, condition(item, key));
      case TABLE -> tables.put(at, table(key, item));
      case NEEDLES -> references.needles(item, key);
      default -> references.check(words(item, key), key);
    }
  }

  private static <T> void keep(Map<String, T> map, String key, @Nullable T value) {
    if (value != null) {
      map.put(key, value);
    }
  }

  /**
   * Values with their conditions, in the order of the file. What several papers state for the same
   * condition is one value; the others are kept as a conflict.
   */
  private List<When> whens(Item item, Key key) {
    Map<String, List<Item>> byCondition = new LinkedHashMap<>();
    for (Item one : item instanceof Listing listing ? listing.items() : List.of(item)) {
      String text = one instanceof Words words ? words.text() : "";
      String condition = Values.Split.on("when", text).right().replaceAll("\\s+", " ");
      byCondition.computeIfAbsent(condition, c -> new ArrayList<>()).add(one);
    }
    List<When> all = new ArrayList<>();
    for (List<Item> stated : byCondition.values()) {
      Item one = stated.get(0);
      Item together =
          stated.size() == 1 ? one : new Listing(one.file(), one.line(), List.copyOf(stated));
      When read = statements.read(together, key, (text, k) -> when(text, k, one), When::value);
      if (read != null) {
        all.add(read);
      }
    }
    return all;
  }

  private When when(String text, Key key, Item at) throws QuantityProblem {
    Values.Split split = Values.Split.on("when", text);
    Stated value = Values.quantity(split.left() + split.source(), key);
    @Nullable Condition when =
        split.right().isEmpty() ? null : context.logic.read(draft.side(), split.right(), at);
    return new When(value, when);
  }

  private @Nullable Condition condition(Item item, Key key) {
    Words words = words(item, key);
    return words.text().isEmpty()
        ? null
        : context.logic.read(draft.side(), Values.withoutSource(words.text()), words);
  }

  private List<double[]> table(Key key, Item item) {
    return new TableReader(key, day("taken on"), statements, context).read(item);
  }

  private Words words(Item item, Key key) {
    if (item instanceof Words words) {
      return words;
    }
    String wrong = "`" + key.name() + "` needs one value, not " + item.words();
    context.problems.add(item, wrong, "Write it as in `" + key.example() + "`");
    return new Words(item.file(), item.line(), "");
  }

  private String written(String key) {
    return lines.get(key) instanceof Words words ? Values.withoutSource(words.text()) : "";
  }

  private Item where(String key) {
    Item item = lines.get(key);
    return item == null ? draft.at() : item;
  }

  private Key key(String key) {
    Key known = keys.get(key);
    return known == null ? Key.of(key, Form.TEXT, "", "") : known;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public boolean has(String key) {
    return given.contains(key);
  }

  @Override
  public Stated stated(String key) {
    Stated known = quantities.get(key);
    if (known != null) {
      return known;
    }
    Dimension dimension = Objects.requireNonNullElse(key(key).dimension(), Dimension.NUMBER);
    double none = Double.NaN;
    return new Stated(none, none, none, Knowledge.TYPICAL, dimension, "", "");
  }

  @Override
  public double si(String key) {
    return stated(key).nominal();
  }

  @Override
  public At at(String key) {
    At known = ats.get(key);
    if (known != null) {
      return known;
    }
    Dimension second = Objects.requireNonNullElse(key(key).second(), Dimension.NUMBER);
    return new At(stated(key), Stated.of(Double.NaN, second));
  }

  @Override
  public List<When> whens(String key) {
    return List.copyOf(whens.getOrDefault(key, List.of()));
  }

  @Override
  public @Nullable Limit limit(String key) {
    return limits.get(key);
  }

  @Override
  public @Nullable Below below(String key) {
    return belows.get(key);
  }

  @Override
  public @Nullable Reset reset(String key) {
    return resets.get(key);
  }

  @Override
  public Conditions day(String key) {
    Day day = context.days.getOrDefault(written(key), Day.STANDARD);
    return new Conditions(
        day.pressure(), day.temperature(), day.pressure(), day.temperature(), 1, 1, false);
  }

  @Override
  public String point(String key) {
    String written = written(key);
    return written.isEmpty() ? Leg.AMBIENT : context.points.full(draft.side(), written);
  }

  @Override
  public @Nullable Reading reading(String key) {
    return references.reading(written(key));
  }

  @Override
  public Path path(String key) {
    return references.path(written(key));
  }

  @Override
  public @Nullable Condition condition(String key) {
    return conditions.get(key);
  }

  @Override
  public String choice(String key) {
    String written = written(key);
    List<String> choices = key(key).choices();
    return choices.contains(written) || choices.isEmpty() ? written : choices.get(0);
  }

  @Override
  public String text(String key) {
    return references.fullText(written(key), key(key));
  }

  @Override
  public List<Needle> needles(String key) {
    Item item = lines.get(key);
    return item == null ? List.of() : references.needles(item, key(key));
  }

  @Override
  public List<double[]> table(String key) {
    return tables.getOrDefault(key, List.of());
  }

  @Override
  public @Nullable Condition powered(String key) {
    String bus = references.fullText(written(key), key(key));
    List<String> positions = context.switches.get(bus);
    return positions == null || positions.isEmpty()
        ? null
        : context.logic.read("", bus + " is " + positions.get(0), where(key));
  }

  @Override
  public void problem(String key, String wrong, String mend) {
    context.problems.add(where(key), name + ": " + wrong, mend);
  }

  @Override
  public void assume(String key, String says) {
    context.assumptions.add(new Assumption(name, key, says, false));
  }
}

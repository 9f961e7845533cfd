package dev.offtake.system;

import dev.offtake.part.Key;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Stated;
import dev.offtake.system.Item.Listing;
import dev.offtake.system.Item.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Reads what one or several papers state for a line of a part, and decides which of them is in
 * force: that of the paper listed first; of equals the one written first.
 */
final class Statements {
  /** Reads a value's text. */
  interface Reader<T> {
    T read(String text, Key key) throws QuantityProblem;
  }

  private record Read<T>(T value, Stated stated, Words at, String paper) {}

  private final String part;
  private final Context context;

  Statements(String part, Context context) {
    this.part = part;
    this.context = context;
  }

  /**
   * Reads a line.
   *
   * @param item the value, or a list of them
   * @param key what it must be
   * @param reader reads one value
   * @param quantity the quantity in a value that papers can disagree about; null when it has none
   * @return the value in force; null when none can be read
   */
  <T> @Nullable T read(
      Item item, Key key, Reader<T> reader, Function<T, @Nullable Stated> quantity) {
    List<Read<T>> all = new ArrayList<>();
    for (Item one : item instanceof Listing listing ? listing.items() : List.of(item)) {
      T value = one(one, key, reader);
      if (value != null && one instanceof Words words) {
        Stated stated = quantity.apply(value);
        String source = stated == null ? Values.source(words.text()) : stated.source();
        Stated kept = stated == null ? Stated.of(Double.NaN, dimension(key)) : stated;
        all.add(new Read<>(value, kept, words, context.papers.paper(source, words)));
      }
    }
    all.sort(Comparator.comparingInt(read -> context.papers.rank(read.paper())));
    note(key, all);
    return all.isEmpty() ? null : all.get(0).value();
  }

  private static Dimension dimension(Key key) {
    Dimension dimension = key.dimension();
    return dimension == null ? Dimension.NUMBER : dimension;
  }

  private <T> @Nullable T one(Item item, Key key, Reader<T> reader) {
    if (!(item instanceof Words words) || words.text().isEmpty()) {
      String wrong = "`" + key.name() + "` needs a value, not " + item.words();
      context.problems.add(item, wrong, "Write it as in `" + key.example() + "`");
      return null;
    }
    try {
      return reader.read(words.text(), key);
    } catch (QuantityProblem problem) {
      context.problems.add(item, problem.wrong(), problem.mend());
      return null;
    }
  }

  private <T> void note(Key key, List<Read<T>> all) {
    List<Statement> statements = new ArrayList<>();
    for (Read<T> read : all) {
      if (!Double.isNaN(read.stated().nominal())) {
        statements.add(statement(key.name(), read.at(), read.stated(), statements.isEmpty()));
        Magnitudes.check(key, read.stated(), read.at(), context.problems);
      }
    }
    context.statements.addAll(statements);
    forgottenSource(statements);
    if (statements.stream().anyMatch(s -> differ(s.stated(), statements.get(0).stated()))) {
      context.conflicts.add(new Conflict(part, key.name(), statements));
    }
  }

  /** Asks for the source of a value that stands beside others that have one. */
  private void forgottenSource(List<Statement> statements) {
    boolean sourced = statements.stream().anyMatch(s -> !s.stated().source().isEmpty());
    for (Statement s : statements) {
      if (sourced && s.stated().source().isEmpty()) {
        Statement used = statements.get(0);
        String said = used.stated().text();
        String wrong =
            "%s, %s: %s has no source, beside values that have one; %s is used"
                .formatted(part, s.key(), s.stated().text(), s.inForce() ? "it" : said);
        String mend = "Write its source after it: `%s; ...`, or take it out";
        context.doubts.add(s.file(), s.line(), wrong, mend.formatted(s.stated().text()));
      }
    }
  }

  Statement statement(String key, Words at, Stated stated, boolean inForce) {
    if (stated.source().isEmpty() && inForce) {
      String says = key + " " + stated.text() + " has no source";
      context.assumptions.add(new Assumption(part, key, says, false));
    }
    SecondValue.ask(key, stated, at, context.doubts);
    String paper = context.papers.paper(stated.source(), at);
    return new Statement(part, key, at.file(), at.line(), stated, paper, inForce);
  }

  private static boolean differ(Stated one, Stated two) {
    return differ(one.nominal(), two.nominal())
        || differ(one.low(), two.low())
        || differ(one.high(), two.high());
  }

  /** Whether two values differ by more than their conversion to SI rounds. */
  private static boolean differ(double one, double two) {
    return Math.abs(one - two) > 1e-9 * Math.max(Math.abs(one), Math.abs(two));
  }
}

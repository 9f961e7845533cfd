package dev.offtake.logic;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Nearest;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.quantity.Stated;
import dev.offtake.quantity.Stated.Knowledge;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads conditions as a system file writes them.
 *
 * <pre>
 * condition = some { "or" some }
 * some      = one { "and" one }
 * one       = "not" one | "(" condition ")" | clause
 * clause    = subject "is" ["not"] position
 *           | value ["is" ["not"]] ("above" | "below") quantity
 * </pre>
 *
 * So {@code not} binds closer than {@code and}, and {@code and} closer than {@code or}. Subjects
 * and positions may be several words, and may contain any keyword: the longest name that is known
 * wins. There is no arithmetic. A source after a semicolon is not part of the condition.
 */
public final class ConditionReader {
  /** Nobody can read more parentheses than these; the parser must not run out of stack either. */
  private static final int DEEPEST = 40;

  private static final int LONGEST = 2000;

  private final Words words;
  private final Names names;
  private int depth;

  private ConditionReader(Words words, Names names) {
    this.words = words;
    this.names = names;
  }

  /**
   * Reads a condition.
   *
   * @param text such as {@code bleed switch is OFF or overheat trip is tripped; SD p.9}
   * @param names what the condition may speak of
   * @return the condition, whose names are full names
   * @throws ConditionProblem when it is not understood
   */
  public static Condition read(String text, Names names) throws ConditionProblem {
    String value = QuantityReader.split(text).value();
    if (value.length() > LONGEST) {
      throw new ConditionProblem("the condition is too long", "split it, or use fewer words");
    }
    Words words = new Words(value);
    Condition condition = new ConditionReader(words, names).condition();
    if (!words.atEnd()) {
      throw new ConditionProblem(
          "'" + words.rest() + "' is left over", "join clauses by and, or; pair parentheses");
    }
    return condition;
  }

  private Condition condition() throws ConditionProblem {
    int start = words.at();
    List<Condition> operands = new ArrayList<>(List.of(some()));
    while (words.accept("or")) {
      operands.add(some());
    }
    return operands.size() == 1
        ? operands.get(0)
        : new Clause.Any(List.copyOf(operands), words.since(start));
  }

  private Condition some() throws ConditionProblem {
    int start = words.at();
    List<Condition> operands = new ArrayList<>(List.of(one()));
    while (words.accept("and")) {
      operands.add(one());
    }
    return operands.size() == 1
        ? operands.get(0)
        : new Clause.All(List.copyOf(operands), words.since(start));
  }

  private Condition one() throws ConditionProblem {
    if (++depth > DEEPEST) {
      throw new ConditionProblem(
          "more than " + DEEPEST + " nested parentheses", "write the condition more simply");
    }
    Condition read = operand();
    depth--;
    return read;
  }

  private Condition operand() throws ConditionProblem {
    int start = words.at();
    Optional<Condition> clause = knownClause();
    if (clause.isPresent()) {
      return clause.get();
    }
    if (words.accept("not")) {
      Condition operand = one();
      return new Clause.Not(operand, words.since(start));
    }
    if (words.accept("(")) {
      Condition inner = condition();
      if (!words.accept(")")) {
        throw new ConditionProblem("a parenthesis is not closed", "add ) where the group ends");
      }
      return new Clause.Grouped(inner, words.since(start));
    }
    throw unknownClause();
  }

  /** Reads a clause whose subject is known; the longest such subject wins. */
  private Optional<Condition> knownClause() throws ConditionProblem {
    int start = words.at();
    for (int end = words.size() - 1; end > start; end--) {
      if (!verb(end)) {
        continue;
      }
      Optional<String> subject = names.subject(words.upTo(end));
      if (subject.isPresent()) {
        words.moveTo(end);
        return Optional.of(clause(subject.get(), start));
      }
    }
    return Optional.empty();
  }

  private boolean verb(int index) {
    return words.is(index, "is") || words.is(index, "above") || words.is(index, "below");
  }

  private Condition clause(String subject, int start) throws ConditionProblem {
    List<String> positions = names.positions(subject);
    boolean stands = words.accept("is");
    if (!positions.isEmpty()) {
      if (!stands) {
        throw compared(subject, positions);
      }
      return stands(subject, positions, start);
    }
    boolean not = stands && words.accept("not");
    boolean above = words.accept("above");
    if (!above && !words.accept("below")) {
      throw new ConditionProblem(
          subject + " is a value and has no positions",
          "say " + subject + " above or below a value");
    }
    Limit limit = limit(subject);
    Condition passes = new Clause.Passes(subject, above, limit.si, limit.gauge, words.since(start));
    return not ? new Clause.Not(passes, words.since(start)) : passes;
  }

  private static ConditionProblem compared(String subject, List<String> positions) {
    return new ConditionProblem(
        subject + " has positions and cannot be above or below",
        "say " + subject + " is " + positions.get(0));
  }

  private Condition stands(String subject, List<String> positions, int start)
      throws ConditionProblem {
    // A position may itself begin with 'not', as 'not installed' does, so it is looked for first.
    Optional<String> position = position(positions);
    boolean not = position.isEmpty() && words.accept("not");
    if (not) {
      position = position(positions);
    }
    if (position.isEmpty()) {
      throw noPosition(subject, positions);
    }
    Condition clause = new Clause.Stands(subject, position.get(), words.since(start));
    return not ? new Clause.Not(clause, words.since(start)) : clause;
  }

  /** Reads the longest position that is known and ends where a clause may end. */
  private Optional<String> position(List<String> positions) {
    for (int end = words.size(); end > words.at(); end--) {
      if (!words.clauseEnds(end)) {
        continue;
      }
      String written = words.upTo(end);
      for (String position : positions) {
        if (position.equalsIgnoreCase(written)) {
          words.moveTo(end);
          return Optional.of(position);
        }
      }
    }
    return Optional.empty();
  }

  private ConditionProblem noPosition(String subject, List<String> positions) {
    String written = words.upTo(words.endOfClause());
    String wrong =
        written.isEmpty()
            ? "the position of " + subject + " is missing"
            : subject + " has no position '" + written + "'";
    return new ConditionProblem(wrong, Nearest.mend(written, positions));
  }

  /** A limit in SI, and whether it counts from ambient. */
  private record Limit(double si, boolean gauge) {}

  private Limit limit(String subject) throws ConditionProblem {
    int end = words.endOfClause();
    String written = words.upTo(end);
    Stated limit = quantity(written, names.dimension(subject));
    if (limit.knowledge() != Knowledge.GIVEN || limit.low() != limit.high()) {
      throw new ConditionProblem(
          "'" + written + "' is not one limit", "compare with one value without a tolerance");
    }
    words.moveTo(end);
    return new Limit(limit.nominal(), limit.dimension() == Dimension.GAUGE_PRESSURE);
  }

  private static Stated quantity(String written, Dimension dimension) throws ConditionProblem {
    boolean pressure =
        dimension == Dimension.GAUGE_PRESSURE || dimension == Dimension.ABSOLUTE_PRESSURE;
    try {
      return QuantityReader.read(written, pressure ? Dimension.PRESSURE : dimension);
    } catch (QuantityProblem problem) {
      throw new ConditionProblem(problem.wrong(), problem.mend());
    }
  }

  /** Why no clause begins here. */
  private ConditionProblem unknownClause() {
    int end = words.endOfClause();
    String written = words.upTo(end);
    if (written.isEmpty()) {
      String after = words.atEnd() ? "at the end" : "before '" + words.rest() + "'";
      return new ConditionProblem(
          "a clause is missing " + after, "write a clause such as bleed switch is OFF");
    }
    for (int verb = words.at() + 1; verb < end; verb++) {
      if (verb(verb)) {
        return unknownSubject(words.upTo(verb));
      }
    }
    return new ConditionProblem(
        "'" + written + "' says nothing that holds or does not hold",
        "name the subject in every clause, such as bleed switch is OFF or bleed switch is AUTO");
  }

  private ConditionProblem unknownSubject(String written) {
    String mend =
        Nearest.to(written, writable())
            .map(near -> Nearest.GUESS + near + "?")
            .orElse("name a switch, trip, light, valve or value of this system");
    return new ConditionProblem("there is no '" + written + "'", mend);
  }

  /** All names, and those that may be written without their first word, the side. */
  private List<String> writable() {
    List<String> writable = new ArrayList<>(names.all());
    for (String name : names.all()) {
      String tail = name.substring(name.indexOf(' ') + 1);
      if (names.subject(tail).isPresent()) {
        writable.add(tail);
      }
    }
    return writable;
  }
}

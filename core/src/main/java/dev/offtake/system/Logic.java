package dev.offtake.system;

import dev.offtake.logic.Condition;
import dev.offtake.logic.ConditionProblem;
import dev.offtake.logic.ConditionReader;
import dev.offtake.logic.Names;
import dev.offtake.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Reads conditions with the names of a file.
 *
 * <p>Switches and parts go by their full names, readings by those of their points ({@code left duct
 * pressure}), and the speeds of the engine are {@code core} and {@code fan}.
 */
final class Logic {
  private static final List<String> SPEEDS = List.of("core", "fan");

  private final Map<String, List<String>> switches;
  private final Map<String, List<String>> parts;
  private final PointBook points;
  private final Problems problems;

  /**
   * Makes a reader.
   *
   * @param switches positions of each switch
   * @param parts positions of each part that has any
   * @param points of the file
   * @param problems takes what is wrong
   */
  Logic(
      Map<String, List<String>> switches,
      Map<String, List<String>> parts,
      PointBook points,
      Problems problems) {
    this.switches = switches;
    this.parts = parts;
    this.points = points;
    this.problems = problems;
  }

  /** A condition as written on a side; null, and told, when it is not understood. */
  @Nullable Condition read(String side, String text, Item at) {
    try {
      return ConditionReader.read(text, new OnSide(side));
    } catch (ConditionProblem problem) {
      problems.add(at, problem.wrong(), problem.mend());
      return null;
    }
  }

  /**
   * A sentence that may be a condition and may be words for a person.
   *
   * @param condition the sentence as a condition; empty when it is none
   * @param slip why it is none, when a name in it is nearly one of the file's; null otherwise
   */
  record Sentence(Optional<Condition> condition, @Nullable ConditionProblem slip) {}

  /** A condition, if the text is one. */
  Sentence tryRead(String side, String text) {
    try {
      return new Sentence(Optional.of(ConditionReader.read(text, new OnSide(side))), null);
    } catch (ConditionProblem problem) {
      return new Sentence(Optional.empty(), problem.guesses() ? problem : null);
    }
  }

  /** What may be named on one side. */
  private final class OnSide implements Names {
    private final String side;

    OnSide(String side) {
      this.side = side;
    }

    @Override
    public Optional<String> subject(String written) {
      String found = NameBook.find(side, written, switches.keySet());
      if (found.isEmpty()) {
        found = NameBook.find(side, written, parts.keySet());
      }
      if (found.isEmpty() && SPEEDS.contains(written)) {
        found = written;
      }
      return found.isEmpty() ? reading(written) : Optional.of(found);
    }

    private Optional<String> reading(String written) {
      String point = References.readPoint(written);
      String full = points.full(side, point);
      return point.isEmpty() || !points.exists(full)
          ? Optional.empty()
          : Optional.of(full + written.substring(point.length()));
    }

    @Override
    public List<String> positions(String subject) {
      return switches.getOrDefault(subject, parts.getOrDefault(subject, List.of()));
    }

    @Override
    public Dimension dimension(String subject) {
      if (SPEEDS.contains(subject)) {
        return Dimension.SHARE;
      }
      return subject.endsWith(References.TEMPERATURE) ? Dimension.TEMPERATURE : Dimension.PRESSURE;
    }

    @Override
    public List<String> all() {
      List<String> all = new ArrayList<>(NameBook.asWritten(side, switches.keySet()));
      all.addAll(NameBook.asWritten(side, parts.keySet()));
      for (String point : NameBook.asWritten(side, points.places())) {
        all.add(point + References.PRESSURE);
        all.add(point + References.TEMPERATURE);
      }
      all.addAll(SPEEDS);
      return all;
    }
  }
}

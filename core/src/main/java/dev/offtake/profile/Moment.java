package dev.offtake.profile;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.quantity.Stated;
import dev.offtake.system.Item.Words;
import dev.offtake.system.Problems;
import dev.offtake.system.Texts;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * When something is done: {@code at 5 s}, or {@code from 5 s to 11 s}.
 *
 * @param from s
 * @param until s; NaN where only a beginning is said
 */
record Moment(double from, double until) {
  /** No run is played for longer, s. */
  static final double LONGEST = 24 * 3600;

  private static final Pattern SPAN = Pattern.compile("(?i)from\\s+(.+?)\\s+(?:to|until)\\s+(.+)");
  private static final Pattern POINT = Pattern.compile("(?i)(?:at|from)\\s+(.+)");

  /** Reads the words before an action; empty with a problem told. */
  static Optional<Moment> read(Words words, Problems problems) {
    Matcher span = SPAN.matcher(words.text());
    Matcher point = POINT.matcher(words.text());
    if (span.matches()) {
      double from = seconds(Texts.at(words, span.group(1)), problems);
      double until = seconds(Texts.at(words, span.group(2)), problems);
      if (until <= from) {
        String wrong = "`" + words.text() + "` runs back";
        problems.add(words, wrong, "Write the earlier time first");
        return Optional.empty();
      }
      return Double.isNaN(from + until) ? Optional.empty() : Optional.of(new Moment(from, until));
    }
    if (point.matches()) {
      double from = seconds(Texts.at(words, point.group(1)), problems);
      return Double.isNaN(from) ? Optional.empty() : Optional.of(new Moment(from, Double.NaN));
    }
    String wrong = "`" + words.text() + "` does not say when";
    problems.add(words, wrong, "Begin with a time: `at 5 s:` or `from 5 s to 11 s:`");
    return Optional.empty();
  }

  /** Reads a time, s; NaN with a problem told. */
  static double seconds(Words words, Problems problems) {
    try {
      Stated time = QuantityReader.read(words.text(), Dimension.TIME);
      double seconds = time.nominal();
      if (time.low() != time.high() || Double.isNaN(seconds)) {
        problems.add(words, "`" + words.text() + "` is no one time", "Write one time: `at 5 s`");
      } else if (seconds < 0 || seconds > LONGEST) {
        String wrong = "`" + words.text() + "` lies outside any run";
        problems.add(words, wrong, "Times count from the start, 0 s to 24 h");
      } else {
        return seconds;
      }
    } catch (QuantityProblem problem) {
      problems.add(words, problem.wrong(), problem.mend());
    }
    return Double.NaN;
  }
}

package dev.offtake.cause;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Nearest;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads how a part stands: a word of its kind, or how far a valve is open. */
final class Positions {
  private static final String PART_OPEN = "part open";
  private static final Pattern FAR = Pattern.compile("(?i)(.+?)\\s+open");
  private static final Pattern FRACTION = Pattern.compile("([0-9]{1,3})\\s*/\\s*([0-9]{1,3})");

  /** Words that people use beside those of the kind. */
  private static final Map<String, String> ALIKE = Map.of("closed", "shut", "lit", "on");

  private Positions() {}

  static Value.Stands read(About.Position about, String text) throws QuantityProblem {
    List<String> known = new ArrayList<>(about.positions());
    if (about.valve()) {
      known.add(PART_OPEN);
      if (!known.contains("shut")) {
        known.addAll(List.of("open", "shut"));
      }
    }
    String lower = text.toLowerCase(Locale.ROOT);
    String word = known.contains(lower) ? lower : ALIKE.getOrDefault(lower, lower);
    if (known.contains(word)) {
      return new Value.Stands(word, Double.NaN);
    }
    Matcher far = FAR.matcher(text);
    if (!about.valve() || !far.matches()) {
      String also = about.valve() ? ", or how far: `1/3 open`" : "";
      throw new QuantityProblem(
          "`" + about.name() + "` cannot be `" + text + "`", Nearest.mend(text, known) + also);
    }
    double open = share(far.group(1));
    if (!(open >= 0 && open <= 1)) {
      throw new QuantityProblem(
          "no valve is `" + text + "`", "write a share from 0 to 100 %: `1/3 open`");
    }
    return new Value.Stands(text, open);
  }

  private static double share(String text) throws QuantityProblem {
    Matcher fraction = FRACTION.matcher(text);
    if (fraction.matches()) {
      return Double.parseDouble(fraction.group(1)) / Double.parseDouble(fraction.group(2));
    }
    return text.equalsIgnoreCase("half")
        ? 0.5
        : QuantityReader.read(text, Dimension.SHARE).nominal();
  }
}

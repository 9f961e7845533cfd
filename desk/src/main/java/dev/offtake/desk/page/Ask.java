package dev.offtake.desk.page;

import dev.offtake.explain.Question;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Setting;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A question as the page puts it.
 *
 * @param power name of a power setting; empty for none
 * @param core core speed, a fraction; NaN where the power's own counts
 * @param day a day in words; empty for that of the power
 * @param lineUp name of a line-up; empty for that of the power
 * @param sets single settings
 * @param faults what is broken, in words
 * @param style units of the answer
 */
record Ask(
    String power,
    double core,
    String day,
    String lineUp,
    List<String> sets,
    List<String> faults,
    Style style) {

  /** Longest text that is looked at. */
  static final int LONGEST = 200;

  /** Most settings and most faults of one question. */
  static final int MOST = 24;

  /** A share as people write it. */
  private static final Pattern SHARE = Pattern.compile("-?\\d{0,9}\\.?\\d{1,17}");

  /** Most core speeds of one question. */
  static final int MOST_CORES = 24;

  /** Core speeds that can be asked, fractions. */
  private static final double SLOWEST = 0.05;

  private static final double FASTEST = 1.3;

  /**
   * Reads a question.
   *
   * @param query names and values of the address
   * @throws Refusal when a value cannot be one
   */
  static Ask of(Map<String, List<String>> query) {
    return new Ask(
        one(query, "power"),
        core(one(query, "core")),
        one(query, "day"),
        one(query, "lineup"),
        all(query, "set"),
        all(query, "if"),
        style(one(query, "units")));
  }

  /**
   * Core speeds of one question, fractions.
   *
   * @param query names and values of the address
   * @throws Refusal when one cannot be, or there are none or too many
   */
  static List<Double> cores(Map<String, List<String>> query) {
    String text = one(query, "cores");
    int given = many(query);
    if (text.isEmpty() || given > MOST_CORES) {
      throw new Refusal(
          Refusal.BAD,
          text.isEmpty() ? "no core speeds are given" : given + " core speeds are too many",
          "write cores=0.62,0.621, " + MOST_CORES + " at most");
    }
    return Arrays.stream(text.split(",", -1))
        .map(each -> core(each.isEmpty() ? "none" : each))
        .toList();
  }

  /** How many states a question is about. */
  static int many(Map<String, List<String>> query) {
    return query.getOrDefault("cores", List.of("")).stream()
        .mapToInt(text -> 1 + (int) text.chars().filter(c -> c == ',').count())
        .sum();
  }

  /** The only value of a name; empty for none. */
  static String one(Map<String, List<String>> query, String name) {
    List<String> values = all(query, name);
    if (values.size() > 1) {
      throw new Refusal(Refusal.BAD, name + " is given twice", "give it once");
    }
    return values.isEmpty() ? "" : values.get(0);
  }

  /** All values of a name. */
  static List<String> all(Map<String, List<String>> query, String name) {
    List<String> values = query.getOrDefault(name, List.of());
    if (values.size() > MOST) {
      throw new Refusal(
          Refusal.BAD, values.size() + " times " + name + " are too many", "give fewer");
    }
    for (String value : values) {
      if (value.length() > LONGEST) {
        throw new Refusal(
            Refusal.BAD, "the text for " + name + " is too long", "write it in a few words");
      }
      if (value.chars().anyMatch(Character::isISOControl)) {
        throw new Refusal(
            Refusal.BAD, "the text for " + name + " holds a control character", "leave it out");
      }
    }
    return List.copyOf(values);
  }

  private static double core(String text) {
    if (text.isEmpty()) {
      return Double.NaN;
    }
    if (!SHARE.matcher(text).matches()) {
      throw new Refusal(Refusal.BAD, "core=" + text + " is no number", "write core=0.62");
    }
    double core = Double.parseDouble(text);
    if (!(core >= SLOWEST && core <= FASTEST)) {
      throw new Refusal(
          Refusal.BAD,
          "core=" + text + " is outside anything that a core speed can be",
          "give a share such as core=0.62");
    }
    return core;
  }

  private static Style style(String units) {
    return switch (units) {
      case "", "shop" -> Style.SHOP;
      case "metric" -> Style.METRIC;
      default ->
          throw new Refusal(Refusal.BAD, "there are no units " + units, "say shop or metric");
    };
  }

  /** The same question at a core speed. */
  Ask at(double speed) {
    return new Ask(power, speed, day, lineUp, sets, faults, style);
  }

  /** The same question at a power of the file. */
  Ask at(String name) {
    return new Ask(name, Double.NaN, "", lineUp, sets, faults, style);
  }

  /** The same question about the sound system. */
  Ask healthy() {
    return new Ask(power, core, day, lineUp, sets, List.of(), style);
  }

  /** Whether something is broken. */
  boolean broken() {
    return !faults.isEmpty();
  }

  /**
   * The question, resolved. A core speed beside a power moves the power: its day and its line-up
   * hold.
   *
   * @throws Refusal when a name or value is not known
   */
  Question question(BleedSystem system) {
    try {
      @Nullable Setting named = Double.isNaN(core) ? null : system.settings().get(power);
      if (!power.isEmpty() && named == null && !system.settings().containsKey(power)) {
        Question.of(system, power, day, lineUp, sets); // says which powers there are
        throw new Refusal(Refusal.BAD, power + " is no power of the file", "use core= for a speed");
      }
      String at = Double.isNaN(core) ? power : percent(core);
      String air = day.isEmpty() && named != null ? named.day() : day;
      String stands = lineUp.isEmpty() && named != null ? named.lineUp() : lineUp;
      return Question.of(system, at, air, stands, sets).broken(faults);
    } catch (QuantityProblem problem) {
      throw Refusal.of(problem);
    }
  }

  /** A speed to a thousandth of a percent, so that the same place is the same question. */
  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.3f %%", 100 * share);
  }
}

package dev.offtake.explain;

import dev.offtake.cause.find.Cause;
import dev.offtake.cause.find.Ranked;
import dev.offtake.part.Mode;
import dev.offtake.quantity.Style;
import dev.offtake.study.Fault;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Words of which the answer of {@code find} is made. */
final class FindWords {
  /** Minutes above which they are told in fives. */
  private static final double ROUGH = 20;

  private final ExtentWords extents;

  FindWords(Style style) {
    extents = new ExtentWords(style);
  }

  /** Chance in 100, a whole number. */
  static String chance(double chance) {
    long whole = Math.round(100 * chance);
    return whole < 1 ? "below 1" : Long.toString(whole);
  }

  /** Minutes no finer than anybody knows them. */
  static String minutes(double minutes) {
    return Long.toString(rough(minutes));
  }

  private static long rough(double minutes) {
    long step = minutes > ROUGH ? 5 : 1;
    return step * Math.round(minutes / step);
  }

  /** Minutes to a finished repair with a check and without it. */
  static String finish(double with, double without) {
    boolean close = rough(with) == rough(without);
    String more = close ? "a little more" : minutes(without);
    return "About " + minutes(with) + " minutes to a finished repair, " + more + " without it.";
  }

  /** What can be wrong, without how far it has gone. */
  static String cause(Cause cause) {
    if (cause.faults().isEmpty()) {
      return "nothing wrong";
    }
    if (cause.common()) {
      return parts(cause) + " " + cause.faults().get(0).mode().name();
    }
    return cause.name();
  }

  /** What can be wrong and how far it has gone. */
  String cause(Ranked ranked) {
    Cause cause = ranked.cause();
    if (cause.common()) {
      return (cause(cause) + " " + extents.of(ranked, 0)).strip();
    }
    List<String> words = new ArrayList<>();
    for (int i = 0; i < cause.faults().size(); i++) {
      words.add((cause.faults().get(i).name() + " " + extents.of(ranked, i)).strip());
    }
    return String.join(" AND ", words);
  }

  /** The parts of a cause: {@code left and right mid check valve}. */
  static String parts(Cause cause) {
    List<String> names = cause.faults().stream().map(f -> f.part().name()).distinct().toList();
    return String.join(" and ", cause.common() ? Together.of(names) : names);
  }

  /** Mode and extent alone, for one failure. */
  String mode(Ranked ranked) {
    Fault fault = ranked.cause().faults().get(0);
    return (fault.mode().name() + " " + extents.of(ranked, 0)).strip();
  }

  /** A removable unit, named where its part has several: {@code duct gauge: sender line}. */
  static String unit(BleedSystem system, String part, String unit) {
    long units =
        system.parts().stream()
            .filter(own -> own.name().equals(part))
            .flatMap(own -> own.modes().stream().map(Mode::unit))
            .distinct()
            .count();
    return units < 2 || part.equals(unit) || part.endsWith(" " + unit) ? part : part + ": " + unit;
  }

  /** Several things: {@code a, b and c}, or {@code a, b and 4 more}. */
  static String list(List<String> all, int most, String join) {
    if (all.size() == 1) {
      return all.get(0);
    }
    boolean cut = all.size() > most;
    List<String> shown = all.subList(0, cut ? most : all.size() - 1);
    String last =
        cut ? "and " + (all.size() - most) + " more" : join + " " + all.get(all.size() - 1);
    return String.join(", ", shown) + " " + last;
  }

  static String count(long number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }

  /** With a capital letter. */
  static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}

package dev.offtake.cause;

import dev.offtake.system.Hint;
import dev.offtake.system.Problems;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Finds what a reading is about, or says why nobody can. */
final class NameReader {
  /** Most things that are named when a name is not clear. */
  private static final int MOST = 4;

  private static final Pattern TEMPERATURE = Pattern.compile(".*(deg|°).*|.*[0-9] *[FCKR]");
  private static final Pattern PRESSURE =
      Pattern.compile("(?i).*[0-9] *(psi|bar|kpa|mbar|hpa|inhg|inh2o|pa\\b).*");

  private final Vocabulary vocabulary;
  private final Problems problems;

  NameReader(Vocabulary vocabulary, Problems problems) {
    this.vocabulary = vocabulary;
    this.problems = problems;
  }

  /** Whether anything may be called so. */
  boolean known(String name) {
    return !vocabulary.find(name).isEmpty();
  }

  /** Where a test gauge was fitted. */
  About.Scaled fitted(About.Scaled about) {
    return vocabulary.fitted(about);
  }

  /** What a row is about; empty with a problem told. */
  Optional<About> find(Entered row) {
    String name = row.name().text();
    List<About> found = vocabulary.find(name);
    if (found.size() > 1) {
      found = narrowed(found, row);
    }
    if (found.size() == 1) {
      return Optional.of(found.get(0));
    }
    List<String> sides = vocabulary.sidesOf(name);
    if (!sides.isEmpty()) {
      String wrong = "`" + name + "` does not say on which side";
      String mend = String.join("` or `", sides.stream().map(s -> s + " " + name).toList());
      problems.add(row.name(), wrong, "Write `" + mend + "`");
    } else if (found.isEmpty()) {
      String mend = Hint.nearest(name, vocabulary.known());
      problems.add(
          row.name(),
          "There is no gauge, light or port `" + name + "`",
          mend.isEmpty() ? "Known: " + some(vocabulary.asked()) : "Did you mean `" + mend + "`?");
    } else {
      problems.add(
          row.name(), "`" + name + "` could be " + some(found), "Write one of them in full");
    }
    return Optional.empty();
  }

  private static String some(List<About> all) {
    String some =
        String.join(", ", all.stream().limit(MOST).map(about -> "`" + about.name() + "`").toList());
    return all.size() > MOST ? some + " and " + (all.size() - MOST) + " more" : some;
  }

  /**
   * Only the gauge that the reading names, and only what can have a value in its unit; without a
   * unit a place means its pressure.
   */
  private static List<About> narrowed(List<About> found, Entered row) {
    String with = row.with().text();
    List<About> own = found.stream().filter(about -> of(about, with)).toList();
    boolean hot = TEMPERATURE.matcher(row.value().text()).matches();
    boolean pressed = PRESSURE.matcher(row.value().text()).matches();
    List<About> named = own.isEmpty() ? found : own;
    List<About> fit = named.stream().filter(about -> fits(about, hot && !pressed)).toList();
    return fit.isEmpty() && hot == pressed ? named : fit;
  }

  private static boolean of(About about, String gauge) {
    return about instanceof About.Needle needle && needle.gauge().name().equalsIgnoreCase(gauge);
  }

  private static boolean fits(About about, boolean hot) {
    return !(about instanceof About.Scaled scaled) || scaled.temperature() == hot;
  }

  /** A sentence that names the reading it is about. */
  String told(Entered row, String wrong) {
    String name = row.name().text();
    return wrong.contains(name) ? wrong : name + ": " + wrong;
  }
}

package dev.offtake.cause;

import dev.offtake.part.Mode;
import dev.offtake.part.Part;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.quantity.Stated;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Hint;
import dev.offtake.system.Item.Words;
import dev.offtake.system.Problems;
import dev.offtake.system.Texts;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads what an inspection found: {@code borescope, flapper not seating, gap 0.4 in}. A piece that
 * names a failure mode of the part, {@code sound} and a measure are understood; all words are kept.
 */
final class SeenReader {
  private static final List<String> SOUND =
      List.of("sound", "nothing found", "no fault found", "no defect");
  private static final Pattern MEASURE =
      Pattern.compile(
          "([\\p{L}][\\p{L} ]*?)\\s+(-?[0-9.][0-9.,]*(?:\\s*/\\s*[0-9]+)?\\s*[\\p{L}%°].*)");
  private static final List<Dimension> MEASURES =
      List.of(
          Dimension.LENGTH,
          Dimension.AREA,
          Dimension.SHARE,
          Dimension.PRESSURE_DIFFERENCE,
          Dimension.TEMPERATURE,
          Dimension.ANGLE);

  private final BleedSystem system;
  private final Problems problems;

  SeenReader(BleedSystem system, Problems problems) {
    this.system = system;
    this.problems = problems;
  }

  /** What was seen of a part; empty with a problem told. */
  Optional<Seen> read(Words name, Words said) {
    Optional<Part> part =
        system.parts().stream().filter(p -> p.name().equalsIgnoreCase(name.text())).findFirst();
    if (part.isEmpty()) {
      problems.add(name, "There is no part `" + name.text() + "`", hint(name.text()));
      return Optional.empty();
    }
    if (said.text().isEmpty()) {
      String wrong = "Nothing is said of what was seen of `" + name.text() + "`";
      problems.add(said, wrong, "Write it: `borescope, flapper not seating, gap 0.4 in`");
      return Optional.empty();
    }
    return Optional.of(seen(part.get(), said));
  }

  private String hint(String text) {
    List<String> names = system.parts().stream().map(Part::name).toList();
    for (String side : system.sides()) {
      if (Texts.named(side + " " + text, names).isPresent()) {
        return "Say on which side: `" + side + " " + text + "`";
      }
    }
    return Hint.of(text, names);
  }

  private Seen seen(Part part, Words said) {
    String mode = "";
    String what = "";
    Seen.Verdict verdict = Seen.Verdict.TO_JUDGE;
    Optional<Stated> measured = Optional.empty();
    for (Words piece : Texts.pieces(said)) {
      Optional<String> named = mode(part, piece.text());
      Matcher measure = MEASURE.matcher(piece.text());
      if (named.isPresent()) {
        mode = named.get();
        verdict = Seen.Verdict.FAULTY;
      } else if (SOUND.contains(piece.text().toLowerCase(Locale.ROOT))) {
        verdict = verdict == Seen.Verdict.FAULTY ? contradiction(piece) : Seen.Verdict.SOUND;
      } else if (measure.matches() && measured.isEmpty()) {
        measured = measure(Texts.at(piece, measure.group(2)));
        what = measured.isPresent() ? measure.group(1) : what;
      }
    }
    return new Seen(part.name(), said.text(), verdict, mode, what, measured);
  }

  private Seen.Verdict contradiction(Words piece) {
    problems.add(piece, "The part is said to be faulty and sound at once", "Keep one of them");
    return Seen.Verdict.TO_JUDGE;
  }

  private static Optional<String> mode(Part part, String piece) {
    return part.modes().stream()
        .map(Mode::name)
        .filter(name -> Texts.begins(piece, name))
        .max(Comparator.comparingInt(String::length));
  }

  /** The measure in the first dimension that has its unit; words that are no measure stay words. */
  private Optional<Stated> measure(Words text) {
    for (Dimension dimension : MEASURES) {
      try {
        Stated stated = QuantityReader.read(text.text(), dimension);
        boolean size = dimension == Dimension.LENGTH || dimension == Dimension.AREA;
        if (size && stated.low() < 0) {
          String wrong = "Nothing is `" + text.text() + "` wide";
          problems.add(text, wrong, "Write the measure without a sign");
          return Optional.empty();
        }
        return Optional.of(stated);
      } catch (QuantityProblem other) {
        // Another dimension may have its unit.
      }
    }
    return Optional.empty();
  }
}

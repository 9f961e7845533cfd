package dev.offtake.study;

import dev.offtake.part.Extent;
import dev.offtake.part.Mode;
import dev.offtake.part.Part;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Nearest;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.quantity.Style;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads faults as a person writes them: part, mode, and how far where the mode asks for it, such as
 * {@code left mid check valve stuck 1/3 open}. {@code each side mid check valve …} is the same
 * fault on every side.
 */
public final class FaultReader {
  private static final String EACH_SIDE = "each side ";
  private static final Pattern BOTH = Pattern.compile("^(?i)(both sides|both|each side)\\s+");
  private static final String EXAMPLE =
      "write the part, how it fails, and how far: left mid check valve stuck 1/3";
  private static final Pattern FRACTION = Pattern.compile("(\\d{1,3})\\s*/\\s*(\\d{1,3})");

  private final BleedSystem system;
  private final List<Part> parts;
  private final List<String> sides;

  /** Makes a reader for the parts of a system. */
  public FaultReader(BleedSystem system) {
    this.system = system;
    parts = system.parts();
    sides = system.sides();
  }

  /**
   * Reads one fault; on each side it is several.
   *
   * @throws QuantityProblem when a part, a mode or an extent is not known; says what would be
   */
  public List<Fault> read(String given) throws QuantityProblem {
    String text = BOTH.matcher(given.replace(':', ' ').strip()).replaceFirst(EACH_SIDE);
    text = text.replaceAll("\\s+", " ");
    if (text.isEmpty()) {
      throw new QuantityProblem("nothing is said of what is broken", EXAMPLE);
    }
    new OneFault(system).check(text);
    if (!text.startsWith(EACH_SIDE)) {
      return List.of(one(text));
    }
    List<Fault> faults = new ArrayList<>();
    for (String side : sides) {
      faults.add(one(side + " " + text.substring(EACH_SIDE.length())));
    }
    if (faults.isEmpty()) {
      throw new QuantityProblem(
          "\"" + text + "\": this system has no sides", "leave \"each side\" out");
    }
    return faults;
  }

  private Fault one(String text) throws QuantityProblem {
    Optional<Part> named =
        parts.stream()
            .filter(part -> begins(text, part.name()))
            .max(Comparator.comparingInt(part -> part.name().length()));
    if (named.isEmpty()) {
      throw unknownPart(text);
    }
    Part part = named.get();
    String rest = text.substring(part.name().length()).strip();
    Optional<Mode> mode =
        system.modes(part).stream()
            .filter(m -> begins(rest, m.name()))
            .max(Comparator.comparingInt(m -> m.name().length()));
    if (mode.isEmpty()) {
      throw unknownMode(part, rest);
    }
    String extent = rest.substring(mode.get().name().length()).strip();
    return new Fault(part, mode.get(), extent(part, mode.get(), extent));
  }

  private static boolean begins(String text, String words) {
    boolean begins = text.regionMatches(true, 0, words, 0, words.length());
    return begins && (text.length() == words.length() || text.charAt(words.length()) == ' ');
  }

  private QuantityProblem unknownPart(String text) {
    for (String side : sides) {
      if (parts.stream().anyMatch(part -> begins(side + " " + text, part.name()))) {
        return new QuantityProblem(
            "\"" + text + "\" does not say on which side",
            "write \"" + side + " " + text + "\", or \"each side " + text + "\" for all of them");
      }
    }
    // The name may be followed by a mode, so that its first words are compared as well.
    List<String> names = parts.stream().map(Part::name).toList();
    String near =
        beginnings(text).stream()
            .map(words -> Nearest.to(words, names))
            .flatMap(Optional::stream)
            .findFirst()
            .map(name -> "did you mean " + name + "? ")
            .orElse("");
    return new QuantityProblem(
        "there is no part that \"" + text + "\" could begin with", near + EXAMPLE);
  }

  /** The text, then the text without its last word, and so on. */
  private static List<String> beginnings(String text) {
    List<String> all = new ArrayList<>();
    String left = text;
    while (!left.isEmpty()) {
      all.add(left);
      int space = left.lastIndexOf(' ');
      left = space < 0 ? "" : left.substring(0, space);
    }
    return all;
  }

  private static QuantityProblem unknownMode(Part part, String rest) {
    List<String> names = part.modes().stream().map(Mode::name).toList();
    if (names.isEmpty()) {
      return new QuantityProblem(
          "a " + part.kind() + " has no way to fail that Offtake knows", "name another part");
    }
    String near =
        beginnings(rest).stream()
            .map(words -> Nearest.to(words, names))
            .flatMap(Optional::stream)
            .findFirst()
            .map(name -> "did you mean " + name + "? ")
            .orElse("");
    String wrong =
        rest.isEmpty()
            ? "nothing says how " + part.name() + " fails"
            : part.name() + " does not fail by \"" + rest + "\"";
    return new QuantityProblem(wrong, near + "it may be: " + String.join(", ", names));
  }

  private static double extent(Part part, Mode mode, String text) throws QuantityProblem {
    Extent asks = mode.extent();
    String name = part.name() + " " + mode.name();
    if (asks == null) {
      if (text.isEmpty()) {
        return 1;
      }
      throw new QuantityProblem(
          "\"" + name + "\" has no extent, and \"" + text + "\" follows it",
          "leave it out" + partWay(part, mode, text));
    }
    double extent = text.isEmpty() ? asks.usual() : value(asks, text);
    if (!asks.holds(extent)) {
      String range = Fault.range(asks, Style.SHOP);
      String give = bare(asks) ? range + " " + Fault.of(asks) : asks.says() + ", " + range;
      throw new QuantityProblem("\"" + name + "\" cannot go as far as " + text, "give " + give);
    }
    return extent;
  }

  /** The mode that was probably meant where an extent follows one that has none. */
  private static String partWay(Part part, Mode mode, String extent) {
    return part.modes().stream()
        .filter(other -> other.extent() != null && begins(mode.name(), other.name()))
        .findFirst()
        .map(other -> ", or write \"" + part.name() + " " + other.name() + " " + extent + "\"")
        .orElse("");
  }

  /** Whether numbers of an extent have no unit that says what they are. */
  private static boolean bare(Extent asks) {
    return asks.dimension() == Dimension.SHARE || asks.dimension() == Dimension.NUMBER;
  }

  private static double value(Extent asks, String text) throws QuantityProblem {
    String number = bare(asks) ? withoutWords(asks, text) : text;
    boolean share = asks.dimension() == Dimension.SHARE;
    Matcher fraction = FRACTION.matcher(number);
    if (share && fraction.matches()) {
      return Double.parseDouble(fraction.group(1)) / Double.parseDouble(fraction.group(2));
    }
    if (share) {
      BareShare.check(number);
    }
    return QuantityReader.read(number, asks.dimension()).nominal();
  }

  /** Without what only says of what it is a share: {@code 1/3 open}, {@code half open}. */
  private static String withoutWords(Extent asks, String text) {
    String what = Fault.of(asks);
    String number =
        text.endsWith(" " + what) ? text.substring(0, text.length() - what.length()) : text;
    return number.strip().equals("half") ? "1/2" : number.strip();
  }
}

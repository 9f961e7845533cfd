package dev.offtake.system;

import dev.offtake.air.Atmosphere;
import dev.offtake.air.Day;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.system.Item.Entry;
import dev.offtake.system.Item.Section;
import dev.offtake.system.Item.Words;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads days: {@code {altitude: 35000 ft, air: ISA +10 degF, Mach: 0.78}} or {@code {barometer:
 * 29.71 inHg station, air: 41 degF}}. A barometer must be said to be {@code station} or {@code QNH
 * at 5000 ft}: at that elevation the two differ by 2.5 psi.
 */
public final class DayReader {
  /**
   * No engine that bleeds air for an aircraft runs higher, m (65000 ft; common practice, no
   * source).
   */
  private static final double HIGHEST = 19_812;

  private static final List<String> LINES = List.of("altitude", "barometer", "air", "Mach");
  private static final String ISA = "ISA";

  /** A comma that does not stand inside a number such as 35,000. */
  private static final String BETWEEN = ",(?![0-9]{3}(?![0-9]))";

  private static final String MACH = "Mach";
  private static final String STATION = " station";
  private static final String QNH = " QNH at ";

  private final Problems problems;

  private DayReader(Problems problems) {
    this.problems = problems;
  }

  /** Days by name, the standard day first. */
  static Map<String, Day> read(Collection<Entry> entries, Problems problems) {
    Map<String, Day> days = new LinkedHashMap<>();
    days.put(BleedSystem.STANDARD_DAY, Day.STANDARD);
    DayReader reader = new DayReader(problems);
    for (Entry entry : entries) {
      String name = entry.name().text();
      if (name.equals(BleedSystem.STANDARD_DAY)) {
        String wrong = "The standard day is built in and cannot be another one";
        problems.add(entry.name(), wrong, "Give this day another name");
      } else {
        days.put(name, reader.day(entry));
      }
    }
    return days;
  }

  /**
   * Reads one day of named lines.
   *
   * @param entry its name and its lines
   * @param problems takes what is wrong
   */
  public static Day of(Entry entry, Problems problems) {
    return new DayReader(problems).day(entry);
  }

  /**
   * Reads a day that is written in one line.
   *
   * @param text such as {@code 35000 ft, ISA +10 degF, Mach 0.78} or {@code 29.71 inHg station, 41
   *     degF}: altitude or barometer, air and Mach number in any order
   * @throws QuantityProblem when it is no day; says what is missing
   */
  static Day line(String text) throws QuantityProblem {
    Problems problems = new Problems();
    Words name = new Words("", 1, text);
    Section section = Section.emptyAt(name);
    for (String piece : text.split(BETWEEN, -1)) {
      Words words = new Words("", 1, value(piece.strip()));
      Words key = new Words("", 1, lineOf(piece.strip()));
      if (section.entries().putIfAbsent(key.text(), new Entry(key, words)) != null) {
        String wrong = "the day \"" + text + "\" gives its " + key.text() + " twice";
        throw new QuantityProblem(wrong, "keep one of them");
      }
    }
    Day day = new DayReader(problems).day(new Entry(name, section));
    for (Problem problem : problems.sorted()) {
      throw new QuantityProblem(problem.wrong(), problem.mend());
    }
    return day;
  }

  private static String value(String piece) {
    return piece.startsWith(MACH) ? piece.substring(MACH.length()).strip() : piece;
  }

  /** Name of the line of a day to which a piece of a sentence belongs. */
  private static String lineOf(String piece) throws QuantityProblem {
    if (piece.startsWith(MACH)) {
      return "Mach";
    }
    if (piece.startsWith(ISA) || is(piece, Dimension.TEMPERATURE)) {
      return "air";
    }
    if (is(piece, Dimension.LENGTH)) {
      return "altitude";
    }
    boolean said = piece.endsWith(STATION) || piece.contains(QNH);
    if (said || is(piece, Dimension.ABSOLUTE_PRESSURE)) {
      return "barometer";
    }
    throw new QuantityProblem(
        "\"" + piece + "\" is no altitude, barometer, air temperature or Mach number",
        "write a day as in \"35000 ft, ISA +10 degF, Mach 0.78\""
            + " or \"29.71 inHg station, 41 degF\"");
  }

  private static boolean is(String text, Dimension dimension) {
    try {
      return !Double.isNaN(QuantityReader.read(text, dimension).nominal());
    } catch (QuantityProblem none) {
      return false;
    }
  }

  private Day day(Entry entry) {
    if (!(entry.value() instanceof Section section)) {
      String wrong = "The day `" + entry.name().text() + "` needs named lines";
      problems.add(entry.value(), wrong, "Write `{altitude: 35000 ft, air: ISA +0 degF}`");
      return Day.STANDARD;
    }
    for (Entry line : section.entries().values()) {
      String name = line.name().text();
      if (!LINES.contains(name)) {
        problems.add(line.name(), "A day has no line `" + name + "`", Hint.of(name, LINES));
      }
    }
    try {
      return air(section, entry.name());
    } catch (IllegalArgumentException outside) {
      String wrong = "The day `" + entry.name().text() + "` is no air that an engine breathes";
      problems.add(entry.name(), wrong, "Check its units: " + outside.getMessage());
      return Day.STANDARD;
    }
  }

  private Day air(Section section, Item name) {
    double mach = si(section, "Mach", text(section, "Mach"), Dimension.NUMBER, 0);
    String air = text(section, "air");
    String barometer = text(section, "barometer");
    if (!barometer.isEmpty()) {
      barometerAlone(section, air);
      String thermometer = air.startsWith(ISA) ? "" : air;
      double t = si(section, "air", thermometer, Dimension.TEMPERATURE, Atmosphere.SEA_LEVEL_T);
      return barometer(section, barometer, t).withMach(mach);
    }
    if (text(section, "altitude").isEmpty()) {
      String mend = "Write `0 ft` or `29.92 inHg station` beside it, in a file `altitude: 0 ft`";
      problems.add(name, "The day gives neither an altitude nor a barometer", mend);
    }
    double z = si(section, "altitude", text(section, "altitude"), Dimension.LENGTH, 0);
    if (z > HIGHEST) {
      throw new IllegalArgumentException("no engine of an aircraft runs above 65000 ft");
    }
    if (air.isEmpty() || air.equals(ISA)) {
      return Day.at(z).withMach(mach);
    }
    if (air.startsWith(ISA)) {
      String deviation = air.substring(ISA.length()).strip();
      double dt = si(section, "air", deviation, Dimension.TEMPERATURE_DIFFERENCE, 0);
      return Day.deviating(z, dt).withMach(mach);
    }
    double t = si(section, "air", air, Dimension.TEMPERATURE, Atmosphere.SEA_LEVEL_T);
    return Day.station(Day.at(z).pressure(), t).withMach(mach);
  }

  /** A barometer is read in the air of the place, which neither an altitude nor a table knows. */
  private void barometerAlone(Section section, String air) {
    if (!text(section, "altitude").isEmpty()) {
      String mend = "Keep one; QNH takes its elevation as in `29.92 inHg QNH at 1000 ft`";
      String wrong = "The day gives both an altitude and a barometer";
      problems.add(value(section, "barometer"), wrong, mend);
    }
    if (air.isEmpty() || air.startsWith(ISA)) {
      String wrong = "The day gives a barometer and not how warm the air is";
      problems.add(value(section, "barometer"), wrong, "Add the air's temperature: `59 degF`");
    }
  }

  private Day barometer(Section section, String text, double t) {
    Dimension pressure = Dimension.ABSOLUTE_PRESSURE;
    double standard = Atmosphere.SEA_LEVEL_P;
    int qnh = text.indexOf(QNH);
    if (text.endsWith(STATION)) {
      String value = text.substring(0, text.length() - STATION.length());
      return Day.station(si(section, "barometer", value, pressure, standard), t);
    }
    if (qnh > 0) {
      String height = text.substring(qnh + QNH.length());
      double z = si(section, "barometer", height, Dimension.LENGTH, 0);
      return Day.qnh(si(section, "barometer", text.substring(0, qnh), pressure, standard), z, t);
    }
    String wrong = "The barometer does not say whether it is station pressure or QNH";
    String mend = "Write `" + text + " station` or `" + text + " QNH at 1000 ft`";
    problems.add(value(section, "barometer"), wrong, mend);
    return Day.STANDARD;
  }

  private double si(
      Section section, String line, String text, Dimension dimension, double otherwise) {
    if (text.isEmpty()) {
      return otherwise;
    }
    try {
      return QuantityReader.read(text, dimension).nominal();
    } catch (QuantityProblem problem) {
      problems.add(value(section, line), problem.wrong(), problem.mend());
      return otherwise;
    }
  }

  private static Item value(Section section, String line) {
    Entry entry = section.entries().get(line);
    return entry == null ? section : entry.value();
  }

  private static String text(Section section, String line) {
    return value(section, line) instanceof Words words ? Values.withoutSource(words.text()) : "";
  }
}

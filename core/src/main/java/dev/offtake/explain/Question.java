package dev.offtake.explain;

import dev.offtake.air.Day;
import dev.offtake.network.Network;
import dev.offtake.part.Conditions;
import dev.offtake.part.Extent;
import dev.offtake.part.Role;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Grammar;
import dev.offtake.quantity.Nearest;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.quantity.Stated;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Setup;
import dev.offtake.study.BareShare;
import dev.offtake.study.Broken;
import dev.offtake.study.Fault;
import dev.offtake.study.FaultReader;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.FanLine;
import dev.offtake.system.LineUp;
import dev.offtake.system.Setting;
import dev.offtake.system.Standing;
import dev.offtake.system.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * A question about one system: at which power, on which day, in which line-up. What holds, from
 * weak to strong: the file's first positions, the usual line-up, the line-up of the power, the
 * line-up asked for, single settings.
 */
public final class Question {
  /** Two kinds of speed are the same when θ differs from 1 by less. */
  private static final double SAME_THETA = 1e-6;

  private final BleedSystem system;
  private final Setting setting;
  private final Setting.Holds holds;
  private final String dayName;
  private final Day day;
  private final Map<String, String> positions = new LinkedHashMap<>();
  private final Map<String, String> locks = new LinkedHashMap<>();
  private String lineUp = "";
  private List<String> sets = List.of();
  private Broken broken;
  private List<Fault> usual = List.of();

  private Question(
      BleedSystem system, Setting setting, Setting.Holds holds, String dayName, Day day) {
    this.system = system;
    this.setting = setting;
    this.holds = holds;
    this.dayName = dayName;
    this.day = day;
    broken = Broken.of(system.network(), system.sides(), List.of());
  }

  /**
   * Resolves a question.
   *
   * @param system what is asked about
   * @param at name of a power setting or a core speed such as {@code 85 %}; empty for the first
   *     setting
   * @param dayName name of a day, or its values as in {@link BleedSystem#dayOf}; empty for that of
   *     the power
   * @param lineUp name of a line-up; empty for the usual one
   * @param sets single settings such as {@code isolation: OPEN}
   * @throws QuantityProblem when a name or value is not known; says what would be
   */
  public static Question of(
      BleedSystem system, String at, String dayName, String lineUp, List<String> sets)
      throws QuantityProblem {
    Setting setting = setting(system, at);
    String named = dayName.isEmpty() ? setting.day() : dayName;
    String day = named.isEmpty() ? BleedSystem.STANDARD_DAY : named;
    Day found = day(system, day);
    Question question = new Question(system, setting, setting.holds(), day, found);
    LineUp asked = known(system.lineUps(), lineUp.isEmpty() ? LineUp.USUAL : lineUp, "line-up");
    Standing standing = Standing.of(system, setting, asked);
    question.positions.putAll(standing.positions());
    question.locks.putAll(standing.locks());
    for (String set : sets) {
      question.set(set);
    }
    question.lineUp = lineUp;
    question.sets = List.copyOf(sets);
    return question;
  }

  /**
   * The same question at another power of the file, on the day and in the line-up that belong to
   * it; what was set by hand stays set, and what is broken stays broken.
   *
   * @param power name of a power setting
   * @throws QuantityProblem when there is none of this name
   */
  Question at(String power) throws QuantityProblem {
    Question other = of(system, power, "", lineUp, sets);
    other.broken = broken;
    other.usual = usual;
    return other;
  }

  /**
   * The same question about the system with faults in it.
   *
   * @param texts faults in words, such as {@code left mid check valve stuck 1/3}
   * @throws QuantityProblem when a part, a mode or an extent is not known, or when faults cannot be
   *     there together
   */
  public Question broken(List<String> texts) throws QuantityProblem {
    FaultReader reader = new FaultReader(system);
    List<Fault> all = new ArrayList<>();
    List<Fault> unsaid = new ArrayList<>();
    for (String text : texts) {
      List<Fault> faults = reader.read(text);
      all.addAll(faults);
      faults.stream().filter(fault -> usual(fault, text)).forEach(unsaid::add);
    }
    Question other = with(all);
    other.usual = unsaid;
    return other;
  }

  /** Whether a text leaves open how far a fault goes. */
  private static boolean usual(Fault fault, String text) {
    String end = fault.mode().name().toLowerCase(Locale.ROOT);
    return fault.mode().extent() != null && text.strip().toLowerCase(Locale.ROOT).endsWith(end);
  }

  /**
   * The same question about the system with faults in it.
   *
   * @param faults what is broken; none for the healthy system
   * @throws QuantityProblem when the faults cannot be there together
   */
  public Question with(List<Fault> faults) throws QuantityProblem {
    try {
      Question other = copy(holds);
      other.broken = Broken.of(system.network(), system.sides(), faults);
      return other;
    } catch (Broken.Contradiction both) {
      throw new QuantityProblem(
          both.getMessage() + " contradict each other: they change the same thing",
          "leave one of them out");
    }
  }

  private Question copy(Setting.Holds held) {
    Question other = new Question(system, setting, held, dayName, day);
    other.positions.putAll(positions);
    other.locks.putAll(locks);
    other.lineUp = lineUp;
    other.sets = sets;
    other.broken = broken;
    other.usual = usual;
    return other;
  }

  /** A day by its name, or by its values where the file has no such name. */
  private static Day day(BleedSystem system, String text) throws QuantityProblem {
    boolean values = text.chars().anyMatch(Character::isDigit);
    boolean named = system.days().containsKey(text);
    return values && !named ? BleedSystem.dayOf(text) : known(system.days(), text, "day");
  }

  private static Setting setting(BleedSystem system, String at) throws QuantityProblem {
    if (at.isEmpty() && !system.settings().isEmpty()) {
      return system.settings().values().iterator().next();
    }
    String speed = system.settings().containsKey(at) ? at : SpeedWords.core(at);
    if (!speed.isEmpty() && Character.isDigit(speed.charAt(0))) {
      BareShare.check(speed);
      Stated core = QuantityReader.read(speed, Dimension.SHARE);
      double fan = FanLine.of(system).fan(core.nominal());
      return new Setting("", core.nominal(), fan, Setting.Holds.PHYSICAL, "", "", "");
    }
    return known(system.settings(), at, "power setting");
  }

  private static <V> V known(Map<String, V> map, String name, String what) throws QuantityProblem {
    V value = map.get(name);
    if (value == null) {
      String near = Nearest.to(name, map.keySet()).map(n -> "did you mean " + n + "? ").orElse("");
      throw new QuantityProblem(
          "there is no " + what + " called \"" + name + "\" in this file",
          near + "it knows " + String.join(", ", map.keySet()));
    }
    return value;
  }

  private void set(String text) throws QuantityProblem {
    int colon = text.indexOf(':');
    if (colon < 0) {
      throw new QuantityProblem(
          "\"" + text + "\" sets nothing", "write a name, a colon and a position: isolation: OPEN");
    }
    String name = text.substring(0, colon).strip();
    String position = text.substring(colon + 1).strip();
    for (LineUp.Lock lock : LineUp.Lock.values()) {
      if (lock.words().equals(position) && valve(name)) {
        locks.put(name, position);
        return;
      }
    }
    if (valve(name)) {
      throw new QuantityProblem(
          name + " cannot be set to \"" + position + "\"",
          "by hand a valve is locked open, locked shut, or removed and capped");
    }
    List<String> allowed = known(system.switches(), name, "switch");
    if (!allowed.contains(position)) {
      throw new QuantityProblem(
          name + " has no position \"" + position + "\"",
          "its positions are " + String.join(", ", allowed));
    }
    positions.put(name, position);
  }

  private boolean valve(String name) {
    return system.parts().stream().anyMatch(p -> p.name().equals(name) && p.role() == Role.VALVE);
  }

  /** What was asked for by hand, a line-up and single settings, in words; empty for nothing. */
  String byHand() {
    List<String> words = new ArrayList<>(lineUp.isEmpty() ? List.of() : List.of(lineUp));
    sets.forEach(set -> words.add(set.replaceFirst("\\s*:\\s*", " ")));
    return String.join(", ", words);
  }

  /** The question for the solver. */
  public Setup setup() {
    return setupOn(day);
  }

  /**
   * The question if the engine holds corrected speed.
   *
   * @return empty where the file says what it holds, or where the day makes no difference
   */
  public Optional<Question> atCorrectedSpeed() {
    if (holds != Setting.Holds.UNKNOWN || Math.abs(day.theta() - 1) < SAME_THETA) {
      return Optional.empty();
    }
    return Optional.of(copy(Setting.Holds.CORRECTED));
  }

  /** What is to be solved: the healthy network, or the one with the faults in it. */
  public Network network() {
    return broken.network();
  }

  /** What is broken. */
  public List<Fault> faults() {
    return broken.faults();
  }

  /** The fault that changes a number of a part, or builds its part anew without it. */
  Optional<Fault> changing(Setup.PartNumber number) {
    return broken.changing(system.network(), number);
  }

  /** Whether the answer is for an engine that holds corrected speed. */
  boolean holdsCorrected() {
    return holds == Setting.Holds.CORRECTED;
  }

  /** Whether the file does not say which speed the engine holds. */
  boolean unsaid() {
    return setting.holds() == Setting.Holds.UNKNOWN;
  }

  /** The system that is asked about. */
  public BleedSystem system() {
    return system;
  }

  /** The day that is asked about. */
  Day day() {
    return day;
  }

  /** The question for the solver on another day. */
  Setup setupOn(Day other) {
    Conditions conditions = setting.holding(holds).conditions(other);
    return broken.setup(new Setup(conditions, positions, locks, Map.of()));
  }

  /** Fan speed that belongs to a core speed, fractions. */
  public DoubleUnaryOperator fanLine() {
    return FanLine.of(system)::fan;
  }

  /** The question in words. */
  public Asked asked(Style style) {
    return new Asked(
        system.title(),
        system.about(),
        power(),
        dayWords(style),
        lineUpWords(),
        system.sides(),
        standsOn(),
        assumes(),
        Warnings.of(system, atCorrectedSpeed().isPresent()),
        faults().stream().map(fault -> words(fault, style)).toList());
  }

  /** A fault in words; the extent that was taken is told where nobody said one. */
  private String words(Fault fault, Style style) {
    Extent extent = fault.mode().extent();
    if (extent == null || !usual.contains(fault)) {
      return fault.words(style);
    }
    return fault.words(style) + " (no extent given: the usual one taken)";
  }

  private String power() {
    String core = String.format(Locale.ROOT, "core %s %%", trimmed(100 * setting.core()));
    if (holds == Setting.Holds.CORRECTED) {
      core += " corrected (" + trimmed(100 * day.physicalSpeed(setting.core())) + " % as read)";
    }
    return setting.name().isEmpty() ? core : setting.name() + ", " + core;
  }

  /** The power in one or two words: its name, or its core speed. */
  public String called() {
    return setting.name().isEmpty()
        ? "core " + trimmed(100 * setting.core()) + " %"
        : setting.name();
  }

  private static String trimmed(double value) {
    String text = String.format(Locale.ROOT, "%.1f", value);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  private String dayWords(Style style) {
    String air = style.print(day.temperature(), Dimension.TEMPERATURE);
    return dayName + ", " + style.print(day.pressure(), Dimension.ABSOLUTE_PRESSURE) + ", " + air;
  }

  /** Only what does not stand at its first position, so that the line stays short. */
  private String lineUpWords() {
    List<String> words = new ArrayList<>();
    positions.forEach(
        (name, position) -> {
          if (!position.equals(system.switches().getOrDefault(name, List.of(position)).get(0))) {
            words.add(name + " " + position);
          }
        });
    locks.forEach((part, lock) -> words.add(part + " " + lock));
    return words.isEmpty() ? "switches as they sit" : String.join(", ", words);
  }

  private String standsOn() {
    long stated = system.statements().stream().filter(s -> s.inForce()).count();
    long papers =
        system.statements().stream()
            .map(Statement::paper)
            .filter(paper -> !paper.isEmpty())
            .distinct()
            .count();
    return Grammar.count(stated, "number")
        + " from "
        + (papers == 0 ? "no paper" : Grammar.count(papers, "paper"))
        + ", "
        + system.assumptions().size()
        + " assumed (offtake readback)";
  }

  /** What this question takes for granted, beside what the file's readback lists. */
  private List<String> assumes() {
    List<String> assumes = new ArrayList<>();
    boolean fans = system.parts().stream().anyMatch(part -> part.kind().equals("fan tap"));
    if (fans && Double.isNaN(setting.fan())) {
      assumes.add("The setting has no fan speed: that of the core is taken.");
    } else if (fans && setting.name().isEmpty()) {
      FanLine line = FanLine.of(system);
      String where = line.covers(setting.core()) ? "" : ", carried on beyond them";
      String fan = trimmed(100 * setting.fan());
      assumes.add(
          "Fan speed " + fan + " %: a straight line through the file's settings" + where + ".");
    }
    if (holds == Setting.Holds.UNKNOWN && atCorrectedSpeed().isEmpty()) {
      assumes.add("Physical or corrected speed is not said; on this day both are the same.");
    }
    return assumes;
  }
}

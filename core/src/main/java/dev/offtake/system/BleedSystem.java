package dev.offtake.system;

import dev.offtake.air.Day;
import dev.offtake.network.Network;
import dev.offtake.part.Mode;
import dev.offtake.part.Part;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.severity.SeverityScale;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A bleed-air system as its file describes it: sides unfolded, names in full, numbers in SI.
 *
 * @param title one line
 * @param about what it is, and where its numbers are from
 * @param papers the ones that count most first
 * @param days by name, {@code standard day} always among them
 * @param settings power settings by name, in the order of the file
 * @param switches positions of each switch, the first being the one before anyone touches it
 * @param lineUps by name, {@link LineUp#USUAL} always among them
 * @param sides names of the sides; empty for a system without sides
 * @param parts in the order of the file, trips, lights and gauges included
 * @param network points and parts joined
 * @param statements every number that the file states
 * @param assumptions what the file does not say
 * @param conflicts where papers disagree
 * @param overrides what {@code only …:} replaces
 * @param never what must not be asked for
 * @param rates failures for each hour by the words of part or kind and mode, where the file gives
 *     them
 * @param severity which criterion means which class
 * @param modelError how far a forecast may be from a healthy engine
 * @param doubts what is possible and looks like a slip, each with a question back
 */
public record BleedSystem(
    String title,
    String about,
    List<Paper> papers,
    Map<String, Day> days,
    Map<String, Setting> settings,
    Map<String, List<String>> switches,
    Map<String, LineUp> lineUps,
    List<String> sides,
    List<Part> parts,
    Network network,
    List<Statement> statements,
    List<Assumption> assumptions,
    List<Conflict> conflicts,
    List<SideOverride> overrides,
    List<NeverLine> never,
    Map<String, Double> rates,
    SeverityScale severity,
    ModelError modelError,
    List<Problem> doubts) {

  /** Name of the day that is always known. */
  public static final String STANDARD_DAY = "standard day";

  /** Keeps its lists and maps. */
  public BleedSystem {
    papers = List.copyOf(papers);
    days = ordered(days);
    settings = ordered(settings);
    switches = ordered(switches);
    lineUps = ordered(lineUps);
    sides = List.copyOf(sides);
    parts = List.copyOf(parts);
    statements = List.copyOf(statements);
    assumptions = List.copyOf(assumptions);
    conflicts = List.copyOf(conflicts);
    overrides = List.copyOf(overrides);
    never = List.copyOf(never);
    rates = ordered(rates);
    doubts = List.copyOf(doubts);
  }

  /**
   * A day that is written in one line instead of being named by the file.
   *
   * @param text such as {@code 35000 ft, ISA +10 degF, Mach 0.78} or {@code 29.92 inHg QNH at 1000
   *     ft, 50 degF}
   * @throws QuantityProblem when it is no day; says what is missing
   */
  public static Day dayOf(String text) throws QuantityProblem {
    return DayReader.line(text);
  }

  /**
   * Ways in which a part can fail, at the rates that the file gives: those of the part count more
   * than those of its kind.
   */
  public List<Mode> modes(Part part) {
    return part.modes().stream()
        .map(
            mode -> {
              Double own = rates.get(part.name() + " " + mode.name());
              Double rate = own == null ? rates.get(part.kind() + " " + mode.name()) : own;
              return rate == null ? mode : mode.perMillionHours(1e6 * rate);
            })
        .toList();
  }

  /** The day that belongs to a power setting; the standard day where none does. */
  public Day dayOf(Setting setting) {
    Day day = days.get(setting.day().isEmpty() ? STANDARD_DAY : setting.day());
    return Objects.requireNonNull(day, "the reader lets no unknown day pass");
  }

  /** The same system with another model error. */
  public BleedSystem with(ModelError other) {
    return with(network, other);
  }

  /** The same system with another network. */
  public BleedSystem with(Network other) {
    return with(other, modelError);
  }

  private BleedSystem with(Network joined, ModelError error) {
    return new BleedSystem(
        title,
        about,
        papers,
        days,
        settings,
        switches,
        lineUps,
        sides,
        parts,
        joined,
        statements,
        assumptions,
        conflicts,
        overrides,
        never,
        rates,
        severity,
        error,
        doubts);
  }

  private static <V> Map<String, V> ordered(Map<String, V> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }
}

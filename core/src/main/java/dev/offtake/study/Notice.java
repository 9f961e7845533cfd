package dev.offtake.study;

import dev.offtake.logic.Condition;
import dev.offtake.part.Control;
import dev.offtake.part.EngineGauge;
import dev.offtake.part.Gauge;
import dev.offtake.part.LeakLoop;
import dev.offtake.part.Light;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.part.TestPort;
import dev.offtake.part.Trip;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.List;

/**
 * Judges who would notice that a state is not the healthy one: gauge by gauge, light by light.
 *
 * <p>A change is plain when it is larger than twice what the gauge may be wrong, and than what a
 * crew calls low or high; it is lost in the gauge when the needle still moves by half a step or by
 * half of what it may be wrong. A light, a trip or a user that goes short is plain.
 */
public final class Notice {
  /** A crew that compares two needles calls less than this normal, Pa (3 psi): an assumption. */
  public static final double CREW_PRESSURE = 20_684.27;

  /** Likewise for temperatures, K (15 °F): an assumption. */
  public static final double CREW_TEMPERATURE = 15 / 1.8;

  /** Where lights and engine gauges are. */
  static final String FLIGHT_DECK = "flight deck";

  private final TwoStates states;
  private final NeedleSigns needles;
  private final WordSigns words;
  private final List<Sign> signs = new ArrayList<>();

  private Notice(TwoStates states) {
    this.states = states;
    needles = new NeedleSigns(states);
    words = new WordSigns(states);
  }

  /**
   * What can be looked at, and whether it would be noticed.
   *
   * @param healthy an answer of the healthy system
   * @param now an answer of the broken one at the same power and line-up
   * @return in the order of the file; empty when one of the two is no answer
   */
  public static List<Sign> between(Solution healthy, Solution now) {
    Notice notice = new Notice(new TwoStates(healthy, now));
    if (healthy.solved() && now.solved()) {
      for (Part part : healthy.network().parts()) {
        notice.look(part);
      }
    }
    return List.copyOf(notice.signs);
  }

  /** The best verdict of those that are seen without a test gauge, or with one. */
  public static Sign.Verdict best(List<Sign> signs, boolean atPort) {
    return signs.stream()
        .filter(sign -> sign.atPort() == atPort)
        .map(Sign::verdict)
        .min(Sign.Verdict::compareTo)
        .orElse(Sign.Verdict.HIDDEN);
  }

  /** Whether a user in such a regime has less than it needs. */
  public static boolean isShort(String regime) {
    return regime.equals("starved") || regime.equals("low");
  }

  /**
   * Whether a user has come to have less than it needs; one that is off when healthy needs nothing.
   *
   * @param before its regime when healthy
   * @param after its regime now
   */
  public static boolean goesShort(String before, String after) {
    boolean worked = !before.equals("off") && !before.equals("shut");
    return worked && isShort(after) && !isShort(before);
  }

  private void look(Part part) {
    if (part instanceof Gauge gauge) {
      signs.addAll(needles.of(gauge));
    } else if (part instanceof EngineGauge gauge) {
      EngineSigns.of(states, gauge).ifPresent(signs::add);
    } else if (part instanceof Light) {
      signs.add(words.onOrOff(Sign.What.LIGHT, part.name(), "on", "off", FLIGHT_DECK));
    } else if (part instanceof LeakLoop && !hasLight(part.name())) {
      signs.add(words.onOrOff(Sign.What.LIGHT, part.name(), "on", "off", ""));
    } else if (part instanceof Trip) {
      signs.add(words.onOrOff(Sign.What.TRIP, part.name(), "tripped", "normal", ""));
    } else if (part.kind().equals(TestPort.KIND.name())) {
      needles.at(part).ifPresent(signs::add);
    } else if (part.role() == Role.USER) {
      words.user(part).ifPresent(signs::add);
    }
  }

  /** Whether a light shows what a leak loop feels; the loop itself then is not seen. */
  private boolean hasLight(String loop) {
    return states.healthy().network().parts().stream()
        .filter(part -> part instanceof Light)
        .flatMap(part -> part.controls().stream())
        .map(Control::rules)
        .flatMap(List::stream)
        .map(Control.Rule::when)
        .anyMatch(when -> when != null && names(when, loop));
  }

  private static boolean names(Condition when, String part) {
    return when.names().stream().anyMatch(n -> part.equals(n) || part.endsWith(" " + n));
  }
}

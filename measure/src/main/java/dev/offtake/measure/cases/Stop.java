package dev.offtake.measure.cases;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A power with a line-up at which gauges are read; a run halts at a few of them. */
enum Stop {
  IDLE(Power.GROUND_IDLE),
  IDLE_PACKS_OFF(Power.GROUND_IDLE, Switch.PACKS_OFF),
  IDLE_LEFT_OFF(Power.GROUND_IDLE, Switch.LEFT_BLEED_OFF, Switch.ISOLATION_OPEN),
  IDLE_RIGHT_OFF(Power.GROUND_IDLE, Switch.RIGHT_BLEED_OFF, Switch.ISOLATION_OPEN),
  IDLE_ISOLATION_OPEN(Power.GROUND_IDLE, Switch.ISOLATION_OPEN),
  IDLE_AUXILIARY(Power.GROUND_IDLE, Switch.AUX_ON, Switch.ISOLATION_AUTO),
  IDLE_GROUND_SUPPLY(Power.GROUND_IDLE, Switch.GROUND_ON, Switch.ISOLATION_OPEN),
  IDLE_COWL_HEAT(Power.GROUND_IDLE, Switch.COWL_HEAT),
  DESCENT(Power.DESCENT),
  DESCENT_PACKS_OFF(Power.DESCENT, Switch.PACKS_OFF),
  TAKE_OFF(Power.TAKE_OFF),
  TAKE_OFF_PACKS_OFF(Power.TAKE_OFF, Switch.PACKS_OFF),
  TAKE_OFF_ISOLATION_OPEN(Power.TAKE_OFF, Switch.ISOLATION_OPEN),
  CRUISE(Power.CRUISE),
  CRUISE_WING_HEAT(Power.CRUISE, Switch.WING_HEAT),
  CRUISE_LEFT_OFF(Power.CRUISE, Switch.LEFT_BLEED_OFF, Switch.ISOLATION_OPEN);

  /** What stands otherwise than before anyone touched it. */
  enum Switch {
    /** Both packs off. */
    PACKS_OFF("left pack switch: OFF, right pack switch: OFF"),
    /** Left bleed off. */
    LEFT_BLEED_OFF("left bleed switch: OFF"),
    /** Right bleed off. */
    RIGHT_BLEED_OFF("right bleed switch: OFF"),
    /** Isolation valve open. */
    ISOLATION_OPEN("isolation: OPEN"),
    /** Isolation valve follows the auxiliary unit's switch. */
    ISOLATION_AUTO("isolation: AUTO"),
    /** Auxiliary unit gives air. */
    AUX_ON("aux bleed: ON"),
    /** Ground supply gives air. */
    GROUND_ON("ground supply switch: ON"),
    /** Wing anti-ice on, only in flight. */
    WING_HEAT("wing anti-ice: ON"),
    /** Both cowls heated. */
    COWL_HEAT("left cowl anti-ice: ON, right cowl anti-ice: ON");

    private final String words;

    Switch(String words) {
      this.words = words;
    }

    /** Its lines of a readings file. */
    String words() {
      return words;
    }
  }

  private final Power power;

  /** Filled once; in the order of the switches, which a copy that cannot change would lose. */
  @SuppressWarnings("ImmutableEnumChecker")
  private final Set<Switch> switches;

  Stop(Power power, Switch... switches) {
    this.power = power;
    this.switches = EnumSet.noneOf(Switch.class);
    this.switches.addAll(Arrays.asList(switches));
  }

  /** The power. */
  Power power() {
    return power;
  }

  /**
   * The stop with these switches moved.
   *
   * @param power as the file calls it
   * @param moved positions by name of the switch, of those that stand otherwise than usual
   * @return empty for a line-up that no case has
   */
  static Optional<Stop> of(String power, Map<String, String> moved) {
    return Arrays.stream(values())
        .filter(stop -> stop.power.words().equals(power) && stop.moved().equals(moved))
        .findFirst();
  }

  private Map<String, String> moved() {
    Map<String, String> moved = new TreeMap<>();
    for (Switch one : switches) {
      for (String words : one.words().split(", ", -1)) {
        String[] nameAndPosition = words.split(": ", 2);
        moved.put(nameAndPosition[0], nameAndPosition[1]);
      }
    }
    return moved;
  }

  /** Whether a switch stands so. */
  boolean has(Switch which) {
    return switches.contains(which);
  }

  /** Whether the isolation valve is told to open. */
  boolean isolationOpen() {
    return has(Switch.ISOLATION_OPEN) || (has(Switch.ISOLATION_AUTO) && has(Switch.AUX_ON));
  }

  /** Whether a side's bleed is switched off. */
  boolean bleedOff(Side side) {
    return has(side.pick(Switch.LEFT_BLEED_OFF, Switch.RIGHT_BLEED_OFF));
  }

  /** How the readings file says it, without the power; empty for the usual line-up. */
  List<String> lines() {
    if (switches.isEmpty()) {
      return List.of();
    }
    if (switches.equals(EnumSet.of(Switch.PACKS_OFF))) {
      return List.of("line-up: packs off");
    }
    if (switches.equals(EnumSet.of(Switch.LEFT_BLEED_OFF, Switch.ISOLATION_OPEN))) {
      return List.of("line-up: left bleed off");
    }
    return List.of(
        switches.stream().map(Switch::words).collect(Collectors.joining(", ", "set: {", "}")));
  }

  /** For people. */
  String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}

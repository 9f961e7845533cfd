package dev.offtake.measure.cases;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.random.RandomGenerator;

/** What each failure of strangers.txt does to a plant. */
final class Strangers {
  private static final double JET = 0.6;

  private final Map<String, Break> byName = new HashMap<>();

  /** Breaks a side; the size lies between 0, just visible, and 1, the worst. */
  @FunctionalInterface
  private interface Break {
    Knobs turn(Knobs knobs, Side side, double size);
  }

  private Strangers() {
    lines();
    valves();
    engine();
    gauges();
    users();
  }

  /** All of them. */
  static Strangers all() {
    return new Strangers();
  }

  /** Names of those that can be drawn. */
  Set<String> names() {
    return Set.copyOf(byName.keySet());
  }

  /** Breaks a plant. */
  Knobs broken(Stranger stranger, Knobs knobs, Side side, double size) {
    Break turn = byName.get(stranger.name());
    if (turn == null) {
      throw new IllegalArgumentException(stranger.name());
    }
    return turn.turn(knobs, side, size);
  }

  /** A size: each power of ten alike over the span of holes, from 0 to 1. */
  static double size(RandomGenerator chance) {
    return chance.nextDouble();
  }

  /** From least to most, each power of ten alike. */
  private static double between(double size, double least, double most) {
    return least * Math.pow(most / least, size);
  }

  private static double hole(double size, double least, double most) {
    return JET * Shop.IN2 * between(size, least, most);
  }

  private void lines() {
    byName.put(
        "tee torn",
        (k, side, size) ->
            k.plus(side.of(Parts.REGULATOR), Knob.HOLE_UP, hole(size, 0.3, 6))
                .times(side.of(Parts.REGULATOR), Knob.AREA, 1 - 0.7 * size));
    byName.put(
        "interstage lines joined",
        (k, side, size) -> k.with(Parts.INTERSTAGE_LINE, Knob.AREA, hole(size, 0.3, 4)));
    byName.put(
        "duct lines joined",
        (k, side, size) -> k.with(Parts.DUCT_LINE, Knob.AREA, hole(size, 0.3, 4)));
    byName.put(
        "regulator bypassed",
        (k, side, size) -> k.plus(side.of(Parts.REGULATOR), Knob.LEAK, hole(size, 0.8, 5)));
    byName.put(
        "cowl line broken",
        (k, side, size) -> k.plus(side.of(Parts.COWL_HEAT), Knob.HOLE, hole(size, 0.3, 5)));
  }

  private void valves() {
    byName.put(
        "seat warps when hot",
        (k, side, size) -> k.with(side.of(Parts.CHECK), Knob.HOT_LEAK, hole(size, 0.2, 5)));
    byName.put(
        "high stage hangs at low power",
        (k, side, size) ->
            k.with(side.of(Parts.HIGH_STAGE), Knob.HANGS_BELOW, between(size, 0.7, 0.9)));
    byName.put(
        "high stage feels its own supply",
        (k, side, size) -> k.with(side.of(Parts.HIGH_STAGE), Knob.WRONG_BOSS, 1));
    byName.put(
        "regulator feels the interstage",
        (k, side, size) -> k.with(side.of(Parts.REGULATOR), Knob.WRONG_BOSS, 1));
    byName.put(
        "bay pressurised",
        (k, side, size) -> {
          double above = Shop.PSI * between(size, 1, 10);
          return k.with(side.of(Parts.REGULATOR), Knob.VENT_ABOVE, above)
              .with(side.other().of(Parts.REGULATOR), Knob.VENT_ABOVE, above);
        });
    byName.put(
        "core collapses",
        (k, side, size) ->
            k.with(side.of(Parts.PRECOOLER), Knob.COLLAPSES, 0.8 * Shop.PSI)
                .with(side.of(Parts.PRECOOLER), Knob.COLLAPSED, 1 - between(size, 0.2, 0.95)));
  }

  private void engine() {
    byName.put(
        "handling bleed open",
        (k, side, size) -> k.with(side.of(Parts.ENGINE), Knob.HANDLING, between(size, 0.05, 0.5)));
    byName.put(
        "core speed shown too high",
        (k, side, size) -> k.with(side.of(Parts.ENGINE), Knob.SLOW, between(size, 0.02, 0.15)));
  }

  private void gauges() {
    byName.put(
        "instrument supply weak",
        (k, side, size) -> {
          double left = 1 - between(size, 0.03, 0.4);
          return k.with(Parts.needle(Side.LEFT), Knob.GAIN, left)
              .with(Parts.needle(Side.RIGHT), Knob.GAIN, left);
        });
    byName.put(
        "needle drags above a knee",
        (k, side, size) ->
            k.with(Parts.needle(side), Knob.KNEE, Shop.PSI * between(1 - size, 8, 36)));
    byName.put(
        "sender on the interstage",
        (k, side, size) -> k.with(Parts.needle(side), Knob.WRONG_BOSS, 1));
  }

  private void users() {
    byName.put(
        "pack takes double above a pressure",
        (k, side, size) ->
            k.with(side.of(Parts.PACK), Knob.DOUBLES, Shop.PSI * between(1 - size, 12, 38)));
    byName.put(
        "all users greedy",
        (k, side, size) -> {
          double more = 1 + between(size, 0.1, 1);
          return k.times(side.of(Parts.PACK), Knob.TAKES, more)
              .times(side.other().of(Parts.PACK), Knob.TAKES, more);
        });
  }
}

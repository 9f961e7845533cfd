package dev.offtake.measure.cases;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;

/**
 * What each listed mode does to this plant, by the words of docs/failure-modes.md. What an extent
 * counts is Offtake's, or the truth of a case could not be compared; what follows is this plant's.
 */
final class Effects {
  /** Share of a ragged hole that passes air. */
  private static final double JET = 0.6;

  /** Bore of a test port, m², as its edge lets air through. */
  private static final double PLUG = 0.8 * Shop.bore(0.25);

  /** Weight of a metre of water, Pa/m. */
  private static final double WATER = 9806.65;

  /** Further than any temperature, K. */
  private static final double FAR = 1000;

  private final Map<String, Effect> byMode = new HashMap<>();

  private Effects() {
    positions();
    bodies();
    heads();
    lines();
    sensors();
    holes();
    flows();
    gauges();
    supplies();
  }

  /** All of them. */
  static Effects all() {
    return new Effects();
  }

  /** The effect of a mode; empty for one that is not drawn. */
  Optional<Effect> of(ModeLine line) {
    if (Untold.why(line).isPresent()) {
      return Optional.empty();
    }
    return Optional.ofNullable(byMode.get(bare(line.mode())));
  }

  /** Breaks a plant. */
  Knobs broken(ModeLine line, Knobs knobs, double extent, RandomGenerator chance) {
    String mode = line.mode();
    String part = marked(mode) ? line.part() + " " + mode.charAt(0) : line.part();
    Effect effect = of(line).orElseThrow(() -> new IllegalArgumentException(line.name()));
    return effect.turn(knobs, part, extent, chance);
  }

  private static boolean marked(String mode) {
    return mode.startsWith("L ") || mode.startsWith("R ");
  }

  /** The mode without the needle's mark: a needle fails as its gauge does. */
  private static String bare(String mode) {
    String rest = marked(mode) ? mode.substring(2) : mode;
    return rest.startsWith("needle reads") ? rest.substring("needle ".length()) : rest;
  }

  private void put(String mode, Effect effect) {
    byMode.put(mode, effect);
  }

  /** The knob becomes the extent. */
  private void becomes(String mode, Knob knob) {
    put(mode, (knobs, part, x, chance) -> knobs.with(part, knob, x));
  }

  /** The knob becomes a fixed value. */
  private void fixed(String mode, Knob knob, double value) {
    put(mode, (knobs, part, x, chance) -> knobs.with(part, knob, value));
  }

  /** So many times the extent is added to the knob. */
  private void adds(String mode, Knob knob, double times) {
    put(mode, (knobs, part, x, chance) -> knobs.plus(part, knob, times * x));
  }

  /** The extent is lost of the knob. */
  private void loses(String mode, Knob knob) {
    put(mode, (knobs, part, x, chance) -> knobs.times(part, knob, 1 - x));
  }

  /** The extent is what is left of the knob, or how many times it has grown. */
  private void scales(String mode, Knob knob) {
    put(mode, (knobs, part, x, chance) -> knobs.times(part, knob, x));
  }

  private void positions() {
    fixed("stuck open", Knob.HELD, 1);
    fixed("stuck shut", Knob.HELD, 0);
    fixed("stuck on", Knob.HELD, 1);
    becomes("stuck", Knob.HELD);
    becomes("opens short", Knob.CEILING);
    becomes("linkage bent", Knob.CEILING);
    becomes("linkage loose", Knob.FLOOR);
    fixed("actuator stuck shut", Knob.HELD, 0);
    fixed("actuator stuck open", Knob.DEAF, 1);
    fixed("solenoid stuck shut", Knob.HELD, 0);
    fixed("solenoid stuck open", Knob.DEAF, 1);
    fixed("wiring open", Knob.HELD, 0);
    fixed("wiring open while shut", Knob.HELD, 0);
    fixed("wiring open while open", Knob.HELD, 1);
    fixed("position switch failed at open", Knob.TOLD, 1);
    fixed("position switch failed at shut", Knob.TOLD, 0);
  }

  private void bodies() {
    put(
        "flapper missing",
        (knobs, part, x, chance) -> knobs.with(part, Knob.HELD, 1).times(part, Knob.AREA, 1.05));
    fixed("half the flapper lost", Knob.FLOOR, 0.5);
    becomes("hinge worn", Knob.FLOOR);
    adds("hinge corroded", Knob.CRACK, 1);
    fixed("fitted backwards", Knob.BACKWARDS, 1);
    adds("leaks through its seat", Knob.LEAK, 1);
    put(
        "leaks outward",
        (knobs, part, x, chance) ->
            knobs.plus(part, chance.nextBoolean() ? Knob.HOLE : Knob.HOLE_UP, x));
    scales("partly blocked", Knob.AREA);
    scales("wrong part fitted", Knob.AREA);
    adds("opens early", Knob.SET, -1);
    adds("opens late", Knob.SET, 1);
    fixed("spring broken", Knob.HELD, 1);
  }

  private void heads() {
    adds("set drifted high", Knob.SET, 1);
    adds("set drifted low", Knob.SET, -1);
    adds("too strong a spring fitted", Knob.SET, 1);
    adds("too weak a spring fitted", Knob.SET, -1);
    fixed("set spring broken", Knob.SET, 0);
    scales("droop widened", Knob.DROOP);
    loses("head diaphragm leaking", Knob.GAIN);
    becomes("vent blocked", Knob.VENT);
  }

  private void lines() {
    loses("sense line leaking", Knob.GAIN);
    adds("water in the sense line", Knob.OFFSET, WATER);
    fixed("ice in the sense line", Knob.TRAPPED, Shop.STANDARD_P);
    put(
        "sense line blocked",
        (knobs, part, x, chance) -> knobs.with(part, Knob.TRAPPED, Shop.STANDARD_P + x));
    put(
        "sense lines crossed",
        (knobs, part, x, chance) ->
            knobs.with(part, Knob.CROSSED, 1).with(twin(part), Knob.CROSSED, 1));
    loses("servo line leaking", Knob.MUSCLE);
    fixed("muscle lost", Knob.MUSCLE, 0);
    loses("actuator diaphragm leaking", Knob.STROKE);
  }

  private static String twin(String part) {
    return part.startsWith("left ")
        ? "right" + part.substring("left".length())
        : "left" + part.substring("right".length());
  }

  private void sensors() {
    // A thermostat, a trip and a loop that drifted high act later: they feel too little.
    adds("drifted high", Knob.DRIFT, -1);
    adds("drifted low", Knob.DRIFT, 1);
    adds("alarm drifted high", Knob.DRIFT, -1);
    adds("alarm drifted low", Knob.DRIFT, 1);
    fixed("failed cold", Knob.DRIFT, -FAR);
    fixed("failed hot", Knob.DRIFT, FAR);
    adds("temperature sensor drifted high", Knob.DRIFT, 1);
    adds("temperature sensor drifted low", Knob.DRIFT, -1);
    fixed("temperature sensor failed cold", Knob.DRIFT, -FAR);
    fixed("temperature sensor failed hot", Knob.DRIFT, FAR);
    fixed("dead", Knob.DEAD, 1);
    fixed("false", Knob.FALSE, 1);
    fixed("false alarm", Knob.FALSE, 1);
    fixed("bulb out", Knob.DEAD, 1);
    fixed("lit by a wiring fault", Knob.FALSE, 1);
  }

  private void holes() {
    adds("leaks", Knob.HOLE, JET);
    adds("flange leaks", Knob.HOLE, JET);
    adds("clamp loose", Knob.HOLE, JET);
    adds("clamp loose when hot", Knob.HOT_HOLE, JET);
    put("plug left out", (knobs, part, x, chance) -> knobs.plus(part, Knob.HOLE, PLUG));
    adds("plug leaks", Knob.HOLE, PLUG);
    adds("leaks between its sides", Knob.HOLE_UP, JET);
  }

  private void flows() {
    loses("pressure low", Knob.RISE);
    loses("blocked", Knob.AREA);
    loses("fouled", Knob.CLEAN);
    loses("hot side blocked", Knob.AREA);
    loses("cold side blocked", Knob.COLD_AREA);
    put("takes too much", (knobs, part, x, chance) -> knobs.times(part, Knob.TAKES, 1 + x));
    loses("takes too little", Knob.TAKES);
  }

  private void gauges() {
    put("reads high", (knobs, part, x, chance) -> offset(knobs, part, x));
    put("reads low", (knobs, part, x, chance) -> offset(knobs, part, -x));
    put("sensor drifted high", (knobs, part, x, chance) -> offset(knobs, part, x));
    put("sensor drifted low", (knobs, part, x, chance) -> offset(knobs, part, -x));
    becomes("needle stuck", Knob.TRAPPED);
    becomes("sender line blocked", Knob.TRAPPED);
    loses("sender line leaks", Knob.GAIN);
    fixed("needles crossed", Knob.CROSSED, 1);
  }

  /** A gauge with two needles is off with both. */
  private static Knobs offset(Knobs knobs, String part, double by) {
    if (part.equals(Parts.THERMOMETER)) {
      return knobs
          .plus(Parts.thermometer(Side.LEFT), Knob.OFFSET, by)
          .plus(Parts.thermometer(Side.RIGHT), Knob.OFFSET, by);
    }
    if (!part.equals(Parts.DUCT_GAUGE)) {
      return knobs.plus(part, Knob.OFFSET, by);
    }
    return knobs
        .plus(Parts.needle(Side.LEFT), Knob.OFFSET, by)
        .plus(Parts.needle(Side.RIGHT), Knob.OFFSET, by);
  }

  private void supplies() {
    loses("weak", Knob.GAIN);
    adds("too hot", Knob.DRIFT, 1);
    adds("too cold", Knob.DRIFT, -1);
    fixed("does not come on", Knob.DEAD, 1);
    adds("check valve leaks back", Knob.HOLE, JET);
    adds("hose leaks", Knob.HOLE_UP, JET);
  }
}

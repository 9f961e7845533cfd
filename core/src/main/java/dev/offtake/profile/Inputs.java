package dev.offtake.profile;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import dev.offtake.quantity.Style;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/**
 * Numbers of the engine by which its core moves: how long accelerations take, and what a start
 * meets. All have a range; the middle is played.
 *
 * @param given values that the profile gives, by key
 */
public record Inputs(Map<String, Stated> given) {
  /** Source of what the trade takes for usual. */
  public static final String PRACTICE = "common practice, no source";

  /** From ground idle to full power. */
  public static final Input GROUND_IDLE_TO_FULL =
      time("ground idle to full", "unknown 5..8 s", "time from ground idle to full power");

  /** From flight idle to full power. */
  public static final Input FLIGHT_IDLE_TO_FULL =
      time("flight idle to full", "unknown 1..2 s", "time from flight idle to full power");

  /** From full power back to idle. */
  public static final Input FULL_TO_IDLE =
      time("full to idle", "unknown 4..8 s", "time from full power back to idle");

  /** From fuel off to standstill. */
  public static final Input RUN_DOWN =
      time("run-down", "unknown 20..60 s", "time from fuel off to standstill");

  /** What the starter turns. */
  public static final Input INERTIA =
      new Input(
          "inertia",
          Dimension.INERTIA,
          "unknown 6..14 kg m2",
          "moment of inertia of the core and what it drives, at the starter's shaft",
          1e-4,
          1e4);

  /** Speed of the starter's shaft at 100 % core. */
  public static final Input FULL_SPEED =
      new Input(
          "full speed",
          Dimension.SPEED,
          "unknown 10000..14000 rpm",
          "speed of the starter's shaft at 100 % core",
          10,
          2500);

  /** Torque against the starter at a quarter of full speed, without fire. */
  public static final Input DRAG =
      new Input(
          "drag",
          Dimension.TORQUE,
          "unknown 50..100 Nm",
          "torque that holds the cold engine back at 25 % core; it grows with the square of speed",
          0,
          1e6);

  /** Core speed at which the fire lights. */
  public static final Input LIGHT_OFF =
      speed("light-off", "unknown 15..25 %", "at which it lights");

  /** Core speed at which the engine carries itself. */
  public static final Input SELF_SUSTAINING =
      speed("self-sustaining", "unknown 35..45 %", "at which it turns without its starter");

  /** Core speed at which the starter lets go. */
  public static final Input CUT_OUT =
      speed("starter cut-out", "unknown 45..55 %", "at which the starter lets go");

  /** Lines of {@code acceleration:}. */
  public static final List<Input> TIMES =
      List.of(GROUND_IDLE_TO_FULL, FLIGHT_IDLE_TO_FULL, FULL_TO_IDLE, RUN_DOWN);

  /** Lines of {@code start-up:}. */
  public static final List<Input> START_UP =
      List.of(INERTIA, FULL_SPEED, DRAG, LIGHT_OFF, SELF_SUSTAINING, CUT_OUT);

  /** Keeps its map. */
  public Inputs {
    given = Collections.unmodifiableMap(new LinkedHashMap<>(given));
  }

  private static Input time(String key, String usual, String says) {
    return new Input(key, Dimension.TIME, usual, says, 0.1, 3600);
  }

  private static Input speed(String key, String usual, String says) {
    return new Input(key, Dimension.SHARE, usual, "core speed " + says, 0.01, 1);
  }

  /** A number in force. */
  public Stated of(Input input) {
    return given.containsKey(input.key())
        ? Objects.requireNonNull(given.get(input.key()))
        : input.typical();
  }

  /** The value that is played, SI. */
  public double value(Input input) {
    return of(input).nominal();
  }

  /** Whether the profile gives a number. */
  public boolean says(Input input) {
    return given.containsKey(input.key());
  }

  /**
   * What was taken of a number, one sentence with its full stop: {@code time from ground idle to
   * full power: 6.5 s of 5 to 8 s (common practice)}.
   *
   * @param what it is
   * @param value the middle of its range is taken
   * @param by who says so
   */
  public static String sentence(String what, Stated value, String by) {
    Style style = Style.SHOP;
    String range =
        value.low() < value.high()
            ? " (anything from "
                + style.number(value.low(), value.dimension())
                + " to "
                + style.print(value.high(), value.dimension())
                + ")"
            : "";
    String begin = what.substring(0, 1).toUpperCase(Locale.ROOT) + what.substring(1);
    return begin + ": " + style.print(value.nominal(), value.dimension()) + range + "; " + by + ".";
  }
}

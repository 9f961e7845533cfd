package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * Ways in which what acts by temperature can fail: a {@link Thermostat} and a {@link
 * TemperatureControlValve}.
 *
 * <p>Rates are orders of magnitude, assumptions; how they are looked for is common practice, no
 * source.
 */
final class TemperatureModes {
  private static final String FOLLOWS = "sensor follows";
  private static final String ADDS = "sensor adds";

  /** A degree Fahrenheit as a difference, K. */
  private static final double DEG_F = 5 / 9.0;

  private static final Extent OFF =
      new Extent(
          "how far off", Dimension.TEMPERATURE_DIFFERENCE, 5 * DEG_F, 30 * DEG_F, 200 * DEG_F);

  private static final Inspection BATH =
      new Inspection(
          "Heat it slowly beside a good thermometer and note where it begins and ends to act",
          Access.BENCH,
          60,
          "heat bath or hot-air bench, thermometer in calibration");

  private static final Inspection ROD =
      Inspection.look(
          "Work the linkage by hand and compare the stops of lever and disc", Access.COWLS, 10);

  private TemperatureModes() {}

  /** Modes of a thermostat. */
  static List<Mode> thermostat() {
    String unit = "thermostat";
    List<Mode> modes = new ArrayList<>();
    modes.add(
        feels("drifted high", unit, "It begins to trim at a higher temperature than it should", -1)
            .perMillionHours(20));
    modes.add(
        feels("drifted low", unit, "It begins to trim at a lower temperature than it should", 1)
            .perMillionHours(20));
    modes.add(
        failed("failed cold", unit, "It takes the air for cold and never trims", true)
            .perMillionHours(10));
    modes.add(
        failed("failed hot", unit, "It takes the air for hot and always trims its most", false)
            .perMillionHours(10));
    return modes;
  }

  /** Modes of a temperature control valve. */
  static List<Mode> valve(TemperatureControlValve valve) {
    String unit = "temperature sensor";
    String cold = valve.opens() ? "shut" : "open";
    String hot = valve.opens() ? "open" : "shut";
    List<Mode> modes = new ArrayList<>(BodyModes.of(valve.body(), "valve body"));
    modes.add(BodyModes.jerks("valve body"));
    linkage(valve, modes);
    modes.add(
        feels(unit + " drifted high", unit, "It takes the air for hotter than it is", 1)
            .perMillionHours(20));
    modes.add(
        feels(unit + " drifted low", unit, "It takes the air for colder than it is", -1)
            .perMillionHours(20));
    String stays = ", so the valve stays " + cold;
    modes.add(
        failed(unit + " failed cold", unit, "It takes the air for cold" + stays, true)
            .perMillionHours(10));
    String goes = ", so the valve stays " + hot;
    modes.add(
        failed(unit + " failed hot", unit, "It takes the air for hot" + goes, false)
            .perMillionHours(5));
    modes.addAll(CommandModes.of(valve, "solenoid", Command.WIDE));
    return modes;
  }

  private static void linkage(TemperatureControlValve valve, List<Mode> modes) {
    double area = valve.body().parameters().get(ValveBody.AREA).value();
    modes.add(
        Mode.named("linkage bent", "linkage", "A bent rod or lever stops it short of wide open")
            .extent(new Extent("share open", Dimension.SHARE, 0.02, 0.5, 0.95))
            .puts("most opening", opening -> opening)
            .perMillionHours(5)
            .inspected(ROD));
    modes.add(
        Mode.named("linkage loose", "linkage", "Play in the linkage: shut, it still stands ajar")
            .extent(new Extent("share open when shut", Dimension.SHARE, 0.01, 0.1, 0.6))
            .moves(
                BodyModes.leakName(valve.body()),
                (healthy, share) -> healthy + share * (area - healthy))
            .perMillionHours(10)
            .noticed("Rattle at the valve")
            .inspected(ROD));
  }

  private static Mode feels(String name, String unit, String means, int sense) {
    return Mode.named(name, unit, means).extent(OFF).puts(ADDS, off -> sense * off).inspected(BATH);
  }

  private static Mode failed(String name, String unit, String means, boolean cold) {
    return Mode.named(name, unit, means)
        .puts(FOLLOWS, 0)
        .puts(ADDS, cold ? TemperatureSpan.coldest() : TemperatureSpan.hottest())
        .inspected(BATH);
  }
}

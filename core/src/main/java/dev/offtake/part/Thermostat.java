package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * Trims the set of a regulator down as air gets hotter, in a straight line between two
 * temperatures, from nothing to a stated most.
 *
 * <p>It passes no air of its own; the {@link Regulator} that it is attached to reckons with it.
 *
 * @param trims full name of the regulator
 * @param point whose temperature it watches
 */
public record Thermostat(String name, String trims, String point, List<Parameter> parameters)
    implements Watcher {
  /** The kind. */
  public static final Kind KIND = new ThermostatKind();

  /** Parameter: temperature at which it begins to trim, K. */
  static final int FROM = 0;

  /** Parameter: span of temperature over which the trim grows, K. */
  static final int SPAN = 1;

  /** Parameter: the most that it takes off the set, Pa. */
  static final int MOST = 2;

  /** Parameter: 1 when it feels the air, 0 when it feels a temperature of its own. */
  static final int FOLLOWS = 3;

  /** Parameter: what it feels too much, or feels at all where it does not follow, K. */
  static final int ADDS = 4;

  /** Keeps its parameters. */
  public Thermostat {
    parameters = List.copyOf(parameters);
  }

  @Override
  public String kind() {
    return KIND.name();
  }

  @Override
  public String attachedTo() {
    return trims;
  }

  @Override
  public List<String> looksAt() {
    return List.of(point);
  }

  @Override
  public List<Mode> modes() {
    return TemperatureModes.thermostat();
  }

  @Override
  public Doing doing(View view) {
    double t = view.t(point);
    double from = view.parameter(FROM);
    double feels = TemperatureSpan.feels(view, FOLLOWS, t);
    double share = Clamp.value((feels - from) / view.parameter(SPAN));
    String at = point + " is at " + view.temperature(t) + TemperatureSpan.wrong(view, FOLLOWS, t);
    if (share == 0) {
      return new Doing("idle", "idle", at + ", under the " + view.temperature(from));
    }
    String by = view.difference(share * view.parameter(MOST));
    String why = at + ": takes " + by + " off the set of " + trims;
    return share == 1
        ? new Doing("at its most", "at its most", why + ", the most it can")
        : new Doing("trimming", "trimming", why);
  }

  private static final class ThermostatKind implements Kind {
    @Override
    public String name() {
      return "thermostat";
    }

    @Override
    public String says() {
      return "Trims the set of a regulator down when air gets too hot.";
    }

    @Override
    public List<Key> keys() {
      return List.of(
          Key.of("trims", Form.PART, "bleed regulator", "The regulator whose set it trims.").must(),
          Key.of("watches", Form.READING, "duct temperature", "The temperature that it feels.")
              .must(),
          Key.quantity("from", Dimension.TEMPERATURE, "450 degF", "Where it begins to trim.")
              .must(),
          Key.quantity("to", Dimension.TEMPERATURE, "490 degF", "Where it trims its most.").must(),
          Key.quantity(
                  "by at most",
                  Dimension.PRESSURE_DIFFERENCE,
                  "15 psi",
                  "The most that it takes off the set.")
              .must());
    }

    @Override
    public String symbol() {
      return "thermostat";
    }

    @Override
    public List<String> removableUnits() {
      return List.of("thermostat");
    }

    @Override
    public Part build(Facts facts) {
      Facts.Reading reading = facts.reading("watches");
      String point = reading == null ? Leg.AMBIENT : reading.point();
      if (reading != null && !reading.temperature()) {
        facts.problem(
            "watches", "A thermostat feels a temperature", "Write `" + point + " temperature`");
      }
      List<Parameter> parameters = new ArrayList<>(TemperatureSpan.read(facts, "thermostat"));
      parameters.add(facts.parameter("by at most", 0, 2e6, "thermostat"));
      parameters.addAll(TemperatureSpan.sensor("thermostat"));
      return new Thermostat(facts.name(), facts.text("trims"), point, parameters);
    }
  }
}

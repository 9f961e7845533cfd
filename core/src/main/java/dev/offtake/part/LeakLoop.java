package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import java.util.List;

/**
 * The kind <em>leak loop</em>: a sensing loop in a zone; it lights when a leak heats its zone.
 *
 * <p>The zone is a point into which leaks blow and which a vent or wall cools; its temperature
 * follows from its balance.
 *
 * @param name full name
 * @param zone point whose temperature it feels
 * @param parameters alarm temperature, K; whether it is held lit or dark by a fault
 * @param seconds how long the alarm temperature must last, s
 */
public record LeakLoop(String name, String zone, List<Parameter> parameters, double seconds)
    implements Watcher {
  /** The kind. */
  public static final Kind KIND =
      new SimpleKind(
          "leak loop",
          "A sensing loop that lights when a leak heats its zone.",
          "sensor",
          List.of(
              Key.of("watches", Form.READING, "pylon zone temperature", "The zone that it feels.")
                  .must(),
              Key.of("alarm", Form.LIMIT, "255 degF for 5 s", "Temperature at which it lights.")
                  .in(Dimension.TEMPERATURE)
                  .usually("255 degF for 5 s")),
          List.of("leak loop", "wiring"),
          List.of("on", "off", "lit"),
          LeakLoop::of);

  private static final int ALARM = 0;
  private static final int HELD = 1;

  /** Alarm where the file gives none that can be read, K (255 °F). */
  private static final double USUAL_ALARM = 397.039;

  private static Part of(Facts facts) {
    Facts.Reading reading = facts.reading("watches");
    String zone = reading == null ? Leg.AMBIENT : reading.point();
    if (reading != null && !reading.temperature()) {
      facts.problem(
          "watches", "a leak loop feels a temperature", "Write \"" + zone + " temperature\".");
    }
    Facts.Limit limit = facts.limit("alarm");
    Stated alarm = limit == null ? Stated.of(USUAL_ALARM, Dimension.TEMPERATURE) : limit.value();
    Parameter parameter =
        new Parameter(
            "alarm",
            alarm.nominal(),
            alarm.low(),
            alarm.high(),
            220,
            2000,
            Dimension.TEMPERATURE,
            "leak loop");
    return new LeakLoop(
        facts.name(),
        zone,
        List.of(parameter, Held.parameter("wiring")),
        limit == null ? 0 : limit.seconds());
  }

  @Override
  public String kind() {
    return KIND.name();
  }

  @Override
  public List<String> looksAt() {
    return List.of(zone);
  }

  @Override
  public boolean is(String position, View view) {
    return position.equals("off") != lit(view);
  }

  private boolean lit(View view) {
    return Held.value(view.parameter(HELD), view.t(zone) > view.parameter(ALARM));
  }

  @Override
  public List<Mode> modes() {
    return List.of(
        Held.dark("dead", "leak loop", "It is broken through or shorted: it never lights")
            .perMillionHours(10)
            .inspected(Looks.CONTINUITY),
        Held.lit("false alarm", "wiring", "Chafed or wet wiring: it lights without heat")
            .perMillionHours(20)
            .inspected(Looks.CONTINUITY),
        drifted("alarm drifted high", "It lights only at a higher temperature than it should", 1),
        drifted("alarm drifted low", "It lights at a lower temperature than it should", -1));
  }

  private static Mode drifted(String name, String means, int sign) {
    return Mode.named(name, "leak loop", means)
        .extent(
            new Extent(
                "by how much", Dimension.TEMPERATURE_DIFFERENCE, 5 / 1.8, 40 / 1.8, 200 / 1.8))
        .moves("alarm", (healthy, by) -> healthy + sign * by)
        .perMillionHours(5)
        .inspected(
            new Inspection(
                "Heat it with a calibrated source: it does not light where it should",
                Access.COWLS,
                30,
                "heat source with thermometer"));
  }

  @Override
  public Doing doing(View view) {
    if (view.parameter(HELD) >= 0) {
      boolean on = view.parameter(HELD) > 0;
      String air = zone + " " + view.temperature(view.t(zone));
      String why = on ? "a false alarm: " + air : "the loop is dead: " + air;
      return new Doing(on ? "on" : "off", on ? "on" : "off", why);
    }
    String word = lit(view) ? "on" : "off";
    String why =
        zone
            + " "
            + view.temperature(view.t(zone))
            + (lit(view) ? " is over" : " is not over")
            + " its alarm of "
            + view.temperature(view.parameter(ALARM));
    return new Doing(word, word, why);
  }
}

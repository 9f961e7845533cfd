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
 * @param parameters alarm temperature, K
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
          List.of("leak loop"),
          List.of("on", "off", "lit"),
          LeakLoop::of);

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
        facts.name(), zone, List.of(parameter), limit == null ? 0 : limit.seconds());
  }

  @Override
  public String kind() {
    return KIND.name();
  }

  @Override
  public boolean is(String position, View view) {
    return position.equals("off") != lit(view);
  }

  private boolean lit(View view) {
    return view.t(zone) > view.parameter(0);
  }

  @Override
  public Doing doing(View view) {
    String word = lit(view) ? "on" : "off";
    String why =
        zone
            + " "
            + view.temperature(view.t(zone))
            + (lit(view) ? " is over" : " is not over")
            + " its alarm of "
            + view.temperature(view.parameter(0));
    return new Doing(word, word, why);
  }
}

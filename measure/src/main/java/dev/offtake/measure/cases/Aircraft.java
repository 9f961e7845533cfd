package dev.offtake.measure.cases;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;

/**
 * The plant of a case, on which more can be read.
 *
 * @param knobs what is broken in it too
 * @param biases of its gauges
 */
public record Aircraft(Knobs knobs, Eyes.Biases biases) {
  /**
   * Runs it and reads one thing.
   *
   * @param power as the file calls it
   * @param moved positions by name of the switch, of those that stand otherwise than usual
   * @param what is read, as a readings file calls it
   * @param chance of how it is run and read
   * @return an occasion of a readings file; empty where cases have no such line-up or reading
   */
  public Optional<String> read(
      String power, Map<String, String> moved, String what, RandomGenerator chance) {
    Optional<Stop> stop = Stop.of(power, moved);
    Optional<Item> item = item(what);
    if (stop.isEmpty() || item.isEmpty()) {
      return Optional.empty();
    }
    Occasion occasion = new Occasion(stop.get(), false, List.of(item.get()));
    Schedule schedule = new Schedule(List.of(occasion));
    Running running = Running.about(stop.get(), chance);
    return new Plant(knobs)
        .at(running)
        .map(state -> Trace.of(schedule, List.of(running), List.of(state), knobs))
        .map(trace -> words(trace, occasion, item.get(), new Eyes(biases, chance)));
  }

  private static String words(Trace trace, Occasion occasion, Item item, Eyes eyes) {
    String told = eyes.read(item, trace.shown().values().get(0)[0]);
    List<String> lines = CaseText.occasion(occasion, trace.states().get(0), List.of(told));
    return "  - " + String.join("\n    ", lines) + "\n";
  }

  /** A gauge held to a test port reads what the port's own gauge would, were it sound. */
  private static Optional<Item> item(String what) {
    String port = what.replace(Parts.INTERSTAGE_PLUG, "interstage pressure");
    return Arrays.stream(Side.values())
        .flatMap(side -> Arrays.stream(Item.Kind.values()).map(kind -> new Item(kind, side)))
        .filter(item -> item.words().equals(port))
        .findFirst();
  }
}

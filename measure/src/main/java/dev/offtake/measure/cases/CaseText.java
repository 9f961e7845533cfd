package dev.offtake.measure.cases;

import java.util.ArrayList;
import java.util.List;

/** Writes what was read as a readings file (docs/readings.md). */
final class CaseText {
  private final Healthy healthy;
  private final Schedule schedule;
  private final List<State> states;

  CaseText(Healthy healthy, Schedule schedule, List<State> states) {
    this.healthy = healthy;
    this.schedule = schedule;
    this.states = states;
  }

  /**
   * What is told.
   *
   * @param shown without error
   * @param eyes of who read it
   */
  Sheet told(Shown shown, Eyes eyes) {
    List<List<String>> told = new ArrayList<>();
    for (int i = 0; i < states.size(); i++) {
      Occasion occasion = schedule.occasions().get(i);
      List<String> words = new ArrayList<>();
      for (int k = 0; k < occasion.items().size(); k++) {
        Item item = occasion.items().get(k);
        double value = shown.values().get(i)[k];
        words.add(
            occasion.crew() && item.number()
                ? eyes.say(item, value, usual(item, occasion.stop()))
                : eyes.read(item, value));
      }
      told.add(words);
    }
    return new Sheet(schedule, told);
  }

  /**
   * Writes.
   *
   * @param number of the case
   * @param sheet what was told
   */
  String write(long number, Sheet sheet) {
    StringBuilder text = new StringBuilder();
    text.append("offtake readings: 1\n");
    text.append("system: demo-twin.yaml\n");
    text.append("item: invented case ").append(Long.toUnsignedString(number, 36)).append('\n');
    text.append("readings:\n");
    for (int i = 0; i < states.size(); i++) {
      Occasion occasion = schedule.occasions().get(i);
      List<String> lines = occasion(occasion, states.get(i), sheet.told().get(i));
      text.append("  - ").append(String.join("\n    ", lines)).append('\n');
    }
    return text.toString();
  }

  /** The lines of one occasion. */
  static List<String> occasion(Occasion occasion, State state, List<String> told) {
    List<String> lines = new ArrayList<>();
    lines.add("at: " + occasion.stop().power().words());
    lines.addAll(occasion.stop().lines());
    if (occasion.crew()) {
      lines.add("said by: crew");
    }
    int first = lines.size();
    boolean tripSeen = false;
    for (int k = 0; k < told.size(); k++) {
      Item item = occasion.items().get(k);
      lines.add(item.words() + ": " + told.get(k));
      boolean tripped = state.of(item.side()).tripped();
      tripSeen |= item.kind() == Item.Kind.TRIP_LIGHT && told.get(k).equals("on") && tripped;
    }
    if (tripSeen) {
      // Nobody on the flight deck knows which of the two trips lit the light.
      lines.add(first, "trip: after a trip");
    }
    return lines;
  }

  private double usual(Item item, Stop stop) {
    return Panel.shows(item, healthy.usual(stop), Nominal.knobs());
  }
}

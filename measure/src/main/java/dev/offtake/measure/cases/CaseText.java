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
   * Writes.
   *
   * @param number of the case
   * @param shown without error
   * @param eyes of who read it
   */
  String write(long number, Distance.Shown shown, Eyes eyes) {
    StringBuilder text = new StringBuilder();
    text.append("offtake readings: 1\n");
    text.append("system: demo-twin.yaml\n");
    text.append("item: invented case ").append(Long.toUnsignedString(number, 36)).append('\n');
    text.append("readings:\n");
    for (int i = 0; i < states.size(); i++) {
      Occasion occasion = schedule.occasions().get(i);
      List<String> lines = new ArrayList<>();
      lines.add("at: " + occasion.stop().power().words());
      lines.addAll(occasion.stop().lines());
      if (occasion.crew()) {
        lines.add("said by: crew");
      }
      readings(occasion, states.get(i), shown.values().get(i), eyes, lines);
      text.append("  - ").append(String.join("\n    ", lines)).append('\n');
    }
    return text.toString();
  }

  private void readings(
      Occasion occasion, State state, double[] shown, Eyes eyes, List<String> lines) {
    int first = lines.size();
    boolean tripSeen = false;
    for (int k = 0; k < shown.length; k++) {
      Item item = occasion.items().get(k);
      boolean word = occasion.crew() && item.number();
      String value =
          word ? eyes.say(item, shown[k], usual(item, occasion.stop())) : eyes.read(item, shown[k]);
      lines.add(item.words() + ": " + value);
      boolean tripped = state.of(item.side()).tripped();
      tripSeen |= item.kind() == Item.Kind.TRIP_LIGHT && value.equals("on") && tripped;
    }
    if (tripSeen) {
      // Nobody on the flight deck knows which of the two trips lit the light.
      lines.add(first, "trip: after a trip");
    }
  }

  private double usual(Item item, Stop stop) {
    return Panel.shows(item, healthy.usual(stop), Nominal.knobs());
  }
}

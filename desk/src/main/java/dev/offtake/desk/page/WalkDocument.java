package dev.offtake.desk.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.explain.ChangeWords;
import dev.offtake.study.Curve;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Setting;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * From the lowest power of a day to the highest and back, one event at a time, with a question
 * before each: as the page is sent it.
 */
final class WalkDocument {
  /** An event is shown so far beyond it, a share of core speed: what came about is seen. */
  private static final double BEYOND = 0.0005;

  private final States states;
  private final Ask ask;
  private final Guesses guesses;
  private final ArrayNode steps = JsonNodeFactory.instance.arrayNode();

  private WalkDocument(States states, Ask ask) {
    this.states = states;
    this.ask = ask;
    guesses = new Guesses(states.system());
  }

  /**
   * Makes the walk.
   *
   * @param states solves
   * @param ask the question; its power only tells the day and the line-up
   * @param events what happens along the power with nothing broken
   */
  static ObjectNode of(States states, Ask ask, List<Curve.Event> events) {
    WalkDocument walk = new WalkDocument(states, ask);
    walk.all(events);
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.set("steps", walk.steps);
    return root;
  }

  private void all(List<Curve.Event> events) {
    List<Setting> stops = stops();
    if (stops.isEmpty()) {
      return;
    }
    double low = stops.get(0).core();
    double high = stops.get(stops.size() - 1).core();
    List<Curve.Event> between =
        events.stream().filter(e -> e.x() > low && e.x() < high && happens(e)).toList();
    stop(stops.get(0), true);
    way(stops.subList(1, stops.size()), between, true);
    List<Setting> back = new ArrayList<>(stops.subList(0, stops.size() - 1));
    java.util.Collections.reverse(back);
    List<Curve.Event> falling = new ArrayList<>(between);
    java.util.Collections.reverse(falling);
    way(back, falling, false);
  }

  /** Whether more happens than that a table ends, which is nothing of the system's. */
  private static boolean happens(Curve.Event event) {
    return event.changes().stream().anyMatch(change -> change.what() != Curve.What.TABLE);
  }

  /** The powers of the file on the day that is asked, the lowest first. */
  private List<Setting> stops() {
    BleedSystem system = states.system();
    List<Setting> own =
        system.settings().values().stream()
            .filter(s -> named(s.day()).equals(day()))
            .sorted(Comparator.comparingDouble(Setting::core))
            .toList();
    return own.size() > 1
        ? own
        : system.settings().values().stream()
            .sorted(Comparator.comparingDouble(Setting::core))
            .toList();
  }

  /** The day on which the walk goes. */
  private String day() {
    @Nullable Setting power = states.system().settings().get(ask.power());
    return named(ask.day().isEmpty() && power != null ? power.day() : ask.day());
  }

  private static String named(String day) {
    return day.isEmpty() ? BleedSystem.STANDARD_DAY : day;
  }

  private void way(List<Setting> stops, List<Curve.Event> events, boolean up) {
    int next = 0;
    for (Setting stop : stops) {
      while (next < events.size() && (events.get(next).x() < stop.core()) == up) {
        event(events.get(next++), up);
      }
      stop(stop, up);
    }
  }

  private void stop(Setting power, boolean up) {
    Ask here = named(power.day()).equals(day()) ? ask.at(power.name()) : at(power.core());
    ObjectNode node = steps.addObject();
    node.put("kind", "power").put("core", power.core()).put("power", power.name());
    node.put("up", up).put("title", capital(power.name()));
    told(node, here, List.of());
  }

  /** At a speed of the day that is asked. */
  private Ask at(double core) {
    return ask.at(core);
  }

  private void event(Curve.Event event, boolean up) {
    boolean here = up ? event.way() != Curve.Way.DOWN : event.way() != Curve.Way.UP;
    if (!here) {
      return;
    }
    List<Curve.Change> changes = up ? event.changes() : Changes.falling(event);
    double core = event.x() + (up ? BEYOND : -BEYOND);
    ObjectNode node = steps.addObject();
    node.put("kind", "event").put("core", core).put("up", up);
    if (event.way() != Curve.Way.BOTH) {
      node.put("remembers", true);
    }
    String speed = String.format(Locale.ROOT, "core %.1f %%", 100 * core);
    node.put("title", capital(speed) + (up ? ", power coming up" : ", power coming down"));
    node.put("happens", capital(ChangeWords.of(changes)) + ".");
    List<String> places = changes.stream().map(Curve.Change::subject).toList();
    Moment moment = told(node, at(core), places);
    guesses.of(changes, moment).ifPresent(guess -> node.set("guess", guess));
  }

  /** What the state of a step tells; with something broken also what that does there. */
  private Moment told(ObjectNode node, Ask here, List<String> places) {
    Moment sound = Moment.of(states, here.healthy());
    node.put("says", sound.says());
    String why = why(sound, places);
    if (!why.isEmpty()) {
      node.put("why", why);
    }
    places.stream().filter(name -> !name.isEmpty()).forEach(node.putArray("places")::add);
    ObjectNode query = node.putObject("state");
    query.put("core", sound.solution().conditions().core());
    if (!here.power().isEmpty()) {
      query.put("power", here.power());
    }
    if (ask.broken()) {
      node.putObject("broken").put("says", StateDocument.lead(states, here));
    }
    return sound;
  }

  /** Why the first part that changed does what it does. */
  private static String why(Moment moment, List<String> places) {
    if (moment.glance() == null) {
      return "";
    }
    return places.stream()
        .mapToInt(moment.solution().network()::part)
        .filter(part -> part >= 0)
        .mapToObj(part -> Objects.requireNonNull(moment.glance()).acts().get(part).why())
        .filter(why -> !why.isEmpty())
        .findFirst()
        .map(why -> capital(why) + ".")
        .orElse("");
  }

  private static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}

package dev.offtake.explain;

import dev.offtake.network.Network;
import dev.offtake.part.Role;
import dev.offtake.profile.Happening;
import dev.offtake.profile.Shortage;
import dev.offtake.study.Curve;
import dev.offtake.time.Cycle;
import dev.offtake.time.Event;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Tells what was done and what came of it, in the order of time. */
final class PlayStory {
  /** Events that lie nearer to each other are told together, s. */
  private static final double TOGETHER = 0.25;

  /** So many changes of one part within {@link #QUICK} are told once. */
  private static final int OFTEN = 5;

  private static final double QUICK = 3;

  /** What a part does for less is not told, s. */
  private static final double BRIEFLY = 0.3;

  /** What the words before a reason say already. */
  private static final Pattern MUSCLE = Pattern.compile("^(?:no|short of) muscle: ");

  private static final Set<String> GAUGES = Set.of("gauge", "engine gauge");

  /** Where a valve is headed; it gets there in its own time. */
  private static final Map<String, String> HEADED =
      Map.of(
          "shut by pressure", "is driven shut",
          "wide open", "is driven wide open",
          "open, hot", "is driven wide open, hot",
          "shut, cold", "is driven shut, cold",
          "no muscle", "is driven shut for want of muscle",
          "held shut in reverse", "is driven shut from behind",
          "shut by command", "is told to shut",
          "opened by command", "is told to open",
          "stuck", "is stuck");

  /** Longest reason that is told in a line of the story, letters. */
  private static final int BRIEF = 90;

  private final Network network;
  private final List<Cycle> hunts;
  private final List<Shortage> shortages;

  private PlayStory(Network network, List<Cycle> hunts, List<Shortage> shortages) {
    this.network = network;
    this.hunts = hunts;
    this.shortages = shortages;
  }

  /**
   * Something that is told.
   *
   * @param at s
   * @param done whether somebody did it
   * @param changes what changes
   * @param why the reason; empty where there is nothing to say
   */
  record Line(double at, boolean done, List<Curve.Change> changes, String why) {
    String says() {
      String says = ChangeWords.of(changes);
      return why.isEmpty() ? says : says + (says.contains(": ") ? ", " : ": ") + why;
    }
  }

  /** The lines, by time. */
  static List<Line> of(
      Network network,
      List<Happening> happenings,
      List<Event> events,
      List<Cycle> hunts,
      List<Shortage> shortages) {
    PlayStory story = new PlayStory(network, hunts, shortages);
    List<Line> lines = new ArrayList<>();
    for (Happening happening : happenings) {
      Curve.Change change = new Curve.Change(Curve.What.DONE, "", "", happening.says(), "");
      lines.add(new Line(happening.at(), true, List.of(change), ""));
    }
    lines.addAll(story.came(events));
    lines.sort(Comparator.comparingDouble(Line::at).thenComparing(line -> line.done() ? 0 : 1));
    return lines;
  }

  private List<Line> came(List<Event> events) {
    List<Line> lines = new ArrayList<>();
    Map<String, List<Event>> busy = new LinkedHashMap<>();
    for (Event event : events) {
      if (told(event)) {
        busy.computeIfAbsent(event.part(), part -> new ArrayList<>()).add(event);
      }
    }
    List<Event> single = new ArrayList<>();
    busy.values().forEach(own -> folded(lasting(own), single, lines));
    single.sort(Comparator.comparingDouble(Event::seconds));
    together(single, lines);
    for (Shortage one : shortages) {
      lines.add(line(one.from(), one.user(), "GOES SHORT"));
      if (!one.lasts()) {
        lines.add(line(one.until(), one.user(), "gets enough air"));
      }
    }
    for (Cycle hunt : hunts) {
      if (hunt.drives()) {
        lines.add(line(hunt.from(), hunt.part(), HuntWords.begins(hunt)));
      }
    }
    return lines;
  }

  private boolean told(Event event) {
    int part = network.part(event.part());
    String kind = part < 0 ? "" : network.parts().get(part).kind();
    boolean user = part >= 0 && network.parts().get(part).role() == Role.USER;
    boolean lack = event.before().equals("starved") || event.after().equals("starved");
    return event.kind() != Event.Kind.CHOKE
        && !GAUGES.contains(kind)
        && !swings(event)
        && !(event.before().equals("relieving") && event.after().equals("not reseated"))
        && !(user && lack);
  }

  private boolean swings(Event event) {
    return event.kind() == Event.Kind.CHANGEOVER
        && hunts.stream()
            .anyMatch(
                hunt ->
                    hunt.part().equals(event.part())
                        && event.seconds() >= hunt.from()
                        && event.seconds() <= hunt.until());
  }

  /** What lasts for a moment only is left out: a value that passes a corner to and fro. */
  private static List<Event> lasting(List<Event> own) {
    List<Event> kept = new ArrayList<>();
    for (Event event : own) {
      Event last = kept.isEmpty() ? null : kept.get(kept.size() - 1);
      boolean brief =
          last != null
              && last.kind() == event.kind()
              && event.kind() == Event.Kind.CHANGEOVER
              && event.seconds() - last.seconds() < BRIEFLY
              && last.after().equals(event.before());
      if (last != null && brief) {
        kept.remove(kept.size() - 1);
        if (!last.before().equals(event.after())) {
          kept.add(
              new Event(
                  last.seconds(),
                  event.kind(),
                  event.part(),
                  last.before(),
                  event.after(),
                  event.word(),
                  event.why()));
        }
      } else {
        kept.add(event);
      }
    }
    return kept;
  }

  /** What one part does too often to be told each time is told once. */
  private static void folded(List<Event> own, List<Event> single, List<Line> lines) {
    int from = 0;
    while (from < own.size()) {
      int until = from;
      while (until + 1 < own.size()
          && own.get(until + 1).seconds() - own.get(until).seconds() < QUICK) {
        until++;
      }
      int count = until - from + 1;
      if (count >= OFTEN) {
        Event first = own.get(from);
        String says =
            "changes "
                + count
                + " times until "
                + Durations.clock(own.get(until).seconds())
                + " s, then is "
                + own.get(until).word();
        lines.add(line(first.seconds(), first.part(), says));
      } else {
        single.addAll(own.subList(from, until + 1));
      }
      from = until + 1;
    }
  }

  private static Line line(double at, String part, String says) {
    return new Line(at, false, List.of(new Curve.Change(Curve.What.DONE, part, "", says, "")), "");
  }

  /** Puts what different parts do alike at about the same time into one line. */
  private void together(List<Event> events, List<Line> lines) {
    List<Event> left = new ArrayList<>(events);
    while (!left.isEmpty()) {
      Event first = left.get(0);
      List<Event> alike = new ArrayList<>();
      for (Event event : left) {
        boolean near = event.seconds() - first.seconds() < TOGETHER;
        boolean other = alike.stream().noneMatch(one -> one.part().equals(event.part()));
        if (near && other && says(event).equals(says(first))) {
          alike.add(event);
        }
      }
      left.removeAll(alike);
      alike.sort(Comparator.comparingInt(event -> network.part(event.part())));
      List<Curve.Change> changes = alike.stream().map(this::change).toList();
      lines.add(new Line(first.seconds(), false, changes, why(first, alike)));
    }
  }

  private String says(Event event) {
    return ChangeWords.says(change(event));
  }

  private Curve.Change change(Event event) {
    int part = network.part(event.part());
    boolean told = event.kind() == Event.Kind.FLUTTER || part < 0;
    boolean valve = part >= 0 && network.parts().get(part).role() == Role.VALVE;
    String headed =
        valve && event.kind() != Event.Kind.RELIEF ? HEADED.getOrDefault(event.after(), "") : "";
    if (told || !headed.isEmpty()) {
      String says = told ? event.word() : headed;
      return new Curve.Change(Curve.What.DONE, event.part(), event.before(), says, event.why());
    }
    return new Curve.Change(
        Curve.What.PART, event.part(), event.before(), event.after(), event.why());
  }

  /** The reason, where it is one and short; a user's and a source's state needs none. */
  private String why(Event event, List<Event> alike) {
    int part = network.part(event.part());
    Role role = part < 0 ? Role.WATCH : network.parts().get(part).role();
    boolean reason = role == Role.VALVE || event.kind() == Event.Kind.TRIP || isShort(event);
    String why = MUSCLE.matcher(event.why()).replaceFirst("");
    return alike.size() == 1 && reason && why.length() <= BRIEF ? why : "";
  }

  private static boolean isShort(Event event) {
    return event.after().equals("starved") || event.after().equals("low");
  }
}

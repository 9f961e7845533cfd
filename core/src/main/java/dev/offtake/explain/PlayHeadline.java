package dev.offtake.explain;

import dev.offtake.profile.Shortage;
import dev.offtake.profile.Watch;
import dev.offtake.quantity.Style;
import dev.offtake.time.Cycle;
import dev.offtake.time.Event;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Says in a few sentences what came of a profile. */
final class PlayHeadline {
  private PlayHeadline() {}

  /** The same answer with its headline. */
  static PlayAnswer over(PlayAnswer answer, Style style) {
    List<String> says = new ArrayList<>();
    if (!answer.done()) {
      says.add("It could not be played to its end: " + answer.trouble() + ".");
    }
    answer.story().stream()
        .filter(told -> told.done() && told.says().startsWith("the start "))
        .forEach(told -> says.add(HuntWords.capital(told.says()) + "."));
    trips(answer.events(), says);
    limits(answer, style, says);
    shortages(answer.shortages(), says);
    for (Cycle hunt : answer.hunts()) {
      if (hunt.drives()) {
        says.add(HuntWords.of(hunt, answer, style));
      }
    }
    flutters(answer.events(), says);
    lifted(answer.events(), says);
    if (says.isEmpty()) {
      says.add("Nothing trips, nobody goes short of air, no valve hunts.");
    }
    answer.bleed().ifPresent(bleed -> says.addAll(BleedWords.headline(bleed, style)));
    return with(answer, says);
  }

  private static PlayAnswer with(PlayAnswer answer, List<String> headline) {
    return new PlayAnswer(
        answer.asked(),
        answer.profile(),
        answer.done(),
        answer.trouble(),
        headline,
        answer.story(),
        answer.events(),
        answer.limits(),
        answer.shortages(),
        answer.hunts(),
        answer.end(),
        answer.curve(),
        answer.bleed(),
        answer.assumes());
  }

  private static void trips(List<Event> events, List<String> says) {
    for (Event event : events) {
      if (event.kind() == Event.Kind.TRIP) {
        String at = Durations.clock(event.seconds());
        says.add("The " + event.part() + " TRIPS at " + at + " s: " + event.why() + ".");
      }
    }
  }

  /** Limits of the file that were passed: nothing acts on them, so that nothing else tells. */
  private static void limits(PlayAnswer answer, Style style, List<String> says) {
    double outside = answer.profile().start().day().pressure();
    for (Watch.Seen seen : answer.limits()) {
      Watch watch = seen.watch();
      if (watch.stated() && passed(seen)) {
        says.add(
            "The "
                + watch.part()
                + " IS PASSED for "
                + Durations.of(seen.beyond())
                + ": "
                + watch.what()
                + " "
                + LimitWords.value(watch, seen.most(), outside, style)
                + " at "
                + Durations.clock(seen.at())
                + " s, where "
                + LimitWords.value(watch, watch.limit(), outside, style)
                + " is allowed.");
      }
    }
  }

  private static void lifted(List<Event> events, List<String> says) {
    for (Event event : events) {
      boolean opens = !event.after().equals("shut");
      if (event.kind() == Event.Kind.RELIEF && opens) {
        String sentence =
            "The " + event.part() + " LIFTS at " + Durations.clock(event.seconds()) + " s.";
        if (says.stream().noneMatch(said -> said.startsWith("The " + event.part() + " LIFTS"))) {
          says.add(sentence);
        }
      }
    }
  }

  private static void flutters(List<Event> events, List<String> says) {
    for (Event event : events) {
      if (event.kind() == Event.Kind.FLUTTER) {
        String at = Durations.clock(event.seconds());
        says.add(HuntWords.capital(event.part()) + " from " + at + " s: " + event.word() + ".");
      }
    }
  }

  private static void shortages(List<Shortage> shortages, List<String> says) {
    Map<String, Double> total = new LinkedHashMap<>();
    Map<String, Boolean> lasts = new LinkedHashMap<>();
    for (Shortage shortage : shortages) {
      total.merge(shortage.user(), shortage.seconds(), Double::sum);
      lasts.merge(shortage.user(), shortage.lasts(), Boolean::logicalOr);
    }
    Map<String, List<String>> alike = new LinkedHashMap<>();
    total.forEach(
        (user, seconds) -> {
          String end = Boolean.TRUE.equals(lasts.get(user)) ? ", and is short at the end" : "";
          String for_ = " short of air for " + Durations.of(seconds) + end;
          alike.computeIfAbsent(for_, key -> new ArrayList<>()).add(user);
        });
    alike.forEach(
        (how, users) -> {
          String who = String.join(", ", Together.of(users));
          says.add(HuntWords.capital(who) + (users.size() > 1 ? " go" : " goes") + how + ".");
        });
  }

  /** Whether a limit was passed for as long as it takes to act. */
  static boolean passed(Watch.Seen seen) {
    return seen.room() < 0 && seen.beyond() >= seen.watch().delay();
  }
}

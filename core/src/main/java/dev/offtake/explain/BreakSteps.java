package dev.offtake.explain;

import dev.offtake.part.Leg;
import dev.offtake.part.Mode;
import dev.offtake.part.Role;
import dev.offtake.study.Fault;
import dev.offtake.study.Sign;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * What follows from a failure, along the air: the failed part, then place by place as they are
 * reached, users after that, and those who watch at the end.
 */
final class BreakSteps {
  /** Points whose pressures move alike, to this share, are told together. */
  private static final double ALIKE = 0.2;

  private final Compared all;
  private final List<Fault> faults;
  private final List<String> steps = new ArrayList<>();

  private BreakSteps(Compared all, List<Fault> faults) {
    this.all = all;
    this.faults = faults;
  }

  /**
   * The steps, a sentence each.
   *
   * @param all the healthy state and the broken one
   * @param faults what is broken
   * @param signs what can be looked at
   */
  static List<String> of(Compared all, List<Fault> faults, List<Sign> signs) {
    BreakSteps steps = new BreakSteps(all, faults);
    steps.causes();
    Set<Integer> failed = steps.failed();
    Compared first =
        all.is().outcome().before().map(b -> new Compared(all.was(), b, all.style())).orElse(all);
    steps.along(first, beginning(first, failed), failed);
    all.is()
        .outcome()
        .before()
        .ifPresent(b -> steps.afterTrip(new Compared(b, all.is(), all.style())));
    steps.users();
    steps.watchers(signs);
    return steps.steps;
  }

  private void say(String sentence) {
    if (!sentence.isEmpty()) {
      steps.add(sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1) + ".");
    }
  }

  private void causes() {
    for (Fault fault : faults) {
      say(fault.words(all.style()) + ": " + lower(fault.mode().means()));
      int number = all.is().network().part(fault.part().name());
      if (number >= 0 && !all.part(number).legs().isEmpty()) {
        say(through(number));
      }
      if (fault.mode().traits().contains(Mode.Trait.MOVING)) {
        say("it shows only while power moves: what follows here is the state at rest");
      }
    }
  }

  private static String lower(String text) {
    return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
  }

  /** What passes the failed part now. */
  private String through(int number) {
    Role role = all.part(number).role();
    if (!all.flowMoved(number) || role == Role.USER || role == Role.SOURCE) {
      return "";
    }
    double is = all.flowIs(number);
    double was = all.flowWas(number);
    String before =
        Math.abs(was) < Compared.FLOW
            ? "none before"
            : all.flow(was) + " before" + (was * is < 0 ? ", forwards" : "");
    if (Math.abs(is) < Compared.FLOW) {
      return "no air to speak of passes it, " + before;
    }
    return all.flow(is)
        + " of "
        + all.temperature(all.airThrough(number))
        + " air "
        + way(all.part(number).legs().get(0), is)
        + ", "
        + before;
  }

  private static String way(Leg leg, double flow) {
    if (leg.bothWays()) {
      String from = flow > 0 ? leg.from() : leg.to();
      return "passes it from " + from + " to " + (flow > 0 ? leg.to() : leg.from());
    }
    return flow > 0 ? "passes it" : "runs backwards through it";
  }

  private Set<Integer> failed() {
    Set<Integer> failed = new LinkedHashSet<>();
    for (Fault fault : faults) {
      failed.add(all.is().network().part(fault.part().name()));
    }
    failed.remove(-1);
    return failed;
  }

  /** Where an upset begins: at the failed parts; of one without air at what it has commanded. */
  private static Set<Integer> beginning(Compared c, Set<Integer> failed) {
    Set<Integer> begin = new LinkedHashSet<>();
    for (int part : failed) {
      begin.add(part);
      for (int i = 0; c.part(part).legs().isEmpty() && i < c.parts(); i++) {
        if (c.regimeChanged(i) && c.does(i).regime().endsWith(" by command")) {
          begin.add(i);
        }
      }
    }
    return begin;
  }

  private void along(Compared c, Set<Integer> from, Set<Integer> told) {
    BreakPlaces places = new BreakPlaces(c);
    Set<Integer> grouped = new HashSet<>();
    for (BreakReach.Place place : BreakReach.order(c.is().network(), from)) {
      int number = place.number();
      if (place.point()) {
        if (!grouped.contains(number)) {
          say(point(c, places, number, grouped));
        }
      } else if (!places.isUser(number) && (!told.contains(number) || isSource(c, number))) {
        say(places.part(number));
      }
    }
  }

  private static boolean isSource(Compared c, int number) {
    return c.part(number).role() == Role.SOURCE;
  }

  /**
   * A point, and with it those beyond it whose pressures move alike while none turns hot or cold.
   */
  private static String point(Compared c, BreakPlaces places, int number, Set<Integer> grouped) {
    grouped.add(number);
    String own = places.point(number);
    if (own.isEmpty() || !c.pressureMoved(number) || c.temperatureMoved(number)) {
      return own;
    }
    List<String> with = new ArrayList<>();
    Set<Integer> group = new HashSet<>(Set.of(number));
    for (boolean more = true; more; ) {
      more = false;
      for (int i = 0; i < c.is().network().points().size(); i++) {
        if (!grouped.contains(i) && alike(c, number, i) && BreakReach.feeds(c.is(), group, i)) {
          grouped.add(i);
          more |= group.add(i);
          with.add(c.point(i));
        }
      }
    }
    return with.isEmpty() ? own : own + ", and with it " + String.join(", ", with);
  }

  private static boolean alike(Compared c, int one, int two) {
    double a = c.pressureChange(one);
    double b = c.pressureChange(two);
    return c.pressureMoved(two)
        && !c.temperatureMoved(two)
        && Math.abs(a - b) < ALIKE * Math.abs(a)
        && Math.abs(c.pressureIs(one) - c.pressureIs(two)) < Compared.PRESSURE * 4;
  }

  /** What a trip or a relief that moved does to the state before it. */
  private void afterTrip(Compared c) {
    Set<Integer> from = new HashSet<>();
    Set<Integer> told = new HashSet<>();
    for (String moved : c.is().outcome().memory()) {
      int number = c.is().network().part(moved);
      if (number >= 0 && told.add(number) && c.regimeChanged(number)) {
        say(moved + " " + c.does(number).word() + ": " + past(c.did(number).why()));
      }
    }
    for (int i = 0; i < c.parts(); i++) {
      boolean shut = c.regimeChanged(i) && c.does(i).regime().equals("shut by command");
      if (shut || told.contains(i)) {
        from.add(i);
      }
    }
    along(c, from, told);
  }

  /** What a trip felt when it moved: its words of before end in the limits that it still kept. */
  private static String past(String why) {
    int kept = why.indexOf(", not ");
    return kept < 0 ? why : why.substring(0, kept) + ", past its limit";
  }

  private void users() {
    BreakPlaces places = new BreakPlaces(all);
    for (BreakReach.Place place : BreakReach.order(all.is().network(), failed())) {
      if (!place.point() && places.isUser(place.number())) {
        say(places.part(place.number()));
      }
    }
  }

  private void watchers(List<Sign> signs) {
    BreakSigns words = new BreakSigns(all.style());
    DarkWarning dark = new DarkWarning(all.is(), all.style());
    all.is().network().parts().forEach(part -> dark.says(part).ifPresent(this::say));
    boolean any = false;
    for (Sign sign : signs) {
      boolean said =
          sign.what() == Sign.What.USER || all.is().outcome().memory().contains(sign.part());
      any |= sign.verdict() == Sign.Verdict.PLAIN && !sign.atPort();
      if (sign.verdict() != Sign.Verdict.HIDDEN && !said) {
        String verdict = sign.verdict() == Sign.Verdict.PLAIN ? "" : ": lost in the gauge";
        String port = sign.atPort() ? ", seen only with a test gauge" : "";
        say(words.says(sign) + verdict + port);
      }
    }
    if (!any) {
      say("no needle, light or user tells it plainly at this power");
    }
  }
}

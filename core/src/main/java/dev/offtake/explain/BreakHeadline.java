package dev.offtake.explain;

import dev.offtake.part.Leg;
import dev.offtake.part.Mode;
import dev.offtake.part.OperatingLimit;
import dev.offtake.part.Role;
import dev.offtake.quantity.Dimension;
import dev.offtake.study.Fault;
import dev.offtake.study.Notice;
import dev.offtake.study.Sign;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** The largest consequence of a failure in one sentence. */
final class BreakHeadline {
  /** What is said where nothing changes that could be seen. */
  static final String NOTHING = "Nothing that a gauge shows changes here.";

  private static final List<String> LIMITS =
      List.of("over limit", OperatingLimit.PASSED, "deadheaded", "relieving");

  private final Compared c;
  private final List<Fault> faults;
  private final List<Sign> signs;

  private BreakHeadline(Compared c, List<Fault> faults, List<Sign> signs) {
    this.c = c;
    this.faults = faults;
    this.signs = signs;
  }

  /**
   * The sentence, with its full stop.
   *
   * @param c the healthy state and the broken one
   * @param faults what is broken
   * @param signs what can be looked at
   */
  static String of(Compared c, List<Fault> faults, List<Sign> signs) {
    BreakHeadline headline = new BreakHeadline(c, faults, signs);
    List<String> all = new ArrayList<>(headline.back());
    all.addAll(headline.trips());
    all.addAll(headline.starved());
    all.addAll(headline.limits());
    all.addAll(headline.leaks());
    all.addAll(headline.dark());
    if (all.isEmpty()) {
      all.addAll(headline.most());
    }
    if (all.isEmpty()) {
      boolean moving = faults.stream().anyMatch(f -> f.mode().traits().contains(Mode.Trait.MOVING));
      return moving
          ? "At rest nothing changes that a gauge shows: it shows only while power moves."
          : NOTHING;
    }
    String says = String.join(", and ", all.subList(0, Math.min(2, all.size())));
    return says.substring(0, 1).toUpperCase(Locale.ROOT) + says.substring(1) + ".";
  }

  /**
   * What is said of the broken state, without users of which the headline says already that they go
   * short: why they do stands with them below.
   */
  static List<String> beside(String headline, List<String> state, List<Sign> signs) {
    boolean told = headline.contains(" goes short") || headline.contains(" go short");
    List<String> users = told ? starving(signs) : List.of();
    return state.stream()
        .filter(says -> users.stream().noneMatch(u -> says.startsWith("The " + u + " goes short:")))
        .toList();
  }

  /** Users that go short and do not when healthy. */
  private static List<String> starving(List<Sign> signs) {
    return signs.stream()
        .filter(s -> s.what() == Sign.What.USER && s.verdict() == Sign.Verdict.PLAIN)
        .filter(s -> Notice.isShort(s.after()))
        .map(Sign::part)
        .toList();
  }

  /** Taps that take back more than before, and say so in their regime. */
  static boolean takesBack(Compared c, int number) {
    return c.part(number).role() == Role.SOURCE
        && c.flowMoved(number)
        && c.flowIs(number) < -Compared.FLOW
        && c.flowIs(number) < c.flowWas(number);
  }

  private List<String> back() {
    List<Integer> taps =
        IntStream.range(0, c.parts())
            .filter(i -> takesBack(c, i))
            .boxed()
            .sorted(Comparator.comparingDouble((Integer i) -> c.flowIs(i)))
            .toList();
    if (taps.isEmpty()) {
      return List.of();
    }
    int most = taps.get(0);
    boolean tap = c.part(most).kind().equals(BreakBack.TAP);
    List<String> others = taps.stream().skip(1).map(i -> c.part(i).name()).toList();
    return List.of(
        c.flow(c.flowIs(most))
            + " of "
            + c.temperature(c.airThrough(most))
            + " air runs back into "
            + (tap ? "the engine at the " : "the ")
            + c.part(most).name()
            + (others.isEmpty() ? "" : " (as at the " + String.join(", ", others) + ")"));
  }

  private List<String> trips() {
    return signs.stream()
        .filter(s -> s.what() == Sign.What.TRIP && s.verdict() == Sign.Verdict.PLAIN)
        .map(s -> "the " + s.part() + (s.now() > 0 ? " trips" : " no longer trips"))
        .toList();
  }

  private List<String> starved() {
    List<String> names = starving(signs);
    if (names.isEmpty()) {
      return List.of();
    }
    String verb = names.size() == 1 ? " goes short" : " go short";
    return List.of("the " + String.join(" and the ", Together.of(names)) + verb);
  }

  private List<String> limits() {
    List<String> found = new ArrayList<>();
    for (int i = 0; i < c.parts(); i++) {
      String regime = c.does(i).regime();
      if (c.regimeChanged(i) && LIMITS.contains(regime)) {
        String says = regime.equals("relieving") ? " lifts" : " is " + c.does(i).word();
        found.add("the " + c.part(i).name() + says + ": " + c.does(i).why());
      }
    }
    return found;
  }

  private List<String> leaks() {
    List<String> found = new ArrayList<>();
    for (int i = 0; i < c.parts(); i++) {
      if (BreakPlaces.blows(c, i)) {
        String to = c.part(i).legs().get(0).to();
        String where = to.equals(Leg.AMBIENT) ? "to the outside" : "into the " + to;
        String air = c.flow(c.flowIs(i)) + " of " + c.temperature(c.airThrough(i));
        found.add(air + " air blows " + where + " at the " + c.part(i).name());
      }
    }
    return found;
  }

  /** Trips, loops and lights that ought to act and do not. */
  private List<String> dark() {
    DarkWarning dark = new DarkWarning(c.is(), c.style());
    return c.is().network().parts().stream()
        .filter(dark::is)
        .map(part -> "the " + dark.brief(part))
        .toList();
  }

  /** What changed most where nothing worse is to be told: a needle first, else a point. */
  private List<String> most() {
    return BreakSigns.best(signs, false)
        .or(() -> BreakSigns.best(signs, true))
        .map(sign -> List.of(sentence(sign)))
        .orElse(List.of());
  }

  private String sentence(Sign sign) {
    if (sign.what() != Sign.What.NEEDLE) {
      return "the " + new BreakSigns(c.style()).says(sign);
    }
    Dimension dimension = sign.dimension();
    String where = sign.atPort() ? ", seen only at the " + sign.seen() : "";
    if (faults.stream().anyMatch(fault -> fault.part().name().equals(sign.part()))) {
      return "the gauge itself is wrong: " + new BreakSigns(c.style()).says(sign);
    }
    if (sign.before().equals(Sign.PEGGED) || sign.after().equals(Sign.PEGGED)) {
      return "the "
          + BreakSigns.needle(sign)
          + SignWords.stands(sign.now(), sign.after(), dimension, c.style())
          + ", healthy it"
          + SignWords.stands(sign.healthy(), sign.before(), dimension, c.style())
          + where;
    }
    return "the "
        + sign.reads()
        + (sign.change() > 0 ? " rises " : " falls ")
        + c.fromTo(sign.healthy(), sign.now(), dimension)
        + where;
  }
}

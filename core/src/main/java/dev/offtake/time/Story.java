package dev.offtake.time;

import dev.offtake.network.Network;
import dev.offtake.part.Doing;
import dev.offtake.part.OperatingLimit;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/** Finds what happened in a drive that was played: where parts begin to do something else. */
final class Story {
  private final Replay replay;
  private final Network network;
  private final Told[] told;
  private final List<Event> events = new ArrayList<>();

  /** Smallest change of an opening, or of what a user is short of, that counts. */
  private static final double COUNTS = 0.01;

  /** Steps within so many seconds are looked at together. */
  private static final double TOGETHER = 0.01;

  /** A source that gives less than this does not tell which way, kg/s (half a pound a minute). */
  private static final double TRICKLE = 0.5 * 0.45359237 / 60;

  /** What a part was last told to do, and how far open or short it was then. */
  private record Told(Doing doing, double measure) {}

  Story(Replay replay) {
    this.replay = replay;
    network = replay.network();
    told = new Told[network.parts().size()];
  }

  List<Event> events() {
    List<Trace.Leg> legs = replay.trace().legs();
    Solution state = replay.at(0, 0);
    for (int p = 0; p < told.length; p++) {
      told[p] = tell(state, p);
    }
    int since = 0;
    for (int i = 0; i < legs.size(); i++) {
      Trace.Leg leg = legs.get(i);
      boolean jumps = i > 0 && legs.get(i - 1).phase().number() != leg.phase().number();
      if (jumps) {
        Solution after = replay.at(i, leg.from());
        jump(leg.from(), after);
        limits(since, i, state, after);
        state = after;
        since = i;
      }
      if (looks(since, i)) {
        Solution after = replay.at(i, leg.to());
        goesBy(since, i, after);
        limits(since, i, state, after);
        state = after;
        since = i + 1;
      }
    }
    replay.trace().flutters().forEach(this::flutter);
    events.sort(Comparator.comparingDouble(Event::seconds));
    return List.copyOf(events);
  }

  /** Whether there is something to look at: short steps are looked at together. */
  private boolean looks(int since, int leg) {
    List<Trace.Leg> legs = replay.trace().legs();
    Trace.Leg last = legs.get(leg);
    boolean ends =
        leg + 1 == legs.size() || legs.get(leg + 1).phase().number() != last.phase().number();
    double passed = last.to() - legs.get(since).from();
    return passed > 0 && (ends || passed >= TOGETHER);
  }

  private void jump(double seconds, Solution after) {
    for (int p = 0; p < told.length; p++) {
      if (differs(after, p)) {
        add(seconds, p, after, true);
      }
    }
  }

  private void goesBy(int since, int leg, Solution after) {
    for (int p = 0; p < told.length; p++) {
      if (differs(after, p)) {
        int part = p;
        double at = find(since, leg, state -> differs(state, part));
        add(at, p, replay.upTo(leg, at), false);
      }
    }
  }

  /** Finds where something first holds within legs of one phase, at whose end it does. */
  private double find(int since, int leg, Predicate<Solution> holds) {
    double low = replay.trace().legs().get(since).from();
    double high = replay.trace().legs().get(leg).to();
    while (high - low > replay.settings().instants()) {
      double middle = (low + high) / 2;
      if (holds.test(replay.upTo(leg, middle))) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  private Told tell(Solution state, int part) {
    Part whose = network.parts().get(part);
    boolean measured = measured(whose) && !whose.observables().isEmpty();
    double measure = measured ? state.view(part, Style.SHOP).observed(0) : 0;
    return new Told(state.doing(part, Style.SHOP), measure);
  }

  private static boolean measured(Part part) {
    return part.role() == Role.USER
        || part.kind().equals("check valve")
        || part.kind().equals("relief valve");
  }

  /**
   * Whether a part does something else than it was last told to, and more than by a trickle. A
   * passage without a valve only tells whether it is choked: which way a trickle goes is luck.
   */
  private boolean differs(Solution state, int part) {
    Told now = tell(state, part);
    Told then = told[part];
    if (now.doing().regime().equals(then.doing().regime())) {
      return false;
    }
    Part whose = network.parts().get(part);
    if (measured(whose)) {
      return Math.abs(now.measure() - then.measure()) >= COUNTS;
    }
    return switch (whose.role()) {
      case PASSAGE -> choked(now.doing()) != choked(then.doing());
      case SOURCE -> Math.abs(state.flow(part, 0)) >= TRICKLE || state.control(part, 0) == 0;
      default -> true;
    };
  }

  private static boolean choked(Doing doing) {
    return doing.regime().equals("choked");
  }

  private void add(double seconds, int part, Solution state, boolean jumps) {
    Part whose = network.parts().get(part);
    Doing before = told[part].doing();
    told[part] = tell(state, part);
    Doing after = told[part].doing();
    events.add(
        new Event(
            seconds,
            kind(whose, before, after, jumps),
            whose.name(),
            before.regime(),
            after.regime(),
            after.word(),
            after.why()));
  }

  private static Event.Kind kind(Part part, Doing before, Doing after, boolean jumps) {
    if (part.kind().equals("trip")) {
      return after.regime().equals("tripped") ? Event.Kind.TRIP : Event.Kind.RESET;
    }
    if (part instanceof OperatingLimit) {
      return Event.Kind.LIMIT;
    }
    if (part.kind().equals("relief valve")) {
      return Event.Kind.RELIEF;
    }
    if (jumps) {
      return Event.Kind.COMMAND;
    }
    return choked(before) || choked(after) ? Event.Kind.CHOKE : Event.Kind.CHANGEOVER;
  }

  private void limits(int since, int leg, Solution before, Solution after) {
    for (Settings.Limit limit : replay.settings().limits()) {
      boolean then = passed(limit, before);
      if (then != passed(limit, after)) {
        passes(limit, then, find(since, leg, state -> passed(limit, state) != then));
      }
    }
  }

  private void passes(Settings.Limit limit, boolean before, double high) {
    String inside = limit.above() ? "below" : "above";
    String outside = limit.above() ? "above" : "below";
    String from = before ? outside : inside;
    String to = before ? inside : outside;
    events.add(new Event(high, Event.Kind.LIMIT, limit.point(), from, to, to + " the limit", ""));
  }

  private boolean passed(Settings.Limit limit, Solution state) {
    int point = network.point(limit.point());
    double value = limit.temperature() ? state.temperature(point) : state.sensed(point);
    return limit.above() ? value > limit.value() : value < limit.value();
  }

  private void flutter(Trace.Flutter each) {
    String word = "flutters at %.0f Hz".formatted(each.hertz());
    String why = "it swings faster than can be followed; from now on its mean is told";
    String name = network.parts().get(each.part()).name();
    events.add(new Event(each.seconds(), Event.Kind.FLUTTER, name, "moves", "flutters", word, why));
  }
}

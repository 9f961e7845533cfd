package dev.offtake.time;

import dev.offtake.network.Network;
import dev.offtake.part.Doing;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Finds what happened in a drive that was played: where parts begin to do something else. */
final class Story {
  private static final String CHOKED = "choked";

  private final Replay replay;
  private final Network network;
  private final List<Event> events = new ArrayList<>();

  /** An instant of a leg, and what all parts do there. */
  private record Scene(Solution state, Doing[] doing, double[] controls) {}

  Story(Replay replay) {
    this.replay = replay;
    network = replay.network();
  }

  List<Event> events() {
    List<Trace.Leg> legs = replay.trace().legs();
    @Nullable Scene before = null;
    for (int i = 0; i < legs.size(); i++) {
      Trace.Leg leg = legs.get(i);
      boolean jumps = i == 0 || legs.get(i - 1).phase().number() != leg.phase().number();
      if (jumps || before == null) {
        Scene after = scene(i, leg.from());
        if (before != null) {
          jump(leg.from(), before, after);
        }
        before = after;
      }
      if (leg.to() > leg.from()) {
        Scene after = scene(i, leg.to());
        goesBy(i, before, after);
        before = after;
      }
    }
    for (Trace.Flutter each : replay.trace().flutters()) {
      flutter(each);
    }
    events.sort(Comparator.comparingDouble(Event::seconds));
    return List.copyOf(events);
  }

  private Scene scene(int leg, double seconds) {
    Solution state = replay.at(leg, seconds);
    Doing[] doing = new Doing[network.parts().size()];
    for (int p = 0; p < doing.length; p++) {
      doing[p] = state.doing(p, Style.SHOP);
    }
    return new Scene(state, doing, replay.trace().legs().get(leg).phase().controls());
  }

  private void jump(double seconds, Scene before, Scene after) {
    for (int p = 0; p < before.doing().length; p++) {
      if (differ(p, before.doing()[p], after.doing()[p])) {
        add(seconds, p, before.doing()[p], after.doing()[p], true);
      }
    }
    limits(seconds, before.state(), after.state());
  }

  private void goesBy(int leg, Scene before, Scene after) {
    for (int p = 0; p < before.doing().length; p++) {
      if (differ(p, before.doing()[p], after.doing()[p])) {
        find(leg, p, before.doing()[p]);
      }
    }
    Trace.Leg found = replay.trace().legs().get(leg);
    for (Settings.Limit limit : replay.settings().limits()) {
      if (passed(limit, before.state()) != passed(limit, after.state())) {
        findLimit(leg, limit, found, passed(limit, before.state()));
      }
    }
  }

  /** Finds where a part first does something else within a leg. */
  private void find(int leg, int part, Doing before) {
    Trace.Leg found = replay.trace().legs().get(leg);
    double low = found.from();
    double high = found.to();
    while (high - low > replay.settings().instants()) {
      double middle = (low + high) / 2;
      if (differ(part, before, replay.at(leg, middle).doing(part, Style.SHOP))) {
        high = middle;
      } else {
        low = middle;
      }
    }
    Doing after = replay.at(leg, high).doing(part, Style.SHOP);
    add(high, part, before, after, false);
  }

  /**
   * A passage without a valve only tells whether it is choked: which way a trickle goes is luck.
   */
  private boolean differ(int part, Doing one, Doing two) {
    if (one.regime().equals(two.regime())) {
      return false;
    }
    boolean passage = network.parts().get(part).role() == Role.PASSAGE;
    return !passage || one.regime().equals(CHOKED) != two.regime().equals(CHOKED);
  }

  private void add(double seconds, int part, Doing before, Doing after, boolean jumps) {
    Part whose = network.parts().get(part);
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
    if (part.kind().equals("relief valve")) {
      return Event.Kind.RELIEF;
    }
    if (jumps) {
      return Event.Kind.COMMAND;
    }
    boolean choke = before.regime().equals(CHOKED) || after.regime().equals(CHOKED);
    return choke ? Event.Kind.CHOKE : Event.Kind.CHANGEOVER;
  }

  private void limits(double seconds, Solution before, Solution after) {
    for (Settings.Limit limit : replay.settings().limits()) {
      if (passed(limit, before) != passed(limit, after)) {
        add(seconds, limit, passed(limit, after));
      }
    }
  }

  private void findLimit(int leg, Settings.Limit limit, Trace.Leg found, boolean before) {
    double low = found.from();
    double high = found.to();
    while (high - low > replay.settings().instants()) {
      double middle = (low + high) / 2;
      if (passed(limit, replay.at(leg, middle)) != before) {
        high = middle;
      } else {
        low = middle;
      }
    }
    add(high, limit, !before);
  }

  private void add(double seconds, Settings.Limit limit, boolean passed) {
    String inside = limit.above() ? "below" : "above";
    String outside = limit.above() ? "above" : "below";
    String from = passed ? inside : outside;
    String to = passed ? outside : inside;
    String word = to + " the limit";
    events.add(new Event(seconds, Event.Kind.LIMIT, limit.point(), from, to, word, ""));
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

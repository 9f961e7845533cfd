package dev.offtake.profile;

import dev.offtake.network.Network;
import dev.offtake.part.Doing;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import dev.offtake.time.Event;
import dev.offtake.time.Played;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A time during which a user went short of air.
 *
 * <p>A user whose own valve is on its way takes less than its schedule for some seconds: that is no
 * shortage while it has the pressure that it needs. One that takes less than nine tenths of it
 * without that pressure, or for longer than its valve takes, is short.
 *
 * @param user full name
 * @param from when it began, s
 * @param until when it ended, s
 * @param lasts whether it was still short at the end
 * @param worst when it lacked most, s
 * @param flow what it took then, kg/s
 * @param wanted what it should have taken then, kg/s; NaN where it has no schedule
 * @param point from where it takes its air
 * @param pressure there then, Pa absolute
 */
public record Shortage(
    String user,
    double from,
    double until,
    boolean lasts,
    double worst,
    double flow,
    double wanted,
    String point,
    double pressure) {
  private static final Set<String> SHORT = Set.of("starved", "low");

  /** Shorter ones are not told, s: a duct fills, and nobody notices. */
  private static final double LEAST = 0.1;

  /** Share of its schedule that a user may lack for a while. */
  private static final double LACKS = 0.1;

  /** So long a user's own valve may be on its way, s: five times its usual lag. */
  private static final double ON_ITS_WAY = 10;

  private static final String ABOVE = "pressure above need";

  private static final int LOOKS = 200;

  /** How long it lasted, s. */
  public double seconds() {
    return until - from;
  }

  /** All shortages, by user. */
  public static List<Shortage> of(Network network, Played played) {
    List<Shortage> all = new ArrayList<>();
    for (int i = 0; i < network.parts().size(); i++) {
      if (network.parts().get(i).role() == Role.USER) {
        of(network.parts().get(i), i, played, all);
      }
    }
    all.removeIf(one -> one.seconds() < LEAST && !one.lasts());
    return all;
  }

  private static void of(Part user, int part, Played played, List<Shortage> all) {
    Doing first = played.at(0).doing(part, Style.SHOP);
    double since = SHORT.contains(first.regime()) ? 0 : Double.NaN;
    for (Event event : played.events()) {
      if (event.part().equals(user.name())) {
        boolean lacks = SHORT.contains(event.after());
        if (!lacks && !Double.isNaN(since)) {
          add(user, part, played, since, event.seconds(), false, all);
        }
        since = lacks ? (Double.isNaN(since) ? event.seconds() : since) : Double.NaN;
      }
    }
    if (!Double.isNaN(since)) {
      add(user, part, played, since, played.seconds(), true, all);
    }
  }

  private static void add(
      Part user,
      int part,
      Played played,
      double from,
      double until,
      boolean lasts,
      List<Shortage> all) {
    String point = user.legs().get(0).from();
    boolean schedule = user.kind().equals("flow user");
    Shortage worst = null;
    double first = schedule ? Double.NaN : from;
    double last = schedule ? Double.NaN : until;
    for (int i = 0; i <= LOOKS; i++) {
      // Exactly the end at the last look: whether it lasts is asked by comparing.
      double at = i == LOOKS ? until : from + (until - from) * i / LOOKS;
      Solution state = played.at(at);
      Shortage here = at(user, part, state, point, new Span(from, until, lasts, at));
      boolean pressed = state.view(part, Style.SHOP).observed(user.name(), ABOVE) >= 0;
      boolean moves = pressed && at - from < ON_ITS_WAY;
      worst = worst == null || here.share() < worst.share() ? here : worst;
      if (schedule && !moves && here.share() < 1 - LACKS) {
        first = Double.isNaN(first) ? at : first;
        last = at;
      }
    }
    if (worst != null && !Double.isNaN(first)) {
      all.add(worst.within(first, last, lasts && last == until));
    }
  }

  private Shortage within(double first, double last, boolean still) {
    return new Shortage(user, first, last, still, worst, flow, wanted, point, pressure);
  }

  /** A time, and an instant in it. */
  private record Span(double from, double until, boolean lasts, double at) {}

  private static Shortage at(Part user, int part, Solution state, String point, Span span) {
    boolean schedule = user.kind().equals("flow user");
    double wanted = schedule ? state.control(part, 0) : Double.NaN;
    int number = state.network().point(point);
    double pressure = number < 0 ? Double.NaN : state.sensed(number);
    return new Shortage(
        user.name(),
        span.from(),
        span.until(),
        span.lasts(),
        span.at(),
        state.flow(part, 0),
        wanted,
        point,
        pressure);
  }

  /** What it takes as a share of what it should; by pressure where it has no schedule. */
  private double share() {
    return Double.isNaN(wanted) ? pressure : wanted > 0 ? flow / wanted : 1;
  }
}

package dev.offtake.profile;

import dev.offtake.network.Network;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.quantity.Style;
import dev.offtake.time.Event;
import dev.offtake.time.Played;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A time during which a user went short of air.
 *
 * @param user full name
 * @param from when it began, s
 * @param until when it ended, s
 * @param lasts whether it was still short at the end
 * @param why what it lacked when it began
 */
public record Shortage(String user, double from, double until, boolean lasts, String why) {
  private static final Set<String> SHORT = Set.of("starved", "low");

  /** Shorter ones are not told, s: a duct fills, and nobody notices. */
  private static final double LEAST = 0.05;

  /** How long it lasted, s. */
  public double seconds() {
    return until - from;
  }

  /** All shortages, by user. */
  public static List<Shortage> of(Network network, Played played) {
    List<Shortage> all = new ArrayList<>();
    for (int i = 0; i < network.parts().size(); i++) {
      Part part = network.parts().get(i);
      if (part.role() == Role.USER) {
        of(part.name(), i, played, all);
      }
    }
    all.removeIf(one -> one.seconds() < LEAST && !one.lasts());
    return all;
  }

  private static void of(String user, int part, Played played, List<Shortage> all) {
    var first = played.at(0).doing(part, Style.SHOP);
    double since = SHORT.contains(first.regime()) ? 0 : Double.NaN;
    String why = first.why();
    for (Event event : played.events()) {
      if (!event.part().equals(user)) {
        continue;
      }
      boolean lacks = SHORT.contains(event.after());
      if (lacks && Double.isNaN(since)) {
        since = event.seconds();
        why = event.why();
      } else if (!lacks && !Double.isNaN(since)) {
        all.add(new Shortage(user, since, event.seconds(), false, why));
        since = Double.NaN;
      }
    }
    if (!Double.isNaN(since)) {
      all.add(new Shortage(user, since, played.seconds(), true, why));
    }
  }
}

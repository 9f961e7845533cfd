package dev.offtake.explain;

import dev.offtake.network.Network;
import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * How far the air of some sources comes without passing a shut valve. What passes one is only its
 * leak, and feeds nobody.
 */
final class Passing {
  /** Less than this is a leak and feeds nobody, kg/s (0.13 lb/min). */
  private static final double SOME_AIR = 1e-3;

  /** A valve that is open by less passes no more than its leak. */
  private static final double SHUT = 0.01;

  /** Regimes of valves that are shut as a consequence and keep nothing from anybody. */
  private static final Set<String> FULL = Set.of("shut by pressure", "shut, cold");

  /** Most valves that are named. */
  private static final int FEW = 3;

  private final Solution solution;
  private final Network network;
  private final Set<String> reached = new LinkedHashSet<>();

  /**
   * Follows the air.
   *
   * @param solution a solved state
   * @param sources numbers of the parts whose air is followed
   */
  Passing(Solution solution, List<Integer> sources) {
    this.solution = solution;
    network = solution.network();
    for (int source : sources) {
      network.parts().get(source).legs().forEach(leg -> reached.add(leg.to()));
    }
    while (spread()) {
      // A part that is far from the sources may stand before a near one in the file.
    }
  }

  /** Whether a part is a valve that lets no more than its leak pass. */
  static boolean shut(Solution solution, int number) {
    Part part = solution.network().parts().get(number);
    int opening = part.observables().indexOf("opening");
    return part.role() == Role.VALVE
        && opening >= 0
        && solution.view(number, Style.SHOP).observed(opening) <= SHUT;
  }

  private boolean spread() {
    boolean more = false;
    for (int i = 0; i < network.parts().size(); i++) {
      List<Leg> legs = network.parts().get(i).legs();
      // A check valve never keeps air from going on; it shuts where nobody takes any.
      boolean check = network.parts().get(i).kind().equals("check valve");
      boolean open = check || !shut(solution, i);
      for (int k = 0; open && k < legs.size(); k++) {
        boolean forward = check || solution.flow(i, k) >= 0;
        String from = forward ? legs.get(k).from() : legs.get(k).to();
        String to = forward ? legs.get(k).to() : legs.get(k).from();
        boolean inner = !from.isEmpty() && !to.isEmpty() && !from.equals(Leg.AMBIENT);
        more |= inner && reached.contains(from) && reached.add(to);
      }
    }
    return more;
  }

  /** Whether the air comes to a user that works, or out to the air outside. */
  boolean feeds() {
    for (int i = 0; i < network.parts().size(); i++) {
      Part part = network.parts().get(i);
      List<Leg> legs = part.role() == Role.SOURCE ? List.<Leg>of() : part.legs();
      for (int k = 0; k < legs.size(); k++) {
        boolean ends = part.role() == Role.USER || legs.get(k).to().equals(Leg.AMBIENT);
        boolean here = reached.contains(legs.get(k).from()) && !shut(solution, i);
        if (ends && here && solution.flow(i, k) > SOME_AIR) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * Why the air feeds nobody, one clause: the valves that keep it from users that ask for it, or
   * that nobody asks.
   *
   * @param side whose users count; empty for all
   */
  String because(String side) {
    boolean asked = false;
    for (int i = 0; i < network.parts().size(); i++) {
      boolean here = side.isEmpty() || network.parts().get(i).name().startsWith(side + " ");
      asked |= here && asks(i);
    }
    List<String> shut = new ArrayList<>();
    List<String> capped = new ArrayList<>();
    for (int i = 0; asked && i < network.parts().size(); i++) {
      Part part = network.parts().get(i);
      if (shut(solution, i) && !full(i) && part.legs().stream().anyMatch(this::stops)) {
        boolean gone = solution.doing(i, Style.SHOP).regime().equals("removed and capped");
        String own = part.name().startsWith(side + " ") ? side + " " : "";
        (gone ? capped : shut).add(part.name().substring(own.length()));
      }
    }
    List<String> clauses = new ArrayList<>();
    clause(shut, "shut", clauses);
    clause(capped, "capped", clauses);
    if (clauses.isEmpty()) {
      return asked ? "something stops it on the way" : "nothing takes any";
    }
    return String.join(", ", clauses);
  }

  private boolean asks(int number) {
    String regime = solution.doing(number, Style.SHOP).regime();
    boolean user = network.parts().get(number).role() == Role.USER;
    return user && !regime.equals("off") && !regime.equals("shut");
  }

  private static void clause(List<String> valves, String word, List<String> into) {
    if (!valves.isEmpty()) {
      int more = valves.size() - FEW;
      List<String> told = valves.subList(0, Math.min(FEW, valves.size()));
      String names =
          "the " + String.join(" and the ", told) + (more > 0 ? " and " + more + " more" : "");
      into.add(names + (valves.size() == 1 ? " is " : " are ") + word);
    }
  }

  private boolean stops(Leg leg) {
    Set<String> ends = new TreeSet<>(List.of(leg.from(), leg.to()));
    boolean inner = !ends.contains(Leg.AMBIENT) && !ends.contains("");
    boolean here = reached.contains(leg.from());
    return inner
        && here != reached.contains(leg.to())
        && leadsToOneThatAsks(here ? leg.to() : leg.from());
  }

  /** Whether a valve is shut because what lies behind it has all the pressure that it should. */
  private boolean full(int number) {
    return FULL.contains(solution.doing(number, Style.SHOP).regime());
  }

  /** Whether a user that asks for air lies beyond a point, whatever is shut on the way. */
  private boolean leadsToOneThatAsks(String point) {
    Set<String> beyond = new LinkedHashSet<>(Set.of(point));
    boolean more = true;
    while (more) {
      more = false;
      for (int i = 0; i < network.parts().size(); i++) {
        for (Leg leg : network.parts().get(i).legs()) {
          boolean touches = beyond.contains(leg.from()) || beyond.contains(leg.to());
          if (touches && asks(i)) {
            return true;
          }
          if (touches) {
            more |= join(beyond, leg.from());
            more |= join(beyond, leg.to());
          }
        }
      }
    }
    return false;
  }

  private boolean join(Set<String> beyond, String point) {
    boolean inner = !point.isEmpty() && !point.equals(Leg.AMBIENT) && !reached.contains(point);
    return inner && beyond.add(point);
  }
}

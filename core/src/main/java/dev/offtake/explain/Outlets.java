package dev.offtake.explain;

import dev.offtake.network.Network;
import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Where air goes besides users: open valves, vents, leaks and exchangers to the air outside, leaks
 * into zones, and the holes that meter a flow. Less than a trickle is not told.
 */
final class Outlets {
  /** What sound valves leak when shut, kg/s (0.1 lb/min; common practice, no source). */
  static final double TRICKLE = 0.1 * 0.45359237 / 60;

  private static final Set<String> METERED = Set.of("orifice", "venturi", "leak");

  private final Solution solution;
  private final Network network;
  private final Style style;

  private Outlets(Solution solution, Style style) {
    this.solution = solution;
    this.style = style;
    network = solution.network();
  }

  /** A row for each way out with more than a trickle, in the order of the file. */
  static List<StateAnswer.Air> of(Solution solution, Style style) {
    Outlets outlets = new Outlets(solution, style);
    List<StateAnswer.Air> rows = new ArrayList<>();
    for (int i = 0; i < outlets.network.parts().size(); i++) {
      List<Leg> legs = outlets.network.parts().get(i).legs();
      for (int leg = 0; leg < legs.size(); leg++) {
        if (outlets.told(i, legs.get(leg)) && Math.abs(solution.flow(i, leg)) >= TRICKLE) {
          rows.add(outlets.row(i, leg));
        }
      }
    }
    return rows;
  }

  private boolean told(int number, Leg leg) {
    Part part = network.parts().get(number);
    boolean out = leg.to().equals(Leg.AMBIENT) || leg.from().equals(Leg.AMBIENT);
    return switch (part.role()) {
      case VALVE -> out && !Passing.shut(solution, number);
      case PASSAGE -> out || METERED.contains(part.kind());
      default -> false;
    };
  }

  private StateAnswer.Air row(int number, int which) {
    Part part = network.parts().get(number);
    Leg leg = part.legs().get(which);
    double flow = solution.flow(number, which);
    String from = flow < 0 ? leg.to() : leg.from();
    String to = flow < 0 ? leg.from() : leg.to();
    boolean outside = from.equals(Leg.AMBIENT);
    double ambient = solution.conditions().ambientP();
    int point = network.point(from);
    String way = to.equals(Leg.AMBIENT) ? "to the air outside" : "to " + to;
    String note = way + (outside ? ", from the air outside" : "") + does(part, number, which);
    return new StateAnswer.Air(
        part.name(),
        outside ? 0 : solution.sensed(point) - ambient,
        outside ? solution.conditions().ambientT() : solution.temperature(point),
        Math.abs(flow),
        note);
  }

  /** How far a valve is open; that the air is choked. */
  private String does(Part part, int number, int which) {
    boolean choked = solution.view(number, style).choked(which);
    String open = part.role() == Role.VALVE ? ", " + solution.doing(number, style).word() : "";
    return open + (choked ? ", choked" : "");
  }
}

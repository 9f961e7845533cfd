package dev.offtake.explain;

import dev.offtake.part.Role;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.List;

/**
 * Another state at which a broken system may rest.
 *
 * <p>A regulator that feels the static pressure of its own stream can hold itself open or shut. The
 * answer is the state that is found without any state before it; looked for here is the one that
 * comes of the healthy state, as when the part fails at that power. There may be more than these
 * two.
 */
final class OtherState {
  /** Most valves that are named. */
  private static final int FEW = 3;

  private OtherState() {}

  /**
   * What is said of it.
   *
   * @param here the healthy state and the broken one that is told
   * @param settler of the broken system
   * @param style units to speak in
   * @return empty where both ways come to the same state
   */
  static List<String> of(AtPower here, Settler settler, Style style) {
    settler.startFrom(here.healthy());
    Solution other = settler.solve(here.broken().setup());
    if (!other.solved()) {
      return List.of();
    }
    Compared c = new Compared(here.broken(), other, style);
    int most = -1;
    for (int i = 0; i < other.network().points().size(); i++) {
      boolean more = most < 0 || Math.abs(c.pressureChange(i)) > Math.abs(c.pressureChange(most));
      most = more && c.pressureMoved(i) ? i : most;
    }
    if (most < 0) {
      return List.of();
    }
    String valves = valves(c);
    return List.of(
        "A second state is possible: if it fails at this power, "
            + valves
            + (valves.isEmpty() ? "" : " and ")
            + c.point(most)
            + " is at "
            + style.print(c.pressureIs(most), Dimension.GAUGE_PRESSURE)
            + ", not "
            + style.print(c.pressureWas(most), Dimension.GAUGE_PRESSURE)
            + ".");
  }

  /** Valves that do something else there, one clause. */
  private static String valves(Compared c) {
    List<String> told = new ArrayList<>();
    for (int i = 0; i < c.parts() && told.size() < FEW; i++) {
      boolean moved = Math.abs(c.openingIs(i) - c.openingWas(i)) > Compared.OPENING;
      if (c.part(i).role() == Role.VALVE && moved && c.regimeChanged(i)) {
        told.add(c.part(i).name() + " is " + c.does(i).word());
      }
    }
    return String.join(", ", told);
  }
}

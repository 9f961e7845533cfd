package dev.offtake.explain;

import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import java.util.List;

/** Where air runs the wrong way: back through a one-way part, or back into a source. */
final class Backward {
  /** No more than this is the leak of a part that is shut, kg/s (0.5 lb/min): an assumption. */
  static final double MUCH = Compared.FLOW;

  private Backward() {}

  /**
   * What runs back through a valve that lets air pass one way only, as the end of its reason.
   *
   * @param solution a state
   * @param number of the part
   * @param style units to speak in
   * @return such as {@code ; 58.4 lb/min runs backwards through it}; empty where none does
   */
  static String through(Solution solution, int number, Style style) {
    Part part = solution.network().parts().get(number);
    List<Leg> legs = part.legs();
    boolean oneWay = part.role() == Role.VALVE && !legs.isEmpty() && !legs.get(0).bothWays();
    double flow = oneWay ? solution.flow(number, 0) : 0;
    return flow < -MUCH ? "; " + print(flow, style) + " runs backwards through it" : "";
  }

  /**
   * What runs back into some sources, in sentences that begin with a blank.
   *
   * @param solution a state
   * @param sources numbers of the parts
   * @param style units to speak in
   * @return empty where none does
   */
  static String into(Solution solution, List<Integer> sources, Style style) {
    StringBuilder says = new StringBuilder();
    for (int source : sources) {
      double flow = solution.flow(source, 0);
      if (flow < -MUCH) {
        Part part = solution.network().parts().get(source);
        boolean tap = part.kind().equals(BreakBack.TAP);
        String where = (tap ? "the engine at the " : "the ") + part.name();
        says.append(" ").append(print(flow, style)).append(" runs back into ");
        says.append(where).append(".");
      }
    }
    return says.toString();
  }

  private static String print(double flow, Style style) {
    return style.print(Math.abs(flow), Dimension.MASS_FLOW);
  }
}

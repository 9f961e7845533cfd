package dev.offtake.flow;

import dev.offtake.air.GasState;

/** A law of flow between two ends; reverse flow swaps the ends. */
public interface FlowLaw {
  /**
   * Evaluates the law.
   *
   * @param one air at the first end
   * @param two air at the second end
   * @param size effective area, m², unless the law says otherwise; 0 or more
   * @param out receives the flow and its partials
   */
  void evaluate(GasState one, GasState two, double size, Flow out);
}

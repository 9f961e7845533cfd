package dev.offtake.part;

import dev.offtake.air.GasState;
import dev.offtake.flow.Flow;
import dev.offtake.flow.FlowLaw;
import java.util.List;

/** A hole between two points: a flow law over an area of which a share is open. */
abstract class HoleElement extends Element {
  private final Branch branch;
  private final FlowLaw law;
  private final Flow flow = new Flow();

  /**
   * Prepares.
   *
   * @param leg its only way
   * @param wiring where it stands in the network
   * @param law over its area; this element's own, since a law may keep a warm start
   * @param bore usual area of the branch, m²; 0 where it has none
   */
  HoleElement(Leg leg, Wiring wiring, FlowLaw law, double bore) {
    this.law = law;
    branch = new Branch(wiring, wiring.point(leg.from()), wiring.point(leg.to()), bore);
  }

  /** Effective area when wide open, m². */
  abstract double wide(Evaluation e);

  /**
   * Share of the area that is open, 0..1.
   *
   * @param e of which the parameters and controls are read
   * @param from state of the air ahead
   */
  abstract double opening(Evaluation e, GasState from);

  /**
   * How the share moves with the temperature ahead, 1/K; nothing for most holes.
   *
   * @param e of which the parameters are read
   * @param from state of the air ahead
   */
  double openingByT(Evaluation e, GasState from) {
    return 0;
  }

  @Override
  public final List<Branch> branches() {
    return List.of(branch);
  }

  @Override
  public final void evaluate(Evaluation e) {
    GasState one = e.gas[branch.from];
    GasState two = e.gas[branch.to];
    double wide = wide(e);
    law.evaluate(one, two, wide * opening(e, one), flow);
    branch.throttled(flow, one, two);
    double byT = openingByT(e, one);
    if (byT != 0) {
      branch.alsoBy(Branch.T_FROM, flow.dSize * wide * byT);
    }
  }
}

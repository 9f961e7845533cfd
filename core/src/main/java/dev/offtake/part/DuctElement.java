package dev.offtake.part;

import dev.offtake.air.GasState;
import dev.offtake.flow.Flow;
import dev.offtake.flow.FlowLaw;
import dev.offtake.heat.DuctHeat;
import java.util.List;

/** A duct at work: friction, and air that cools towards the air outside on its way. */
final class DuctElement extends Element {
  private final int parameters;
  private final Branch branch;
  private final FlowLaw law;
  private final Flow flow = new Flow();
  private final DuctHeat heat = new DuctHeat();

  DuctElement(DuctPart part, FlowLaw law, Wiring wiring) {
    this.law = law;
    parameters = wiring.parameters();
    branch =
        new Branch(
            wiring,
            wiring.point(part.leg().from()),
            wiring.point(part.leg().to()),
            part.parameters().get(DuctPart.AREA).value());
  }

  @Override
  public List<Branch> branches() {
    return List.of(branch);
  }

  @Override
  public void evaluate(Evaluation e) {
    GasState one = e.gas[branch.from];
    GasState two = e.gas[branch.to];
    law.evaluate(one, two, e.parameters[parameters + DuctPart.AREA], flow);
    branch.throttled(flow, one, two);
    double conductance = e.parameters[parameters + DuctPart.LOSS];
    double surroundings = e.conditions.ambientT();
    double w = flow.share1;
    if (conductance > 0 && w > 0) {
      heat.evaluate(Math.abs(flow.mdot), one, surroundings, conductance);
      mix(branch.dHTo, w, 1, one, Branch.T_FROM);
      branch.hTo += w * (heat.h - one.h);
    }
    if (conductance > 0 && w < 1) {
      heat.evaluate(Math.abs(flow.mdot), two, surroundings, conductance);
      mix(branch.dHFrom, 1 - w, -1, two, Branch.T_TO);
      branch.hFrom += (1 - w) * (heat.h - two.h);
    }
  }

  /**
   * Adds w·(arriving − leaving enthalpy) to partials that hold those of throttled air.
   *
   * @param partials of the enthalpy at the far end
   * @param w share of the upstream air
   * @param sign of ∂w/∂share₁
   * @param upstream air where it leaves
   * @param temperature position of the upstream temperature
   */
  private void mix(
      double[] partials, double w, double sign, GasState upstream, int temperature) {
    double excess = sign * (heat.h - upstream.h);
    double slope = w * heat.dMdot * Math.signum(flow.mdot);
    partials[Branch.LN_P_FROM] += slope * flow.dLnP1 + flow.dShareLnP1 * excess;
    partials[Branch.T_FROM] += slope * flow.dT1;
    partials[Branch.LN_P_TO] += slope * flow.dLnP2 + flow.dShareLnP2 * excess;
    partials[Branch.T_TO] += slope * flow.dT2;
    partials[temperature] += w * (heat.dT1 - upstream.cp);
  }
}

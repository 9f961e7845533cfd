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
  private final List<Branch> branches;
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
    branches = List.of(branch);
  }

  @Override
  public List<Branch> branches() {
    return branches;
  }

  @Override
  public void evaluate(Evaluation e) {
    GasState one = e.gas[branch.from];
    GasState two = e.gas[branch.to];
    law.evaluate(one, two, e.parameters[parameters + DuctPart.AREA], flow);
    branch.throttled(flow, one, two);
    double conductance = e.parameters[parameters + DuctPart.LOSS];
    double surroundings = e.conditions.ambientT();
    if (conductance > 0 && flow.mdot >= 0) {
      heat.evaluate(flow.mdot, one, surroundings, conductance);
      arriving(branch.dHTo, heat.dMdot, Branch.T_FROM);
      branch.hTo = heat.h;
    } else if (conductance > 0) {
      heat.evaluate(-flow.mdot, two, surroundings, conductance);
      arriving(branch.dHFrom, -heat.dMdot, Branch.T_TO);
      branch.hFrom = heat.h;
    }
  }

  /**
   * Writes the partials of the enthalpy with which air arrives.
   *
   * @param partials of the enthalpy at the far end
   * @param byFlow slope of the arriving enthalpy by the flow
   * @param temperature position of the upstream temperature
   */
  private void arriving(double[] partials, double byFlow, int temperature) {
    partials[Branch.LN_P_FROM] = byFlow * flow.dLnP1;
    partials[Branch.T_FROM] = byFlow * flow.dT1;
    partials[Branch.LN_P_TO] = byFlow * flow.dLnP2;
    partials[Branch.T_TO] = byFlow * flow.dT2;
    partials[temperature] += heat.dT1;
  }
}

package dev.offtake.part;

import dev.offtake.air.Air;
import dev.offtake.air.GasState;
import dev.offtake.flow.Flow;
import dev.offtake.flow.FlowLaw;
import java.util.List;

/**
 * A duct at work: friction, and air that cools towards the surroundings on its way,
 * T₂ = Tₛ + (T₁ − Tₛ)·exp(−UA/(ṁ·cp)) (constant-temperature surroundings; Incropera, Fundamentals of Heat and Mass
 * Transfer, chapter 8.3).
 */
final class DuctElement extends Element {
  private final int parameters;
  private final Branch branch;
  private final FlowLaw law;
  private final Flow flow = new Flow();
  private double arrives;
  private double dArrivesT;
  private double dArrivesMdot;

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
      cool(one, conductance, surroundings);
      mix(branch.dHTo, w, 1, one, Branch.T_FROM);
      branch.hTo += w * (arrives - one.h);
    }
    if (conductance > 0 && w < 1) {
      cool(two, conductance, surroundings);
      mix(branch.dHFrom, 1 - w, -1, two, Branch.T_TO);
      branch.hFrom += (1 - w) * (arrives - two.h);
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
    double excess = sign * (arrives - upstream.h);
    double slope = w * dArrivesMdot;
    partials[Branch.LN_P_FROM] += slope * flow.dLnP1 + flow.dShareLnP1 * excess;
    partials[Branch.T_FROM] += slope * flow.dT1;
    partials[Branch.LN_P_TO] += slope * flow.dLnP2 + flow.dShareLnP2 * excess;
    partials[Branch.T_TO] += slope * flow.dT2;
    partials[temperature] += w * (dArrivesT - upstream.cp);
  }

  /** Enthalpy with which air arrives, and its partials by its first temperature and by ṁ. */
  private void cool(GasState upstream, double conductance, double surroundings) {
    double rate = Math.abs(flow.mdot) * upstream.cp;
    double units = rate > 0 ? conductance / rate : Double.POSITIVE_INFINITY;
    double left = units > 700 ? 0 : Math.exp(-units);
    double fall = upstream.t - surroundings;
    double t = surroundings + fall * left;
    double cp = Air.cp(t);
    double grows = left == 0 ? 0 : fall * left * units;
    arrives = Air.h(t);
    dArrivesT = cp * (left + grows * upstream.dcp / upstream.cp);
    dArrivesMdot = left == 0 ? 0 : cp * grows / flow.mdot;
  }
}

package dev.offtake.part;

import dev.offtake.air.GasState;
import dev.offtake.flow.Flow;
import dev.offtake.flow.NozzleLaw;
import java.util.List;

/**
 * A tap at work: a nozzle from the stage, whose pressure falls with the air drawn where droop and
 * core flow are known.
 *
 * <p>With droop the flow m solves m = law(p·(1 − k·m)), k = droop/core flow. The right side falls
 * with m, so there is one solution between 0 and the flow without droop; it is found by Newton's
 * method inside a shrinking bracket.
 */
final class TapElement extends Element {
  private static final int MOST_STEPS = 80;
  private static final double LEAST_PRESSURE = 0.05;

  private final Tap tap;
  private final int source;
  private final int to;
  private final int sourceLnP;
  private final int sourceT;
  private final int parameters;
  private final int controls;
  private final Branch branch;
  private final NozzleLaw law = new NozzleLaw();
  private final Flow flow = new Flow();
  private final GasState drooped = new GasState();

  TapElement(Tap tap, Wiring wiring) {
    this.tap = tap;
    source = wiring.source();
    to = wiring.point(tap.leg().to());
    sourceLnP = wiring.lnP(source);
    sourceT = wiring.t(source);
    parameters = wiring.parameters();
    controls = wiring.controls();
    branch = new Branch(wiring, source, to, tap.parameters().get(Tap.AREA).value());
  }

  @Override
  public List<Branch> branches() {
    return List.of(branch);
  }

  @Override
  public void boundary(Evaluation e) {
    Conditions c = e.conditions;
    double p = c.inletP();
    double t = c.inletT();
    double speed = tap.speed(c);
    if (e.controls[controls] != 0 && speed > 0) {
      double between = e.parameters[parameters + Tap.BETWEEN];
      double factor = e.rise * e.parameters[parameters + Tap.FACTOR];
      p *= 1 + factor * (tap.curve().pressure(speed, between) - 1);
      t *= tap.curve().temperature(speed);
    }
    e.variables[sourceLnP] = Math.log(p / 1e5);
    e.variables[sourceT] = t;
  }

  @Override
  public void evaluate(Evaluation e) {
    GasState stage = e.gas[source];
    GasState ahead = e.gas[to];
    double area = e.parameters[parameters + Tap.AREA];
    law.evaluate(stage, ahead, area, flow);
    double coreFlow = tap.coreFlow() * stage.p / Math.sqrt(stage.t);
    double droop = e.parameters[parameters + Tap.DROOP];
    boolean acts = coreFlow > 0 && droop > 0 && e.controls[controls] != 0;
    if (acts && flow.mdot != 0) {
      droop(stage, ahead, area, droop / coreFlow);
    } else {
      branch.throttled(flow, stage, ahead);
    }
  }

  private void droop(GasState stage, GasState ahead, double area, double k) {
    double m = solve(stage, ahead, area, k);
    double slope = k / remaining(k, m);
    // Core flow grows with p and falls with the root of T of the stage, so k moves with both.
    double byP = 1 + m * slope;
    double byT = -0.5 * m * slope / stage.t;
    double share = 1 / (1 + flow.dLnP1 * slope);
    flow.dT1 = share * (flow.dT1 + flow.dLnP1 * byT);
    flow.dLnP1 *= share * byP;
    flow.dLnP2 *= share;
    flow.dT2 *= share;
    flow.dSize *= share;
    double inner = flow.dShareLnP1;
    flow.dShareLnP1 = inner * (byP - slope * flow.dLnP1);
    flow.dShareLnP2 -= inner * slope * flow.dLnP2;
    branch.throttled(flow, stage, ahead);
    double fall = inner * (stage.h - ahead.h);
    carry(Branch.T_FROM, fall * (byT - slope * flow.dT1));
    carry(Branch.T_TO, -fall * slope * flow.dT2);
  }

  /** Adds a partial of the carried enthalpy that laws do not know. */
  private void carry(int variable, double slope) {
    branch.dHFrom[variable] += slope;
    branch.dHTo[variable] += slope;
  }

  private static double remaining(double k, double m) {
    return Math.max(LEAST_PRESSURE, 1 - k * m);
  }

  /** Leaves the law's answer at the solution in {@link #flow} and returns its mass flow. */
  private double solve(GasState stage, GasState ahead, double area, double k) {
    double low = Math.min(0, flow.mdot);
    double high = Math.max(0, flow.mdot);
    double m = flow.mdot;
    for (int i = 0; i < MOST_STEPS; i++) {
      double left = remaining(k, m);
      drooped.set(stage.lnP + Math.log(left), stage.t);
      law.evaluate(drooped, ahead, area, flow);
      double excess = flow.mdot - m;
      if (excess > 0) {
        low = m;
      } else {
        high = m;
      }
      double next = m + excess / (1 + flow.dLnP1 * k / left);
      if (!(next > low && next < high)) {
        next = 0.5 * (low + high);
      }
      if (Math.abs(next - m) <= 4 * Math.ulp(m)) {
        break;
      }
      m = next;
    }
    return m;
  }

  @Override
  public void observe(Evaluation e, double[] out, int at) {
    double k = 0;
    double drawn = 0;
    GasState stage = e.gas[source];
    double coreFlow = tap.coreFlow() * stage.p / Math.sqrt(stage.t);
    if (coreFlow > 0 && e.controls[controls] != 0) {
      k = e.parameters[parameters + Tap.DROOP] / coreFlow;
      drawn = branch.mdot / coreFlow;
    }
    out[at + Tap.STAGE_P] = stage.p * remaining(k, branch.mdot);
    out[at + Tap.STAGE_T] = stage.t;
    if (tap.coreFlow() > 0) {
      out[at + Tap.SHARE] = drawn;
    }
    out[at + Tap.BEYOND] = tap.curve().beyond(tap.speed(e.conditions));
  }
}

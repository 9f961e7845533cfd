package dev.offtake.part;

import dev.offtake.air.Air;
import dev.offtake.air.GasState;
import java.util.List;

/**
 * A supply at work: its table read at the pressure ahead plus its check valve's cracking pressure,
 * cut off smoothly where the flow would turn round. A trace of back leak keeps a closed end's
 * pressure determined.
 */
final class SupplyElement extends Element {
  /** Half-width of the rounding where the flow starts, as a share of the table's largest flow. */
  private static final double ROUNDING = 1e-3;

  /**
   * Back leak at one bar of difference, as a share of the table's largest flow: below what any
   * gauge shows.
   */
  private static final double TRACE = 1e-7;

  private final SupplyPart part;
  private final int sourceLnP;
  private final int sourceT;
  private final int parameters;
  private final int controls;
  private final Branch branch;
  private double flow;
  private double slope;
  private double byFactor;

  SupplyElement(SupplyPart part, Wiring wiring) {
    this.part = part;
    int source = wiring.source();
    sourceLnP = wiring.lnP(source);
    sourceT = wiring.t(source);
    parameters = wiring.parameters();
    controls = wiring.controls();
    branch = new Branch(wiring, source, wiring.point(part.leg().to()), nominalArea(part));
  }

  /**
   * Area that passes the table's largest flow at its deadhead pressure, m²; only for the solver's
   * start.
   */
  private static double nominalArea(SupplyPart part) {
    double p = 101325 + Math.max(1e3, part.curve().deadhead());
    double t = part.parameters().get(SupplyPart.TEMPERATURE).value();
    return part.curve().most() * Math.sqrt(Air.R * t) / p;
  }

  @Override
  public List<Branch> branches() {
    return List.of(branch);
  }

  @Override
  public void boundary(Evaluation e) {
    double factor = e.rise * e.parameters[parameters + SupplyPart.FACTOR];
    double above = e.controls[controls] == 0 ? 0 : part.curve().deadhead() * factor;
    e.variables[sourceLnP] = Math.log((e.conditions.ambientP() + above) / 1e5);
    e.variables[sourceT] = e.parameters[parameters + SupplyPart.TEMPERATURE];
  }

  @Override
  public void evaluate(Evaluation e) {
    GasState source = e.gas[branch.from];
    GasState ahead = e.gas[branch.to];
    double trace = TRACE * part.curve().most() / 1e5;
    flow = 0;
    slope = 0;
    byFactor = 0;
    if (e.controls[controls] != 0) {
      give(e, source.p, ahead.p);
    }
    flow += trace * (source.p - ahead.p);
    branch.mdot = flow;
    branch.dMdot[Branch.LN_P_FROM] = (trace + byFactor / part.curve().deadhead()) * source.p;
    branch.dMdot[Branch.LN_P_TO] = (slope - trace) * ahead.p;
    boolean gives = flow > 0;
    branch.hFrom = gives ? source.h : ahead.h;
    branch.hTo = branch.hFrom;
    branch.dHFrom[Branch.T_FROM] = gives ? source.cp : 0;
    branch.dHFrom[Branch.T_TO] = gives ? 0 : ahead.cp;
    System.arraycopy(branch.dHFrom, 0, branch.dHTo, 0, 4);
  }

  /** The table stretched to the pressure that the source has when it gives nothing. */
  private void give(Evaluation e, double source, double ahead) {
    double factor = (source - e.conditions.ambientP()) / part.curve().deadhead();
    double crack = e.parameters[parameters + SupplyPart.CRACK];
    double gauge = (ahead - e.conditions.ambientP() + crack) / factor;
    double wished = part.curve().flow(gauge);
    double width = ROUNDING * part.curve().most();
    slope = part.curve().slope(gauge) / factor;
    byFactor = -slope * gauge;
    if (wished >= width) {
      flow = wished;
    } else if (wished <= -width) {
      slope = 0;
      byFactor = 0;
    } else {
      // A parabola that meets both straight lines in value and slope.
      flow = (wished + width) * (wished + width) / (4 * width);
      double share = (wished + width) / (2 * width);
      slope *= share;
      byFactor *= share;
    }
  }
}

package dev.offtake.part;

import dev.offtake.air.Air;
import dev.offtake.air.GasState;
import dev.offtake.flow.Flow;
import dev.offtake.flow.NozzleLaw;
import java.util.List;

/**
 * A supply at work: its table read at the pressure ahead plus its check valve's cracking pressure,
 * cut off smoothly where the flow would turn round. A trace of back leak keeps a closed end's
 * pressure determined.
 *
 * <p>A hose that leaks takes its air, at the pressure before the check valve, off what the table
 * gives; a check valve that leaks lets air back wherever the pressure ahead is the higher one.
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
  private double byT;
  private final NozzleLaw hole = new NozzleLaw();
  private final Flow lost = new Flow();
  private final GasState hose = new GasState();
  private final GasState outside = new GasState();

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
    double above = runs(e) ? part.curve().deadhead() * factor : 0;
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
    byT = 0;
    if (runs(e)) {
      give(e, source, ahead.p);
    }
    flow += trace * (source.p - ahead.p);
    branch.mdot = flow;
    branch.dMdot[Branch.LN_P_FROM] = (trace + byFactor / part.curve().deadhead()) * source.p;
    branch.dMdot[Branch.T_FROM] = byT;
    branch.dMdot[Branch.LN_P_TO] = (slope - trace) * ahead.p;
    branch.dMdot[Branch.T_TO] = 0;
    double back = e.parameters[parameters + SupplyPart.BACK_LEAK];
    if (back > 0 && ahead.p > source.p) {
      leakBack(source, ahead, back);
    }
    boolean gives = branch.mdot > 0;
    branch.hFrom = gives ? source.h : ahead.h;
    branch.hTo = branch.hFrom;
    branch.dHFrom[Branch.T_FROM] = gives ? source.cp : 0;
    branch.dHFrom[Branch.T_TO] = gives ? 0 : ahead.cp;
    System.arraycopy(branch.dHFrom, 0, branch.dHTo, 0, 4);
  }

  private boolean runs(Evaluation e) {
    return e.controls[controls] != 0 && e.parameters[parameters + SupplyPart.COMES_ON] != 0;
  }

  /** Air that a leaking check valve lets into the supply; none leaves by it. */
  private void leakBack(GasState source, GasState ahead, double area) {
    hole.evaluate(source, ahead, area, lost);
    branch.mdot += lost.mdot;
    branch.dMdot[Branch.LN_P_FROM] += lost.dLnP1;
    branch.dMdot[Branch.T_FROM] += lost.dT1;
    branch.dMdot[Branch.LN_P_TO] += lost.dLnP2;
    branch.dMdot[Branch.T_TO] += lost.dT2;
  }

  /** The table stretched to the pressure that the source has when it gives nothing. */
  private void give(Evaluation e, GasState source, double ahead) {
    double factor = (source.p - e.conditions.ambientP()) / part.curve().deadhead();
    double crack = e.parameters[parameters + SupplyPart.CRACK];
    double gauge = (ahead - e.conditions.ambientP() + crack) / factor;
    double wished = part.curve().flow(gauge);
    double width = ROUNDING * part.curve().most();
    slope = part.curve().slope(gauge) / factor;
    byFactor = -slope * gauge;
    double leak = e.parameters[parameters + SupplyPart.HOSE_LEAK];
    if (leak > 0) {
      wished -= lostByHose(e, source.t, ahead + crack, leak);
    }
    if (wished >= width) {
      flow = wished;
    } else if (wished <= -width) {
      slope = 0;
      byFactor = 0;
      byT = 0;
    } else {
      // A parabola that meets both straight lines in value and slope.
      flow = (wished + width) * (wished + width) / (4 * width);
      double share = (wished + width) / (2 * width);
      slope *= share;
      byFactor *= share;
      byT *= share;
    }
  }

  /**
   * Air that the hose loses before the check valve, kg/s; takes its slopes off those of the flow.
   */
  private double lostByHose(Evaluation e, double t, double p, double area) {
    hose.set(Math.log(p / GasState.REFERENCE_PRESSURE), t);
    double around = e.conditions.ambientP();
    outside.set(Math.log(around / GasState.REFERENCE_PRESSURE), e.conditions.ambientT());
    hole.evaluate(hose, outside, area, lost);
    slope -= lost.dLnP1 / p;
    byT -= lost.dT1;
    return lost.mdot;
  }
}

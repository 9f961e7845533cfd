package dev.offtake.part;

import dev.offtake.air.GasState;
import dev.offtake.flow.Flow;
import dev.offtake.flow.NozzleLaw;
import java.util.List;

/**
 * A scheduled user at work: the smooth minimum of what it wants (s) and what it can pass wide open
 * (c), ṁ = ½·(s + c − √((s − c)² + δ²)), δ² = (2 %)²·s·c. Where both are equal it lies 1 % below
 * them; it vanishes with c, so that no air moves without a difference of pressure; its slope by c
 * stays between 0 and 1.
 *
 * <p>It keeps to its schedule by a valve of its own, open by the share ṁ/c, which comes late while
 * time passes; between, its flow is that share of what it can pass.
 */
final class FlowUserElement extends Element {
  /** Width of the rounding, as a share of the schedule where both are equal. */
  static final double ROUNDING = 0.02;

  private final int parameters;
  private final int schedule;
  private final double needs;
  private final Branch branch;
  private final NozzleLaw law = new NozzleLaw();
  private final Flow flow = new Flow();
  private final Lag valve = new Lag(Lag.What.POSITION);
  private double wanted;

  FlowUserElement(FlowUserPart part, Wiring wiring) {
    parameters = wiring.parameters();
    schedule = wiring.controls();
    needs = part.needs();
    branch =
        new Branch(
            wiring,
            wiring.point(part.leg().from()),
            wiring.point(part.leg().to()),
            part.parameters().get(FlowUserPart.AREA).value());
  }

  @Override
  public List<Branch> branches() {
    return List.of(branch);
  }

  @Override
  public List<Lag> lags() {
    return List.of(valve);
  }

  @Override
  public void follow(Evaluation e) {
    evaluate(e);
  }

  @Override
  public void evaluate(Evaluation e) {
    GasState one = e.gas[branch.from];
    GasState two = e.gas[branch.to];
    double unasked = e.parameters[parameters + FlowUserPart.LEAST];
    double asked = Math.max(e.controls[schedule], unasked);
    wanted = Math.max(0, asked * e.parameters[parameters + FlowUserPart.DEMAND]);
    boolean has = wanted > 0 || !valve.passes();
    double area = has ? e.parameters[parameters + FlowUserPart.AREA] : 0;
    law.evaluate(one, two, area, flow);
    limit();
    branch.throttled(flow, one, two);
  }

  /**
   * Turns the wide-open flow into the one that the schedule, or the valve on its way there, lets
   * through.
   */
  private void limit() {
    double capacity = flow.mdot;
    double weight = wanted > 0 ? schedule() : 0;
    // One that wants nothing asks for nothing, however much could pass: no slope comes of it.
    double asked = wanted > 0 && capacity > 0 ? flow.mdot / capacity : weight;
    double share = valve.follow(asked);
    flow.choked &= weight > 0.5;
    if (!valve.passes()) {
      flow.mdot = share * capacity;
      weight = share + valve.slope() * (weight - asked);
    }
    flow.dLnP1 *= weight;
    flow.dT1 *= weight;
    flow.dLnP2 *= weight;
    flow.dT2 *= weight;
    flow.dSize *= weight;
  }

  /**
   * Turns the wide-open flow into the one that the schedule lets through.
   *
   * @return the slope of that by the wide-open flow
   */
  private double schedule() {
    double capacity = flow.mdot;
    double weight = 1 - ROUNDING * ROUNDING / 4;
    if (capacity > 0) {
      double gap = wanted - capacity;
      double square = ROUNDING * ROUNDING * wanted * capacity;
      double root = Math.sqrt(gap * gap + square);
      // Both forms equal ½(s + c − root); each is free of cancellation on its side.
      flow.mdot =
          gap >= 0 ? capacity - 0.5 * square / (root + gap) : wanted - 0.5 * square / (root - gap);
      weight = 0.5 * (1 + (gap - 0.5 * ROUNDING * ROUNDING * wanted) / root);
    } else {
      flow.mdot *= weight;
    }
    return weight;
  }

  @Override
  public void observe(Evaluation e, double[] out, int at) {
    boolean off =
        Math.max(e.controls[schedule], e.parameters[parameters + FlowUserPart.LEAST]) <= 0;
    out[at] = wanted > 0 ? 1 - branch.mdot / wanted : off ? 0 : 1;
    out[at + 1] = e.gas[branch.from].p - e.conditions.ambientP() - needs;
  }
}

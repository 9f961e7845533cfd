package dev.offtake.part;

import dev.offtake.flow.Flow;
import dev.offtake.flow.NozzleLaw;
import java.util.List;

/** A starter at work: a nozzle to the air outside whose area follows core speed. */
final class StarterElement extends Element {
  private final StarterPart part;
  private final int parameters;
  private final int controls;
  private final Branch branch;
  private final NozzleLaw law = new NozzleLaw();
  private final Flow flow = new Flow();

  StarterElement(StarterPart part, Wiring wiring) {
    this.part = part;
    parameters = wiring.parameters();
    controls = wiring.controls();
    int from = wiring.point(part.leg().from());
    branch = new Branch(wiring, from, wiring.point(part.leg().to()), part.map().area(0));
  }

  @Override
  public List<Branch> branches() {
    return List.of(branch);
  }

  @Override
  public void evaluate(Evaluation e) {
    double factor = e.parameters[parameters + StarterPart.NOZZLE];
    double area = part.map().area(e.conditions.core()) * factor * open(e);
    law.evaluate(e.gas[branch.from], e.gas[branch.to], area, flow);
    branch.throttled(flow, e.gas[branch.from], e.gas[branch.to]);
  }

  @Override
  public void observe(Evaluation e, double[] out, int at) {
    double above = e.gas[branch.from].p - e.conditions.ambientP();
    double torque = part.map().torque(e.conditions.core(), above);
    out[at] = torque * e.parameters[parameters + StarterPart.TORQUE] * open(e);
  }

  private double open(Evaluation e) {
    return Stuck.opening(e.parameters[parameters + StarterPart.STUCK], e.controls[controls]);
  }
}

package dev.offtake.network;

import dev.offtake.air.GasState;
import dev.offtake.flow.Flow;
import dev.offtake.flow.FlowLaw;
import dev.offtake.part.Branch;
import dev.offtake.part.Doing;
import dev.offtake.part.Element;
import dev.offtake.part.Evaluation;
import dev.offtake.part.Leg;
import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import dev.offtake.part.View;
import dev.offtake.part.Wiring;
import java.util.List;
import java.util.function.Supplier;

/**
 * A bare flow law between two points, for tests that put laws together as a textbook does. It may
 * begin at a reservoir of its own.
 *
 * @param name any
 * @param leg its way; from an empty name when it begins at a reservoir
 * @param p pressure of the reservoir, Pa absolute
 * @param t temperature of the reservoir, K
 * @param size of the law
 * @param nominalArea m², where the solver begins
 * @param law makes the law
 */
public record Passage(
    String name,
    Leg leg,
    double p,
    double t,
    double size,
    double nominalArea,
    Supplier<? extends FlowLaw> law)
    implements Part {

  /** A law whose size is an area, between two points. */
  public static Passage between(
      String name, String from, String to, double area, Supplier<? extends FlowLaw> law) {
    Leg leg = new Leg(from, to, Double.NaN, true);
    return new Passage(name, leg, Double.NaN, Double.NaN, area, area, law);
  }

  /** The same passage beginning at a reservoir. */
  public Passage fromReservoir(double pressure, double temperature) {
    Leg from = new Leg("", leg.to(), Double.NaN, true);
    return new Passage(name, from, pressure, temperature, size, nominalArea, law);
  }

  /** The same passage, the solver beginning with another area. */
  public Passage startingWith(double area) {
    return new Passage(name, leg, p, t, size, area, law);
  }

  /** Joins parts at points that lose no heat. */
  public static Network adiabatic(List<? extends Part> parts) {
    Network usual = Network.of(parts);
    List<PointSpec> points =
        usual.points().stream().map(at -> new PointSpec(at.name(), 0, at.volume())).toList();
    return new Network(points, usual.parts());
  }

  @Override
  public String kind() {
    return "passage";
  }

  @Override
  public List<Leg> legs() {
    return List.of(leg);
  }

  @Override
  public List<Parameter> parameters() {
    return List.of();
  }

  @Override
  public Doing doing(View view) {
    return new Doing("passes", "passes", "");
  }

  @Override
  public Element element(Wiring wiring) {
    return new Work(this, wiring);
  }

  private static final class Work extends Element {
    private final Passage passage;
    private final int lnP;
    private final int t;
    private final Branch branch;
    private final FlowLaw law;
    private final Flow flow = new Flow();

    Work(Passage passage, Wiring wiring) {
      this.passage = passage;
      int from = passage.leg.fromSource() ? wiring.source() : wiring.point(passage.leg.from());
      lnP = wiring.lnP(from);
      t = wiring.t(from);
      branch = new Branch(wiring, from, wiring.point(passage.leg.to()), passage.nominalArea);
      law = passage.law.get();
    }

    @Override
    public List<Branch> branches() {
      return List.of(branch);
    }

    @Override
    public void boundary(Evaluation e) {
      if (passage.leg.fromSource()) {
        e.variables[lnP] = Math.log(passage.p / 1e5);
        e.variables[t] = passage.t;
      }
    }

    @Override
    public void evaluate(Evaluation e) {
      GasState one = e.gas[branch.from];
      GasState two = e.gas[branch.to];
      law.evaluate(one, two, passage.size, flow);
      branch.throttled(flow, one, two);
    }
  }
}

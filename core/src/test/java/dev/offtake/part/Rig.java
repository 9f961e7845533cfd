package dev.offtake.part;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.air.GasState;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;

/** One part between points whose pressure and temperature a test sets. */
final class Rig implements Wiring {
  final Evaluation e;
  final Element element;
  private final Map<String, Integer> ids = new HashMap<>();
  private int points;

  Rig(Part part) {
    point(Leg.AMBIENT);
    element = part.element(this);
    GasState[] gas = new GasState[points];
    double[] variables = new double[2 * points];
    for (int i = 0; i < points; i++) {
      gas[i] = new GasState();
      variables[2 * i] = Math.log(1.01325);
      variables[2 * i + 1] = 288.15;
    }
    double[] parameters = part.parameters().stream().mapToDouble(Parameter::value).toArray();
    double[] controls = part.controls().stream().mapToDouble(Control::initial).toArray();
    Conditions day = Conditions.standardDay(0.8, 0.8);
    e = new Evaluation(gas, variables, parameters, controls, day);
    element.boundary(e);
  }

  Rig set(String point, double pa, double kelvin) {
    e.variables[2 * id(point)] = Math.log(pa / 1e5);
    e.variables[2 * id(point) + 1] = kelvin;
    return this;
  }

  Branch run() {
    evaluate();
    return element.branches().get(0);
  }

  private void evaluate() {
    for (int i = 0; i < points; i++) {
      e.gas[i].set(e.variables[2 * i], e.variables[2 * i + 1]);
    }
    element.evaluate(e);
  }

  /** Compares every partial of every stream with differences of two near evaluations. */
  void comparePartials(double relative) {
    comparePartials(relative, 1e-7);
  }

  /** The same with a step of ln p that fits how fast the law bends. */
  void comparePartials(double relative, double stepOfLnP) {
    for (int b = 0; b < element.branches().size(); b++) {
      Branch branch = element.branches().get(b);
      for (int k = 0; k < branch.variables.length; k++) {
        compare(branch, k, relative, stepOfLnP, "stream " + b + " by its variable " + k);
      }
    }
  }

  private void compare(Branch branch, int k, double relative, double stepOfLnP, String what) {
    evaluate();
    int v = branch.variables[k];
    double[] exact = total(branch, v);
    double here = e.variables[v];
    double step = v % 2 == 0 ? stepOfLnP : 1e-3;
    double[] size = {Math.abs(branch.mdot), 1e5, 1e5};
    e.variables[v] = here + step;
    evaluate();
    double[] up = {branch.mdot, branch.hFrom, branch.hTo};
    e.variables[v] = here - step;
    evaluate();
    double[] down = {branch.mdot, branch.hFrom, branch.hTo};
    e.variables[v] = here;
    for (int i = 0; i < 3; i++) {
      double difference = (up[i] - down[i]) / (2 * step);
      double floor = size[i] * (v % 2 == 0 ? 1 : 1e-3);
      assertThat(exact[i])
          .as(what + ", " + List.of("flow", "enthalpy at from", "enthalpy at to").get(i))
          .isCloseTo(difference, Offset.offset(relative * Math.max(floor, Math.abs(difference))));
    }
  }

  /** Sums the partials of every place where a branch names one variable. */
  private static double[] total(Branch branch, int variable) {
    double[] sum = new double[3];
    for (int k = 0; k < branch.variables.length; k++) {
      if (branch.variables[k] == variable) {
        sum[0] += branch.dMdot[k];
        sum[1] += branch.dHFrom[k];
        sum[2] += branch.dHTo[k];
      }
    }
    return sum;
  }

  private int id(String name) {
    Integer id = ids.get(name);
    if (id == null) {
      throw new IllegalArgumentException("no point named " + name);
    }
    return id;
  }

  @Override
  public int point(String name) {
    return ids.computeIfAbsent(name, n -> points++);
  }

  @Override
  public int ambient() {
    return 0;
  }

  @Override
  public int source() {
    return points++;
  }

  @Override
  public int lnP(int point) {
    return 2 * point;
  }

  @Override
  public int t(int point) {
    return 2 * point + 1;
  }

  @Override
  public int sensed(String point, String part) {
    return lnP(point(point));
  }

  @Override
  public int parameters() {
    return 0;
  }

  @Override
  public int controls() {
    return 0;
  }

  @Override
  public <P extends Part> List<Attached<P>> attached(String name, Class<P> type) {
    return List.of();
  }
}

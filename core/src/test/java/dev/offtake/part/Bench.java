package dev.offtake.part;

import dev.offtake.air.GasState;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A test bench for one part: points at chosen states, the part's law at work between them, and its
 * words.
 *
 * <p>Sensed pressures are variables of their own, equal to the total ones unless told.
 */
final class Bench {
  static final double PSI = 6894.757293168;
  static final double AMBIENT = 101325;
  private static final int ROOM = 64;
  private static final int SENSED = 40;

  final Part part;
  final Element element;
  final Evaluation e;
  private final Map<String, Integer> points = new LinkedHashMap<>();
  private final Map<String, Integer> sensed = new HashMap<>();
  private final Map<String, Double> seen = new HashMap<>();
  private final Map<Part, Integer> attached = new LinkedHashMap<>();

  Bench(Part part, Part... attachedParts) {
    this.part = part;
    GasState[] gas = new GasState[ROOM / 2];
    for (int i = 0; i < gas.length; i++) {
      gas[i] = new GasState();
    }
    e =
        new Evaluation(
            gas,
            new double[ROOM],
            new double[ROOM],
            new double[ROOM],
            Conditions.standardDay(0.6, 0.3));
    load(part, 0);
    int at = part.parameters().size();
    for (Part other : attachedParts) {
      attached.put(other, at);
      load(other, at);
      at += other.parameters().size();
    }
    id(Leg.AMBIENT);
    element = part.element(new BenchWiring());
    points.keySet().forEach(p -> at(p, 0, 288.15));
  }

  private void load(Part one, int at) {
    for (int i = 0; i < one.parameters().size(); i++) {
      e.parameters[at + i] = one.parameters().get(i).value();
    }
    for (int i = 0; one == part && i < one.controls().size(); i++) {
      e.controls[i] = one.controls().get(i).initial();
    }
  }

  /**
   * Sets a point to a gauge pressure in psi and a temperature in K, and what sense lines feel
   * there.
   */
  Bench at(String point, double psig, double kelvin) {
    int id = id(point);
    e.variables[2 * id] = Math.log((AMBIENT + psig * PSI) / 1e5);
    e.variables[2 * id + 1] = kelvin;
    e.gas[id].set(e.variables[2 * id], kelvin);
    if (sensed.containsKey(point)) {
      e.variables[sensed.get(point)] = e.variables[2 * id];
    }
    return this;
  }

  /** Sets what a sense line feels at a point, psig. */
  Bench sensed(String point, double psig) {
    e.variables[sensed.get(point)] = Math.log((AMBIENT + psig * PSI) / 1e5);
    return this;
  }

  Bench control(int which, double value) {
    e.controls[which] = value;
    return this;
  }

  Bench parameter(int which, double value) {
    e.parameters[which] = value;
    return this;
  }

  /** Evaluates and gives the first branch; for parts that pass air. */
  Branch run() {
    evaluate();
    return element.branches().get(0);
  }

  private void evaluate() {
    element.boundary(e);
    for (int i = 0; i < points.size(); i++) {
      e.gas[i].set(e.variables[2 * i], e.variables[2 * i + 1]);
    }
    element.evaluate(e);
  }

  /** Sets what another part is seen to do. */
  Bench seen(String other, String observable, double value) {
    seen.put(other + ": " + observable, value);
    return this;
  }

  double observed(int which) {
    evaluate();
    double[] out = new double[ROOM];
    element.observe(e, out, 0);
    return out[which];
  }

  Doing doing() {
    return part.doing(new BenchView());
  }

  View view() {
    return new BenchView();
  }

  /**
   * Largest difference between partials and centred differences, relative to the largest partial.
   */
  double worstPartial() {
    Branch b = run();
    double[] told = b.dMdot.clone();
    double scale = 1e-9;
    double worst = 0;
    double[] seen = new double[told.length];
    for (int i = 0; i < told.length; i++) {
      int v = b.variables[i];
      double kept = e.variables[v];
      double step = 1e-6 * Math.max(1, Math.abs(kept));
      e.variables[v] = kept + step;
      double up = run().mdot;
      e.variables[v] = kept - step;
      double down = run().mdot;
      e.variables[v] = kept;
      seen[i] = (up - down) / (2 * step);
      scale = Math.max(scale, Math.abs(told[i]) * Math.max(1, Math.abs(kept)));
    }
    run();
    for (int i = 0; i < told.length; i++) {
      double size = Math.max(1, Math.abs(e.variables[b.variables[i]]));
      worst = Math.max(worst, Math.abs(told[i] - seen[i]) * size / scale);
    }
    return worst;
  }

  /** The partial of the first branch's flow by a variable. */
  double partial(int variable) {
    Branch b = run();
    for (int i = 0; i < b.variables.length; i++) {
      if (b.variables[i] == variable) {
        return b.dMdot[i];
      }
    }
    return 0;
  }

  int sensedVariable(String point) {
    return sensed.get(point);
  }

  int temperatureVariable(String point) {
    return 2 * id(point) + 1;
  }

  private int id(String point) {
    return points.computeIfAbsent(point, p -> points.size());
  }

  private final class BenchWiring implements Wiring {
    @Override
    public int point(String name) {
      return id(name);
    }

    @Override
    public int ambient() {
      return id(Leg.AMBIENT);
    }

    @Override
    public int source() {
      return id("source");
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
    public int sensed(String point, String asker) {
      id(point);
      return sensed.computeIfAbsent(point, p -> SENSED + sensed.size());
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
      List<Attached<P>> found = new ArrayList<>();
      attached.forEach(
          (other, at) -> {
            if (type.isInstance(other) && other.attachedTo().equals(name)) {
              found.add(new Attached<>(type.cast(other), at, ROOM / 2));
            }
          });
      return found;
    }
  }

  private final class BenchView implements View {
    @Override
    public double p(String point) {
      return 1e5 * Math.exp(e.variables[2 * id(point)]);
    }

    @Override
    public double t(String point) {
      return e.variables[2 * id(point) + 1];
    }

    @Override
    public double sensed(String point) {
      Integer v = sensed.get(point);
      return v == null ? p(point) : 1e5 * Math.exp(e.variables[v]);
    }

    @Override
    public double flow(int leg) {
      run();
      return element.branches().get(leg).mdot;
    }

    @Override
    public boolean choked(int leg) {
      run();
      return element.branches().get(leg).choked;
    }

    @Override
    public double observed(int which) {
      return Bench.this.observed(which);
    }

    @Override
    public double observed(String other, String observable) {
      return seen.getOrDefault(other + ": " + observable, Double.NaN);
    }

    @Override
    public double parameter(int which) {
      return e.parameters[which];
    }

    @Override
    public double control(int which) {
      return e.controls[which];
    }

    @Override
    public String because(int control) {
      return part.controls().get(control).rules().stream()
          .filter(r -> r.value() == e.controls[control])
          .map(Control.Rule::why)
          .findFirst()
          .orElse("");
    }

    @Override
    public Conditions conditions() {
      return e.conditions;
    }

    @Override
    public String gauge(double pa) {
      return gaugeOf(pa - e.conditions.ambientP());
    }

    @Override
    public String gaugeOf(double paAbove) {
      return String.format(Locale.ROOT, "%.1f psig", paAbove / PSI);
    }

    @Override
    public String difference(double pa) {
      return String.format(Locale.ROOT, "%.1f psi", pa / PSI);
    }

    @Override
    public String temperature(double kelvin) {
      return String.format(Locale.ROOT, "%.0f K", kelvin);
    }

    @Override
    public String print(double si, Dimension dimension) {
      return Style.SHOP.print(si, dimension);
    }

    @Override
    public String massFlow(double kgPerSecond) {
      return String.format(Locale.ROOT, "%.3f kg/s", kgPerSecond);
    }
  }
}

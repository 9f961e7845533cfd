package dev.offtake.network;

import dev.offtake.air.GasState;
import dev.offtake.flow.StaticPressure;
import dev.offtake.part.Branch;
import dev.offtake.part.Conditions;
import dev.offtake.part.Element;
import dev.offtake.part.Evaluation;
import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import dev.offtake.sparse.SparsePattern;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The workings of one network for one thread: variables, streams, residual and Jacobian.
 *
 * <p>The order of rows and columns is mass and energy of each inner point (ln p and T), then the
 * sensed pressures. The residual is in kg/s, W and units of ln p.
 */
public final class Equations {
  private final Network network;
  private final Layout layout;
  private final Element[] elements;
  private final Element[] busy;
  private final Branch[][] branchesOfPart;
  private final Evaluation evaluation;
  private final Joint[] joints;
  private final int[] firstJoint;
  private final SenseRow[] senses;
  private final int[] columns;
  private final SparsePattern pattern;
  private final int[] wallSlots;
  private final @Nullable SensePlace[] places;
  private final int rows;
  private boolean boundaryStale = true;

  /**
   * Lays the equations out.
   *
   * @param network points and parts
   * @param conditions conditions to start with
   */
  public Equations(Network network, Conditions conditions) {
    this.network = network;
    layout = new Layout(network);
    List<Part> parts = network.parts();
    elements = new Element[parts.size()];
    branchesOfPart = new Branch[parts.size()][];
    for (int i = 0; i < parts.size(); i++) {
      elements[i] = parts.get(i).element(layout.wiringOf(i));
      branchesOfPart[i] = elements[i].branches().toArray(Branch[]::new);
    }
    busy = Arrays.stream(elements).filter(Equations::busy).toArray(Element[]::new);
    rows = 2 * layout.inner + layout.senses.size();
    columns = layout.columns();
    senses = senseRows();
    pattern = new PatternBuilder(rows, columns, layout.inner, branchesOfPart, senses).pattern();
    firstJoint = new int[parts.size() + 1];
    joints = joints();
    wallSlots = new int[layout.inner];
    for (int i = 0; i < layout.inner; i++) {
      wallSlots[i] = pattern.slot(2 * i + 1, 2 * i + 1);
    }
    for (SenseRow sense : senses) {
      sense.locate(pattern, columns);
    }
    places = new SensePlace[layout.inner];
    for (int i = 0; i < layout.inner; i++) {
      places[i] = layout.placeOf(network.points().get(i).name(), "");
    }
    evaluation = newEvaluation(conditions);
  }

  /** Whether an element has anything to evaluate: gauges, lights and limits only look on. */
  private static boolean busy(Element element) {
    return !element.branches().isEmpty() || !element.lags().isEmpty();
  }

  private Evaluation newEvaluation(Conditions conditions) {
    GasState[] gas = new GasState[layout.points()];
    for (int i = 0; i < gas.length; i++) {
      gas[i] = new GasState();
    }
    double[] parameters = new double[layout.firstParameter[elements.length]];
    double[] controls = new double[layout.firstControl[elements.length]];
    for (int i = 0; i < elements.length; i++) {
      Part part = network.parts().get(i);
      for (int k = 0; k < part.parameters().size(); k++) {
        parameters[layout.firstParameter[i] + k] = part.parameters().get(k).value();
      }
      for (int k = 0; k < part.controls().size(); k++) {
        controls[layout.firstControl[i] + k] = part.controls().get(k).initial();
      }
    }
    return new Evaluation(gas, new double[layout.variables()], parameters, controls, conditions);
  }

  private SenseRow[] senseRows() {
    SenseRow[] made = new SenseRow[layout.senses.size()];
    for (int s = 0; s < made.length; s++) {
      Layout.Sense sense = layout.senses.get(s);
      Branch branch = branchesOfPart[sense.part()][sense.leg()];
      made[s] = new SenseRow(2 * layout.inner + s, sense, branch);
    }
    return made;
  }

  private Joint[] joints() {
    List<Joint> made = new ArrayList<>();
    for (int i = 0; i < branchesOfPart.length; i++) {
      for (Branch branch : branchesOfPart[i]) {
        addJoint(made, branch, branch.from, false);
        addJoint(made, branch, branch.to, true);
      }
      firstJoint[i + 1] = made.size();
    }
    return made.toArray(Joint[]::new);
  }

  private void addJoint(List<Joint> made, Branch branch, int point, boolean arrives) {
    if (point >= layout.inner) {
      return;
    }
    int[] mass = new int[branch.variables.length];
    int[] energy = new int[branch.variables.length];
    for (int k = 0; k < mass.length; k++) {
      int column = columns[branch.variables[k]];
      mass[k] = column < 0 ? -1 : pattern.slot(2 * point, column);
      energy[k] = column < 0 ? -1 : pattern.slot(2 * point + 1, column);
    }
    made.add(
        new Joint(
            branch, point, arrives, mass, energy, pattern.slot(2 * point + 1, 2 * point + 1)));
  }

  /** The network that these equations belong to. */
  public Network network() {
    return network;
  }

  /** Number of rows and unknowns. */
  public int size() {
    return rows;
  }

  /** Number of inner points. */
  public int innerPoints() {
    return layout.inner;
  }

  /** Where the Jacobian can differ from zero. */
  public SparsePattern pattern() {
    return pattern;
  }

  /**
   * Variables, parameters, controls and conditions; the caller may write them between evaluations.
   */
  public Evaluation evaluation() {
    return evaluation;
  }

  /** The streams of a part. */
  public Branch[] branches(int part) {
    return branchesOfPart[part];
  }

  /** The streams of all parts, in the order of the parts. */
  Branch[] allBranches() {
    return Arrays.stream(branchesOfPart).flatMap(Arrays::stream).toArray(Branch[]::new);
  }

  /** The rows of sensed pressures. */
  SenseRow[] senses() {
    return senses;
  }

  /** The law of a part. */
  public Element element(int part) {
    return elements[part];
  }

  /** Position of a part's first parameter. */
  public int firstParameter(int part) {
    return layout.firstParameter[part];
  }

  /** Position of a part's first control. */
  public int firstControl(int part) {
    return layout.firstControl[part];
  }

  /** Where a parameter of a part stands among all, or −1 when the part has none of that name. */
  public int parameter(int part, String name) {
    List<Parameter> parameters = network.parts().get(part).parameters();
    for (int k = 0; k < parameters.size(); k++) {
      if (parameters.get(k).name().equals(name)) {
        return layout.firstParameter[part] + k;
      }
    }
    return -1;
  }

  /** Variable that stands in a column. */
  public int variableOf(int column) {
    return column < 2 * layout.inner ? column : senses[column - 2 * layout.inner].variable();
  }

  /** Sets the conditions; the boundary points follow at the next evaluation. */
  public void setConditions(Conditions conditions) {
    evaluation.conditions = conditions;
    boundaryStale = true;
  }

  /** Writes the variables of all boundary points from conditions, parameters and controls. */
  public void refreshBoundary() {
    boundaryStale = false;
    int lnP = layout.lnP(layout.ambient);
    evaluation.variables[lnP] = Math.log(evaluation.conditions.ambientP() / 1e5);
    evaluation.variables[lnP + 1] = evaluation.conditions.ambientT();
    for (Element element : elements) {
      element.boundary(evaluation);
    }
    for (int i = layout.inner; i < evaluation.gas.length; i++) {
      refresh(i);
    }
  }

  private void refresh(int point) {
    int lnP = layout.lnP(point);
    evaluation.gas[point].set(evaluation.variables[lnP], evaluation.variables[lnP + 1]);
  }

  /**
   * Evaluates all streams at the present variables. After a parameter or control was written that a
   * boundary point depends on, {@link #refreshBoundary} comes first.
   */
  public void evaluate() {
    if (boundaryStale) {
      refreshBoundary();
    }
    for (int i = 0; i < layout.inner; i++) {
      refresh(i);
    }
    for (Element element : busy) {
      element.evaluate(evaluation);
    }
    for (SenseRow sense : senses) {
      sense.evaluate(evaluation);
    }
  }

  /**
   * Tells what comes late its input at the present variables, without computing any stream. The air
   * at the points is refreshed.
   */
  public void follow() {
    for (int i = 0; i < layout.inner; i++) {
      refresh(i);
    }
    for (Element element : busy) {
      element.follow(evaluation);
    }
  }

  /**
   * Puts sensed pressures where the streams of the last evaluation have them. It is exact where no
   * stream depends on a sensed pressure, as while all valves are held.
   */
  public void settleSensed() {
    for (SenseRow sense : senses) {
      sense.evaluate(evaluation);
      evaluation.variables[sense.variable()] -= sense.residual();
    }
  }

  /**
   * Writes the residual of the last evaluation.
   *
   * @param residual receives kg/s, W and units of ln p
   */
  public void residual(double[] residual) {
    Arrays.fill(residual, 0);
    for (int i = 0; i < layout.inner; i++) {
      residual[2 * i + 1] =
          -network.points().get(i).wall()
              * (evaluation.gas[i].t - evaluation.conditions.ambientT());
    }
    for (Joint joint : joints) {
      addTerms(joint, residual);
    }
    for (SenseRow sense : senses) {
      residual[sense.row()] = sense.residual();
    }
  }

  private void addTerms(Joint joint, double[] residual) {
    double flow = joint.sign() * joint.branch().mdot;
    residual[2 * joint.point()] += flow;
    residual[2 * joint.point() + 1] += flow * (joint.enthalpy() - evaluation.gas[joint.point()].h);
  }

  /**
   * Evaluates the law of one part anew, of which a number may have changed, and adds what depends
   * on it to a residual: the terms of its streams and the rows of what is sensed at its bores.
   *
   * @param part number of the part
   * @param residual receives kg/s, W and units of ln p
   */
  public void addShare(int part, double[] residual) {
    elements[part].evaluate(evaluation);
    for (int j = firstJoint[part]; j < firstJoint[part + 1]; j++) {
      addTerms(joints[j], residual);
    }
    for (SenseRow sense : senses) {
      if (sense.part() == part) {
        sense.evaluate(evaluation);
        residual[sense.row()] += sense.residual();
      }
    }
  }

  /**
   * Writes the Jacobian of the last evaluation.
   *
   * @param values one for each slot of the pattern
   */
  public void jacobian(double[] values) {
    Arrays.fill(values, 0);
    for (int i = 0; i < layout.inner; i++) {
      values[wallSlots[i]] = -network.points().get(i).wall();
    }
    for (Joint joint : joints) {
      addJoint(joint, values);
    }
    for (SenseRow sense : senses) {
      sense.jacobian(values);
    }
  }

  /**
   * Writes by how much the residual of the last evaluation would change, to first order, if the
   * variables of boundary points changed.
   *
   * @param change of each variable; what stands in a column of the Jacobian is not looked at
   * @param shift receives kg/s, W and units of ln p
   */
  public void boundaryShift(double[] change, double[] shift) {
    Arrays.fill(shift, 0);
    for (Joint joint : joints) {
      if (joint.atBoundary()) {
        shift(joint, change, shift);
      }
    }
    for (SenseRow sense : senses) {
      shift[sense.row()] += sense.boundaryShift(change);
    }
  }

  private void shift(Joint joint, double[] change, double[] shift) {
    Branch branch = joint.branch();
    double excess = joint.enthalpy() - evaluation.gas[joint.point()].h;
    double[] dH = joint.enthalpyPartials();
    double flow = 0;
    double heat = 0;
    for (int k = 0; k < branch.variables.length; k++) {
      if (joint.massSlots()[k] < 0) {
        double by = change[branch.variables[k]];
        flow += branch.dMdot[k] * by;
        heat += (excess * branch.dMdot[k] + branch.mdot * dH[k]) * by;
      }
    }
    shift[2 * joint.point()] += joint.sign() * flow;
    shift[2 * joint.point() + 1] += joint.sign() * heat;
  }

  private void addJoint(Joint joint, double[] values) {
    Branch branch = joint.branch();
    GasState own = evaluation.gas[joint.point()];
    double sign = joint.sign();
    double excess = joint.enthalpy() - own.h;
    double[] dH = joint.enthalpyPartials();
    for (int k = 0; k < branch.variables.length; k++) {
      int slot = joint.massSlots()[k];
      if (slot >= 0) {
        values[slot] += sign * branch.dMdot[k];
        values[joint.energySlots()[k]] += sign * (excess * branch.dMdot[k] + branch.mdot * dH[k]);
      }
    }
    values[joint.ownTemperature()] -= sign * branch.mdot * own.cp;
  }

  /**
   * The static pressure that a gauge line feels at an inner point, from the last evaluation.
   *
   * @param point inner point
   * @return Pa absolute; the total pressure where no part at the point states a bore
   */
  public double sensedPressure(int point) {
    GasState gas = evaluation.gas[point];
    SensePlace place = places[point];
    if (place == null) {
      return gas.p;
    }
    StaticPressure law = new StaticPressure();
    double area = Math.PI / 4 * place.bore() * place.bore();
    law.evaluate(branchesOfPart[place.part()][place.leg()].mdot, gas, area);
    return gas.p * Math.exp(-law.lnRatio);
  }

  /**
   * The stream in whose bore a gauge line at an inner point sits; null where none states a bore.
   */
  public @Nullable Branch sensedIn(int point) {
    SensePlace place = places[point];
    return place == null ? null : branchesOfPart[place.part()][place.leg()];
  }

  /** Variable of ln(p/1 bar) of a point. */
  public int lnP(int point) {
    return layout.lnP(point);
  }

  /** Number of the boundary point that is the air outside. */
  public int ambient() {
    return layout.ambient;
  }
}

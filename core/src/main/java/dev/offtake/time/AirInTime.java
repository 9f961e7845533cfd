package dev.offtake.time;

import dev.offtake.air.Air;
import dev.offtake.air.GasState;
import dev.offtake.network.Equations;
import dev.offtake.network.PointSpec;
import dev.offtake.part.Part;
import dev.offtake.sparse.SparsePattern;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A network as a model in time: the residual of the steady state, and what each point stores.
 *
 * <p>A point of volume V stores m = pV/(RT) and U = m u(T), u = h − RT. With E the excess form of
 * the heat that arrives, Σ ṁ (h − h_i) less what the wall takes, and M = Σ ṁ, the rows are
 *
 * <pre>
 *   M − (m − m*)/H = 0,   E − ((U − U*) − h_i (m − m*))/H = 0
 * </pre>
 *
 * which is dm/dt = M and dU/dt = E + h_i M. Unknowns are those of {@link Equations}; walls and what
 * comes late are states aside.
 */
final class AirInTime implements Model {
  /** A point without a volume is taken to have this one, m³ (a tenth of a litre). */
  private static final double LEAST_VOLUME = 1e-4;

  private final Equations equations;
  private final Timetable timetable;
  private final int points;
  private final int columns;
  private final int[] variable;
  private final double[] volume;
  private final @Nullable Walls walls;
  private final Late late;
  private final int firstLate;
  private final int[] slots;
  private final double[] kept;
  private final double[] rows;
  private double inverse;

  AirInTime(
      Equations equations, Timetable timetable, boolean wallsStore, Function<Part, Pace> paces) {
    this.equations = equations;
    this.timetable = timetable;
    List<PointSpec> specs = equations.network().points();
    points = specs.size();
    columns = equations.size();
    variable = new int[columns];
    for (int c = 0; c < columns; c++) {
      variable[c] = equations.variableOf(c);
    }
    volume = new double[points];
    slots = new int[4 * points];
    for (int i = 0; i < points; i++) {
      volume[i] = volume(specs.get(i));
      for (int k = 0; k < 4; k++) {
        slots[4 * i + k] = equations.pattern().slot(2 * i + k / 2, 2 * i + k % 2);
      }
    }
    walls = wallsStore ? new Walls(specs) : null;
    firstLate = columns + (wallsStore ? points : 0);
    late = new Late(equations, paces);
    kept = new double[2 * points];
    rows = new double[columns];
  }

  /** Volume of a point, m³. */
  static double volume(PointSpec spec) {
    return Math.max(LEAST_VOLUME, spec.volume());
  }

  /** What comes late. */
  Late late() {
    return late;
  }

  /** Where what comes late begins among the states. */
  int firstLate() {
    return firstLate;
  }

  @Override
  public int size() {
    return firstLate + late.size();
  }

  @Override
  public int columns() {
    return columns;
  }

  @Override
  public SparsePattern pattern() {
    return equations.pattern();
  }

  @Override
  public boolean stores(int row) {
    return row < 2 * points;
  }

  /** Writes the state in which equations stand that are steady and evaluated. */
  void steady(double[] y) {
    for (int c = 0; c < columns; c++) {
      y[c] = equations.evaluation().variables[variable[c]];
    }
    double around = equations.evaluation().conditions.ambientT();
    for (int i = 0; walls != null && i < points; i++) {
      y[columns + i] = walls.settled(i, y[2 * i + 1], around);
    }
    late.values(y, firstLate);
  }

  @Override
  public void begin(double time, double newInverse, double[] from) {
    timetable.set(time);
    late.setPaces();
    inverse = newInverse;
    System.arraycopy(from, 0, kept, 0, kept.length);
    if (walls != null) {
      walls.begin(inverse, equations.evaluation().conditions.ambientT(), from, columns);
    }
    late.begin(inverse, from, firstLate);
  }

  private void put(double[] y) {
    double[] x = equations.evaluation().variables;
    for (int c = 0; c < columns; c++) {
      x[variable[c]] = y[c];
    }
  }

  @Override
  public void evaluate(double[] y) {
    put(y);
    equations.evaluate();
  }

  @Override
  public void residual(double[] out) {
    equations.residual(out);
    GasState[] gas = equations.evaluation().gas;
    double around = equations.evaluation().conditions.ambientT();
    for (int i = 0; i < points; i++) {
      GasState air = gas[i];
      double gained = held(i, air) - kept[2 * i];
      double energy = held(i, air) * (air.h - Air.R * air.t) - kept[2 * i + 1];
      out[2 * i] -= gained * inverse;
      out[2 * i + 1] -= (energy - air.h * gained) * inverse;
      if (walls != null) {
        out[2 * i + 1] -= walls.excess(i, air.t, walls.temperature(i, air.t), around);
      }
    }
  }

  private double held(int point, GasState air) {
    return air.p * volume[point] / (Air.R * air.t);
  }

  @Override
  public void jacobian(double[] values) {
    equations.jacobian(values);
    GasState[] gas = equations.evaluation().gas;
    for (int i = 0; i < points; i++) {
      GasState air = gas[i];
      double held = held(i, air) * inverse;
      values[slots[4 * i]] -= held;
      values[slots[4 * i + 1]] += held / air.t;
      values[slots[4 * i + 2]] += air.p * volume[i] * inverse;
      values[slots[4 * i + 3]] -= air.cp * kept[2 * i] * inverse;
      if (walls != null) {
        values[slots[4 * i + 3]] -= walls.excessSlope(i);
      }
    }
  }

  @Override
  public void gained(double[] move, double[] owed, double[] out) {
    GasState[] gas = equations.evaluation().gas;
    for (int i = 0; i < points; i++) {
      GasState air = gas[i];
      double warms = move[2 * i + 1];
      double held = held(i, air);
      double more = held * (move[2 * i] - warms / air.t);
      double u = air.h - Air.R * air.t;
      // The row of heat counts from the point's own enthalpy, which moves as well.
      double own = air.cp * warms * owed[2 * i] / inverse;
      out[2 * i] = held + more;
      out[2 * i + 1] = held * u + u * more + held * (air.cp - Air.R) * warms - own;
    }
    for (int k = 2 * points; k < columns; k++) {
      out[k] = 0;
    }
  }

  @Override
  public void finish(double[] y) {
    put(y);
    equations.follow();
    for (int i = 0; walls != null && i < points; i++) {
      y[columns + i] = walls.temperature(i, y[2 * i + 1]);
    }
    late.values(y, firstLate);
  }

  @Override
  public void stored(double[] y, double[] out) {
    for (int i = 0; i < points; i++) {
      double t = y[2 * i + 1];
      double held = GasState.REFERENCE_PRESSURE * Math.exp(y[2 * i]) * volume[i] / (Air.R * t);
      out[2 * i] = held;
      out[2 * i + 1] = held * (Air.h(t) - Air.R * t);
    }
    for (int k = 2 * points; k < columns; k++) {
      out[k] = 0;
    }
    System.arraycopy(y, columns, out, columns, size() - columns);
  }

  /** Puts the equations into a state, evaluated, with all that comes late held where it is. */
  void hold(double time, double[] y) {
    timetable.set(time);
    late.setPaces();
    late.hold(y, firstLate);
    put(y);
    equations.evaluate();
    equations.settleSensed();
    equations.follow();
    for (int k = 2 * points; k < columns; k++) {
      y[k] = equations.evaluation().variables[variable[k]];
    }
  }

  @Override
  public void rates(double time, double[] y, double[] out) {
    hold(time, y);
    equations.residual(rows);
    double around = equations.evaluation().conditions.ambientT();
    for (int i = 0; i < points; i++) {
      GasState air = equations.evaluation().gas[i];
      double heat = rows[2 * i + 1];
      if (walls != null) {
        double wall = y[columns + i];
        heat -= walls.excess(i, air.t, wall, around);
        out[columns + i] = walls.rate(i, air.t, wall, around);
      }
      out[2 * i] = rows[2 * i];
      out[2 * i + 1] = heat + air.h * rows[2 * i];
    }
    for (int k = 2 * points; k < columns; k++) {
      out[k] = 0;
    }
    late.rates(out, firstLate);
  }

  @Override
  public void slopes(double[] y, double[] rates, double[] out) {
    for (int i = 0; i < points; i++) {
      double t = y[2 * i + 1];
      double held = GasState.REFERENCE_PRESSURE * Math.exp(y[2 * i]) * volume[i] / (Air.R * t);
      double u = Air.h(t) - Air.R * t;
      double warms = (rates[2 * i + 1] - u * rates[2 * i]) / (held * (Air.cp(t) - Air.R));
      out[2 * i] = rates[2 * i] / held + warms / t;
      out[2 * i + 1] = warms;
    }
    for (int k = 2 * points; k < columns; k++) {
      out[k] = 0;
    }
    System.arraycopy(rates, columns, out, columns, size() - columns);
  }

  @Override
  public void unslope(double[] y, double[] slopes, double[] out) {
    for (int i = 0; i < points; i++) {
      double t = y[2 * i + 1];
      double held = GasState.REFERENCE_PRESSURE * Math.exp(y[2 * i]) * volume[i] / (Air.R * t);
      double gains = held * (slopes[2 * i] - slopes[2 * i + 1] / t);
      double warms = held * (Air.cp(t) - Air.R) * slopes[2 * i + 1];
      out[2 * i] = gains;
      out[2 * i + 1] = gains * (Air.h(t) - Air.R * t) + warms;
    }
    for (int k = 2 * points; k < columns; k++) {
      out[k] = 0;
    }
    System.arraycopy(slopes, columns, out, columns, size() - columns);
  }

  @Override
  public void allowed(double[] y, double tolerance, double[] out) {
    for (int i = 0; i < points; i++) {
      out[2 * i] = tolerance;
      out[2 * i + 1] = tolerance * y[2 * i + 1];
    }
    for (int k = 2 * points; k < columns; k++) {
      out[k] = tolerance;
    }
    for (int i = 0; walls != null && i < points; i++) {
      out[columns + i] = tolerance * y[columns + i];
    }
    late.allowed(y, tolerance, out, firstLate);
  }

  @Override
  public void leave(double newInverse, double[] errors) {
    GasState[] gas = equations.evaluation().gas;
    for (int i = 0; i < points; i++) {
      errors[2 * i + 1] = (errors[2 * i + 1] - gas[i].h * errors[2 * i]) * newInverse;
      errors[2 * i] *= newInverse;
    }
    for (int k = 2 * points; k < columns; k++) {
      errors[k] = 0;
    }
    for (int i = 0; walls != null && i < points; i++) {
      errors[columns + i] *= walls.leaves(i, newInverse);
    }
    late.leave(newInverse, errors, firstLate);
  }
}

package dev.offtake.stability;

import dev.offtake.air.Air;
import dev.offtake.air.GasState;
import dev.offtake.network.Equations;
import dev.offtake.network.PointSpec;
import dev.offtake.part.Branch;
import dev.offtake.part.Part;
import dev.offtake.part.Regulator;
import dev.offtake.sparse.SparsePattern;
import dev.offtake.stability.Motion.State;
import dev.offtake.stability.Motion.What;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/**
 * Makes the small motions of equations about their steady state, as the package describes.
 *
 * <p>Rows and columns are those of the equations (points, then sensed pressures), then the lags of
 * the valves; at the end the sensed pressures are eliminated.
 */
final class Linear {
  /** A point without a volume is taken to have this one, m³ (a tenth of a litre). */
  private static final double LEAST_VOLUME = 1e-4;

  private final Equations equations;
  private final int points;
  private final int size;
  private final List<State> states = new ArrayList<>();
  private final List<Lag> lags = new ArrayList<>();
  private final int[] columnOf;
  private final double[][] rates;

  /** A lag: its row, its time constant, s, and the row that it feeds, or −1. */
  private record Lag(int row, double seconds, int feeds) {}

  /** The lags of one valve, as rows; a lag that a valve has not is the one after it. */
  private record Chain(Mover valve, int sense, int sensor, int servo, int position) {}

  private Linear(Equations equations, Function<Part, Lags> lagsOf) {
    this.equations = equations;
    points = 2 * equations.innerPoints();
    size = equations.size();
    columnOf = new int[equations.evaluation().variables.length];
    Arrays.fill(columnOf, -1);
    for (int c = 0; c < size; c++) {
      columnOf[equations.variableOf(c)] = c;
    }
    for (PointSpec point : equations.network().points()) {
      states.add(new State(point.name(), What.PRESSURE));
      states.add(new State(point.name(), What.TEMPERATURE));
    }
    List<Chain> chains = new ArrayList<>();
    for (Mover valve : Hold.all(equations)) {
      Lags lags = lagsOf.apply(equations.network().parts().get(valve.part()));
      chains.add(chain(valve, slowed(lags, valve.part())));
    }
    rates = new double[size + lags.size()][size + lags.size()];
    air(chains);
    chains.forEach(this::senses);
    lags.forEach(this::follows);
  }

  /**
   * Makes the small motions.
   *
   * @param equations at a steady state, evaluated; left with each valve held
   * @param lagsOf lags of a valve
   */
  static Motion of(Equations equations, Function<Part, Lags> lagsOf) {
    Linear linear = new Linear(equations, lagsOf);
    linear.eliminateSensed();
    return new Motion(linear.withoutSensed(), linear.states);
  }

  /** Lags as a fault makes them. */
  private Lags slowed(Lags lags, int part) {
    return lags.slower(times(part, "slowness"), times(part, "sense line slowness"));
  }

  private double times(int part, String name) {
    int at = equations.parameter(part, name);
    return at < 0 ? 1 : equations.evaluation().parameters[at];
  }

  private Chain chain(Mover valve, Lags given) {
    int position = lag(valve, given.position(), -1);
    int servo = given.servo() > 0 ? lag(valve, given.servo(), position) : position;
    boolean line = given.senseLine() > 0 && isMoved(valve, true);
    boolean sensor = given.sensor() > 0 && isMoved(valve, false);
    int sense = line ? lag(valve, given.senseLine(), servo) : servo;
    return new Chain(
        valve, sense, sensor ? lag(valve, given.sensor(), servo) : servo, servo, position);
  }

  private int lag(Mover valve, double seconds, int feeds) {
    int row = size + lags.size();
    lags.add(new Lag(row, seconds, feeds));
    states.add(new State(equations.network().parts().get(valve.part()).name(), What.VALVE));
    return row;
  }

  /** Whether a valve is moved by the pressure that it senses, or by a temperature. */
  private boolean isMoved(Mover valve, boolean sensed) {
    Branch branch = equations.branches(valve.part())[0];
    for (int k = 0; k < branch.variables.length; k++) {
      int v = branch.variables[k];
      if (valve.row()[k] != 0 && (sensed ? senses(valve, v) : temperature(v))) {
        return true;
      }
    }
    return false;
  }

  private boolean temperature(int variable) {
    return variable < points && variable % 2 == 1;
  }

  private boolean senses(Mover valve, int variable) {
    Part part = equations.network().parts().get(valve.part());
    boolean held =
        part instanceof Regulator regulator
            && variable == 2 * equations.network().point(regulator.holds());
    return held || columnOf[variable] >= points;
  }

  /** Rows of the points and of the sensed pressures. */
  private void air(List<Chain> chains) {
    SparsePattern pattern = equations.pattern();
    double[] jacobian = new double[pattern.size()];
    equations.jacobian(jacobian);
    for (int r = 0; r < size; r++) {
      for (int slot = pattern.start(r); slot < pattern.start(r + 1); slot++) {
        int column = pattern.column(slot);
        rates[r][column] = jacobian[slot] * unit(column);
      }
      for (Chain chain : chains) {
        rates[r][chain.position()] = chain.valve().column()[r];
      }
    }
    for (int i = 0; i < equations.innerPoints(); i++) {
      store(i);
    }
  }

  /** Temperatures count as their logarithms, so that no state has a unit. */
  private double unit(int column) {
    return column < points && column % 2 == 1 ? equations.evaluation().gas[column / 2].t : 1;
  }

  /** Turns what is left over at a point, kg/s and W, into rates of ln p and ln T. */
  private void store(int point) {
    GasState gas = equations.evaluation().gas[point];
    double volume = Math.max(LEAST_VOLUME, equations.network().points().get(point).volume());
    double held = gas.p * volume / (Air.R * gas.t);
    double[] mass = rates[2 * point];
    double[] heat = rates[2 * point + 1];
    for (int c = 0; c < mass.length; c++) {
      double denser = mass[c] / held;
      double hotter = (heat[c] / (held * gas.t) + Air.R * denser) / (gas.cp - Air.R);
      mass[c] = denser + hotter;
      heat[c] = hotter;
    }
  }

  /** What moves a valve enters the lag that it passes first. */
  private void senses(Chain chain) {
    Mover valve = chain.valve();
    Branch branch = equations.branches(valve.part())[0];
    for (int k = 0; k < branch.variables.length; k++) {
      int v = branch.variables[k];
      if (columnOf[v] >= 0 && valve.row()[k] != 0) {
        int row =
            temperature(v) ? chain.sensor() : senses(valve, v) ? chain.sense() : chain.servo();
        rates[row][columnOf[v]] += valve.row()[k] * unit(columnOf[v]) / seconds(row);
      }
    }
  }

  private double seconds(int row) {
    return lags.get(row - size).seconds();
  }

  private void follows(Lag lag) {
    rates[lag.row()][lag.row()] -= 1 / lag.seconds();
    if (lag.feeds() >= 0) {
      rates[lag.feeds()][lag.row()] += 1 / seconds(lag.feeds());
    }
  }

  private void eliminateSensed() {
    for (int s = points; s < size; s++) {
      double[] sensed = rates[s];
      for (int r = 0; r < rates.length; r++) {
        double share = r == s ? 0 : rates[r][s] / sensed[s];
        for (int c = 0; share != 0 && c < sensed.length; c++) {
          rates[r][c] -= share * sensed[c];
        }
      }
    }
  }

  private double[][] withoutSensed() {
    int senses = size - points;
    double[][] left = new double[states.size()][states.size()];
    for (int r = 0; r < left.length; r++) {
      for (int c = 0; c < left.length; c++) {
        left[r][c] = rates[r < points ? r : r + senses][c < points ? c : c + senses];
      }
    }
    return left;
  }
}

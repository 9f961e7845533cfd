package dev.offtake.time;

import dev.offtake.network.Equations;
import dev.offtake.network.Network;
import dev.offtake.solve.Present;
import dev.offtake.solve.Quantity;
import dev.offtake.solve.Solution;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A drive that was played, from the steps that were kept. Belongs to one thread. */
final class Replay implements Played {
  /** Share of a step in which what is quick answers. */
  private static final double SMOOTH = 0.1;

  /** Share of the tolerance to which it is made to. */
  private static final double FINE = 0.1;

  private final Network network;
  private final Settings settings;
  private final Trace trace;
  private final End end;
  private final String resists;
  private final Cost cost;
  private final Equations equations;
  private final Timetable timetable;
  private final AirInTime model;
  private final Stage stage;
  private final double[] y;
  private final double[] better;
  private final double[] slope;
  private final double[] moves;
  private final double[] kept;
  private int entered = -1;
  private @Nullable List<Event> events;

  Replay(Solution start, Drive drive, Settings settings, Trace trace, Player player) {
    this.settings = settings;
    this.trace = trace;
    network = start.network();
    end = player.end();
    resists = player.resists();
    cost = player.cost();
    equations = start.equations();
    timetable = new Timetable(equations, drive);
    model = new AirInTime(equations, timetable, settings.walls(), settings.paces());
    stage = new Stage(model);
    y = new double[model.size()];
    better = y.clone();
    slope = y.clone();
    moves = y.clone();
    kept = y.clone();
  }

  @Override
  public End end() {
    return end;
  }

  @Override
  public String resists() {
    return resists;
  }

  @Override
  public double seconds() {
    return trace.seconds();
  }

  @Override
  public Cost cost() {
    return cost;
  }

  /** The steps. */
  Trace trace() {
    return trace;
  }

  /** The network. */
  Network network() {
    return network;
  }

  /** How it was played. */
  Settings settings() {
    return settings;
  }

  @Override
  public Solution at(double seconds) {
    return at(trace.leg(seconds), seconds);
  }

  /** The state at an instant of a leg. */
  Solution at(int leg, double seconds) {
    Trace.Leg found = trace.legs().get(leg);
    double time = Math.max(found.from(), Math.min(found.to(), seconds));
    stand(found, time);
    return Present.value(
        equations, timetable.setup(found.phase().stretch(), time), found.phase().because());
  }

  /** The state at an instant, in a leg up to a last one. */
  Solution upTo(int last, double seconds) {
    return at(Math.min(last, trace.leg(seconds)), seconds);
  }

  /** Puts the equations into the state at an instant of a leg. */
  private void stand(Trace.Leg leg, double time) {
    Trace.Phase phase = leg.phase();
    if (entered != phase.stretch()) {
      timetable.enter(phase.stretch());
      entered = phase.stretch();
    }
    double[] controls = equations.evaluation().controls;
    System.arraycopy(phase.controls(), 0, controls, 0, controls.length);
    timetable.set(time);
    timetable.refresh();
    leg.at(time, y);
    if (time > leg.from() && time < leg.to()) {
      smooth(leg, time);
    }
    model.late().settle(y, model.firstLate(), settings.tolerance());
    model.hold(time, y);
  }

  /**
   * Lets what answers quickly answer to the rest: behind a wide port a pressure that is a
   * thousandth off would make a gale of a trickle. A state Y is sought whose flows make what is
   * stored move as it does, S(Y) = S + H (F(Y) − dS/dt), which holds for the state itself where it
   * is exact.
   */
  private void smooth(Trace.Leg leg, double time) {
    double h = SMOOTH * (leg.to() - leg.from());
    leg.slopeAt(time, slope);
    model.unslope(y, slope, moves);
    model.stored(y, kept);
    for (int k = 0; k < kept.length; k++) {
      kept[k] -= h * moves[k];
    }
    model.allowed(y, FINE * settings.tolerance(), moves);
    System.arraycopy(y, 0, better, 0, y.length);
    model.begin(time, 1 / h, kept);
    if (stage.solve(better, moves, kept)) {
      System.arraycopy(better, 0, y, 0, y.length);
    }
  }

  @Override
  public double[][] course(List<Quantity> what, double[] seconds) {
    double[][] course = new double[what.size()][seconds.length];
    for (int k = 0; k < seconds.length; k++) {
      int leg = trace.leg(seconds[k]);
      Trace.Leg found = trace.legs().get(leg);
      stand(found, Math.max(found.from(), Math.min(found.to(), seconds[k])));
      for (int i = 0; i < course.length; i++) {
        course[i][k] = what.get(i).read(equations);
      }
    }
    return course;
  }

  @Override
  public List<Event> events() {
    List<Event> found = events;
    if (found == null) {
      found = new Story(this).events();
      events = found;
    }
    return found;
  }

  @Override
  public List<Unfollowed> unfollowed() {
    return List.copyOf(trace.unfollowed());
  }

  @Override
  public double[] instants() {
    return trace.legs().stream().mapToDouble(Trace.Leg::to).distinct().toArray();
  }
}

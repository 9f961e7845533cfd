package dev.offtake.time;

import dev.offtake.air.Air;
import dev.offtake.network.Equations;
import dev.offtake.network.Network;
import dev.offtake.solve.Present;
import dev.offtake.solve.Solution;
import java.util.List;

/** Makes the steps of a drive, one after the other, and keeps them. */
final class Player {
  /** A shorter step than this is none, s. */
  private static final double LEAST = 1e-9;

  private static final double FIRST = 0.02;
  private static final double MOST_GROWTH = 5;
  private static final double LEAST_GROWTH = 0.2;
  private static final double SAFE = 0.9;

  /** What a fluttering valve follows is its mean: its lag becomes this many times longer. */
  private static final double AVERAGING = 50;

  private final Network network;
  private final Settings settings;
  private final Transient.Listener listener;
  private final Present present;
  private final Timetable timetable;
  private final AirInTime model;
  private final Step step;
  private final Swings swings;
  private final Following following;
  private final double[] y;
  private final Trace trace = new Trace();
  private Trace.Phase phase;
  private Trace.Moment at;
  private double time;
  private int phases;
  private int steps;
  private int rejected;
  private Played.End end = Played.End.DONE;
  private String resists = "";

  Player(Solution start, Drive drive, Settings settings, Transient.Listener listener) {
    this.settings = settings;
    this.listener = listener;
    network = start.network();
    Equations equations = new Equations(network, start.conditions());
    present = new Present(equations, start);
    timetable = new Timetable(equations, drive);
    model = new AirInTime(equations, timetable, settings.walls(), settings.paces());
    step = new Step(model);
    swings = new Swings(model.late().count());
    following = new Following(settings, network.points().size());
    y = new double[model.size()];
    model.steady(y);
    phase = phase(0);
    step.start(0, y);
    at = new Trace.Moment(y, new double[y.length]);
    trace.add(new Trace.Leg(0, 0, at, at, phase));
  }

  /** Plays all of it, or as much as goes. */
  Trace play() {
    for (int s = 1; s < timetable.count() && end == Played.End.DONE; s++) {
      time = timetable.from(s);
      timetable.enter(s);
      present.asked(timetable.setup(s, time));
      calmAll();
      if (jump(s) && timetable.to(s) > time) {
        advance(timetable.to(s));
      } else {
        trace.add(new Trace.Leg(time, time, at, at, phase));
      }
    }
    following.close(time).forEach(trace::add);
    return trace;
  }

  private Trace.Phase phase(int stretch) {
    return new Trace.Phase(phases++, stretch, present.controls(), present.because());
  }

  /** Lets logic act at the present state and begins anew from there. */
  private boolean jump(int stretch) {
    System.arraycopy(at.y, 0, y, 0, y.length);
    model.hold(time, y);
    List<String> restless = present.act(time);
    following.anew(time);
    timetable.refresh();
    phase = phase(stretch);
    step.startAgain(time);
    at = new Trace.Moment(step.beginning(), step.beginSlope());
    if (!restless.isEmpty()) {
      stop("the logic finds no rest: " + String.join(", ", restless));
    }
    return restless.isEmpty();
  }

  private void stop(String why) {
    end = Played.End.STUCK;
    resists = why;
  }

  private void advance(double until) {
    double length = first();
    while (time < until) {
      double due = Math.min(present.due(), following.edge(time));
      double limit = Math.min(until, Math.max(due, time + LEAST));
      double left = limit - time;
      double most = Math.min(length, Math.min(swings(step.beginning()), following.longest(time)));
      double h = most >= left / 1.1 ? left : Math.min(most, left / 2);
      double error = step.make(time, h, settings.tolerance());
      if (!(error <= 1)) {
        rejected++;
        length = h * (error < 1e9 ? Math.max(LEAST_GROWTH, SAFE * Math.pow(error, -1 / 3.0)) : 0.2);
        if (length < LEAST) {
          stop(place() + " finds no state");
          return;
        }
        continue;
      }
      double swings = swings(step.end());
      if (h > swings) {
        // A disc left its stop: how it does so starts its swing.
        rejected++;
        length = swings;
        continue;
      }
      double next = h == left ? limit : time + h;
      double grows = Math.min(MOST_GROWTH, SAFE * Math.pow(Math.max(error, 1e-9), -1 / 3.0));
      length = h == left && length < h * grows ? h * grows : h == left ? length : h * grows;
      if (present.stirs(next)) {
        length = happens(next);
      } else {
        take(next);
        step.goOn(h);
      }
      if (!goesOn()) {
        return;
      }
    }
  }

  /** Longest step that follows discs with inertia which are off their stops, s. */
  private double swings(double[] state) {
    return model.late().longest(state, model.firstLate());
  }

  /** Steps to where logic or memory first stirs within the step, and lets it act there. */
  private double happens(double next) {
    double instant = find(next);
    if (!(step.make(time, instant - time, settings.tolerance()) < Double.POSITIVE_INFINITY)) {
      // Shorter steps come there as well.
      rejected++;
      return Math.max(LEAST, (instant - time) / 4);
    }
    take(instant);
    jump(phase.stretch());
    return first();
  }

  private double find(double next) {
    double low = time;
    double high = next;
    while (high - low > settings.instants()) {
      double middle = (low + high) / 2;
      step.at((middle - time) / (next - time), next - time, y);
      model.hold(middle, y);
      if (present.stirs(middle)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  /** Keeps the last step. */
  private void take(double next) {
    Trace.Moment there = new Trace.Moment(step.end(), step.endSlope());
    trace.add(new Trace.Leg(time, next, at, there, phase));
    at = there;
    time = next;
    steps++;
    present.calm();
    following.look(time, step.end());
    Late late = model.late();
    for (int i = 0; i < late.count(); i++) {
      if (late.position(i)) {
        watch(i, step.end()[model.firstLate() + late.at(i)]);
      }
    }
  }

  private void watch(int lag, double value) {
    Late late = model.late();
    double hertz = swings.look(lag, time, value);
    if (hertz > 0 && !late.averages(lag)) {
      late.average(lag, AVERAGING);
      trace.add(new Trace.Flutter(time, late.part(lag), hertz));
    } else if (late.averages(lag) && (value <= 0 || value >= 1)) {
      late.average(lag, 1);
    }
  }

  private void calmAll() {
    for (int i = 0; i < model.late().count(); i++) {
      model.late().average(i, 1);
    }
  }

  private boolean goesOn() {
    if (end != Played.End.DONE) {
      return false;
    }
    for (int i = 0; i < network.points().size(); i++) {
      double t = at.y[2 * i + 1];
      if (!Air.inRange(t)) {
        String words = "%s would be at %.0f K: the properties of air are known from 200 to 2000 K";
        stop(words.formatted(network.points().get(i).name(), t));
        return false;
      }
    }
    if (steps + rejected >= settings.mostSteps()) {
      stop("it takes more than " + settings.mostSteps() + " steps");
      return false;
    }
    if (!listener.goesOn(time)) {
      end = Played.End.CANCELLED;
      return false;
    }
    return true;
  }

  /** Length of a step from the present state, of which nothing but the slopes is known. */
  private double first() {
    double[] allowed = new double[y.length];
    model.allowed(step.beginning(), settings.tolerance(), allowed);
    double most = 0;
    for (int k = 0; k < allowed.length; k++) {
      most = Math.max(most, Math.abs(step.beginSlope()[k]) / allowed[k]);
    }
    return Math.min(FIRST, 20 / most);
  }

  /** Where the last iteration moved most. */
  private String place() {
    int worst = step.stage().worst();
    return worst < 2 * network.points().size()
        ? network.points().get(worst / 2).name()
        : "a sensed pressure";
  }

  Played.End end() {
    return end;
  }

  String resists() {
    return resists;
  }

  Played.Cost cost() {
    return new Played.Cost(steps, rejected, step.stage().iterations(), step.stage().factors());
  }
}

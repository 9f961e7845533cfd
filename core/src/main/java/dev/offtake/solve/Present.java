package dev.offtake.solve;

import dev.offtake.network.Equations;
import dev.offtake.network.Network;
import dev.offtake.part.Part;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The finite state (commands, electrical power, trips, reliefs) of equations that move on in time.
 *
 * <p>Belongs to one thread and one set of equations, whose controls it writes.
 */
public final class Present {
  /** Rounds after which logic that finds no rest is said to have none. */
  private static final int ROUNDS = 60;

  private final Equations equations;
  private final Network network;
  private final Commands commands;
  private final LiveSituation situation;
  private final double[] kept;
  private final double[] since;
  private Setup setup;

  /**
   * Takes equations over as they stand in a solved state.
   *
   * @param equations of the state's network; put into the state and evaluated
   * @param start solved
   */
  public Present(Equations equations, Solution start) {
    this.equations = equations;
    network = equations.network();
    setup = start.setup();
    commands = new Commands(equations);
    situation = new LiveSituation(equations, commands.because());
    start.restore(equations);
    commands.adopt(start);
    situation.positions(setup.positions());
    kept = new double[equations.evaluation().controls.length];
    since = new double[network.parts().size()];
    Arrays.fill(since, Double.NaN);
  }

  /** Says what is asked from now on: positions of switches, and locks. */
  public void asked(Setup now) {
    if (!now.locks().equals(setup.locks())) {
      commands.lock(now);
    }
    setup = now;
    situation.positions(now.positions());
  }

  /**
   * Whether rules or memory would change something at the state that the equations hold, evaluated.
   * What waits for its delay would not.
   *
   * @param seconds the present instant
   */
  public boolean stirs(double seconds) {
    if (commands.wouldDecide(situation)) {
      return true;
    }
    double[] controls = equations.evaluation().controls;
    System.arraycopy(controls, 0, kept, 0, kept.length);
    boolean any = false;
    for (int i = 0; i < since.length; i++) {
      double patience = equations.element(i).patience(equations.evaluation());
      boolean wants = equations.element(i).settle(equations.evaluation());
      boolean begins = patience > 0 && Double.isNaN(since[i]);
      any |= wants && (begins || seconds >= since[i] + patience || patience == 0);
    }
    System.arraycopy(kept, 0, controls, 0, kept.length);
    return any;
  }

  /** When the next delay runs out, s; infinite when none runs. */
  public double due() {
    double due = Double.POSITIVE_INFINITY;
    for (int i = 0; i < since.length; i++) {
      if (!Double.isNaN(since[i])) {
        due = Math.min(due, since[i] + equations.element(i).patience(equations.evaluation()));
      }
    }
    return due;
  }

  /** Forgets delays of what is no longer wanted, at the state that the equations hold. */
  public void calm() {
    double[] controls = equations.evaluation().controls;
    System.arraycopy(controls, 0, kept, 0, kept.length);
    for (int i = 0; i < since.length; i++) {
      if (!Double.isNaN(since[i]) && !equations.element(i).settle(equations.evaluation())) {
        since[i] = Double.NaN;
      }
    }
    System.arraycopy(kept, 0, controls, 0, kept.length);
  }

  /**
   * Lets rules and memory act until they are at rest.
   *
   * @param seconds the present instant
   * @return names of the parts that find no rest; empty when all did
   */
  public List<String> act(double seconds) {
    List<Double> before = commands.values();
    for (int round = 0; round < ROUNDS; round++) {
      before = commands.values();
      commands.decide(situation);
      remember(seconds);
      if (commands.values().equals(before)) {
        return List.of();
      }
    }
    return commands.differing(before, commands.values());
  }

  private void remember(double seconds) {
    for (int i = 0; i < since.length; i++) {
      int first = equations.firstControl(i);
      int count = equations.firstControl(i + 1) - first;
      double[] controls = equations.evaluation().controls;
      System.arraycopy(controls, first, kept, first, count);
      double patience = equations.element(i).patience(equations.evaluation());
      boolean wants = equations.element(i).settle(equations.evaluation());
      if (wants && Double.isNaN(since[i])) {
        since[i] = seconds;
      }
      if (wants && seconds < since[i] + patience) {
        System.arraycopy(kept, first, controls, first, count);
      } else {
        since[i] = Double.NaN;
      }
    }
  }

  /** Values of all controls, copied. */
  public double[] controls() {
    return equations.evaluation().controls.clone();
  }

  /** Why each control has its value, copied. */
  public String[][] because() {
    String[][] copy = commands.because().clone();
    for (int i = 0; i < copy.length; i++) {
      copy[i] = copy[i].clone();
    }
    return copy;
  }

  /**
   * The state that equations hold, evaluated, as a value.
   *
   * @param equations at an instant, with what comes late held where it is
   * @param asked what is asked at the instant
   * @param because why each control has its value
   */
  public static Solution value(Equations equations, Setup asked, String[][] because) {
    Snapshot snapshot = new Snapshot(equations, because);
    return new Solution(
        equations.network(),
        asked,
        snapshot,
        new Solution.Outcome(
            SteadySolver.Way.IN_TIME,
            0,
            0,
            0,
            "",
            tripped(equations),
            List.of(),
            Optional.empty()));
  }

  private static List<String> tripped(Equations equations) {
    List<Part> parts = equations.network().parts();
    return parts.stream()
        .filter(part -> part.kind().equals("trip"))
        .filter(part -> at(equations, part) > 0)
        .map(Part::name)
        .toList();
  }

  private static double at(Equations equations, Part trip) {
    int first = equations.firstControl(equations.network().part(trip.name()));
    return equations.evaluation().controls[first];
  }
}

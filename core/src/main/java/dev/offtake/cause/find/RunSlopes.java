package dev.offtake.cause.find;

import dev.offtake.cause.Recording;
import dev.offtake.cause.Value;
import dev.offtake.part.Gauge;
import dev.offtake.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * How recorded courses answer to what nobody knows: by playing each run once more for each unknown,
 * moved by one standard deviation. (The slopes of a state at rest tell nothing of a valve on its
 * way.) Columns are kept: one is made anew only when its own unknown has moved far since.
 */
final class RunSlopes {
  /** A column is made anew when its unknown has moved by more, in standard deviations. */
  private static final double FAR = 0.1;

  /** What moves no clue by more of its own error is taken to move none. */
  private static final double SHOWS = 0.5;

  /** The speed of a recorded value is taken over twice this time, s. */
  private static final double ABOUT = 0.2;

  private final List<Unknown> unknowns;
  private final List<Clue> clues;
  private final List<Scene> scenes;
  private final boolean strange;
  private final Map<Integer, Column> known = new ConcurrentHashMap<>();

  /** A column, and where its unknown stood when it was made. */
  private record Column(double theta, double[] slopes) {}

  /**
   * Prepares.
   *
   * @param unknowns columns
   * @param clues rows
   * @param scenes of the clues
   * @param strange whether slopes of the sound system are used for causes that run otherwise
   */
  RunSlopes(List<Unknown> unknowns, List<Clue> clues, List<Scene> scenes, boolean strange) {
    this.strange = strange;
    this.unknowns = unknowns;
    this.clues = clues;
    this.scenes = scenes;
  }

  /** Whether a clue is of a recording. */
  static boolean of(Clue clue, List<Scene> scenes) {
    return scenes.get(clue.terms().get(0).scene()).instant().isPresent();
  }

  /**
   * Adds what playing tells to rows that know of gauges only.
   *
   * @param rows of all clues
   * @param theta where the unknowns stand
   * @param base the sound system there
   */
  void add(double[][] rows, double[] theta, List<SceneState> base, Team team) {
    List<Integer> runs = new ArrayList<>();
    for (int i = 0; i < scenes.size(); i++) {
      if (scenes.get(i).instant().isPresent()) {
        runs.add(i);
      }
    }
    team.all(
        unknowns.size(),
        0,
        0,
        (forecaster, u) -> {
          double[] column = column(u, theta, runs, base, forecaster);
          for (int c = 0; c < rows.length; c++) {
            rows[c][u] += column[c];
          }
          return u;
        });
  }

  private double[] column(
      int u, double[] theta, List<Integer> runs, List<SceneState> base, Forecaster forecaster) {
    Unknown unknown = unknowns.get(u);
    if (unknown instanceof Unknown.Channel channel) {
      return channel(channel, base);
    }
    if (strange && unknown instanceof Unknown.Clock clock) {
      return clock(clock);
    }
    boolean gauge =
        unknown instanceof Unknown.TestGauge
            || (unknown instanceof Unknown.OfPart number && gauge(number, forecaster));
    if (gauge) {
      return new double[clues.size()];
    }
    Column before = known.get(u);
    if (before == null || Math.abs(before.theta() - theta[u]) > FAR) {
      before = new Column(theta[u], played(u, theta, runs, base, forecaster));
      known.put(u, before);
    }
    return before.slopes();
  }

  private double[] played(
      int u, double[] theta, List<Integer> runs, List<SceneState> base, Forecaster forecaster) {
    double[] there = theta.clone();
    // Towards what is more usual, where it is surely possible.
    double by = theta[u] > 0 ? -1 : 1;
    there[u] += by;
    List<Moved> all = new Moving(unknowns).of(scenes.size(), there);
    List<Moved> moved = runs.stream().map(all::get).toList();
    List<Scene> run = runs.stream().map(scenes::get).toList();
    List<SceneState> states =
        forecaster.states(forecaster.broken(List.of()), run, List.of(), moved);
    double[] column = new double[clues.size()];
    if (!states.stream().allMatch(SceneState::solved)) {
      return column;
    }
    List<SceneState> whole = new ArrayList<>(base);
    for (int i = 0; i < runs.size(); i++) {
      whole.set(runs.get(i), states.get(i));
    }
    for (int c = 0; c < column.length; c++) {
      if (of(clues.get(c), scenes)) {
        column[c] = (clues.get(c).value(whole) - clues.get(c).value(base)) / by;
      }
    }
    return shows(column) ? column : new double[clues.size()];
  }

  /** The constant error of a gauge moves nothing but its own needle, which is known already. */
  private static boolean gauge(Unknown.OfPart number, Forecaster forecaster) {
    Part part =
        forecaster.broken(List.of()).network().parts().stream()
            .filter(one -> one.name().equals(number.number().part()))
            .findFirst()
            .orElseThrow();
    return part instanceof Gauge
        && part.parameters().get(0).name().equals(number.number().parameter());
  }

  /**
   * The clock moves a course by its own speed. That of the record is taken: the cause that is right
   * moves as it does, whatever a sound system would do at that time.
   */
  private double[] clock(Unknown.Clock clock) {
    double[] column = new double[clues.size()];
    for (int c = 0; c < column.length; c++) {
      Clue clue = clues.get(c);
      Optional<Instant> instant = scenes.get(clue.terms().get(0).scene()).instant();
      boolean at = instant.isPresent() && !instant.get().lasts();
      if (at && instant.get().recording().equals(clock.recording())) {
        for (Recording.Channel channel : clock.recording().channels()) {
          boolean own = channel.about().equals(clue.reading().orElseThrow().about());
          column[c] -= own ? clock.sigma() * speed(channel, instant.get().seconds()) : 0;
        }
      }
    }
    return column;
  }

  /** How fast a recorded value moves about an instant, per second; 0 at the ends and in gaps. */
  private static double speed(Recording.Channel channel, double at) {
    double before = channel.at(at - ABOUT, Instants.GAP);
    double after = channel.at(at + ABOUT, Instants.GAP);
    double speed = (after - before) / (2 * ABOUT);
    return Double.isNaN(speed) ? 0 : speed;
  }

  /** Whether it moves anything by more than two runs of the same differ by their steps. */
  private boolean shows(double[] column) {
    for (int c = 0; c < column.length; c++) {
      if (clues.get(c).likelihood() instanceof Likelihood.Measured measured
          && Math.abs(column[c]) > SHOWS * Math.sqrt(measured.variance())) {
        return true;
      }
    }
    return false;
  }

  private double[] channel(Unknown.Channel channel, List<SceneState> base) {
    double[] column = new double[clues.size()];
    for (int c = 0; c < column.length; c++) {
      if (of(clues.get(c), scenes) && own(clues.get(c), channel)) {
        column[c] = channel.error().applyAsDouble(clues.get(c).value(base)) * channel.sigma();
      }
    }
    return column;
  }

  /** What the model's error of a whole course adds to a clue. */
  double channels(Clue clue, double[] theta, List<SceneState> base) {
    double sum = 0;
    for (int u = 0; u < theta.length && of(clue, scenes); u++) {
      if (unknowns.get(u) instanceof Unknown.Channel channel && own(clue, channel)) {
        sum += theta[u] * channel.sigma() * channel.error().applyAsDouble(clue.value(base));
      }
    }
    return sum;
  }

  private boolean own(Clue clue, Unknown.Channel channel) {
    if (!(clue.reading().orElseThrow().value() instanceof Value.Figure)) {
      return false; // what a model has wrong all along moves no swing
    }
    Instant instant = scenes.get(clue.terms().get(0).scene()).instant().orElseThrow();
    return clue.reading().orElseThrow().about().name().equals(channel.about())
        && instant.recording().equals(channel.recording());
  }
}

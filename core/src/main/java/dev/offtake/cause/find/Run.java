package dev.offtake.cause.find;

import dev.offtake.cause.About;
import dev.offtake.cause.Readings;
import dev.offtake.cause.UsedGauge;
import dev.offtake.part.Gauge;
import dev.offtake.part.Part;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Numbers that were read on a run of a sound engine, and what the model makes of them. */
final class Run {
  private final BleedSystem system;
  private final Readings readings;
  private final List<Scene> scenes;
  private final List<SceneState> start;
  private final List<Clue> all;
  private final List<Clue> clues;
  private final List<Unknown> unknowns;
  private final CauseSolver solver;
  private final Team team;
  private final RunSlopes recorded;

  /**
   * Solves the run as the file has it.
   *
   * @param team solves side by side where runs have to be played
   */
  Run(BleedSystem system, Readings readings, Team team) {
    this.team = team;
    Forecaster forecaster = new Forecaster(system);
    this.system = system;
    this.readings = readings;
    ClueMaker maker = new ClueMaker(system, readings);
    scenes = maker.scenes();
    start = forecaster.sound(scenes);
    all = maker.clues(start);
    clues = all.stream().filter(Clue::measured).toList();
    unknowns = Unknowns.of(system, scenes, readings.gauges());
    recorded = new RunSlopes(unknowns, clues, scenes, false);
    solver = CauseSolver.of(Cause.NOTHING, forecaster, scenes, start).orElseThrow();
  }

  /** The first scene that has no answer as the file is; empty when all have. */
  Optional<Scene> unsolved() {
    for (int i = 0; i < scenes.size(); i++) {
      if (!start.get(i).solved()) {
        return Optional.of(scenes.get(i));
      }
    }
    return Optional.empty();
  }

  /** Readings that are numbers. */
  List<Clue> clues() {
    return clues;
  }

  /** Everything that was read, numbers or not. */
  List<Clue> all() {
    return all;
  }

  List<Scene> scenes() {
    return scenes;
  }

  List<Unknown> unknowns() {
    return unknowns;
  }

  /** What was read, SI. */
  double[] read() {
    return clues.stream().mapToDouble(clue -> likelihood(clue).value()).toArray();
  }

  static Likelihood.Measured likelihood(Clue clue) {
    return (Likelihood.Measured) clue.likelihood();
  }

  /** What the file as it is foretells of a clue. */
  double before(Clue clue) {
    return clue.value(start);
  }

  /** What is counted of each reading by the model error of pressures, or of temperatures. */
  double[] counted(boolean hot) {
    return clues.stream().mapToDouble(clue -> counted(clue, hot)).toArray();
  }

  private double counted(Clue clue, boolean hot) {
    if (recorded(clue)) {
      return 0; // most of what the model has wrong of a course is an unknown of its own
    }
    About about = clue.reading().orElseThrow().about();
    boolean skin = about instanceof About.Skin;
    if (!skin && !(about instanceof About.Scaled)) {
      return 0;
    }
    boolean own = skin || ((About.Scaled) about).temperature();
    double larger = Math.max(Math.abs(likelihood(clue).value()), Math.abs(before(clue)));
    return own != hot ? 0 : hot ? 1 : Errors.counted(larger);
  }

  /** Variance of each reading without the model's. */
  double[] own() {
    double[] own = new double[clues.size()];
    for (int i = 0; i < own.length; i++) {
      Clue clue = clues.get(i);
      double pressure = system.modelError().pressure() * counted(clue, false);
      double temperature = system.modelError().temperature() * counted(clue, true);
      double model = pressure * pressure + temperature * temperature;
      own[i] = Math.max(1e-9 * model, likelihood(clue).variance() - model);
    }
    return own;
  }

  /** The states with the unknowns moved; empty where one has no answer. */
  Optional<List<SceneState>> states(double[] theta) {
    return solver.states(new double[0], new Moving(unknowns).of(scenes.size(), theta));
  }

  /** The forecast as the file has it. */
  GaussNewton.Point first() {
    return point(new double[unknowns.size()], start);
  }

  /** The forecast with the unknowns moved. */
  Optional<GaussNewton.Point> at(double[] theta) {
    return states(theta).map(states -> point(theta, states));
  }

  private GaussNewton.Point point(double[] theta, List<SceneState> states) {
    double[] value = new double[clues.size()];
    for (int i = 0; i < value.length; i++) {
      value[i] =
          clues.get(i).value(states)
              + gauges(clues.get(i), theta)
              + recorded.channels(clues.get(i), theta, start);
    }
    return new GaussNewton.Point(theta, value, () -> slopes(theta, states));
  }

  private double[][] slopes(double[] theta, List<SceneState> states) {
    double[][] rows = Slopes.of(unknowns, clues, states);
    if (!readings.recordings().isEmpty()) {
      recorded.add(rows, theta, states, team);
    }
    return rows;
  }

  /** Whether a clue is of a recording. */
  boolean recorded(Clue clue) {
    return RunSlopes.of(clue, scenes);
  }

  /** What the constant errors of test gauges, and of senders that they share, add to a reading. */
  private double gauges(Clue clue, double[] theta) {
    double sum = 0;
    for (Clue.Term term : clue.terms()) {
      for (int u = 0; u < theta.length && !term.testGauge().isEmpty(); u++) {
        sum += term.weight() * bias(unknowns.get(u), theta[u], term.testGauge());
      }
    }
    return sum;
  }

  private double bias(Unknown unknown, double theta, String testGauge) {
    if (unknown instanceof Unknown.TestGauge test) {
      return test.name().equals(testGauge) ? test.sigma() * theta : 0;
    }
    boolean shared =
        unknown instanceof Unknown.OfPart own && sender(testGauge, own.number().part(), own);
    return shared ? Moving.value((Unknown.OfPart) unknown, theta) : 0;
  }

  /** Whether a number is the constant error of the gauge whose sender a test gauge sits on. */
  private boolean sender(String testGauge, String part, Unknown.OfPart number) {
    List<String> shared = new ArrayList<>();
    for (UsedGauge gauge : readings.gauges()) {
      if (gauge.name().equals(testGauge)) {
        shared.add(gauge.sharesSender());
      }
    }
    return shared.contains(part)
        && system.parts().stream()
            .filter(Gauge.class::isInstance)
            .filter(gauge -> gauge.name().equals(part))
            .map(Part::parameters)
            .anyMatch(own -> own.get(0).name().equals(number.number().parameter()));
  }
}

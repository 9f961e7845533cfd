package dev.offtake.cause.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import dev.offtake.cause.Readings;
import dev.offtake.cause.ReadingsReader;
import dev.offtake.cause.chance.LinearModel;
import dev.offtake.cause.chance.Slip;
import dev.offtake.part.Conditions;
import dev.offtake.part.Kinds;
import dev.offtake.solve.Setup;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.random.SobolSequenceGenerator;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The evidence of whole causes, valve stops and chokes included, against the plain average of the
 * density of the readings over Hipparchus' Sobol points, with nothing made straight.
 */
class WholeCaseTest {
  private static final int POINTS = 8192;

  private static final BleedSystem SYSTEM =
      SystemReader.readText(
              "one.yaml",
              """
              offtake: 1
              title: One tap
              power settings:
                idle: {core: 62 %, fan: 24 %, holds: physical}
                high: {core: 99 %, fan: 96 %, holds: physical}
              parts:
                tap:
                  kind: compressor tap
                  to: raw duct
                  bore: 2.4 in
                  taken on: standard day
                  table:
                    columns: [core %, psig, degF]
                    rows:
                      - [62, 26, 322]
                      - [80, 98, 590]
                      - [99, 285, 950]
                regulator:
                  kind: regulator
                  path: raw duct -> duct
                  bore: 2 in
                  holds: duct pressure
                  set to: 42 psig +4 -2
                  droop: unknown 3..6 psi
                user: {kind: flow user, takes from: duct, takes: 52 lb/min, needs: 12 psig}
              gauges:
                duct gauge:
                  reads: duct pressure
                  scale: 0..80 psig
                  step: 1 psi
                  good to: {constant: 0.8 psi, each reading: 0.3 psi}
              """,
              Kinds.all())
          .system()
          .orElseThrow();

  private static final int SEEDS = 8;

  /** A cause and readings under which it is likely. */
  private record Row(String cause, String... readings) {}

  @TestFactory
  Stream<DynamicTest> evidence() {
    return Stream.of(
            new Row("regulator set drifted low", "idle: duct 22 psig", "high: duct 33 psig"),
            new Row("regulator opens short", "idle: duct 14 psig", "high: duct 42 psig"),
            new Row("duct gauge reads low", "idle: duct 14 psig", "high: duct 34 psig"),
            new Row("regulator set drifted high", "idle: duct 23 psig", "high: duct 55 psig"),
            new Row("user takes too much", "idle: duct 17 psig", "high: duct 41 psig"))
        .map(row -> dynamicTest(row.cause(), () -> check(row)));
  }

  private static void check(Row row) {
    Readings readings =
        ReadingsReader.readLines(List.of(row.readings()), SYSTEM).readings().orElseThrow();
    double brute = Double.NaN;
    double sum = 0;
    for (int seed = 1; seed <= SEEDS; seed++) {
      Ranked ranked = ranked(row, readings, seed);
      brute = seed == 1 ? brute(ranked.cause(), readings) : brute;
      sum += ranked.evidence();

      // 240 draws at most.
      assertThat(ranked.evidence()).isCloseTo(brute, within(0.35));
    }

    // What the draws scatter is gone in their mean; a few thousand points are good to some per
    // cent.
    assertThat(sum / SEEDS).isCloseTo(brute, within(0.12));
  }

  private static Ranked ranked(Row row, Readings readings, int seed) {
    Prior prior = Prior.of(Prior.Reason.SQUAWK);
    return Finder.rank(SYSTEM, readings, prior, seed, share -> {}).ranked().stream()
        .filter(r -> r.cause().name().equals(row.cause()))
        .findFirst()
        .orElseThrow();
  }

  private static double brute(Cause cause, Readings readings) {
    BleedSystem system = Seeping.of(SYSTEM);
    Forecaster forecaster = new Forecaster(system);
    ClueMaker maker = new ClueMaker(system, readings);
    List<SceneState> sound = forecaster.sound(maker.scenes());
    List<Clue> clues = maker.clues(sound);
    List<Unknown> unknowns = Unknowns.of(system, maker.scenes(), readings.gauges());
    CauseSolver solver = CauseSolver.of(cause, forecaster, maker.scenes(), sound).orElseThrow();
    SobolSequenceGenerator sobol = new SobolSequenceGenerator(unknowns.size() + cause.extents());
    sobol.skipTo(64);
    double sum = 0;
    for (int i = 0; i < POINTS; i++) {
      double[] point = sobol.nextVector();
      double[] place = cause.extents() == 0 ? new double[0] : new double[] {point[0]};
      List<Moved> moved = new ArrayList<>();
      for (int scene = 0; scene < maker.scenes().size(); scene++) {
        int number = scene;
        moved.add(setup -> moved(setup, number, unknowns, point, cause.extents()));
      }
      Optional<List<SceneState>> states = solver.states(place, moved);
      sum +=
          states
              .map(s -> clues.stream().mapToDouble(clue -> clue.value(s)).toArray())
              .map(forecast -> Math.exp(log(clues, forecast)))
              .orElse(0.0);
    }
    return Math.log(sum / POINTS);
  }

  /** Each number is as foretold or misread. */
  private static double log(List<Clue> clues, double[] forecast) {
    double log = 0;
    for (int i = 0; i < forecast.length; i++) {
      Likelihood.Measured read = (Likelihood.Measured) clues.get(i).likelihood();
      LinearModel.Normal off = new LinearModel.Normal(read.value() - forecast[i], read.variance());
      log += new Slip(Weigher.SLIP, new double[] {read.scale()}).logDensity(0, off);
    }
    return log;
  }

  private static Setup moved(
      Setup setup, int scene, List<Unknown> unknowns, double[] point, int first) {
    Map<Setup.PartNumber, Double> changed = new LinkedHashMap<>(setup.changed());
    Conditions conditions = setup.conditions();
    for (int u = 0; u < unknowns.size(); u++) {
      double sigmas = Math.sqrt(2) * Erf.erfInv(2 * point[first + u] - 1);
      if (unknowns.get(u) instanceof Unknown.OfPart own) {
        double value = own.value() + own.sigma() * sigmas;
        changed.put(own.number(), Math.max(own.low(), Math.min(own.high(), value)));
      } else if (unknowns.get(u) instanceof Unknown.Outside outside && outside.felt(scene)) {
        conditions = outside.away(conditions, sigmas);
      }
    }
    return new Setup(conditions, setup.positions(), setup.locks(), changed);
  }
}

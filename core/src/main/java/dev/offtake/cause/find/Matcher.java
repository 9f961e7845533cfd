package dev.offtake.cause.find;

import dev.offtake.cause.Occasion;
import dev.offtake.cause.Reading;
import dev.offtake.cause.Readings;
import dev.offtake.cause.Recording;
import dev.offtake.cause.Seen;
import dev.offtake.cause.TripMoment;
import dev.offtake.cause.Value;
import dev.offtake.cause.chance.Fit;
import dev.offtake.cause.chance.LinearModel;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.ModelError;
import dev.offtake.system.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleConsumer;

/**
 * Matches the loose numbers of a system to a run of a sound engine.
 *
 * <p>The most probable unknowns are sought ({@link GaussNewton}) with everything moved that nobody
 * knows exactly, not only the numbers of the file: gauges, core speed, the air. What is left tells
 * the model error ({@link Leftover}), and where that differs much from the one in force the search
 * is made again with the new one.
 */
public final class Matcher {
  /** The search is made again when a model error moves by a larger share. */
  private static final double MOVED = 0.2;

  private static final int AGAIN = 3;

  /** A played run is not smooth: where so little could still be gained, it is at rest. */
  private static final double ROUGH = 0.15;

  /** Friction that is tried first, in deviations. */
  private static final double[] STICKS = {0.7, 1.5, 3};

  /** So many valves are tried with friction. */
  private static final int STARTS = 3;

  /** Two numbers are told only together when each is told less and both together more. */
  private static final double ALONE = 0.5;

  private static final double TOGETHER = 0.75;

  private final BleedSystem system;
  private final Readings readings;
  private final DoubleConsumer progress;
  private final Run run;
  private final double[] read;
  private final double[] own;

  private Matcher(BleedSystem system, Readings readings, DoubleConsumer progress)
      throws QuantityProblem {
    this.system = system;
    this.readings = readings;
    this.progress = progress;
    run = new Run(system, readings, new Team(system, share -> progress.accept(0.1)));
    refuse();
    read = run.read();
    own = run.own();
  }

  /**
   * Matches.
   *
   * @param system with loose numbers
   * @param readings of a run on which nothing was wrong
   * @param progress is told the share that is done, 0..1; whatever it throws ends the search
   * @throws QuantityProblem when the readings are not those of a sound engine by what they say
   *     themselves, or tell no number
   */
  public static Match match(BleedSystem system, Readings readings, DoubleConsumer progress)
      throws QuantityProblem {
    sound(readings);
    return new Matcher(system, readings, progress).match();
  }

  private static void sound(Readings readings) throws QuantityProblem {
    String mend = "match needs a run on which nothing was wrong; `offtake find` takes these";
    for (Occasion occasion : readings.occasions()) {
      if (occasion.trip().when() != TripMoment.When.NONE) {
        String wrong = "the readings speak of a trip (" + occasion.trip().words() + ")";
        throw new QuantityProblem(wrong, mend);
      }
    }
    for (Seen seen : readings.seen()) {
      if (seen.verdict() == Seen.Verdict.FAULTY) {
        String wrong = "something was found on " + seen.part() + " (" + seen.words() + ")";
        throw new QuantityProblem(wrong, mend);
      }
    }
  }

  private void refuse() throws QuantityProblem {
    Optional<Scene> unsolved = run.unsolved();
    if (unsolved.isPresent()) {
      throw new QuantityProblem(
          "the system as its file has it has no answer at " + unsolved.get().name(),
          "look at it with `offtake state`, or leave these readings out");
    }
    if (run.clues().isEmpty()) {
      throw new QuantityProblem(
          "no number was read, so there is nothing to match to",
          "give readings such as \"ground idle: left duct 15 psig\"");
    }
  }

  private Match match() {
    ModelError error = system.modelError();
    GaussNewton.Rest rest = first(error);
    boolean[] fits = fits(rest);
    Leftover.Estimate[] errors = errors(rest, fits);
    for (int again = 0; again < AGAIN && moved(error, errors); again++) {
      progress.accept((again + 1.0) / (AGAIN + 1));
      error = error.with(errors[0].error(), errors[1].error());
      rest = search(rest.point(), error);
      errors = errors(rest, fits);
    }
    progress.accept(1);
    return told(rest, error, errors, fits);
  }

  /**
   * Searches from where the file has it; with a recording also from friction in one valve, for
   * those for which it speaks most: what sticks does not move a little at first, so that no slope
   * leads there. The most probable end counts.
   */
  private GaussNewton.Rest first(ModelError error) {
    GaussNewton.Point start = run.first();
    double[] variance = variance(error);
    GaussNewton.Rest best = search(start, error);
    for (GaussNewton.Point point : sticking(start, variance)) {
      GaussNewton.Rest other = search(point, error);
      if (GaussNewton.cost(other.point(), read, variance)
          < GaussNewton.cost(best.point(), read, variance)) {
        best = other;
      }
    }
    return best;
  }

  /** Places with friction in one valve, the few for which the recording speaks most. */
  private List<GaussNewton.Point> sticking(GaussNewton.Point start, double[] variance) {
    Map<GaussNewton.Point, Double> speaks = new LinkedHashMap<>();
    LinearModel model = new LinearModel(start.slopes().get(), variance);
    for (int u = 0; u < run.unknowns().size(); u++) {
      boolean sticks =
          run.unknowns().get(u) instanceof Unknown.OfPace own && own.line() == PaceLine.FRICTION;
      if (sticks) {
        best(u, model).ifPresent(point -> speaks.put(point, evidence(model, point)));
      }
    }
    return speaks.entrySet().stream()
        .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
        .limit(STARTS)
        .map(Map.Entry::getKey)
        .toList();
  }

  private Optional<GaussNewton.Point> best(int unknown, LinearModel model) {
    Optional<GaussNewton.Point> best = Optional.empty();
    for (double much : STICKS) {
      double[] place = new double[run.unknowns().size()];
      place[unknown] = much;
      Optional<GaussNewton.Point> there = run.at(place);
      if (there.isPresent()
          && (best.isEmpty() || evidence(model, there.get()) > evidence(model, best.get()))) {
        best = there;
      }
    }
    return best;
  }

  private double evidence(LinearModel model, GaussNewton.Point point) {
    double[] left = new double[read.length];
    for (int i = 0; i < left.length; i++) {
      left[i] = read[i] - point.value()[i];
    }
    return model.logEvidence(left);
  }

  private GaussNewton.Rest search(GaussNewton.Point from, ModelError error) {
    double rough = readings.recordings().isEmpty() ? 0 : ROUGH;
    return GaussNewton.search(from, run::at, read, variance(error), rough);
  }

  private double[] variance(ModelError error) {
    double[] pressure = run.counted(false);
    double[] temperature = run.counted(true);
    double[] variance = own.clone();
    for (int i = 0; i < variance.length; i++) {
      double model = error.pressure() * pressure[i] + error.temperature() * temperature[i];
      variance[i] += model * model;
    }
    return variance;
  }

  /** Readings that fit with the model error in force: one that does not tells nothing of it. */
  private boolean[] fits(GaussNewton.Rest rest) {
    boolean[] fits = new boolean[read.length];
    for (int i = 0; i < fits.length; i++) {
      double score = rest.model().against(rest.residual(), i).score();
      fits[i] = Math.abs(score) <= Match.Left.FAR;
    }
    return fits;
  }

  private Leftover.Estimate[] errors(GaussNewton.Rest rest, boolean[] fits) {
    List<Integer> used = new ArrayList<>();
    for (int i = 0; i < fits.length; i++) {
      if (fits[i]) {
        used.add(i);
      }
    }
    double[][] slopes = used.stream().map(i -> rest.slopes()[i]).toArray(double[][]::new);
    double[] variance = pick(own, used);
    ModelError now = system.modelError();
    return new Leftover(slopes, pick(rest.residual(), used), variance)
        .of(
            Leftover.Group.of(
                pick(run.counted(false), used), now.pressure(), Leftover.LEAST_PRESSURE, variance),
            Leftover.Group.of(
                pick(run.counted(true), used),
                now.temperature(),
                Leftover.LEAST_TEMPERATURE,
                variance));
  }

  private static double[] pick(double[] all, List<Integer> used) {
    return used.stream().mapToDouble(i -> all[i]).toArray();
  }

  private static boolean moved(ModelError error, Leftover.Estimate[] errors) {
    return Math.abs(errors[0].error() / error.pressure() - 1) > MOVED
        || Math.abs(errors[1].error() / error.temperature() - 1) > MOVED;
  }

  private Match told(
      GaussNewton.Rest rest, ModelError error, Leftover.Estimate[] errors, boolean[] fits) {
    Map<Integer, Statement> stated = LooseNumbers.of(system, run.unknowns());
    List<Integer> columns = List.copyOf(stated.keySet());
    List<MatchedNumber> numbers = new ArrayList<>();
    stated.forEach((column, statement) -> numbers.add(number(rest, column, statement)));
    ModelError now = system.modelError();
    return new Match(
        system,
        readings,
        numbers,
        together(rest, columns, numbers),
        left(rest, fits),
        ignored(),
        otherwise(rest),
        left(now.pressure(), errors[0], run.counted(false)),
        left(now.temperature(), errors[1], run.counted(true)),
        Fit.chance(misfit(rest, error), read.length),
        run.unknowns().size() - numbers.size(),
        rest.settled(),
        paces(rest),
        courses(rest));
  }

  private List<MatchedPace> paces(GaussNewton.Rest rest) {
    List<MatchedPace> paces = new ArrayList<>();
    for (int u = 0; u < run.unknowns().size(); u++) {
      if (run.unknowns().get(u) instanceof Unknown.OfPace own) {
        double theta = rest.point().theta()[u];
        double left = left(rest, u, u, 0);
        double deviation = Math.sqrt(left);
        paces.add(
            new MatchedPace(
                own.part(),
                own.line(),
                own.value(),
                own.line().away(own.value(), own.sigma() * theta),
                own.line().away(own.value(), own.sigma() * (theta - deviation)),
                own.line().away(own.value(), own.sigma() * (theta + deviation)),
                1 - left));
      }
    }
    return paces;
  }

  private List<MatchedCourse> courses(GaussNewton.Rest rest) {
    List<MatchedCourse> courses = new ArrayList<>();
    for (Recording recording : readings.recordings()) {
      for (Recording.Channel channel : recording.channels()) {
        courses.add(course(rest, recording, channel));
      }
    }
    return courses;
  }

  private MatchedCourse course(
      GaussNewton.Rest rest, Recording recording, Recording.Channel channel) {
    double before = 0;
    double after = 0;
    double most = 0;
    double at = 0;
    int count = 0;
    for (int i = 0; i < read.length; i++) {
      Clue clue = run.clues().get(i);
      Optional<Instant> instant = run.scenes().get(clue.terms().get(0).scene()).instant();
      boolean own =
          instant.filter(one -> one.recording().equals(recording)).isPresent()
              && clue.reading().orElseThrow().about().equals(channel.about())
              && clue.reading().orElseThrow().value() instanceof Value.Figure;
      if (own) {
        double off = read[i] - run.before(clue);
        double left = read[i] - rest.point().value()[i];
        before += off * off;
        after += left * left;
        count++;
        if (Math.abs(left) > Math.abs(most)) {
          most = left;
          at = instant.orElseThrow().seconds();
        }
      }
    }
    int values = Math.max(1, count);
    return new MatchedCourse(
        recording, channel, Math.sqrt(before / values), Math.sqrt(after / values), most, at);
  }

  /** Told by the larger of the two errors: a small estimate must not make a sound run look odd. */
  private double misfit(GaussNewton.Rest rest, ModelError error) {
    ModelError now = system.modelError();
    double pressure = Math.max(now.pressure(), error.pressure());
    double temperature = Math.max(now.temperature(), error.temperature());
    return new LinearModel(rest.slopes(), variance(now.with(pressure, temperature)))
        .misfit(rest.residual());
  }

  private MatchedNumber number(GaussNewton.Rest rest, int column, Statement statement) {
    Unknown.OfPart number = (Unknown.OfPart) run.unknowns().get(column);
    double left = left(rest, column, column, 0);
    return new MatchedNumber(
        statement,
        number.number(),
        number.sigma(),
        Moving.value(number, rest.point().theta()[column]),
        number.sigma() * Math.sqrt(left),
        1 - left);
  }

  /** Variance that is left of an unknown, or of (one ± other)/√2, in units of that before. */
  private double left(GaussNewton.Rest rest, int one, int other, int sign) {
    double[] direction = new double[run.unknowns().size()];
    direction[one] = sign == 0 ? 1 : Math.sqrt(0.5);
    if (sign != 0) {
      direction[other] = sign * Math.sqrt(0.5);
    }
    return Math.min(1, rest.model().foretell(direction).variance());
  }

  private List<Match.Together> together(
      GaussNewton.Rest rest, List<Integer> columns, List<MatchedNumber> numbers) {
    List<Match.Together> pairs = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      for (int j = i + 1; j < columns.size(); j++) {
        if (numbers.get(i).told() < ALONE && numbers.get(j).told() < ALONE) {
          double sum = 1 - left(rest, columns.get(i), columns.get(j), 1);
          double difference = 1 - left(rest, columns.get(i), columns.get(j), -1);
          if (Math.max(sum, difference) > TOGETHER) {
            pairs.add(new Match.Together(i, j, sum > difference, Math.max(sum, difference)));
          }
        }
      }
    }
    return pairs;
  }

  private List<Match.Left> left(GaussNewton.Rest rest, boolean[] fits) {
    LinearModel judge = new LinearModel(rest.slopes(), variance(system.modelError()));
    double[] left = rest.left(read);
    double[] variance = variance(system.modelError());
    List<Match.Left> all = new ArrayList<>();
    for (int i = 0; i < left.length; i++) {
      Clue clue = run.clues().get(i);
      if (run.recorded(clue)) {
        continue;
      }
      double score = judge.against(rest.residual(), i).score();
      all.add(
          new Match.Left(
              run.scenes().get(clue.terms().get(0).scene()),
              clue.reading().orElseThrow(),
              read[i],
              run.before(clue),
              rest.point().value()[i],
              left[i] / Math.sqrt(variance[i]),
              score,
              fits[i]));
    }
    return all;
  }

  private List<Reading> ignored() {
    return run.all().stream()
        .filter(clue -> !clue.measured())
        .map(clue -> clue.reading().orElseThrow())
        .toList();
  }

  private List<Reading> otherwise(GaussNewton.Rest rest) {
    List<SceneState> states = run.states(rest.point().theta()).orElse(List.of());
    List<Reading> otherwise = new ArrayList<>();
    for (Clue clue : states.isEmpty() ? List.<Clue>of() : run.all()) {
      boolean lamp =
          clue.reading().map(Reading::value).filter(Value.Lit.class::isInstance).isPresent();
      if (lamp
          && clue.value(states) > 0.5 != ((Value.Lit) clue.reading().orElseThrow().value()).on()) {
        otherwise.add(clue.reading().orElseThrow());
      }
    }
    return otherwise;
  }

  private static Match.ErrorLeft left(double before, Leftover.Estimate estimate, double[] counted) {
    int readings = 0;
    for (double each : counted) {
      readings += each > 0 ? 1 : 0;
    }
    double after = estimate.freedom() >= Match.ErrorLeft.FEWEST ? estimate.error() : before;
    return new Match.ErrorLeft(before, after, readings, estimate.freedom());
  }
}

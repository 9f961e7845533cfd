package dev.offtake.cause.find;

import dev.offtake.cause.chance.Fit;
import dev.offtake.cause.chance.LinearModel;
import dev.offtake.cause.chance.Logs;
import dev.offtake.cause.chance.Slip;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** Sets forecasts against what was read. */
final class Weigher {
  /** Chance that somebody misreads a needle or slips with the pen: an assumption. */
  static final double SLIP = 0.01;

  /** Soft words together weigh no more than so many of them. */
  private static final int SOFT = 2;

  /** How many gauge errors a discrepancy that nobody understands may be, from and to. */
  private static final double FEW = 3;

  private static final double MANY = 30;
  private static final int SCALES = 9;

  private final List<Clue> clues;
  private final int[] measured;
  private final int[] said;
  private final double[] value;
  private final double[] variance;
  private final double[] reader;
  private final double[] own;
  private final Slip slip;
  private final double soft;

  Weigher(List<Clue> clues) {
    this.clues = List.copyOf(clues);
    measured = IntStream.range(0, clues.size()).filter(i -> clues.get(i).measured()).toArray();
    said = IntStream.range(0, clues.size()).filter(i -> !clues.get(i).measured()).toArray();
    value = of(Likelihood.Measured::value);
    variance = of(Likelihood.Measured::variance);
    reader = of(Likelihood.Measured::reader);
    own = of(Likelihood.Measured::own);
    slip = new Slip(SLIP, of(Likelihood.Measured::scale));
    long softs = Arrays.stream(said).filter(i -> said(i).soft()).count();
    soft = softs > SOFT ? SOFT / (double) softs : 1;
  }

  private double[] of(ToDoubleFunction<Likelihood.Measured> part) {
    return Arrays.stream(measured)
        .mapToDouble(i -> part.applyAsDouble((Likelihood.Measured) clues.get(i).likelihood()))
        .toArray();
  }

  private Likelihood.Said said(int clue) {
    return (Likelihood.Said) clues.get(clue).likelihood();
  }

  List<Clue> clues() {
    return clues;
  }

  /**
   * Weighs a cause.
   *
   * @param course what it foretells
   * @param slopes of the forecasts by what nobody knows, a row for each clue
   */
  Weighed weigh(Course course, double[][] slopes) {
    return weigh(course, new Model(slopes));
  }

  /** Weighs a cause with a model that is made already. */
  Weighed weigh(Course course, Model model) {
    List<Course.Point> points = course.points();
    double[] logs = new double[points.size()];
    for (int i = 0; i < logs.length; i++) {
      logs[i] = Math.log(points.get(i).weight()) + model.log(points.get(i).forecast());
    }
    return model.weighed(course, logs);
  }

  /** Prepares to weigh forecasts one by one. */
  Model model(double[][] slopes) {
    return new Model(slopes);
  }

  /** Evidence with the model that the slopes make. */
  final class Model {
    private final LinearModel linear;
    private final List<LinearModel.Foretold> foretold = new ArrayList<>();

    private Model(double[][] slopes) {
      linear = readings(slopes);
      for (int i : said) {
        foretold.add(linear.foretell(slopes[i]));
      }
    }

    /** Evidence of one forecast, a natural logarithm. */
    double log(double[] forecast) {
      double[] residual = residual(forecast);
      return slip.logEvidence(linear, residual) + words(forecast, residual);
    }

    /** The same where nothing was misread. */
    double logSound(double[] forecast) {
      double[] residual = residual(forecast);
      double sound = measured.length * Math.log1p(-SLIP) + linear.logEvidence(residual);
      return sound + words(forecast, residual);
    }

    private double words(double[] forecast, double[] residual) {
      double log = 0;
      for (int i = 0; i < said.length; i++) {
        Likelihood.Said word = said(said[i]);
        LinearModel.Foretold moved = foretold.get(i);
        double mean = forecast[said[i]] + moved.moves(residual);
        log += (word.soft() ? soft : 1) * word.log(mean, Math.sqrt(moved.variance()));
      }
      return log;
    }

    Weighed weighed(Course course, double[] logs) {
      double[] mass = Logs.shares(logs);
      double[] slips = new double[clues.size()];
      int best = 0;
      for (int i = 0; i < mass.length; i++) {
        best = density(course, logs, i) > density(course, logs, best) ? i : best;
      }
      double[] residual = residual(course.points().get(best).forecast());
      double[] chances = slip.chances(linear, residual);
      for (int i = 0; i < measured.length; i++) {
        slips[measured[i]] = chances[i];
      }
      double fit = Fit.chance(linear.misfit(residual), measured.length);
      return new Weighed(course, Logs.sum(logs), mass, best, slips, fit);
    }
  }

  /** What was read less what is foretold, of all numbers. */
  double[] residual(double[] forecast) {
    double[] residual = new double[measured.length];
    for (int i = 0; i < residual.length; i++) {
      residual[i] = value[i] - forecast[measured[i]];
    }
    return residual;
  }

  /**
   * Logarithm of the density of everything that was read, nothing misread, if a forecast is exact.
   *
   * @param variance of each number
   */
  double log(double[] forecast, double[] variance) {
    double log = measured.length * Math.log1p(-SLIP) + logNormal(forecast, variance);
    for (int i : said) {
      log += (said(i).soft() ? soft : 1) * said(i).log(forecast[i], 0);
    }
    return log;
  }

  /**
   * Logarithm of the density of all numbers, if a forecast is exact.
   *
   * @param variance of each number
   */
  double logNormal(double[] forecast, double[] variance) {
    double log = 0;
    double[] residual = residual(forecast);
    for (int i = 0; i < residual.length; i++) {
      log += new LinearModel.Normal(residual[i], variance[i]).logDensity();
    }
    return log;
  }

  /** Largest distance of two forecasts of a number, in its own errors. */
  double apart(double[] one, double[] two) {
    double apart = 0;
    for (int i = 0; i < measured.length; i++) {
      double off = Math.abs(one[measured[i]] - two[measured[i]]);
      apart = Math.max(apart, off / Math.sqrt(variance[i]));
    }
    return apart;
  }

  /** Largest difference that two forecasts make to the chance of what was said. */
  double speaks(double[] one, double[] two) {
    double most = 0;
    for (int i : said) {
      double chance = said(i).chance().applyAsDouble(one[i]);
      most = Math.max(most, Math.abs(chance - said(i).chance().applyAsDouble(two[i])));
    }
    return most;
  }

  /**
   * Best evidence of the numbers alone among the places at which something speaks up that does not
   * in a sound system; minus infinity where nothing does.
   */
  double numbers(Course course, double[][] slopes, double[] sound) {
    LinearModel model = readings(slopes);
    double best = Double.NEGATIVE_INFINITY;
    for (Course.Point point : course.points()) {
      if (speaks(point.forecast(), sound) > 0.5) {
        best = Math.max(best, slip.logEvidence(model, residual(point.forecast())));
      }
    }
    return best;
  }

  /** The place where it is reached. */
  double[] loudest(Course course, double[][] slopes, double[] sound) {
    LinearModel model = readings(slopes);
    Course.Point loudest = course.points().get(0);
    double best = Double.NEGATIVE_INFINITY;
    for (Course.Point point : course.points()) {
      double log = slip.logEvidence(model, residual(point.forecast()));
      if (speaks(point.forecast(), sound) > 0.5 && log > best) {
        best = log;
        loudest = point;
      }
    }
    return loudest.place();
  }

  /** What the readings make of the unknowns. */
  LinearModel readings(double[][] slopes) {
    double[][] rows = Arrays.stream(measured).mapToObj(i -> slopes[i]).toArray(double[][]::new);
    return new LinearModel(rows, variance(slopes));
  }

  /**
   * Variance of each number. A forecast that hangs on nothing that nobody knows, a needle that is
   * stuck, has no part in what the model has wrong either.
   *
   * @param slopes of the forecasts by what nobody knows
   */
  double[] variance(double[][] slopes) {
    double[] all = variance.clone();
    for (int i = 0; i < all.length; i++) {
      boolean deaf = Arrays.stream(slopes[measured[i]]).allMatch(slope -> slope == 0);
      all[i] = deaf ? reader[i] : all[i];
    }
    return all;
  }

  private static double density(Course course, double[] logs, int place) {
    return logs[place] - Math.log(course.points().get(place).weight());
  }

  /** Evidence that something is wrong which is not on the list. */
  double none(double[] healthy, double[][] slopes) {
    double[] logs = new double[SCALES];
    for (int k = 0; k < SCALES; k++) {
      double scale = FEW * Math.pow(MANY / FEW, k / (SCALES - 1.0));
      double[] wide = variance.clone();
      for (int i = 0; i < wide.length; i++) {
        wide[i] += scale * scale * own[i];
      }
      double[][] rows = Arrays.stream(measured).mapToObj(i -> slopes[i]).toArray(double[][]::new);
      double[] residual = residual(healthy);
      logs[k] = new LinearModel(rows, wide).logEvidence(residual) - Math.log(SCALES);
    }
    double log = Logs.sum(logs);
    for (int i : said) {
      Likelihood.Said word = said(i);
      double sound = word.chance().applyAsDouble(healthy[i]);
      log += (word.soft() ? soft : 1) * Math.log((sound + word.none()) / 2);
    }
    return log;
  }
}

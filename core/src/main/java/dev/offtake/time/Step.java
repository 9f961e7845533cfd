package dev.offtake.time;

/**
 * One step of the method of {@link Esdirk} on a model, with its error and a cubic between its ends.
 *
 * <p>The rate of a stage is what its store has gained, (S − kept)/H, so that what is stored at the
 * end is what was stored at the beginning and what has flowed. Allocates nothing.
 */
final class Step {
  private final Model model;
  private final Stage stage;
  private final int size;
  private final double[] begin;
  private final double[] beginStored;
  private final double[] beginSlope;
  private final double[] end;
  private final double[] endSlope;
  private final double[][] rates = new double[Esdirk.STAGES][];
  private final double[] kept;
  private final double[] stored;
  private final double[] second;
  private final double[] secondSlope;
  private final double[] bend;
  private final double[] allowed;
  private final double[] error;
  private double bent;

  Step(Model model) {
    this.model = model;
    stage = new Stage(model);
    size = model.size();
    begin = new double[size];
    beginStored = new double[size];
    beginSlope = new double[size];
    end = new double[size];
    endSlope = new double[size];
    kept = new double[size];
    stored = new double[size];
    second = new double[size];
    secondSlope = new double[size];
    bend = new double[size];
    allowed = new double[size];
    error = new double[size];
    for (int i = 0; i < rates.length; i++) {
      rates[i] = new double[size];
    }
  }

  /** The solver of its stages. */
  Stage stage() {
    return stage;
  }

  /**
   * Begins at a state, as after a jump: rates are computed anew.
   *
   * @param y state; what stores nothing is corrected
   */
  void start(double time, double[] y) {
    model.rates(time, y, rates[0]);
    System.arraycopy(y, 0, end, 0, size);
    model.stored(end, stored);
    begin();
  }

  /**
   * Begins at the end of the last step, after a jump outside: rates are computed anew, what is
   * stored stays.
   */
  void startAgain(double time) {
    model.rates(time, end, rates[0]);
    begin();
  }

  private void begin() {
    System.arraycopy(end, 0, begin, 0, size);
    System.arraycopy(stored, 0, beginStored, 0, size);
    model.slopes(begin, rates[0], beginSlope);
    bent = 0;
  }

  /** Begins where the last step ended. */
  void goOn(double length) {
    for (int i = 0; i < size; i++) {
      bend[i] = (endSlope[i] - beginSlope[i]) / length;
    }
    bent = length;
    System.arraycopy(end, 0, begin, 0, size);
    System.arraycopy(endSlope, 0, beginSlope, 0, size);
    System.arraycopy(stored, 0, beginStored, 0, size);
    System.arraycopy(rates[Esdirk.STAGES - 1], 0, rates[0], 0, size);
  }

  /** State at its beginning; not to be written. */
  double[] beginning() {
    return begin;
  }

  /** Slopes at its beginning; not to be written. */
  double[] beginSlope() {
    return beginSlope;
  }

  /** State at its end; not to be written. */
  double[] end() {
    return end;
  }

  /** Slopes at its end; not to be written. */
  double[] endSlope() {
    return endSlope;
  }

  /**
   * Makes a step.
   *
   * @param time of its beginning, s
   * @param length s
   * @param tolerance of {@link Model#allowed}
   * @return its error as a multiple of what is allowed; infinite when a stage was not found
   */
  double make(double time, double length, double tolerance) {
    model.allowed(begin, tolerance, allowed);
    double inverse = 1 / (length * Esdirk.GAMMA);
    for (int i = 1; i < Esdirk.STAGES; i++) {
      guess(i, length);
      keep(i, length);
      model.begin(time + Esdirk.c(i) * length, inverse, kept);
      if (!stage.solve(end, allowed, stored)) {
        return Double.POSITIVE_INFINITY;
      }
      for (int k = 0; k < size; k++) {
        rates[i][k] = (stored[k] - kept[k]) * inverse;
      }
      if (i == 1) {
        System.arraycopy(end, 0, second, 0, size);
        model.slopes(second, rates[1], secondSlope);
      }
    }
    model.slopes(end, rates[Esdirk.STAGES - 1], endSlope);
    return error(length, inverse);
  }

  private void keep(int i, double length) {
    for (int k = 0; k < size; k++) {
      double sum = 0;
      for (int j = 0; j < i; j++) {
        sum += Esdirk.a(i, j) * rates[j][k];
      }
      kept[k] = beginStored[k] + length * sum;
    }
  }

  /** Writes a guess of a stage into the end. */
  private void guess(int i, double length) {
    double into = Esdirk.c(i) * length;
    if (i == 1) {
      double turn = bent > 0 && into < 3 * bent ? 0.5 * into * into : 0;
      for (int k = 0; k < model.columns(); k++) {
        end[k] = begin[k] + into * beginSlope[k] + (turn > 0 ? turn * bend[k] : 0);
      }
      return;
    }
    double whole = Esdirk.c(1) * length;
    for (int k = 0; k < model.columns(); k++) {
      end[k] =
          model.stores(k)
              ? cubic(into / whole, whole, begin[k], beginSlope[k], second[k], secondSlope[k])
              : begin[k] + into / whole * (second[k] - begin[k]);
    }
  }

  private double error(double length, double inverse) {
    for (int k = 0; k < size; k++) {
      double sum = 0;
      for (int j = 0; j < Esdirk.STAGES; j++) {
        sum += Esdirk.error(j) * rates[j][k];
      }
      error[k] = length * sum;
    }
    model.leave(inverse, error);
    stage.toUnknowns(error);
    double most = 0;
    for (int k = 0; k < size; k++) {
      double share = Math.abs(error[k]) / allowed[k];
      if (!(share <= most) && (k >= model.columns() || model.stores(k))) {
        most = Double.isNaN(share) ? Double.POSITIVE_INFINITY : share;
      }
    }
    return most;
  }

  /**
   * Writes the state within the last step.
   *
   * @param share of the step, 0..1
   * @param length of the step, s
   */
  void at(double share, double length, double[] y) {
    for (int k = 0; k < size; k++) {
      y[k] = cubic(share, length, begin[k], beginSlope[k], end[k], endSlope[k]);
    }
  }

  /** Slope of {@link #cubic}, per second. */
  static double cubicSlope(double s, double length, double a, double da, double b, double db) {
    double rise = (b - a) / length;
    double inner = 6 * s * (1 - s) * rise;
    return inner + (1 - s) * (1 - 3 * s) * da + s * (3 * s - 2) * db;
  }

  /** A cubic by values and slopes at both ends. */
  static double cubic(double s, double length, double a, double da, double b, double db) {
    double gap = b - a;
    double left = da * length - gap;
    double right = gap - db * length;
    return a + s * gap + s * (1 - s) * ((1 - s) * left + s * right);
  }
}

package dev.offtake.cause.find;

import java.util.ArrayList;
import java.util.List;

/**
 * What is the same of two courses that swing alike but out of step.
 *
 * @param mean SI
 * @param size half the way from trough to crest of a sine of the same strength about the line along
 *     which the course drifts, SI: unlike the outermost values it does not grow with the noise of
 *     one of them, or with how long is looked
 * @param hertz how often it swings; 0 where it crosses its line too seldom to be told
 * @param crossings how often it crosses its line, there and back counted as two
 * @param end last value, SI
 */
record Wave(double mean, double size, double hertz, int crossings, double end) {
  /** Nothing is known. */
  static final Wave NONE = new Wave(Double.NaN, 0, 0, 0, Double.NaN);

  /** Of a course that crosses its line less often nobody can tell how often it swings. */
  private static final int CROSSINGS = 5;

  /** It has crossed its line when it is so far beyond it, a share of the size. */
  private static final double BEYOND = 0.3;

  boolean known() {
    return !Double.isNaN(mean);
  }

  /**
   * Looks at a course.
   *
   * @param seconds evenly spread, rising
   * @param values SI, one for each
   */
  static Wave of(double[] seconds, double[] values) {
    int n = values.length;
    if (n < 3) {
      return NONE;
    }
    double[] off = offLine(values);
    double square = 0;
    double mean = 0;
    for (int i = 0; i < n; i++) {
      square += off[i] * off[i] / n;
      mean += values[i] / n;
    }
    double size = Math.sqrt(2 * square);
    List<Double> crossings = crossings(seconds, off, BEYOND * size);
    int many = crossings.size();
    double hertz =
        many < CROSSINGS ? 0 : (many - 1) / (2 * (crossings.get(many - 1) - crossings.get(0)));
    return new Wave(mean, size, hertz, many, values[n - 1]);
  }

  /** What is left of values beside their straight line (least squares). */
  private static double[] offLine(double[] values) {
    int n = values.length;
    double middle = (n - 1) / 2.0;
    double mean = 0;
    double along = 0;
    double spread = 0;
    for (int i = 0; i < n; i++) {
      mean += values[i] / n;
      along += (i - middle) * values[i];
      spread += (i - middle) * (i - middle);
    }
    double[] off = new double[n];
    for (int i = 0; i < n; i++) {
      off[i] = values[i] - mean - along / spread * (i - middle);
    }
    return off;
  }

  /** When a course crosses its line, s. */
  private static List<Double> crossings(double[] seconds, double[] off, double beyond) {
    List<Double> crossings = new ArrayList<>();
    int side = 0;
    for (int i = 0; i < off.length && beyond > 0; i++) {
      int now = off[i] > beyond ? 1 : off[i] < -beyond ? -1 : side;
      if (side != 0 && now != side) {
        crossings.add(seconds[i]);
      }
      side = now;
    }
    return crossings;
  }
}

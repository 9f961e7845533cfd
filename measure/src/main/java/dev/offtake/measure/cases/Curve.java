package dev.offtake.measure.cases;

/**
 * A smooth curve through a few rising points that does not overshoot: piecewise cubic with slopes
 * after Fritsch and Carlson 1980 (in the harmonic form of Fritsch and Butland 1984; from memory).
 * Straight on beyond the ends.
 */
final class Curve {
  private final double[] x;
  private final double[] y;
  private final double[] slope;

  /**
   * Makes a curve.
   *
   * @param x rising, two or more
   * @param y as many
   */
  Curve(double[] x, double[] y) {
    this.x = x.clone();
    this.y = y.clone();
    int n = x.length;
    slope = new double[n];
    slope[0] = chord(0);
    slope[n - 1] = chord(n - 2);
    for (int i = 1; i < n - 1; i++) {
      double before = chord(i - 1);
      double after = chord(i);
      slope[i] = before * after <= 0 ? 0 : 2 * before * after / (before + after);
    }
  }

  private double chord(int i) {
    return (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
  }

  /** The value at a place. */
  double at(double where) {
    int last = x.length - 1;
    if (where <= x[0]) {
      return y[0] + slope[0] * (where - x[0]);
    }
    if (where >= x[last]) {
      return y[last] + slope[last] * (where - x[last]);
    }
    int i = gap(where);
    double h = x[i + 1] - x[i];
    double s = (where - x[i]) / h;
    double left = (1 + 2 * s) * (1 - s) * (1 - s) * y[i] + s * (1 - s) * (1 - s) * h * slope[i];
    double right = s * s * (3 - 2 * s) * y[i + 1] - s * s * (1 - s) * h * slope[i + 1];
    return left + right;
  }

  /** 1 in the middle between two points, 0 at the points and outside. */
  double between(double where) {
    if (where <= x[0] || where >= x[x.length - 1]) {
      return 0;
    }
    int i = gap(where);
    double sine = Math.sin(Math.PI * (where - x[i]) / (x[i + 1] - x[i]));
    return sine * sine;
  }

  private int gap(double where) {
    int i = 0;
    while (where > x[i + 1]) {
      i++;
    }
    return i;
  }
}

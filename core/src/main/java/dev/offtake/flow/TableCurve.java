package dev.offtake.flow;

/**
 * A monotone curve with continuous slope through points.
 *
 * <p>Cubic pieces with the limited slopes of M. Steffen, A simple method for monotonic
 * interpolation in one dimension, Astronomy and Astrophysics 239 (1990), from memory; end slopes
 * are those of the outer pieces.
 */
final class TableCurve implements OpeningCurve {
  private final double[] x;
  private final double[] y;
  private final double[] slopes;

  TableCurve(double[] x, double[] y) {
    check(x, y);
    this.x = x.clone();
    this.y = y.clone();
    this.slopes = slopes(x, y);
  }

  @Override
  public double area(double opening) {
    double at = Math.min(Math.max(opening, 0), 1);
    int i = piece(at);
    double h = x[i + 1] - x[i];
    double u = (at - x[i]) / h;
    double rise = y[i + 1] - y[i];
    double a = slopes[i] * h;
    double b = slopes[i + 1] * h;
    return y[i] + u * (a + u * (3 * rise - 2 * a - b + u * (a + b - 2 * rise)));
  }

  @Override
  public double slope(double opening) {
    double at = Math.min(Math.max(opening, 0), 1);
    int i = piece(at);
    double h = x[i + 1] - x[i];
    double u = (at - x[i]) / h;
    double rise = y[i + 1] - y[i];
    double a = slopes[i] * h;
    double b = slopes[i + 1] * h;
    return (a + u * (2 * (3 * rise - 2 * a - b) + 3 * u * (a + b - 2 * rise))) / h;
  }

  private int piece(double at) {
    int i = x.length - 2;
    while (i > 0 && at < x[i]) {
      i--;
    }
    return i;
  }

  private static double[] slopes(double[] x, double[] y) {
    int n = x.length;
    double[] slopes = new double[n];
    slopes[0] = chord(x, y, 0);
    slopes[n - 1] = chord(x, y, n - 2);
    for (int i = 1; i < n - 1; i++) {
      double before = chord(x, y, i - 1);
      double after = chord(x, y, i);
      double left = x[i] - x[i - 1];
      double right = x[i + 1] - x[i];
      double parabola = (before * right + after * left) / (left + right);
      slopes[i] = Math.min(parabola, 2 * Math.min(before, after));
    }
    return slopes;
  }

  private static double chord(double[] x, double[] y, int i) {
    return (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
  }

  private static void check(double[] x, double[] y) {
    if (x.length != y.length || x.length < 2) {
      throw new IllegalArgumentException(
          "An opening table needs two or more openings and as many areas, not "
              + x.length
              + " and "
              + y.length);
    }
    if (x[0] != 0 || x[x.length - 1] != 1 || !(y[0] >= 0)) {
      throw new IllegalArgumentException(
          "An opening table runs from opening 0 to 1 with areas of 0 or more; add the ends");
    }
    for (int i = 1; i < x.length; i++) {
      if (!(x[i] > x[i - 1]) || !(y[i] >= y[i - 1]) || Double.isInfinite(y[i])) {
        throw new IllegalArgumentException(
            "An opening table must rise: at opening "
                + x[i]
                + " put openings in order and let the"
                + " area not fall");
      }
    }
  }
}

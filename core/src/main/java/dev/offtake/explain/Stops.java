package dev.offtake.explain;

import dev.offtake.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Values at which a curve is looked at: round ones for a table, close ones for a picture. */
final class Stops {
  /** A table shows all stops up to this number, else the round ones only. */
  static final int FEW = 25;

  private static final int USUAL = 90;
  private static final int MOST_GAPS = 10;
  private static final double[] STEPS = {1, 2, 2.5, 5, 10};

  private Stops() {}

  /**
   * Stops of a sweep.
   *
   * @param from first value, SI
   * @param to last value, SI, above the first
   * @param unit whose round values are among them
   * @param points how many; 0 for the usual number
   */
  static List<Double> of(double from, double to, Unit unit, int points) {
    int number = points == 0 ? USUAL : points;
    TreeSet<Double> stops = new TreeSet<>();
    for (int i = 0; i < number; i++) {
      stops.add(from + (to - from) * i / (number - 1));
    }
    if (number > FEW) {
      double least = (to - from) / number / 100;
      for (double round : round(from, to, unit)) {
        stops.subSet(round - least, true, round + least, true).clear();
        stops.add(round);
      }
    }
    return new ArrayList<>(stops);
  }

  /** The ends and the round values between them, at most a dozen, SI. */
  static List<Double> round(double from, double to, Unit unit) {
    double low = unit.fromSi(from);
    double high = unit.fromSi(to);
    double step = step(high - low);
    List<Double> round = new ArrayList<>(List.of(from));
    for (long k = (long) Math.floor(low / step) + 1; k * step < high - step / 100; k++) {
      if (k * step > low + step / 100) {
        round.add(unit.toSi(k * step));
      }
    }
    round.add(to);
    return round;
  }

  /** The smallest round step that makes no more than ten gaps. */
  static double step(double length) {
    double ten = Math.pow(10, Math.floor(Math.log10(length / MOST_GAPS)));
    for (double step : STEPS) {
      if (length / (step * ten) <= MOST_GAPS + 1e-9) {
        return step * ten;
      }
    }
    return 10 * ten;
  }
}

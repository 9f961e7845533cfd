package dev.offtake.measure.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How far readings without noise lie from healthy ones: the distance of Mahalanobis with the
 * covariance of healthy plants and of their gauges. A light or a position that differs counts as
 * much as twice the logarithm of the odds that it was told right, and so does a needle of which a
 * crew says that it stands high or low, however far off it is: the word does not tell.
 */
final class Distance {
  private static final double TELLS = 2 * Math.log(0.985 / 0.015);

  private static final double SAYS = 2 * Math.log((1 - Eyes.CREW_ERRS) / Eyes.CREW_ERRS);

  /** Variance of an even spread with half-width 1. */
  private static final double EVEN = 1.0 / 3;

  /** Variance of rounding to a mark, in marks². */
  private static final double ROUNDING = 1.0 / 12;

  private final Healthy healthy;

  Distance(Healthy healthy) {
    this.healthy = healthy;
  }

  /** A number that is read, and where. */
  private record Place(Occasion occasion, Item item) {}

  /** What is shown at each occasion: by occasion and item of the schedule. */
  record Shown(List<double[]> values) {}

  /** Sigmas between what two plants show on the same run. */
  double between(Schedule schedule, Shown one, Shown other) {
    List<Place> places = new ArrayList<>();
    List<Double> differences = new ArrayList<>();
    double square = 0;
    for (int i = 0; i < schedule.occasions().size(); i++) {
      Occasion occasion = schedule.occasions().get(i);
      for (int k = 0; k < occasion.items().size(); k++) {
        Item item = occasion.items().get(k);
        double a = one.values.get(i)[k];
        double b = other.values.get(i)[k];
        if (item.number() && occasion.crew()) {
          double off = Math.abs(Panel.onScale(item, a) - Panel.onScale(item, b));
          square += off > (item.hot() ? Eyes.HOT_NORMAL : Eyes.NORMAL) ? SAYS : 0;
        } else if (item.number()) {
          places.add(new Place(occasion, item));
          differences.add((Panel.onScale(item, a) - Panel.onScale(item, b)) / item.mark());
        } else if (a != b) {
          square += TELLS;
        }
      }
    }
    double[] d = differences.stream().mapToDouble(value -> value).toArray();
    double[] weighed = places.isEmpty() ? d : Dense.solve(covariance(places), d.clone());
    for (int i = 0; i < d.length; i++) {
      square += d[i] * weighed[i];
    }
    return Math.sqrt(Math.max(0, square));
  }

  /** Covariance of what healthy plants show, and of their gauges, in marks². */
  private double[][] covariance(List<Place> places) {
    List<double[]> rows = rows(places);
    int n = places.size();
    double[] mean = new double[n];
    for (double[] row : rows) {
      for (int i = 0; i < n; i++) {
        mean[i] += row[i] / rows.size();
      }
    }
    double[][] covariance = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        for (double[] row : rows) {
          covariance[i][j] += (row[i] - mean[i]) * (row[j] - mean[j]) / (rows.size() - 1);
        }
        covariance[i][j] += gauges(places.get(i), places.get(j), i == j);
      }
    }
    return covariance;
  }

  /** What each healthy plant that came to rest everywhere shows at the places, in marks. */
  private List<double[]> rows(List<Place> places) {
    Knobs sound = Nominal.knobs();
    List<double[]> rows = new ArrayList<>();
    int count = healthy.at(places.get(0).occasion.stop()).size();
    for (int plant = 0; plant < count; plant++) {
      double[] row = new double[places.size()];
      boolean complete = true;
      for (int i = 0; i < row.length; i++) {
        Place place = places.get(i);
        Optional<State> state = healthy.at(place.occasion.stop()).get(plant);
        complete &= state.isPresent();
        row[i] =
            state.map(s -> Panel.onScale(place.item, Panel.shows(place.item, s, sound))).orElse(0.0)
                / place.item.mark();
      }
      if (complete) {
        rows.add(row);
      }
    }
    return rows;
  }

  private static double gauges(Place one, Place other, boolean same) {
    boolean shared = one.item.equals(other.item);
    boolean port = one.item.kind() == Item.Kind.INTERSTAGE;
    boolean hot = one.item.hot();
    double constant =
        (hot ? Eyes.HOT_CONSTANT : port ? Eyes.PORT_CONSTANT : Eyes.CONSTANT) / one.item.mark();
    double variance = shared ? EVEN * constant * constant : 0;
    if (same) {
      double each = (hot ? Eyes.HOT_EACH : port ? Eyes.PORT_EACH : Eyes.EACH) / one.item.mark();
      variance += EVEN * each * each + ROUNDING;
    }
    return variance;
  }
}

package dev.offtake.measure.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How what a person reads on a run scatters: among healthy plants, and among gauges. All in marks
 * of the gauges, so that pressures and temperatures weigh alike.
 */
final class Spread {
  private static final double TELLS = 2 * Math.log(0.985 / 0.015);

  private static final double SAYS = 2 * Math.log((1 - Eyes.CREW_ERRS) / Eyes.CREW_ERRS);

  /** Variance of an even spread with half-width 1. */
  private static final double EVEN = 1.0 / 3;

  /** Variance of rounding to a mark, in marks². */
  private static final double ROUNDING = 1.0 / 12;

  private final Schedule schedule;
  private final List<Place> places;
  private final double[][] plants;
  private final double[][] gauges;

  private Spread(Schedule schedule, List<Place> places, double[][] plants) {
    this.schedule = schedule;
    this.places = places;
    this.plants = plants;
    gauges = new double[places.size()][places.size()];
    for (int i = 0; i < gauges.length; i++) {
      for (int j = 0; j < gauges.length; j++) {
        gauges[i][j] = gauges(places.get(i), places.get(j), i == j);
      }
    }
  }

  /**
   * A number that is read.
   *
   * @param at number of the occasion
   * @param in number of the item there
   */
  record Place(Occasion occasion, Item item, int at, int in) {}

  /** The spread on a run. */
  static Spread of(Healthy healthy, Schedule schedule) {
    List<Place> places = new ArrayList<>();
    for (int i = 0; i < schedule.occasions().size(); i++) {
      Occasion occasion = schedule.occasions().get(i);
      for (int k = 0; k < occasion.items().size(); k++) {
        Item item = occasion.items().get(k);
        if (item.number() && !occasion.crew()) {
          places.add(new Place(occasion, item, i, k));
        }
      }
    }
    return new Spread(schedule, List.copyOf(places), covariance(rows(healthy, places)));
  }

  /** The numbers that are read, in their order. */
  List<Place> places() {
    return places;
  }

  /**
   * Covariance of the numbers, in marks².
   *
   * @param plants how much of the variance among plants is in it
   */
  double[][] covariance(double plants) {
    double[][] sum = new double[places.size()][places.size()];
    for (int i = 0; i < sum.length; i++) {
      for (int j = 0; j < sum.length; j++) {
        sum[i][j] = plants * this.plants[i][j] + gauges[i][j];
      }
    }
    return sum;
  }

  /** The numbers as far as their needles go, in marks. */
  double[] numbers(Shown shown) {
    double[] numbers = new double[places.size()];
    for (int i = 0; i < numbers.length; i++) {
      Place place = places.get(i);
      double value = shown.values().get(place.at)[place.in];
      numbers[i] = Panel.onScale(place.item, value) / place.item.mark();
    }
    return numbers;
  }

  /**
   * Sigmas between what two plants show: the distance of Mahalanobis. A light or a position that
   * differs counts as much as twice the logarithm of the odds that it was told right, and so does a
   * needle of which a crew says that it stands high or low, however far off it is: the word does
   * not tell.
   */
  double between(Shown one, Shown other) {
    double square = words(one, other);
    if (!places.isEmpty()) {
      double[] d = numbers(one);
      double[] away = numbers(other);
      for (int i = 0; i < d.length; i++) {
        d[i] -= away[i];
      }
      double[] weighed = Dense.solve(covariance(1), d.clone());
      for (int i = 0; i < d.length; i++) {
        square += d[i] * weighed[i];
      }
    }
    return Math.sqrt(Math.max(0, square));
  }

  private double words(Shown one, Shown other) {
    double square = 0;
    for (int i = 0; i < schedule.occasions().size(); i++) {
      Occasion occasion = schedule.occasions().get(i);
      for (int k = 0; k < occasion.items().size(); k++) {
        Item item = occasion.items().get(k);
        double a = one.values().get(i)[k];
        double b = other.values().get(i)[k];
        if (item.number() && occasion.crew()) {
          double off = Math.abs(Panel.onScale(item, a) - Panel.onScale(item, b));
          square += off > (item.hot() ? Eyes.HOT_NORMAL : Eyes.NORMAL) ? SAYS : 0;
        } else if (!item.number() && a != b) {
          square += TELLS;
        }
      }
    }
    return square;
  }

  private static double[][] covariance(List<double[]> rows) {
    int n = rows.get(0).length;
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
      }
    }
    return covariance;
  }

  /** What each healthy plant that came to rest everywhere shows at the places, in marks. */
  private static List<double[]> rows(Healthy healthy, List<Place> places) {
    if (places.isEmpty()) {
      return List.of(new double[0], new double[0]);
    }
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

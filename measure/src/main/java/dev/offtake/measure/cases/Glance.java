package dev.offtake.measure.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How likely it is that what was told was told of a plant that shows this: by the same habits of
 * reading by which cases are drawn ({@link Eyes}).
 */
final class Glance {
  private static final int[] SLIPS = {-10, -5, 5, 10};

  private final Sheet sheet;
  private final Healthy healthy;
  private final Spread spread;
  private final double[][] root;
  private final double log;

  /** What was told, and what it was if a number was misread; whitened, with the log of its odds. */
  private final List<Meant> meant = new ArrayList<>();

  private record Meant(double[] white, double odds) {}

  /**
   * Looks at a sheet.
   *
   * @param around a plant of a flock stands for those around it: so much of the variance among
   *     healthy plants lies between it and them, a kernel's width
   */
  Glance(Sheet sheet, Healthy healthy, Spread spread, double around) {
    this.sheet = sheet;
    this.healthy = healthy;
    this.spread = spread;
    root = Dense.root(spread.covariance(around));
    double sum = 0;
    for (int i = 0; i < root.length; i++) {
      sum -= Math.log(root[i][i] * Math.sqrt(2 * Math.PI));
    }
    log = sum;
    double[] told = numbers();
    double right = told.length * Math.log1p(-Eyes.MISREAD);
    meant.add(new Meant(Dense.under(root, told), right));
    double slip = Math.log(Eyes.MISREAD / SLIPS.length / (1 - Eyes.MISREAD));
    for (int i = 0; i < told.length; i++) {
      for (int marks : SLIPS) {
        double[] other = told.clone();
        other[i] -= marks;
        meant.add(new Meant(Dense.under(root, other), right + slip));
      }
    }
  }

  private double[] numbers() {
    return spread.places().stream()
        .mapToDouble(place -> number(place.item(), sheet.told().get(place.at()).get(place.in())))
        .toArray();
  }

  /** A number that was told, in marks. */
  private static double number(Item item, String told) {
    if (told.startsWith("pegged")) {
      double end = told.endsWith("high") ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
      return Panel.onScale(item, end) / item.mark();
    }
    double number = Double.parseDouble(told.substring(0, told.indexOf(' ')));
    return (item.hot() ? Shop.kelvin(number) : number * Shop.PSI) / item.mark();
  }

  /** Natural logarithm of the likelihood. */
  double log(Shown shown) {
    double[] white = Dense.under(root, spread.numbers(shown));
    double[] logs = new double[meant.size()];
    for (int i = 0; i < logs.length; i++) {
      Meant one = meant.get(i);
      double square = 0;
      for (int k = 0; k < white.length; k++) {
        double off = white[k] - one.white[k];
        square += off * off;
      }
      logs[i] = one.odds - square / 2;
    }
    return log + logOfSum(logs) + words(shown);
  }

  /** The logarithm of a sum of exponentials. */
  static double logOfSum(double[] logs) {
    double most = Double.NEGATIVE_INFINITY;
    for (double one : logs) {
      most = Math.max(most, one);
    }
    double sum = 0;
    for (double one : logs) {
      sum += Math.exp(one - most);
    }
    return sum > 0 ? most + Math.log(sum) : Double.NEGATIVE_INFINITY;
  }

  private double words(Shown shown) {
    double sum = 0;
    for (int i = 0; i < sheet.told().size(); i++) {
      Occasion occasion = sheet.schedule().occasions().get(i);
      for (int k = 0; k < occasion.items().size(); k++) {
        Item item = occasion.items().get(k);
        OptionalDouble chance =
            word(occasion, item, shown.values().get(i)[k], sheet.told().get(i).get(k));
        sum += chance.isPresent() ? Math.log(chance.getAsDouble()) : 0;
      }
    }
    return sum;
  }

  /** Chance that a word is told; empty for a number that was read. */
  private OptionalDouble word(Occasion occasion, Item item, double shown, String told) {
    if (!item.number()) {
      return OptionalDouble.of(lamp(item, shown, told) ? 1 - Eyes.WRONG : Eyes.WRONG);
    }
    if (!occasion.crew()) {
      return OptionalDouble.empty();
    }
    double normal = item.hot() ? Eyes.HOT_NORMAL : Eyes.NORMAL;
    double bias = item.hot() ? Eyes.HOT_CONSTANT : Eyes.CONSTANT;
    double off = shown - Panel.shows(item, healthy.usual(occasion.stop()), Nominal.knobs());
    double low = share(-normal - off, bias);
    double high = 1 - share(normal - off, bias);
    double usual = 1 - low - high;
    double wrong = Eyes.CREW_ERRS;
    return OptionalDouble.of(
        switch (told) {
          case "low" -> (1 - wrong) * low + wrong * usual / 2;
          case "high" -> (1 - wrong) * high + wrong * usual / 2;
          default -> (1 - wrong) * usual + wrong * (low + high);
        });
  }

  private static boolean lamp(Item item, double shown, String told) {
    return item.kind() == Item.Kind.POSITION
        ? Eyes.position(shown).equals(told)
        : told.equals("on") == shown > 0.5;
  }

  /** Share of an even spread of so much to either side of nothing that lies below. */
  private static double share(double below, double half) {
    return Math.max(0, Math.min(1, (below + half) / (2 * half)));
  }
}

package dev.offtake.explain;

import dev.offtake.network.Network;
import dev.offtake.part.LeakLoop;
import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import dev.offtake.part.Trip;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What has been cooked: places hotter than in any healthy state, or than a limit allows. */
final class BreakHeat {
  /** Hotter by less than this is not told, K (30 °F): an assumption. */
  private static final double HOTTER = 30 / 1.8;

  /** No more places than this are told, the worst first. */
  private static final int MOST = 5;

  private final List<AtPower> powers;
  private final Network network;
  private final Style style;
  private final List<Found> found = new ArrayList<>();

  /** A place that gets too hot: by how much, K, and what is said of it. */
  private record Found(double excess, String says) {}

  /** The hottest that a place gets, and where. */
  private record Hottest(double kelvin, String power) {}

  private BreakHeat(List<AtPower> powers, Style style) {
    this.powers = powers.stream().filter(AtPower::solved).toList();
    this.style = style;
    network = this.powers.isEmpty() ? new Network(List.of(), List.of()) : first();
  }

  private Network first() {
    return powers.get(0).broken().network();
  }

  /**
   * Sentences without full stops, the worst first; empty when nothing gets hotter.
   *
   * @param powers the states at all powers
   * @param style units to speak in
   */
  static List<String> of(List<AtPower> powers, Style style) {
    BreakHeat heat = new BreakHeat(powers, style);
    for (int i = 0; i < heat.network.points().size(); i++) {
      heat.point(i);
    }
    return heat.found.stream()
        .sorted(Comparator.comparingDouble((Found f) -> f.excess()).reversed())
        .limit(MOST)
        .map(Found::says)
        .toList();
  }

  private void point(int point) {
    double usual =
        powers.stream().mapToDouble(at -> at.healthy().temperature(point)).max().orElse(0);
    Hottest hottest = hottest(point);
    String name = network.points().get(point).name();
    Optional<String> limit = limit(name, hottest.kelvin(), usual);
    if (hottest.kelvin() < usual + HOTTER && limit.isEmpty()) {
      return;
    }
    String over = limit.map(l -> ", over " + l).orElse("");
    String says =
        name
            + " gets "
            + print(hottest.kelvin())
            + " at "
            + hottest.power()
            + over
            + "; healthy it never gets more than "
            + print(usual)
            + touched(name);
    found.add(new Found(hottest.kelvin() - usual, says));
  }

  private String print(double kelvin) {
    return style.print(kelvin, Dimension.TEMPERATURE);
  }

  /** The hottest over all powers, states before a trip included. */
  private Hottest hottest(int point) {
    Hottest hottest = new Hottest(0, "");
    for (AtPower at : powers) {
      double now = at.broken().temperature(point);
      Optional<Solution> before = at.broken().outcome().before();
      double was = before.map(b -> b.temperature(point)).orElse(now);
      double most = Math.max(now, was);
      if (most > hottest.kelvin()) {
        String when = was > now ? ", before the trip" : "";
        hottest = new Hottest(most, at.power() + when);
      }
    }
    return hottest;
  }

  /** A limit that is passed now, and was not when healthy. */
  private Optional<String> limit(String point, double kelvin, double usual) {
    for (Part part : network.parts()) {
      double limit = limit(part, point);
      if (kelvin > limit && usual <= limit) {
        return Optional.of("the " + print(limit) + " of the " + part.name());
      }
    }
    return Optional.empty();
  }

  private static double limit(Part part, String point) {
    if (part instanceof LeakLoop loop && loop.zone().equals(point)) {
      return loop.parameters().get(0).value();
    }
    boolean watches =
        part instanceof Trip trip
            && trip.watches().temperature()
            && trip.watches().point().equals(point)
            && trip.above() >= 0;
    return watches
        ? ((Trip) part).parameters().get(((Trip) part).above()).value()
        : Double.POSITIVE_INFINITY;
  }

  private String touched(String point) {
    List<String> names = new ArrayList<>();
    for (Part part : network.parts()) {
      boolean touches = part.legs().stream().anyMatch(leg -> touches(leg, point));
      boolean plugged = part.kind().equals("test port") || part.kind().equals("leak");
      if (touches && !plugged) {
        names.add(part.name());
      }
    }
    return names.isEmpty() ? "" : ": look at " + String.join(", ", names);
  }

  private static boolean touches(Leg leg, String point) {
    return leg.from().equals(point) || leg.to().equals(point);
  }
}

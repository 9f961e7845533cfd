package dev.offtake.explain;

import dev.offtake.network.Network;
import dev.offtake.part.LeakLoop;
import dev.offtake.part.Leg;
import dev.offtake.part.OperatingLimit;
import dev.offtake.part.Part;
import dev.offtake.part.Trip;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What has been cooked: places hotter than in any healthy state, or than a limit allows. */
final class BreakHeat {
  /** Hotter by less than this is not told, K (30 °F): an assumption. */
  private static final double HOTTER = 30 / 1.8;

  /** No more places than this are told, the worst first. */
  private static final int MOST = 5;

  /** Said of the limit of a loop or a trip that ought to act there. */
  private static final String DARK = ", which would act there if it were sound";

  private final List<AtPower> powers;
  private final List<Solution> sound;
  private final Network network;
  private final Style style;
  private final List<Found> found = new ArrayList<>();

  /** A place that gets too hot: by how much, K, and what is said of it. */
  private record Found(double excess, String says) {}

  /** The hottest that a place gets, and where. */
  private record Hottest(double kelvin, String when, AtPower at) {}

  private BreakHeat(List<AtPower> powers, List<Solution> asItSits, Style style) {
    this.powers = powers.stream().filter(AtPower::solved).toList();
    sound =
        Stream.concat(this.powers.stream().map(AtPower::healthy), asItSits.stream())
            .filter(Solution::solved)
            .toList();
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
   * @param asItSits further healthy states, in the line-ups that the file gives the powers: what
   *     they reach is not a failure's doing, whatever was set for one of the powers
   * @param style units to speak in
   */
  static List<String> of(List<AtPower> powers, List<Solution> asItSits, Style style) {
    BreakHeat heat = new BreakHeat(powers, asItSits, style);
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
    double usual = sound.stream().mapToDouble(s -> most(s, point)).max().orElse(0);
    Hottest hottest = hottest(point);
    String name = network.points().get(point).name();
    Optional<String> limit = limit(name, hottest, usual);
    if (hottest.kelvin() < usual + HOTTER && limit.isEmpty()) {
      return;
    }
    String over = limit.map(l -> ", over " + l).orElse("");
    String says =
        name
            + " gets "
            + print(hottest.kelvin())
            + " "
            + hottest.when()
            + over
            + "; healthy it never gets more than "
            + print(usual)
            + look(point, hottest.at());
    found.add(new Found(hottest.kelvin() - usual, says));
  }

  private String print(double kelvin) {
    return style.print(kelvin, Dimension.TEMPERATURE);
  }

  /** The hottest over all powers, states before a trip included. */
  private Hottest hottest(int point) {
    Hottest hottest = new Hottest(0, "", powers.get(0));
    for (AtPower at : powers) {
      double most = most(at.broken(), point);
      if (most > hottest.kelvin()) {
        String when = most > at.broken().temperature(point) ? ", before the trip" : "";
        hottest = new Hottest(most, AtPower.words(List.of(at.power())) + when, at);
      }
    }
    return hottest;
  }

  /** The hottest that a point gets, K; the state before a trip included. */
  private static double most(Solution solution, int point) {
    double now = solution.temperature(point);
    return solution.outcome().before().map(b -> Math.max(now, b.temperature(point))).orElse(now);
  }

  /** A limit that is passed now, and was not when healthy; whether its loop lights. */
  private Optional<String> limit(String point, Hottest hottest, double usual) {
    for (Part part : network.parts()) {
      double limit = limit(part, point);
      if (hottest.kelvin() > limit && usual <= limit) {
        String over = "the " + print(limit) + " of the " + part.name();
        return Optional.of(
            over + (new DarkWarning(hottest.at().broken(), style).is(part) ? DARK : ""));
      }
    }
    return Optional.empty();
  }

  private static double limit(Part part, String point) {
    if (part instanceof LeakLoop loop && loop.zone().equals(point)) {
      return loop.parameters().get(0).value();
    }
    if (part instanceof OperatingLimit limit) {
      return limit.watches().point().equals(point) ? limit.hottest() : Double.POSITIVE_INFINITY;
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

  /** What to look at: the joint that blows into the place, else what it touches. */
  private String look(int point, AtPower at) {
    String name = network.points().get(point).name();
    Compared compared = new Compared(at.healthy(), at.broken(), style);
    List<String> blow = new ArrayList<>();
    List<String> touch = new ArrayList<>();
    for (int i = 0; i < network.parts().size(); i++) {
      Part part = network.parts().get(i);
      boolean into = part.legs().stream().anyMatch(leg -> leg.to().equals(name));
      boolean plugged = part.kind().equals("test port") || part.kind().equals("leak");
      if (into && BreakPlaces.blows(compared, i)) {
        blow.add(part.name());
      } else if (!plugged && part.legs().stream().anyMatch(leg -> touches(leg, name))) {
        touch.add(part.name());
      }
    }
    if (!blow.isEmpty()) {
      String verb = blow.size() == 1 ? ", which blows into it" : ", which blow into it";
      return ": look at " + String.join(", ", blow) + verb;
    }
    return touch.isEmpty() ? "" : ": look at " + String.join(", ", touch);
  }

  private static boolean touches(Leg leg, String point) {
    return leg.from().equals(point) || leg.to().equals(point);
  }
}

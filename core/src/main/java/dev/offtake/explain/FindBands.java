package dev.offtake.explain;

import dev.offtake.cause.find.Advice;
import dev.offtake.cause.find.Instrument;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a check would show, in a few bands with the causes of each. A cause that may show almost
 * anything stands apart: it would draw all bands into one.
 */
final class FindBands {
  private static final int MOST = 4;

  /** Bands whose middles are so many marks apart are told apart. */
  private static final double APART = 1.5;

  /** A cause whose range is wider than this share of all of them stands apart. */
  private static final double WIDE = 0.4;

  /** Marks of a test gauge that nobody described, Pa (1 psi). */
  private static final double MARK = 6894.757293168361;

  /** Marks of such a thermometer, K (10 °F). */
  private static final double DEGREES = 10 / 1.8;

  private final Instrument instrument;
  private final Style style;

  FindBands(Instrument instrument, Style style) {
    this.instrument = instrument;
    this.style = style;
  }

  /**
   * One band.
   *
   * @param low lowest that is shown, SI; chance of on for a light
   * @param high highest
   * @param apart whether it is a single cause that may show almost anything
   * @param causes numbers in the ranking; −1 for a sound system
   */
  record Band(double low, double high, boolean apart, Set<Integer> causes) {
    Band {
      causes = new LinkedHashSet<>(causes);
    }

    private double middle() {
      return (low + high) / 2;
    }

    /** Whether a value may lie in both. */
    boolean meets(Band other) {
      return low <= other.high && other.low <= high;
    }

    private Band with(Band other) {
      Set<Integer> all = new TreeSet<>(causes);
      all.addAll(other.causes);
      return new Band(Math.min(low, other.low), Math.max(high, other.high), apart, all);
    }
  }

  /** The bands, from low to high, those that stand apart last. */
  List<Band> of(List<Advice.Expect> expects) {
    return instrument.lamp() ? lamp(expects) : scale(expects);
  }

  private static Band band(Advice.Expect expect, boolean apart) {
    Set<Integer> causes = new TreeSet<>(expect.causes());
    if (causes.isEmpty()) {
      causes.add(-1);
    }
    return new Band(expect.low(), expect.high(), apart, causes);
  }

  private static List<Band> lamp(List<Advice.Expect> expects) {
    Map<String, Band> bands = new LinkedHashMap<>();
    for (Advice.Expect expect : expects) {
      String key = expect.low() > 0.5 ? "on" : expect.high() < 0.5 ? "off" : "either";
      bands.merge(key, band(expect, false), Band::with);
    }
    return bands.values().stream().sorted(Comparator.comparingDouble(band -> -band.low())).toList();
  }

  private List<Band> scale(List<Advice.Expect> expects) {
    double low = expects.stream().mapToDouble(Advice.Expect::low).min().orElse(0);
    double high = expects.stream().mapToDouble(Advice.Expect::high).max().orElse(0);
    double wide = Math.max(WIDE * (high - low), 3 * mark());
    List<Band> near = new ArrayList<>();
    List<Band> apart = new ArrayList<>();
    expects.stream()
        .map(expect -> band(expect, expect.high() - expect.low() > wide))
        .sorted(Comparator.comparingDouble(Band::low))
        .forEach(band -> (band.apart() ? apart : near).add(band));
    join(near);
    apart.stream().reduce(Band::with).ifPresent(near::add);
    return near;
  }

  private double mark() {
    boolean hot = instrument.dimension() == Dimension.TEMPERATURE;
    return Math.max(instrument.step(), hot ? DEGREES : MARK);
  }

  /** Puts the nearest neighbours together until all are apart and few. */
  private void join(List<Band> bands) {
    bands.sort(Comparator.comparingDouble(Band::middle));
    while (bands.size() > 1) {
      int nearest = 1;
      for (int i = 2; i < bands.size(); i++) {
        nearest = gap(bands, i) < gap(bands, nearest) ? i : nearest;
      }
      if (bands.size() <= MOST && gap(bands, nearest) > APART * mark()) {
        return;
      }
      bands.set(nearest - 1, bands.get(nearest - 1).with(bands.remove(nearest)));
    }
  }

  /** How far the middles of a band and of the one before it are apart. */
  private static double gap(List<Band> bands, int number) {
    return bands.get(number).middle() - bands.get(number - 1).middle();
  }

  /** What is seen in a band: {@code 20 to 21 psig}, {@code on}. */
  String shown(Band band) {
    if (instrument.lamp()) {
      return band.low() > 0.5 ? "on" : band.high() < 0.5 ? "off" : "on or off";
    }
    String low = read(band.low());
    String high = read(band.high());
    if (low.equals(high)) {
      return low;
    }
    String unit = style.unit(instrument.dimension());
    String range = low.replace(" " + unit, "") + " to " + high;
    return band.apart() ? "anything from " + range : range;
  }

  private String read(double si) {
    double on = Math.max(instrument.low(), Math.min(instrument.high(), si));
    return style.read(on, instrument.dimension(), mark());
  }
}

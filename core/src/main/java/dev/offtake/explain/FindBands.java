package dev.offtake.explain;

import dev.offtake.cause.find.Advice;
import dev.offtake.cause.find.Instrument;
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

  /** A cause whose range is wider than this share of all of them stands apart. */
  private static final double WIDE = 0.4;

  /** Marks of a test gauge that nobody described, Pa (1 psi). */
  private static final double MARK = 6894.757293168361;

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
    join(near, mark());
    while (near.size() > MOST) {
      join(near, gap(near));
    }
    apart.stream().reduce(Band::with).ifPresent(near::add);
    return near;
  }

  private double mark() {
    return Math.max(instrument.step(), MARK);
  }

  /** Smallest distance of two bands. */
  private static double gap(List<Band> bands) {
    double gap = Double.POSITIVE_INFINITY;
    for (int i = 1; i < bands.size(); i++) {
      gap = Math.min(gap, bands.get(i).low() - bands.get(i - 1).high());
    }
    return gap;
  }

  /** Puts bands together that are not farther apart than some distance. */
  private static void join(List<Band> bands, double distance) {
    for (int i = bands.size() - 1; i > 0; i--) {
      if (bands.get(i).low() - bands.get(i - 1).high() <= distance) {
        bands.set(i - 1, bands.get(i - 1).with(bands.get(i)));
        bands.remove(i);
        i = Math.min(i + 1, bands.size());
      }
    }
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

package dev.offtake.study;

import dev.offtake.part.Control;
import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import dev.offtake.solve.Setup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How far the bands of the parts move an event.
 *
 * <p>Nobody knows the numbers of a system exactly. What moves an event is the curve of a tap
 * between the points of its table (±5 % of p/p₀ − 1 at mid-gap), the sets and droops of regulators
 * inside their bands, and the bands of the part that it happens to. Each number is put to the wider
 * end of its band, alone, with the memory of the state before the event, and the event looked for
 * anew; the other end moves it in proportion. The numbers are independent of one another, so the
 * shifts are gathered as the root of the sum of their squares, up and down apart. (All at their
 * worst ends together would be wider, and no engine is.)
 *
 * <p>A number that moves the event by less than 0.02 % of the sweep does not count; two states tell
 * that. A shift is known to a tenth of itself, and followed to the ends of the sweep. Numbers of
 * another side are first tried all at once.
 */
final class Spread {
  /** Parameters of any part that count, by name. */
  private static final Set<String> BANDS =
      Set.of("curve between points", "pressure factor", "set", "droop");

  /** Shares of the sweep: what is too little to count, the first stride, the farthest looked. */
  private static final double LITTLE = 2e-4;

  private static final double STRIDE = 0.01;
  private static final double FARTHEST = 0.4;

  /** Share of itself to which a shift is known. */
  private static final double EXACT = 0.1;

  private final Walk walk;
  private final EventFinder.Found event;
  private final int judged;
  private final Set<String> earlier = new HashSet<>();
  private final Set<String> later = new HashSet<>();

  /** Whether the walk goes up; shifts are looked for along it. */
  private final double sense;

  /**
   * Prepares.
   *
   * @param walk where the event was found
   * @param way steps of the whole walk in the order in which it went
   * @param event what happened
   */
  Spread(Walk walk, List<Step> way, EventFinder.Found event) {
    this.walk = walk;
    this.event = event;
    sense = Math.signum(event.after().x() - event.before().x());
    judged = judged(walk, event);
    for (Step step : way) {
      if (step.answered()) {
        boolean before = sense * (step.x() - event.x()) < 0;
        (before ? earlier : later).add(step.states().get(judged));
      }
    }
  }

  /** The change that brings the others about: what latches before what obeys. */
  private static int judged(Walk walk, EventFinder.Found event) {
    int best = event.changed().get(0);
    for (int i : event.changed()) {
      if (latches(walk, walk.subjects().get(i))) {
        return i;
      }
      if (walk.subjects().get(best).what() == Curve.What.TABLE) {
        best = i;
      }
    }
    return best;
  }

  private static boolean latches(Walk walk, Subject subject) {
    if (!(subject instanceof Subject.Regime regime)) {
      return false;
    }
    Part part = walk.network().parts().get(regime.part());
    return part.legs().isEmpty()
        && part.controls().stream().map(Control::rules).anyMatch(List::isEmpty);
  }

  /** What moves the event, the strongest first. */
  List<Curve.Cause> causes() {
    List<Curve.Cause> causes = new ArrayList<>();
    if (walk.subjects().get(judged).what() == Curve.What.TABLE) {
      return causes;
    }
    Map<String, List<Band>> sides = new LinkedHashMap<>();
    for (Band band : bands()) {
      sides.computeIfAbsent(walk.side(band.number().part()), s -> new ArrayList<>()).add(band);
    }
    String own = walk.side(walk.subjects().get(judged).name());
    for (Map.Entry<String, List<Band>> side : sides.entrySet()) {
      boolean near = side.getKey().isEmpty() || own.isEmpty() || side.getKey().equals(own);
      if (near || felt(side.getValue())) {
        side.getValue().forEach(band -> cause(band).ifPresent(causes::add));
      }
    }
    causes.sort(Comparator.comparingDouble((Curve.Cause c) -> c.below() - c.above()));
    return causes;
  }

  private List<Band> bands() {
    List<Band> bands = new ArrayList<>();
    List<Part> parts = walk.network().parts();
    for (int i = 0; i < parts.size(); i++) {
      for (Parameter parameter : parts.get(i).parameters()) {
        if (parameter.low() < parameter.high() && counts(i, parameter)) {
          bands.add(Band.of(parts.get(i), parameter));
        }
      }
    }
    return bands;
  }

  private boolean counts(int part, Parameter parameter) {
    String name = walk.network().parts().get(part).name();
    Setup.PartNumber number = new Setup.PartNumber(name, parameter.name());
    if (walk.sweep().varied().filter(number::equals).isPresent()) {
      return false;
    }
    for (int own : walk.subjects().get(judged).parts()) {
      if (own == part) {
        return true;
      }
    }
    return BANDS.contains(parameter.name());
  }

  /** Whether the numbers of the other side, all at the ends of their bands, move the event. */
  private boolean felt(List<Band> bands) {
    Map<Setup.PartNumber, Double> all = new HashMap<>();
    bands.forEach(band -> all.put(band.number(), band.value() + band.end()));
    double little = LITTLE * walk.sweep().length();
    return happened(all, -sense * little) || !happened(all, sense * little);
  }

  private Optional<Curve.Cause> cause(Band band) {
    double shift = shift(Map.of(band.number(), band.value() + band.end()));
    if (shift == 0) {
      return Optional.empty();
    }
    double back = shift * band.opposite() / band.end();
    return Optional.of(
        new Curve.Cause(
            band.number().part(),
            band.number().parameter(),
            Math.min(0, Math.min(shift, back)),
            Math.max(0, Math.max(shift, back))));
  }

  /** How far the event lies from where it is by the numbers in force, along x; 0 for too little. */
  private double shift(Map<Setup.PartNumber, Double> changed) {
    double length = walk.sweep().length();
    double near = LITTLE * length;
    boolean comesEarlier = happened(changed, -sense * near);
    if (!comesEarlier && happened(changed, sense * near)) {
      return 0;
    }
    double toward = comesEarlier ? -sense : sense;
    double room = toward > 0 ? walk.sweep().to() - event.x() : event.x() - walk.sweep().from();
    double most = Math.min(FARTHEST * length, room);
    double far = Math.min(STRIDE * length, most);
    while (happened(changed, toward * far) == comesEarlier) {
      if (far >= most) {
        return toward * most;
      }
      near = far;
      far = Math.min(2 * far, most);
    }
    while (far - near > EXACT * far) {
      double middle = (near + far) / 2;
      if (happened(changed, toward * middle) == comesEarlier) {
        near = middle;
      } else {
        far = middle;
      }
    }
    return toward * (near + far) / 2;
  }

  /** Whether the event is behind us some way from where it is by the numbers in force. */
  private boolean happened(Map<Setup.PartNumber, Double> changed, double away) {
    return walk.varied(event.before().solution(), event.x() + away, changed)
        .filter(s -> happened(walk.subjects().get(judged).state(s)))
        .isPresent();
  }

  /** A state that is met on one side of the event only tells the side. */
  private boolean happened(String state) {
    if (state.equals(event.after().states().get(judged))) {
      return true;
    }
    boolean before = state.equals(event.before().states().get(judged));
    return !before && later.contains(state) && !earlier.contains(state);
  }

  /**
   * A number and the distances from its value to the two ends of its band.
   *
   * @param end the wider one
   * @param opposite the other
   */
  private record Band(Setup.PartNumber number, double value, double end, double opposite) {
    static Band of(Part part, Parameter parameter) {
      double above = parameter.high() - parameter.value();
      double below = parameter.low() - parameter.value();
      boolean up = above >= -below;
      Setup.PartNumber number = new Setup.PartNumber(part.name(), parameter.name());
      return new Band(number, parameter.value(), up ? above : below, up ? below : above);
    }
  }
}

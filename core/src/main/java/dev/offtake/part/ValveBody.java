package dev.offtake.part;

import dev.offtake.flow.FlowLaw;
import dev.offtake.flow.NozzleLaw;
import dev.offtake.flow.OpeningCurve;
import dev.offtake.flow.ValveLaw;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What all valves share: a body with a bore, an effective area, a leak, a law and a way of being
 * locked or stuck.
 *
 * <p>Area = leak + (effective area − leak)·curve(opening), in both directions. The first parameters
 * of every valve are {@link #AREA}, {@link #LEAK}, {@link #STUCK}, {@link #MOST_OPENING}, {@link
 * #SLOWNESS} and {@link #FRICTION}, then come those of its kind, and last, where the law is that of
 * IEC 60534, its pressure ratio factor x_T; its first control is {@link #LOCK}.
 *
 * @param leg way of air
 * @param iec whether its law is that of IEC 60534, else it is an ideal nozzle
 * @param curve opening to share of area
 * @param floor smallest area, m²: no point of a network is ever exactly isolated
 * @param parameters all those of the valve
 */
record ValveBody(
    Leg leg, boolean iec, OpeningCurve curve, double floor, List<Parameter> parameters) {
  /** Parameter: effective area when open, m². */
  static final int AREA = 0;

  /** Parameter: effective area when shut, m². */
  static final int LEAK = 1;

  /** Parameter: opening at which the valve is stuck, 0..1; {@link #FREE} when it moves. */
  static final int STUCK = 2;

  /** Parameter: how far it can open, 0..1; 1 when nothing hinders it. */
  static final int MOST_OPENING = 3;

  /** Parameter: how many times slower than usual it moves; counts only while something changes. */
  static final int SLOWNESS = 4;

  /**
   * Parameter: share of its stroke by which its input must be ahead before it moves, beside that of
   * its pace; counts only while something changes.
   */
  static final int FRICTION = 5;

  /** Position of the first parameter of a valve's kind. */
  static final int COUNT = 6;

  /** Control: {@link #FREE}, {@link #LOCKED_SHUT}, {@link #LOCKED_OPEN} or {@link #CAPPED}. */
  static final int LOCK = 0;

  static final double FREE = -1;
  static final double LOCKED_SHUT = 0;
  static final double LOCKED_OPEN = 1;
  static final double CAPPED = 2;

  /** Physical bounds of x_T: outside them no valve is built (common practice, no source). */
  static final double LEAST_XT = 0.15;

  static final double MOST_XT = 0.95;

  /** Keeps its parameters. */
  ValveBody {
    parameters = List.copyOf(parameters);
  }

  /** The same body with the parameters of its kind, from {@link #COUNT} on. */
  ValveBody with(List<Parameter> own) {
    List<Parameter> all = new ArrayList<>(parameters);
    all.addAll(COUNT, own);
    return new ValveBody(leg, iec, curve, floor, all);
  }

  /** How many parameters its kind has. */
  int own() {
    return parameters.size() - COUNT - (iec ? 1 : 0);
  }

  /** Position of x_T among the parameters; −1 where the law has none. */
  int xT() {
    return iec ? parameters.size() - 1 : -1;
  }

  /** The control that line-ups set. */
  static Control lock() {
    return Control.memory("lock", FREE);
  }

  /** Makes the law of the body with its healthy x_T. */
  FlowLaw law() {
    return iec ? new ValveLaw(parameters.get(xT()).value()) : new NozzleLaw();
  }

  /** What a valve does that is capped, stuck or locked; null when it moves freely. */
  static @Nullable Doing held(View view) {
    double lock = view.control(LOCK);
    if (lock == CAPPED) {
      return new Doing("removed and capped", "capped", "it is removed and its port is capped");
    }
    double stuck = view.parameter(STUCK);
    if (stuck >= 0) {
      String word = Openings.word(stuck);
      return new Doing("stuck", "stuck " + word, "it is stuck and no longer moves");
    }
    if (lock == LOCKED_SHUT) {
      return new Doing("locked shut", "locked shut", "the line-up locks it shut");
    }
    if (lock == LOCKED_OPEN) {
      return new Doing("locked open", "locked open", "the line-up locks it open");
    }
    return null;
  }
}

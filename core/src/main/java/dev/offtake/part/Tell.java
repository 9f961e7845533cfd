package dev.offtake.part;

import java.util.Locale;

/** Sentences that several kinds share. */
final class Tell {
  /** Difference that is no more than rounding. */
  private static final double ROUNDING = 1e-9;

  private Tell() {}

  /** A point with its gauge pressure: {@code duct 23.1 psig}; the air outside is named as such. */
  static String pressureOf(View view, String point) {
    return point.equals(Leg.AMBIENT) ? "the air outside" : point + " " + view.gauge(view.p(point));
  }

  /** How a point's pressure compares with a needed one, Pa above the day's ambient. */
  static String need(View view, String point, double needs) {
    double room = view.p(point) - view.conditions().ambientP() - needs;
    return pressureOf(view, point)
        + (room >= 0 ? " is over" : " is under")
        + " the "
        + view.gaugeOf(needs)
        + " it needs by "
        + view.difference(Math.abs(room));
  }

  /**
   * What a resistance between two points does, and what has become of its area.
   *
   * @param view the solved state
   * @param leg its only way
   * @param verb what air does in it, such as {@code passes}
   * @param area its first parameter as it is when healthy
   */
  static Doing resistance(View view, Leg leg, String verb, Parameter area) {
    Doing plain = resistance(view, leg, verb);
    return new Doing(plain.regime(), plain.word(), plain.why() + changed(view, 0, area, "area"));
  }

  /**
   * A remark on a number that is not a healthy one: {@code ; it has 40 % of its area}.
   *
   * @param view the solved state
   * @param which position of the number
   * @param healthy the number as it is when healthy
   * @param what it is
   * @return empty while the number is healthy, or where it is nothing when healthy
   */
  static String changed(View view, int which, Parameter healthy, String what) {
    return changed(view, which, healthy, "has", what);
  }

  /** The same with another verb than {@code has}. */
  static String changed(View view, int which, Parameter healthy, String verb, String what) {
    double now = view.parameter(which);
    boolean sound = now >= healthy.low() * (1 - ROUNDING) && now <= healthy.high() * (1 + ROUNDING);
    if (sound || healthy.value() == 0) {
      return "";
    }
    double share = 100 * now / healthy.value();
    String number = String.format(Locale.ROOT, share < 1 ? "%.1f" : "%.0f", share);
    return "; it " + verb + " " + number + " % of its " + what;
  }

  /**
   * What a resistance between two points does.
   *
   * @param view the solved state
   * @param leg its only way
   * @param verb what air does in it, such as {@code passes}
   */
  static Doing resistance(View view, Leg leg, String verb) {
    double flow = view.flow(0);
    double lost = view.p(leg.from()) - view.p(leg.to());
    String ends = pressureOf(view, leg.from()) + (lost >= 0 ? " is over " : " is under ");
    String why = ends + pressureOf(view, leg.to()) + " by " + view.difference(Math.abs(lost));
    String passes = verb + " " + view.massFlow(Math.abs(flow)) + (flow < 0 ? ", backwards" : "");
    if (view.choked(0)) {
      String word = passes + ", choked";
      return new Doing("choked", word, why + ": air goes at the speed of sound, no more can pass");
    }
    if (flow == 0) {
      return new Doing("still", "no flow", why);
    }
    return new Doing(flow > 0 ? "forward" : "reverse", passes, why);
  }
}

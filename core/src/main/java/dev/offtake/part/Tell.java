package dev.offtake.part;

/** Sentences that several kinds share. */
final class Tell {
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

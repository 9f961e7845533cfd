package dev.offtake.part;

/** Openings and pairs of values in the words of the shop. */
final class Openings {
  /** Openings nearer to a stop than this are called shut or open. */
  private static final double STOP = 0.01;

  private static final String SHUT = "shut";

  private static final double[] SHARES = {0.1, 0.25, 1 / 3.0, 0.5, 2 / 3.0, 0.75, 0.9};
  private static final String[] WORDS = {"1/10", "1/4", "1/3", "1/2", "2/3", "3/4", "9/10"};

  private Openings() {}

  /**
   * An opening in words.
   *
   * @param opening share of the stroke, 0..1
   * @return {@code shut}, {@code just open}, {@code about 1/3 open}, {@code open}
   */
  static String word(double opening) {
    if (opening <= STOP) {
      return SHUT;
    }
    if (opening >= 1 - STOP) {
      return "open";
    }
    if (opening < 0.05) {
      return "just open";
    }
    int best = 0;
    for (int i = 1; i < SHARES.length; i++) {
      if (Math.abs(SHARES[i] - opening) < Math.abs(SHARES[best] - opening)) {
        best = i;
      }
    }
    return "about " + WORDS[best] + " open";
  }

  /**
   * The same of a valve that is not yet where it is moved to, as it only can be while time passes:
   * {@code about 3/4 open, closing}.
   *
   * @param doing what moves it and where to
   * @param opening where it stands, 0..1
   */
  static Doing onItsWay(Doing doing, double opening) {
    String stands = word(opening);
    return doing.word().equals(SHUT) && !stands.equals(SHUT)
        ? new Doing(doing.regime(), stands + ", closing", doing.why())
        : doing;
  }

  /**
   * A printed temperature without its unit, for the first of a range: {@code 390 °F} is {@code
   * 390}.
   */
  static String bare(String printed) {
    int space = printed.lastIndexOf(' ');
    return space < 0 ? printed : printed.substring(0, space);
  }

  /**
   * Pressure that holds a valve shut from behind: {@code 23.1 psig behind it, 8.1 psig ahead: 15.0
   * psi hold it}.
   *
   * @param view prints
   * @param ahead pressure at the from end, Pa absolute
   * @param behind pressure at the to end, Pa absolute
   */
  static String heldFromBehind(View view, double ahead, double behind) {
    return view.gauge(behind)
        + " behind it, "
        + view.gauge(ahead)
        + " ahead: "
        + view.difference(behind - ahead)
        + " hold it";
  }

  /** A reason with the remark that the stream is choked, where it is. */
  static String chokedOr(View view, String why) {
    return view.choked(0) ? why + "; the air is choked in it" : why;
  }
}

package dev.offtake.stability;

import dev.offtake.stability.Stability.Verdict;
import java.util.ArrayList;
import java.util.List;

/**
 * Puts modes into words.
 *
 * <p>An upset counts as faded when a twentieth is left, after three time constants. With a damping
 * ratio of 0.15 it then has swung three times; with 0.01 fifty times, and no assumed lag is known
 * well enough to call that steady.
 */
final class Judgement {
  /** Slower growth than this is rounding, 1/s. */
  private static final double ROUNDING = 1e-6;

  /** Least damping ratio that is called steady: three swings. */
  private static final double RINGS = 0.15;

  /** Least damping ratio that is called ringing: fifty swings. */
  private static final double BARELY = 0.01;

  /** Ringing that is over sooner is not seen on a gauge, s. */
  private static final double SEEN = 0.5;

  /** Air without a valve that takes longer than this is slow by nature, s. */
  private static final double STILL = 5;

  /** A valve that takes longer than this is named even where all is steady, s. */
  private static final double NAMED = 3;

  /** Time constants until a twentieth is left. */
  private static final double FADED = 3;

  private final List<Mode> modes;

  private Judgement(List<Mode> modes) {
    this.modes = modes;
  }

  /** Judges modes that are sorted, the one that grows fastest or fades slowest first. */
  static Stability of(List<Mode> modes) {
    Judgement judgement = new Judgement(modes);
    Verdict verdict = Verdict.STEADY;
    for (Mode mode : modes) {
      Verdict one = verdict(mode);
      verdict = one.compareTo(verdict) > 0 ? one : verdict;
    }
    return new Stability(verdict, judgement.says(verdict), modes);
  }

  private static Verdict verdict(Mode mode) {
    boolean swings = mode.circular() > 0;
    if (mode.growth() > ROUNDING) {
      return swings ? Verdict.HUNTS : Verdict.LEAVES;
    }
    if (!swings || mode.damping() >= RINGS) {
      return Verdict.STEADY;
    }
    if (mode.damping() < BARELY) {
      return Verdict.BARELY_STEADY;
    }
    return faded(mode) > SEEN ? Verdict.RINGS : Verdict.STEADY;
  }

  private static double faded(Mode mode) {
    return FADED * mode.timeConstant();
  }

  private List<String> says(Verdict verdict) {
    List<String> says = new ArrayList<>();
    if (verdict == Verdict.STEADY) {
      says.add(settles());
    }
    List<String> told = new ArrayList<>();
    for (Mode mode : modes) {
      Verdict one = verdict(mode);
      boolean again = told.contains(one + mode.driver());
      if (one != Verdict.STEADY && !again) {
        told.add(one + mode.driver());
        says.add(noteworthy(one, mode));
      }
    }
    return says;
  }

  private String settles() {
    for (Mode mode : modes) {
      if (!still(mode)) {
        boolean named = mode.byValve() && mode.timeConstant() > NAMED;
        String by = named ? " (" + mode.driver() + ")" : "";
        return "steady: an upset is gone in " + Times.seconds(faded(mode)) + by + stillAir();
      }
    }
    return "steady" + stillAir();
  }

  private String stillAir() {
    boolean any = !modes.isEmpty() && still(modes.get(0));
    return any ? "; in still air " + Times.seconds(faded(modes.get(0))) : "";
  }

  private static boolean still(Mode mode) {
    return !mode.byValve() && mode.circular() == 0 && mode.timeConstant() > STILL;
  }

  private static String noteworthy(Verdict verdict, Mode mode) {
    String time = Times.seconds(mode.timeConstant());
    String swings = swings(mode);
    return switch (verdict) {
      case LEAVES -> "WOULD NOT STAY HERE: " + mode.driver() + " runs away, threefold in " + time;
      case HUNTS -> "HUNTS: " + swings + ", grows threefold in " + time + " until a stop ends it";
      case BARELY_STEADY -> "BARELY STEADY: " + swings + ", hardly fades";
      default -> "rings: " + swings + ", gone in " + Times.seconds(faded(mode));
    };
  }

  private static String swings(Mode mode) {
    return mode.driver() + ", " + Times.hertz(mode.frequency());
  }

  /**
   * Two judgements of one state that differ in whether it hunts.
   *
   * @param usual with usual lags
   * @param other with half of them if the usual ones make it hunt, else with twice as long ones
   */
  static Stability mayHunt(Stability usual, Stability other) {
    List<String> says = new ArrayList<>();
    if (usual.verdict() == Verdict.HUNTS) {
      says.add(
          "may hunt: "
              + swings(hunting(usual))
              + ": grows with the sense line and disc assumed, fades with ones twice as quick");
    } else {
      says.addAll(usual.says());
      says.add(
          "may hunt: "
              + swings(hunting(other))
              + ", if sense line and disc are twice as slow as assumed");
    }
    return new Stability(Verdict.MAY_HUNT, says, usual.modes());
  }

  private static Mode hunting(Stability stability) {
    return stability.modes().stream()
        .filter(mode -> verdict(mode) == Verdict.HUNTS)
        .findFirst()
        .orElseThrow();
  }
}

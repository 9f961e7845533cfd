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
    for (Mode mode : modes) {
      Verdict one = verdict(mode);
      if (one != Verdict.STEADY) {
        String line = noteworthy(one, mode);
        if (!says.contains(line)) {
          says.add(line);
        }
      }
    }
    return says;
  }

  private String settles() {
    for (Mode mode : modes) {
      if (!still(mode)) {
        String by = mode.byValve() ? ", slowest the " + mode.driver() : "";
        return "steady: an upset is gone in " + Times.seconds(faded(mode)) + by + stillAir();
      }
    }
    return "steady" + stillAir();
  }

  private String stillAir() {
    if (modes.isEmpty() || !still(modes.get(0))) {
      return "";
    }
    Mode slowest = modes.get(0);
    String where = slowest.driver();
    return "; still air takes longer, up to " + Times.seconds(faded(slowest)) + " in " + where;
  }

  private static boolean still(Mode mode) {
    return !mode.byValve() && mode.circular() == 0 && mode.timeConstant() > STILL;
  }

  private static String noteworthy(Verdict verdict, Mode mode) {
    String who = mode.driver();
    String time = Times.seconds(mode.timeConstant());
    String swings = who + " swings, " + Times.hertz(mode.frequency());
    return switch (verdict) {
      case LEAVES -> "WOULD NOT STAY HERE: an upset of " + who + " grows threefold every " + time;
      case HUNTS -> "HUNTS: " + swings + ", threefold every " + time + " until a stop ends it";
      case BARELY_STEADY -> "BARELY STEADY: " + swings + ", and hardly fades";
      default -> "rings: " + swings + ", gone in " + Times.seconds(faded(mode));
    };
  }
}

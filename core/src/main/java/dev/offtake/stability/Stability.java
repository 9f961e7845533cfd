package dev.offtake.stability;

import dev.offtake.network.Equations;
import dev.offtake.part.Part;
import dev.offtake.solve.Solution;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.hipparchus.exception.MathRuntimeException;

/**
 * Whether a steady answer stays after a small upset, and how it comes back.
 *
 * @param verdict in one word
 * @param says in sentences, the verdict first
 * @param modes all modes, the one that grows fastest or fades slowest first
 */
public record Stability(Verdict verdict, List<String> says, List<Mode> modes) {
  /** What a small upset does; from good to bad. */
  public enum Verdict {
    /** It fades. */
    STEADY,
    /** It fades after more than three swings. */
    RINGS,
    /** It swings so long that friction and luck decide. */
    BARELY_STEADY,
    /** Whether it grows in swings hangs on lags that are known to a factor of two at best. */
    MAY_HUNT,
    /** It grows in swings. */
    HUNTS,
    /** It runs away to another state. */
    LEAVES,
    /** It cannot be judged. */
    NOT_TOLD;

    /** The verdict in small letters. */
    public String words() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /** More states than this are not judged: time grows with their cube. */
  private static final int MOST_STATES = 1500;

  /** A mode with less damping than this could hunt with slower lags. */
  private static final double NEAR = 0.4;

  /** Keeps its lists. */
  public Stability {
    says = List.copyOf(says);
    modes = List.copyOf(modes);
  }

  /**
   * Judges an answer with usual lags. They are assumptions: where half or twice as quick a sense
   * line and disc would change whether a valve hunts, it may hunt.
   */
  public static Stability of(Solution solution) {
    Stability usual = of(solution, Lags::usual);
    boolean hunts = usual.verdict == Verdict.HUNTS;
    boolean firm = usual.modes.stream().noneMatch(Stability::isNear);
    if (firm || usual.verdict == Verdict.LEAVES) {
      return usual;
    }
    Stability other = of(solution, part -> Lags.usual(part).quick(hunts ? 0.5 : 2));
    boolean otherHunts = other.verdict == Verdict.HUNTS;
    return hunts == otherHunts ? usual : Judgement.mayHunt(usual, other);
  }

  /**
   * Judges an answer.
   *
   * @param solution a solved state
   * @param lags of each valve that moves freely
   */
  public static Stability of(Solution solution, Function<Part, Lags> lags) {
    if (!solution.solved()) {
      return notTold("there is no answer to judge");
    }
    if (2 * solution.network().points().size() > MOST_STATES) {
      return notTold("the network is too large to judge");
    }
    return of(solution.equations(), lags);
  }

  /** Judges equations that stand at a steady state; they are used up by it. */
  static Stability of(Equations equations, Function<Part, Lags> lags) {
    Motion motion = Linear.of(equations, lags);
    if (!motion.finite()) {
      return notTold("some place answers to no upset at all");
    }
    try {
      return Judgement.of(Modes.of(motion));
    } catch (MathRuntimeException noEigenvalues) {
      return notTold("its modes could not be told apart");
    }
  }

  /**
   * Whether quick lags twice as long could take the damping of a mode. They turn its phase by ω τ,
   * and a loop of damping ζ has a margin of about 1.75 ζ (textbook rule, for ζ under 0.6).
   */
  private static boolean isNear(Mode mode) {
    return mode.damping() < Math.min(NEAR, mode.circular() * Lags.QUICK);
  }

  /** No judgement. */
  private static Stability notTold(String why) {
    return new Stability(Verdict.NOT_TOLD, List.of("not told: " + why), List.of());
  }
}

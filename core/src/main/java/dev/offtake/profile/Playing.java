package dev.offtake.profile;

import dev.offtake.solve.Settler;
import dev.offtake.solve.Solution;
import dev.offtake.stability.Mode;
import dev.offtake.stability.Stability;
import dev.offtake.time.Played;
import dev.offtake.time.Settings;
import dev.offtake.time.Transient;
import java.util.TreeSet;

/**
 * Plays a sequence, with steps that are short against whatever hunts.
 *
 * <p>The method of {@link Transient} damps what is quick against its steps, growing swings too:
 * left to itself it holds a valve at rest that cannot stay there. So the states in which the system
 * comes to rest, before each thing that is done and at the end, are judged by their modes; where
 * one grows in swings, all is played again with twenty steps to a swing.
 */
public final class Playing {
  private static final double STEPS_A_SWING = 20;

  /** Swings that are quicker are told by their mean, Hz. */
  private static final double QUICKEST = 25;

  /** Slower growth than this is rounding, 1/s. */
  private static final double ROUNDING = 1e-6;

  /** Most states that are judged. */
  private static final int MOST = 12;

  private final Sequence sequence;
  private final Paces paces;

  private Playing(Sequence sequence, Paces paces) {
    this.sequence = sequence;
    this.paces = paces;
  }

  /**
   * Plays.
   *
   * @param paces how valves move
   * @param listener told after each step; false calls it off
   */
  public static Played of(Sequence sequence, Paces paces, Transient.Listener listener) {
    return new Playing(sequence, paces).played(listener);
  }

  private Played played(Transient.Listener listener) {
    Settings settings = sequence.settings();
    Played played = run(settings, listener);
    if (played.end() != Played.End.DONE) {
      return played;
    }
    double longest = 1 / (STEPS_A_SWING * Math.min(QUICKEST, hunts(played)));
    return longest < settings.longest() ? run(settings.withLongest(longest), listener) : played;
  }

  private Played run(Settings settings, Transient.Listener listener) {
    return new Transient(sequence.network()).run(sequence.drive(), settings, listener);
  }

  /** Frequency of the quickest swing that grows where the system comes to rest, Hz; 0 for none. */
  private double hunts(Played played) {
    TreeSet<Double> times = new TreeSet<>();
    times.add(played.seconds());
    sequence.happenings().stream()
        .limit(MOST)
        .forEach(one -> times.add(Math.max(0, one.at() - 1e-6)));
    Settler settler = new Settler(sequence.network());
    double quickest = 0;
    for (double time : times) {
      Solution state = played.at(time);
      if (state.setup().conditions().core() > 0) {
        Solution steady = settler.goOn(state, state.setup());
        quickest = Math.max(quickest, steady.solved() ? grows(steady) : 0);
      }
    }
    return quickest;
  }

  private double grows(Solution steady) {
    return Stability.of(steady, part -> paces.of(part).lags()).modes().stream()
        .filter(mode -> mode.growth() > ROUNDING && mode.circular() > 0)
        .mapToDouble(Mode::frequency)
        .max()
        .orElse(0);
  }
}

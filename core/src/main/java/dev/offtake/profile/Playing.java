package dev.offtake.profile;

import dev.offtake.network.Network;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import dev.offtake.stability.Mode;
import dev.offtake.stability.Stability;
import dev.offtake.time.Drive;
import dev.offtake.time.Played;
import dev.offtake.time.Settings;
import dev.offtake.time.Transient;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Plays a sequence, with steps that are short against whatever hunts.
 *
 * <p>The method of {@link Transient} damps what is quick against its steps, growing swings too:
 * left to itself it holds a valve at rest that cannot stay there. So the states to which the system
 * is on its way are judged by their modes: at the end of each stretch in which nothing is done, and
 * at four places of each in which something moves. Where one grows in swings, all is played again,
 * and that stretch with twenty steps to a swing.
 */
public final class Playing {
  private static final double STEPS_A_SWING = 20;

  /** Swings that are quicker are told by their mean, Hz. */
  private static final double QUICKEST = 25;

  /** Slower growth than this is rounding, 1/s. */
  private static final double ROUNDING = 1e-6;

  /** Most states that are judged. */
  private static final int MOST = 60;

  /** Places of a stretch in which something moves. */
  private static final int PLACES = 4;

  /** A swing has grown from a step's error to what it becomes in so many times its time. */
  private static final double GROWN = 8;

  /** So long before an action the state is judged that it leads to, s. */
  private static final double BEFORE = 1e-6;

  private final Network network;
  private final Drive drive;
  private final Settings settings;

  /** A swing that grows: its frequency, Hz, and the time in which it grows by the factor e, s. */
  private record Growing(double hertz, double seconds) {}

  private Playing(Network network, Drive drive, Settings settings) {
    this.network = network;
    this.drive = drive;
    this.settings = settings;
  }

  /**
   * Plays.
   *
   * @param listener told after each step; false calls it off
   */
  public static Played of(Sequence sequence, Transient.Listener listener) {
    return of(sequence.network(), sequence.drive(), sequence.settings(), listener);
  }

  /**
   * Plays what differs from a sequence in what is asked or in how valves move.
   *
   * @param network of the sequence
   * @param drive what is done
   * @param settings how valves move, and steps
   * @param listener told after each step; false calls it off
   */
  public static Played of(
      Network network, Drive drive, Settings settings, Transient.Listener listener) {
    return new Playing(network, drive, settings).played(listener);
  }

  private Played played(Transient.Listener listener) {
    Played played = run(settings, listener);
    if (played.end() != Played.End.DONE) {
      return played;
    }
    List<Settings.Fine> fine = fine(played);
    return fine.isEmpty() ? played : run(settings.withFine(fine), listener);
  }

  private Played run(Settings how, Transient.Listener listener) {
    return new Transient(network).run(drive, how, listener);
  }

  /** Stretches whose end is a state that hunts. */
  private List<Settings.Fine> fine(Played played) {
    List<Settings.Fine> fine = new ArrayList<>();
    Settler settler = new Settler(network);
    List<Double> ends = ends();
    double from = 0;
    for (double until : ends.subList(0, Math.min(MOST, ends.size()))) {
      Growing growing = growing(settler, played.at(Math.max(0, until - BEFORE)));
      double longest = 1 / (STEPS_A_SWING * Math.min(QUICKEST, growing.hertz()));
      if (longest < settings.longest()) {
        fine.add(new Settings.Fine(from, until, longest, GROWN * growing.seconds()));
      }
      from = until;
    }
    return fine;
  }

  /** Ends of stretches, s: those in which something moves in pieces. */
  private List<Double> ends() {
    List<Double> ends = new ArrayList<>();
    double from = 0;
    for (Drive.Span span : drive.spans()) {
      int pieces = span.begins().equals(span.ends()) ? 1 : PLACES;
      for (int k = 1; k <= pieces && span.seconds() > 0; k++) {
        ends.add(from + span.seconds() * k / pieces);
      }
      from += span.seconds();
    }
    return ends;
  }

  private Growing growing(Settler settler, Solution state) {
    Setup setup = state.setup();
    Solution steady = setup.conditions().core() > 0 ? settler.goOn(state, setup) : state;
    if (setup.conditions().core() <= 0 || !steady.solved()) {
      return new Growing(0, 0);
    }
    List<Mode> growing =
        Stability.of(steady, part -> settings.paces().apply(part).lags()).modes().stream()
            .filter(mode -> mode.growth() > ROUNDING && mode.circular() > 0)
            .toList();
    // Valves that share two modes, as the sides of an aircraft do, follow the one that grows more.
    Map<String, Double> quickest = new HashMap<>();
    growing.forEach(mode -> quickest.merge(mode.driver(), mode.growth(), Math::max));
    return new Growing(
        growing.stream().mapToDouble(Mode::frequency).max().orElse(0),
        quickest.values().stream().mapToDouble(growth -> 1 / growth).max().orElse(0));
  }
}

package dev.offtake.cause.find;

import dev.offtake.cause.Recording;
import dev.offtake.part.Part;
import dev.offtake.profile.Playing;
import dev.offtake.profile.Sequence;
import dev.offtake.solve.Quantity;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Solution;
import dev.offtake.study.Broken;
import dev.offtake.study.Fault;
import dev.offtake.system.BleedSystem;
import dev.offtake.time.Drive;
import dev.offtake.time.Pace;
import dev.offtake.time.Played;
import dev.offtake.time.Settings;
import dev.offtake.time.Transient;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Plays the profile of a recording as a cause makes it, and looks at its instants. */
final class Rerun {
  /** Swings are looked at as often, s, and at no more places of a stretch. */
  private static final double EVERY = 0.01;

  private static final int MOST = 1500;

  private final BleedSystem system;

  Rerun(BleedSystem system) {
    this.system = system;
  }

  /**
   * The states at instants.
   *
   * @param faults what has failed from the beginning
   * @param instants of one recording, rising
   * @param moved what nobody knows exactly
   * @return one for each; not solved where the playing does not come to it
   */
  List<SceneState> states(List<Fault> faults, List<Instant> instants, Moved moved) {
    Recording recording = instants.get(0).recording();
    Sequence sequence = sequence(recording, faults);
    Settings settings = sequence.settings();
    Drive drive = moved(sequence.drive(), moved);
    Function<Part, Pace> paces = part -> moved.pace(part, settings.paces().apply(part));
    Played played = played(sequence, drive, settings.withPaces(paces), instants);
    List<SceneState> states = new ArrayList<>();
    for (Instant instant : instants) {
      double ahead = moved.ahead(recording);
      double at = Math.max(0, instant.seconds() - ahead);
      SceneState state = state(played, at, sequence, drive);
      states.add(
          instant.lasts() && state.solved()
              ? swinging(state, played, recording, instant.from() - ahead, at)
              : state);
    }
    return states;
  }

  /**
   * What hunts is followed only where the record swings: else its middle is enough, and quicker.
   */
  private static Played played(
      Sequence sequence, Drive drive, Settings settings, List<Instant> instants) {
    return instants.stream().anyMatch(Instant::lasts)
        ? Playing.of(sequence.network(), drive, settings, seconds -> true)
        : new Transient(sequence.network()).run(drive, settings, seconds -> true);
  }

  /** A state with how each recorded channel swings in a stretch that ends there. */
  private static SceneState swinging(
      SceneState state, Played played, Recording recording, double from, double until) {
    List<Quantity> quantities = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (Recording.Channel channel : recording.channels()) {
      Optional<Probe.Sense> sense = ClueMaker.sample(0, channel, 0).probe().sense(state);
      if (sense.isPresent()) {
        names.add(channel.about().name());
        quantities.add(sense.get().quantity());
      }
    }
    double[] times = times(Math.max(0, from), until);
    double[][] whole = played.course(quantities, times);
    double[] followed = followed(played, times);
    double[][] last = followed == times ? whole : played.course(quantities, followed);
    Map<String, Wave> waves = new HashMap<>();
    for (int i = 0; i < names.size(); i++) {
      Wave swing = Wave.of(followed, last[i]);
      Wave all = Wave.of(times, whole[i]);
      waves.put(
          names.get(i),
          new Wave(all.mean(), swing.size(), swing.hertz(), swing.crossings(), all.end()));
    }
    return new SceneState(state.seen(), state.before(), true, true, waves);
  }

  /** Where swings are no longer followed, their last ones that were stand for them. */
  private static double[] followed(Played played, double[] times) {
    double from = times[0];
    double until = times[times.length - 1];
    for (Played.Unfollowed alike : played.unfollowed()) {
      double both = Math.min(until, alike.until()) - Math.max(from, alike.from());
      if (both > (until - from) / 2) {
        return times(alike.since(), alike.from());
      }
    }
    return times;
  }

  private static double[] times(double from, double until) {
    int n = (int) Math.max(3, Math.min(MOST, (until - from) / EVERY));
    double[] times = new double[n];
    for (int i = 0; i < n; i++) {
      times[i] = from + (until - from) * i / (n - 1);
    }
    return times;
  }

  private static SceneState state(Played played, double at, Sequence sequence, Drive drive) {
    if (played.end() == Played.End.NO_START) {
      Solution none = new Settler(sequence.network()).solve(drive.start());
      return new SceneState(none, none, false, true);
    }
    Solution state = played.at(at);
    boolean there = played.end() == Played.End.DONE || at <= played.seconds();
    return new SceneState(state, state, there, true);
  }

  private Sequence sequence(Recording recording, List<Fault> faults) {
    try {
      return Sequence.of(system, recording.profile(), faults);
    } catch (Broken.Contradiction both) {
      throw new IllegalStateException("the failures were broken together before", both);
    }
  }

  private static Drive moved(Drive drive, Moved moved) {
    List<Drive.Span> spans = new ArrayList<>();
    for (Drive.Span span : drive.spans()) {
      spans.add(
          new Drive.Span(span.seconds(), moved.setup(span.begins()), moved.setup(span.ends())));
    }
    return new Drive(moved.setup(drive.start()), spans);
  }
}

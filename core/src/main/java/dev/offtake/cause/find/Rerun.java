package dev.offtake.cause.find;

import dev.offtake.cause.Recording;
import dev.offtake.part.Part;
import dev.offtake.profile.Sequence;
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
import java.util.List;
import java.util.function.Function;

/** Plays the profile of a recording as a cause makes it, and looks at its instants. */
final class Rerun {
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
    // What hunts is held at its middle: to follow its swings takes four times as long.
    Played played =
        new Transient(sequence.network()).run(drive, settings.withPaces(paces), seconds -> true);
    List<SceneState> states = new ArrayList<>();
    for (Instant instant : instants) {
      double at = Math.max(0, instant.seconds() - moved.ahead(recording));
      states.add(state(played, at, sequence, drive));
    }
    return states;
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

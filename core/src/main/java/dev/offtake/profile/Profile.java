package dev.offtake.profile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What is done to a system over time.
 *
 * @param system name of the system file; empty when not said
 * @param title one line; empty when not said
 * @param about where it is from; empty when not said
 * @param start how everything stands at the beginning
 * @param inputs numbers of the engine
 * @param paces how valves move
 * @param actions by time
 * @param end when it ends, s
 * @param show values to show, with commas between them; empty for the usual ones
 * @param assumes what was taken for granted to read it, a sentence each
 */
public record Profile(
    String system,
    String title,
    String about,
    Start start,
    Inputs inputs,
    Paces paces,
    List<Action> actions,
    double end,
    String show,
    List<String> assumes) {
  /** Keeps its lists. */
  public Profile {
    actions = List.copyOf(actions);
    assumes = List.copyOf(assumes);
  }

  /** The same with something else done, which is put where its time is. */
  public Profile with(Action more) {
    List<Action> all = new ArrayList<>(actions);
    all.add(more);
    all.sort(Comparator.comparingDouble(Action::at));
    return new Profile(system, title, about, start, inputs, paces, all, end, show, assumes);
  }

  /** Whether the engine is shut down in it and not started again. */
  public boolean endsShutDown() {
    boolean down = start.power().stopped();
    for (Action action : actions) {
      if (action instanceof Action.ShutDown) {
        down = true;
      } else if (action instanceof Action.StartUp) {
        down = false;
      } else if (action instanceof Action.Ramp ramp) {
        down = ramp.to().stopped();
      }
    }
    return down;
  }
}

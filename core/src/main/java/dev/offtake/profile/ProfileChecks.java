package dev.offtake.profile;

import dev.offtake.logic.Situation;
import dev.offtake.study.Broken;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.NeverLine;
import dev.offtake.system.Problems;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What no single action can see. */
final class ProfileChecks {
  private final String file;
  private final BleedSystem system;
  private final Start start;
  private final Problems problems;

  ProfileChecks(String file, BleedSystem system, Start start, Problems problems) {
    this.file = file;
    this.system = system;
    this.start = start;
    this.problems = problems;
  }

  /**
   * Checks actions against each other.
   *
   * @param written in the order of the file
   * @return the same by time, each shut-down with the speed from which it runs down
   */
  List<Action> all(List<Action> written) {
    order(written);
    List<Action> sorted = new ArrayList<>(written);
    sorted.sort(Comparator.comparingDouble(Action::at));
    List<Action> full = core(sorted);
    turns(full);
    together(full);
    never(full);
    return full;
  }

  private void order(List<Action> written) {
    for (int i = 1; i < written.size(); i++) {
      Action before = written.get(i - 1);
      Action now = written.get(i);
      if (now.at() < before.at()) {
        String wrong = "Time runs back from " + seconds(before.at()) + " to " + seconds(now.at());
        problems.add(
            file, now.line(), wrong, "Write the actions in the order in which they happen");
        return;
      }
    }
  }

  /** Follows the core from action to action. */
  private List<Action> core(List<Action> sorted) {
    List<Action> full = new ArrayList<>();
    Speeds stands = start.power();
    double free = 0;
    int line = 0;
    boolean sure = true;
    for (Action action : sorted) {
      Speeds from = from(action);
      Action kept = action;
      if (until(action) > action.at()) {
        if (action.at() < free) {
          String wrong =
              "At "
                  + seconds(action.at())
                  + " the core still moves, by line "
                  + line
                  + ", until "
                  + seconds(free);
          problems.add(file, action.line(), wrong, "Begin later, or shorten the other");
        } else if (sure && from != null && !from.same(stands)) {
          String wrong =
              "At "
                  + seconds(action.at())
                  + " the core stands at "
                  + stands.name()
                  + ", not at "
                  + from.name();
          problems.add(file, action.line(), wrong, "Begin where it stands");
        }
        kept = action instanceof Action.ShutDown off ? off(off, stands) : action;
        stands = to(action);
        sure = !(action instanceof Action.StartUp);
        free = sure ? until(action) : action.at();
        line = action.line();
      }
      full.add(kept);
    }
    return full;
  }

  private Action off(Action.ShutDown off, Speeds stands) {
    if (stands.stopped()) {
      String wrong = "At " + seconds(off.at()) + " the engine is stopped already";
      problems.add(file, off.line(), wrong, "Leave the line out");
    }
    return new Action.ShutDown(off.at(), off.line(), stands, off.until());
  }

  private static @Nullable Speeds from(Action action) {
    return action instanceof Action.Ramp ramp
        ? ramp.from()
        : action instanceof Action.StartUp ? Speeds.STOPPED : null;
  }

  private static Speeds to(Action action) {
    return action instanceof Action.Ramp ramp
        ? ramp.to()
        : action instanceof Action.StartUp up ? up.to() : Speeds.STOPPED;
  }

  /** When an action has moved the core, s; NaN for one that does not. */
  private static double until(Action action) {
    if (action instanceof Action.Ramp ramp) {
      return ramp.until();
    }
    if (action instanceof Action.ShutDown off) {
      return off.until();
    }
    return action instanceof Action.StartUp ? Double.POSITIVE_INFINITY : Double.NaN;
  }

  /** A switch cannot be turned both ways at once, a hose be fitted twice. */
  private void turns(List<Action> sorted) {
    Map<String, Action.Turn> last = new HashMap<>();
    Set<String> removed = new HashSet<>(start.removed());
    Set<String> broken = new HashSet<>();
    start.faults().forEach(fault -> broken.add(fault.name()));
    for (Action action : sorted) {
      if (action instanceof Action.Turn turn) {
        Action.Turn before = last.put(turn.what(), turn);
        if (before != null && before.at() == turn.at() && !before.to().equals(turn.to())) {
          String wrong =
              "At "
                  + seconds(turn.at())
                  + " "
                  + turn.what()
                  + " is turned to "
                  + before.to()
                  + " and to "
                  + turn.to();
          problems.add(file, turn.line(), wrong, "Keep one, or give the second a later time");
        }
      } else if (action instanceof Action.Hose hose) {
        boolean changes =
            hose.connected() ? removed.remove(hose.supply()) : removed.add(hose.supply());
        if (!changes) {
          String wrong =
              "At "
                  + seconds(hose.at())
                  + " the hose of "
                  + hose.supply()
                  + " is "
                  + (hose.connected() ? "on" : "off")
                  + " already";
          problems.add(file, hose.line(), wrong, "Leave the line out");
        }
      } else if (action instanceof Action.Breaks breaks) {
        breaks.faults().stream()
            .filter(fault -> !broken.add(fault.name()))
            .forEach(
                fault ->
                    problems.add(
                        file,
                        breaks.line(),
                        fault.name() + " is broken already",
                        "Leave the line out"));
      }
    }
  }

  /** Faults that change the same number cannot be there together. */
  private void together(List<Action> sorted) {
    int line = 1;
    try {
      Scene scene = new Scene(system, start, List.of());
      for (Action action : sorted) {
        line = action.line();
        scene.act(action);
      }
    } catch (Broken.Contradiction both) {
      String wrong = both.getMessage() + " contradict each other: they change the same thing";
      problems.add(file, line, wrong, "Leave one of them out");
    }
  }

  /** No profile may ask for what the system file forbids. */
  private void never(List<Action> sorted) {
    Map<String, String> positions = new HashMap<>(start.positions());
    Set<NeverLine> already = new HashSet<>();
    told(0, 1, positions, already);
    for (int i = 0; i < sorted.size(); i++) {
      Action action = sorted.get(i);
      if (action instanceof Action.Turn turn && positions.containsKey(turn.what())) {
        positions.put(turn.what(), turn.to());
      }
      boolean last = i + 1 == sorted.size() || sorted.get(i + 1).at() > action.at();
      if (last) {
        told(action.at(), action.line(), positions, already);
      }
    }
  }

  private void told(double at, int line, Map<String, String> positions, Set<NeverLine> already) {
    for (NeverLine never : system.never()) {
      boolean asked = never.condition().map(c -> c.holds(new Standing(positions))).orElse(false);
      if (asked && already.add(never)) {
        String source = never.source().isEmpty() ? "" : " (" + never.source() + ")";
        String wrong =
            "At " + seconds(at) + " " + never.text() + ", which the system file forbids" + source;
        problems.add(file, line, wrong, "Turn one of them off before the other");
      }
    }
  }

  /** How switches stand, without any air. */
  private record Standing(Map<String, String> positions) implements Situation {
    @Override
    public boolean is(String subject, String position) {
      return position.equals(positions.get(subject));
    }

    @Override
    public double value(String subject) {
      return Double.NaN;
    }

    @Override
    public double ambientPressure() {
      return Double.NaN;
    }
  }

  private static String seconds(double s) {
    return ActionReader.seconds(s);
  }
}

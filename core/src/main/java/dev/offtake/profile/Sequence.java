package dev.offtake.profile;

import dev.offtake.network.Network;
import dev.offtake.solve.Setup;
import dev.offtake.study.Fault;
import dev.offtake.system.BleedSystem;
import dev.offtake.time.Drive;
import dev.offtake.time.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * A profile as the solver is asked it: what stands at each time, and where the core is.
 *
 * @param network built as the faults of the beginning ask
 * @param drive what is asked over time
 * @param settings how exactly it is played, and how valves move
 * @param core core and fan speed over time
 * @param happenings what is done, in words, by time
 * @param assumes what was taken for granted, a sentence each
 */
public record Sequence(
    Network network,
    Drive drive,
    Settings settings,
    CoreLine core,
    List<Happening> happenings,
    List<String> assumes) {

  /**
   * Longest step, s. Longer ones keep air and energy as well, but at the usual tolerance a pocket
   * that is down after two minutes comes down 2 s late.
   */
  private static final double LONGEST_STEP = 2;

  /** Keeps its lists. */
  public Sequence {
    happenings = List.copyOf(happenings);
    assumes = List.copyOf(assumes);
  }

  /**
   * Makes the sequence of a profile.
   *
   * @param more what is broken from the beginning besides
   * @throws dev.offtake.study.Broken.Contradiction when faults cannot be there together
   */
  public static Sequence of(BleedSystem system, Profile profile, List<Fault> more) {
    Rehearsal rehearsal = new Rehearsal(system, profile, more);
    rehearsal.moveCore();
    Scene scene = new Scene(system, profile.start(), more);
    return new Sequence(
        scene.network(),
        drive(profile, scene, rehearsal),
        settings(profile.paces()),
        rehearsal.core(),
        rehearsal.happenings(),
        rehearsal.assumes());
  }

  private static Settings settings(Paces paces) {
    return Settings.usual().withPaces(paces::of).withLongest(LONGEST_STEP);
  }

  private static Drive drive(Profile profile, Scene scene, Rehearsal rehearsal) {
    CoreLine core = rehearsal.core();
    Drive drive = Drive.from(setup(profile, scene, core, 0));
    double now = 0;
    List<Action> left = new ArrayList<>(rehearsal.actions());
    for (double cut : cuts(profile, rehearsal)) {
      if (cut > now) {
        drive = drive.ramp(cut - now, setup(profile, scene, core, cut));
        now = cut;
      }
      boolean acted = false;
      while (!left.isEmpty() && left.get(0).at() <= cut) {
        scene.act(left.remove(0));
        acted = true;
      }
      drive = acted ? drive.jump(setup(profile, scene, core, cut)) : drive;
    }
    return drive;
  }

  private static Setup setup(Profile profile, Scene scene, CoreLine core, double at) {
    CoreLine.Knot knot = core.at(at);
    return scene.setup(profile.start().conditions(knot.core(), knot.fan()));
  }

  /** Times at which anything jumps or turns a corner, the end last. */
  private static TreeSet<Double> cuts(Profile profile, Rehearsal rehearsal) {
    TreeSet<Double> cuts = new TreeSet<>();
    rehearsal.actions().forEach(action -> cuts.add(action.at()));
    rehearsal.core().knots().forEach(knot -> cuts.add(knot.at()));
    cuts.removeIf(cut -> cut > profile.end());
    cuts.add(profile.end());
    return cuts;
  }
}

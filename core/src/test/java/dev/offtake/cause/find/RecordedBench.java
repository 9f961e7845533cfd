package dev.offtake.cause.find;

import dev.offtake.cause.Readings;
import dev.offtake.cause.Recording;
import dev.offtake.cause.RecordingReader;
import dev.offtake.network.Demos;
import dev.offtake.profile.Playing;
import dev.offtake.profile.Profile;
import dev.offtake.profile.ProfileReader;
import dev.offtake.profile.Sequence;
import dev.offtake.solve.Solution;
import dev.offtake.study.Fault;
import dev.offtake.system.BleedSystem;
import dev.offtake.time.Played;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/** A regulator on a bench, and what a recorder keeps of a run with something wrong. */
public final class RecordedBench {
  private static final double PSI = 6894.757293168;

  /** Supply, regulator, two users, one gauge. */
  public static final BleedSystem SYSTEM =
      Demos.text(
          """
              power settings:
                idle: {core: 62 %, fan: 24 %}
              switches:
                wing switch: [OFF, ON]
              model error: {pressure: 1 %, temperature: 5 degF; invented}
              parts:
                supply:
                  kind: supply
                  to: line
                  temperature: 300 degF
                  table: {columns: [psig, lb/min], rows: [[75, 0], [70, 150]]}
                regulator:
                  kind: regulator
                  path: line -> duct
                  bore: 3 in
                  holds: duct pressure
                  set to: 40 psig +/- 2
                  droop: unknown 3..6 psi
                pack: {kind: flow user, takes from: duct, takes: 40 lb/min, needs: 5 psig}
                wing: {kind: flow user, takes from: duct, takes: 70 lb/min when wing switch is ON, needs: 5 psig}
              gauges:
                duct gauge: {reads: duct pressure, step: 0.2 psi, good to: {constant: 0.3 psi, each reading: 0.1 psi}}
              """);

  private static final String RUN =
      """
      offtake profile: 1
      start: {power: idle}
      %s
      actions:
        at 5 s: {wing switch: ON}
        at 25 s: {wing switch: OFF}
      ends at: 45 s
      """;

  /** The power creeps away from where the valve may swing. */
  private static final String CREEPS =
      """
      offtake profile: 1
      start: {power: idle}
      actions:
        at 5 s: {wing switch: ON}
        at 10 s: {wing switch: OFF}
        from 30 s to 35 s: {core: 62 % -> 70 %}
      ends at: 45 s
      """;

  private static Profile run(String text) {
    return ProfileReader.readText("run.yaml", text, SYSTEM).profile().orElseThrow();
  }

  private RecordedBench() {}

  /**
   * Ten values a second, as a recorder rounds them, with the noise of a sender.
   *
   * @param valves how valves move in truth, a section of a profile; empty for as usual
   * @param faults what is broken in truth
   */
  public static Readings recorded(String valves, List<Fault> faults) {
    return recorded(valves, faults, 0);
  }

  /** The same from a time on, s. */
  static Readings recorded(String valves, List<Fault> faults, double from) {
    return recorded(run(RUN.formatted(valves)), run(RUN.formatted("")), faults, from);
  }

  /** A run whose rest ends with power that creeps, instead of with a switch. */
  static Readings creeping(List<Fault> faults) {
    return recorded(run(CREEPS), run(CREEPS), faults, 0);
  }

  private static Readings recorded(Profile truth, Profile told, List<Fault> faults, double from) {
    Sequence sequence = Sequence.of(SYSTEM, truth, faults);
    Played played = Playing.of(sequence, seconds -> true);
    SplittableRandom random = new SplittableRandom(5);
    StringBuilder table = new StringBuilder("# Invented.\ntime s,duct pressure psig\n");
    for (int i = (int) Math.round(10 * from); i <= 440; i++) {
      Solution state = played.at(0.1 * i);
      int duct = state.network().point("duct");
      double psig =
          (state.sensed(duct) - state.conditions().ambientP()) / PSI + 0.05 * random.nextGaussian();
      table.append(String.format(Locale.ROOT, "%.1f,%.2f%n", 0.1 * i, psig));
    }
    Recording recording =
        RecordingReader.readText("run.csv", table.toString(), SYSTEM, told, "run.yaml")
            .recording()
            .orElseThrow();
    return Readings.none().with(List.of(recording));
  }
}

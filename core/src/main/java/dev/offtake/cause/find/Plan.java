package dev.offtake.cause.find;

import dev.offtake.cause.chance.Information;
import dev.offtake.part.Access;
import dev.offtake.part.Inspection;
import dev.offtake.study.Fault;
import dev.offtake.system.Assumption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What a repair takes, with checks and without. */
final class Plan {
  private final List<Suspect> asked;
  private final double[] before;
  private final Mending mending;
  private final int[][] units;
  private final double without;
  private final List<Scene> read;
  private final Set<Access> open;

  /**
   * Prepares.
   *
   * @param asked suspects that are still likely
   * @param read scenes in which something was read
   * @param open access that is already paid for
   */
  Plan(List<Suspect> asked, List<Scene> read, Set<Access> open) {
    this.asked = asked;
    this.read = read;
    this.open = open;
    double all = asked.stream().mapToDouble(Suspect::chance).sum();
    before = asked.stream().mapToDouble(suspect -> suspect.chance() / all).toArray();
    Map<List<String>, Mending.Work> works = new LinkedHashMap<>();
    for (Suspect suspect : asked) {
      suspect.cause().faults().forEach(fault -> works.putIfAbsent(unit(fault), work(fault)));
    }
    mending = new Mending(List.copyOf(works.values()));
    List<List<String>> keys = List.copyOf(works.keySet());
    units =
        asked.stream()
            .map(
                suspect ->
                    suspect.cause().faults().stream()
                        .mapToInt(fault -> keys.indexOf(unit(fault)))
                        .toArray())
            .toArray(int[][]::new);
    without = mending.minutes(units(before), open);
  }

  private static List<String> unit(Fault fault) {
    return List.of(fault.part().name(), fault.mode().unit());
  }

  private static Mending.Work work(Fault fault) {
    Inspection look = fault.mode().inspection();
    return new Mending.Work(
        fault.part().name(), fault.mode().unit(), look.access(), look.minutes());
  }

  double without() {
    return without;
  }

  private double[] units(double[] chances) {
    double[] sums = new double[mending.works().size()];
    for (int i = 0; i < chances.length; i++) {
      for (int unit : units[i]) {
        sums[unit] += chances[i];
      }
    }
    return sums;
  }

  List<Advice.Unit> order() {
    double[] chance = units(before);
    return mending.order(chance, open).stream()
        .map(
            i -> {
              Mending.Work work = mending.works().get(i);
              return new Advice.Unit(work.part(), work.unit(), chance[i], work.minutes(open));
            })
        .toList();
  }

  Optional<Advice.Offer> run(Scene scene, Instrument instrument, Played played, int k) {
    if (played.showings().isEmpty()) {
      return Optional.empty();
    }
    List<Showing> showings = played.showings().stream().map(own -> own.get(k)).toList();
    double[][] outcomes = Outcomes.of(showings, instrument.lamp());
    boolean again = read.stream().anyMatch(known -> known.power().equals(scene.power()));
    Check check = new Check.Run(scene, instrument, again);
    return Optional.of(offer(check, outcomes, expects(showings), played.hangsOn()));
  }

  List<Advice.Offer> looks() {
    List<Advice.Offer> offers = new ArrayList<>();
    for (Suspect suspect : asked) {
      for (Fault fault : suspect.cause().faults()) {
        double[] found = new double[asked.size()];
        for (int i = 0; i < found.length; i++) {
          found[i] = finds(fault, asked.get(i).cause());
        }
        Check look = new Check.Look(fault);
        offers.add(offer(look, Outcomes.yesOrNo(found), List.of(), Optional.empty()));
      }
    }
    return offers;
  }

  private static double finds(Fault looked, Cause cause) {
    boolean same =
        cause.faults().stream()
            .anyMatch(
                fault ->
                    fault.part().name().equals(looked.part().name())
                        && fault.mode().inspection().equals(looked.mode().inspection()));
    return same ? Inspected.HIT : Inspected.FALSE_ALARM;
  }

  private Advice.Offer offer(
      Check check, double[][] outcomes, List<Advice.Expect> expects, Optional<Assumption> hangsOn) {
    double minutes = check.minutes();
    Set<Access> paid = new HashSet<>(open);
    for (Access access : check.access()) {
      if (paid.add(access)) {
        minutes += access.minutes();
      }
    }
    double after = 0;
    for (double[] outcome : outcomes) {
      double chance = Information.chance(before, outcome);
      if (chance > 0) {
        after += chance * mending.minutes(units(Information.after(before, outcome)), paid);
      }
    }
    double bits = Information.gain(before, outcomes);
    return new Advice.Offer(check, minutes, minutes + after, bits, expects, hangsOn);
  }

  /** What the reading would be, for each group; without the interlock that nobody states. */
  private List<Advice.Expect> expects(List<Showing> showings) {
    Map<Integer, List<Integer>> groups = new LinkedHashMap<>();
    for (int i = 0; i < asked.size(); i++) {
      groups.computeIfAbsent(asked.get(i).group(), g -> new ArrayList<>()).add(i);
    }
    List<Advice.Expect> expects = new ArrayList<>();
    for (List<Integer> members : groups.values()) {
      for (int i : members) {
        Showing showing = showings.get(i);
        double[] live = Arrays.copyOf(showing.means(), Suspect.WEIGHTS.length);
        double low = Arrays.stream(live).min().orElse(Double.NaN);
        double high = Arrays.stream(live).max().orElse(Double.NaN);
        List<Integer> own = asked.get(i).number() < 0 ? List.of() : List.of(asked.get(i).number());
        expects.add(new Advice.Expect(own, low, high));
      }
    }
    return expects;
  }

  Optional<Advice.NoHelp> noHelp(Scene scene, Instrument instrument, Played played, int k) {
    boolean usual = scene.name().equals(scene.power());
    if (!usual || instrument.lamp() || instrument.access() != Access.FLIGHT_DECK) {
      return Optional.empty();
    }
    double value = played.showings().get(0).get(k).mean();
    return Optional.of(new Advice.NoHelp(scene.power(), instrument, value));
  }
}

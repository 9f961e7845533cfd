package dev.offtake.cause.find;

import dev.offtake.cause.Readings;
import dev.offtake.cause.chance.Logs;
import dev.offtake.study.Fault;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Sums up what was weighed. */
final class Ranking {
  /** Less likely than this in all, a cause is left out. */
  private static final double WORTH = 1e-4;

  private static final double TAIL = 0.05;

  private final BleedSystem system;
  private final Readings readings;
  private final Prior prior;
  private final List<Scene> scenes;
  private final List<Clue> clues;
  private final LookAlikes lookAlikes;

  Ranking(
      BleedSystem system,
      Readings readings,
      Prior prior,
      List<Scene> scenes,
      List<Clue> clues,
      LookAlikes lookAlikes) {
    this.system = system;
    this.readings = readings;
    this.prior = prior;
    this.scenes = scenes;
    this.clues = clues;
    this.lookAlikes = lookAlikes;
  }

  /**
   * The sum.
   *
   * @param sound a sound system, weighed
   * @param candidates causes that remained
   * @param nothing belief that nothing is wrong after the readings, a natural logarithm
   * @param none belief that it is something else, a natural logarithm
   * @param considered how many causes were weighed
   * @param unsolved how many of them have no answer
   * @param pairs whether pairs are among them
   */
  Found found(
      Weighed sound,
      List<Candidate> candidates,
      double nothing,
      double none,
      int considered,
      int unsolved,
      boolean pairs) {
    double[] logs = new double[candidates.size() + 2];
    for (int i = 0; i < candidates.size(); i++) {
      logs[i] = candidates.get(i).log();
    }
    logs[candidates.size()] = nothing;
    logs[candidates.size() + 1] = none;
    double[] chances = Logs.shares(logs);
    List<Ranked> ranked = new ArrayList<>();
    for (int i = 0; i < candidates.size(); i++) {
      if (chances[i] >= WORTH) {
        ranked.add(ranked(candidates.get(i), chances[i]));
      }
    }
    ranked.sort(Comparator.comparingDouble(r -> -r.chance()));
    double fit = sound.fit();
    for (Candidate candidate : candidates) {
      fit = Math.max(fit, candidate.weighed().fit());
    }
    return new Found(
        system,
        readings,
        prior,
        scenes,
        looks(sound, candidates, chances),
        ranked,
        lookAlikes.groups(ranked, forecast(sound)),
        units(ranked),
        chances[candidates.size()],
        chances[candidates.size() + 1],
        fit,
        considered,
        unsolved,
        pairs,
        Advice.NONE);
  }

  private static List<Double> forecast(Weighed weighed) {
    double[] forecast = weighed.course().points().get(weighed.best()).forecast();
    return Arrays.stream(forecast).boxed().toList();
  }

  private static Ranked ranked(Candidate candidate, double chance) {
    Weighed weighed = candidate.weighed();
    int extents = weighed.cause().extents();
    double[] low = new double[extents];
    double[] high = new double[extents];
    for (int i = 0; i < extents; i++) {
      low[i] = weighed.quantile(i, TAIL);
      high[i] = weighed.quantile(i, 1 - TAIL);
    }
    return new Ranked(
        weighed.cause(),
        chance,
        weighed.cause().at(weighed.place()),
        weighed.cause().at(low),
        weighed.cause().at(high),
        List.of(weighed.place(), low, high),
        forecast(weighed),
        weighed.fit(),
        candidate.dormant(),
        weighed.evidence());
  }

  private List<Found.Look> looks(Weighed sound, List<Candidate> candidates, double[] chances) {
    List<Found.Look> looks = new ArrayList<>();
    for (int c = 0; c < clues.size(); c++) {
      double odd = chances[candidates.size()] * sound.slips()[c];
      for (int i = 0; i < candidates.size(); i++) {
        odd += chances[i] * candidates.get(i).weighed().slips()[c];
      }
      Clue clue = clues.get(c);
      looks.add(
          new Found.Look(clue.terms().get(0).scene(), clue.reading(), forecast(sound).get(c), odd));
    }
    return looks;
  }

  private static List<Found.UnitChance> units(List<Ranked> ranked) {
    Map<List<String>, Double> sums = new LinkedHashMap<>();
    for (Ranked cause : ranked) {
      for (Fault fault : cause.cause().faults()) {
        sums.merge(List.of(fault.part().name(), fault.mode().unit()), cause.chance(), Double::sum);
      }
    }
    return sums.entrySet().stream()
        .map(e -> new Found.UnitChance(e.getKey().get(0), e.getKey().get(1), e.getValue()))
        .sorted(Comparator.comparingDouble(unit -> -unit.chance()))
        .toList();
  }
}

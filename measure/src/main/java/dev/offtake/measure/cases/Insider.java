package dev.offtake.measure.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.DoubleConsumer;

/**
 * Somebody who knows everything about the plant but what is wrong with it: its laws, how one plant
 * differs from the next, how it is run and read, and how failures are drawn. It weighs each mode by
 * plants that have it. What it misses, the readings hardly tell; a finite number of plants blurs
 * what it knows, so that it is no strict bound.
 */
public final class Insider {
  /** Width of a kernel: chosen on cases of another seed than those that are reported. */
  private static final double AROUND = 1.5;

  private final Healthy healthy;
  private final List<ModeLine> modes;
  private final Flock sound;
  private final List<Flock> broken = new ArrayList<>();

  /**
   * Runs its plants.
   *
   * @param cases whose failures they have
   * @param count plants of each mode
   * @param seed other than any case's
   * @param share told how much is done
   */
  public Insider(Cases cases, int count, long seed, DoubleConsumer share) {
    this(cases.scatter(), cases.modes(), count, seed, share);
  }

  /** Knows of these modes only. */
  Insider(Healthy healthy, List<ModeLine> modes, int count, long seed, DoubleConsumer share) {
    this.healthy = healthy;
    this.modes = List.copyOf(modes);
    SplittableRandom chance = new SplittableRandom(seed);
    Effects effects = Effects.all();
    sound = Flock.sound(4 * count, chance.split());
    for (ModeLine mode : modes) {
      broken.add(sound.broken(effects, mode, mode.hasExtent() ? count : count / 2, chance.split()));
      share.accept(broken.size() / (double) modes.size());
    }
  }

  /** What it thinks of a case: which modes were drawn, it knows; how far they show, it does not. */
  public Opinion of(Case one) {
    return of(one, true, 0, Double.POSITIVE_INFINITY);
  }

  /** What it thinks of a case of which it is told that something is wrong, and how far it shows. */
  public Opinion of(Case one, Bin bin) {
    return of(one, false, bin.from(), bin.to());
  }

  private Opinion of(Case one, boolean maybeSound, double from, double to) {
    Schedule schedule = one.sheet().schedule();
    Spread spread = Spread.of(healthy, schedule);
    Glance glance = new Glance(one.sheet(), healthy, spread, AROUND);
    List<Optional<Shown>> usual = sound.birds().stream().map(bird -> bird.on(schedule)).toList();
    double[] logs = new double[modes.size()];
    for (int m = 0; m < logs.length; m++) {
      logs[m] = log(broken.get(m), schedule, usual, spread, glance, from, to);
    }
    double nothing =
        maybeSound
            ? mean(usual.stream().flatMap(Optional::stream).mapToDouble(glance::log).toArray())
            : Double.NEGATIVE_INFINITY;
    return new Opinion(modes, nothing, logs);
  }

  private static double log(
      Flock flock,
      Schedule schedule,
      List<Optional<Shown>> usual,
      Spread spread,
      Glance glance,
      double from,
      double to) {
    List<Double> logs = new ArrayList<>();
    for (int i = 0; i < flock.birds().size(); i++) {
      Optional<Shown> shown = flock.birds().get(i).on(schedule);
      if (shown.isPresent() && usual.get(i).isPresent()) {
        double shift = from > 0 ? spread.between(shown.get(), usual.get(i).get()) : 0;
        if (shift >= from && shift < to) {
          logs.add(glance.log(shown.get()));
        }
      }
    }
    return mean(logs.stream().mapToDouble(one -> one).toArray());
  }

  private static double mean(double[] logs) {
    return logs.length == 0
        ? Double.NEGATIVE_INFINITY
        : Glance.logOfSum(logs) - Math.log(logs.length);
  }
}

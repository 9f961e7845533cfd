package dev.offtake.desk.page;

import dev.offtake.explain.Question;
import dev.offtake.part.Conditions;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.DoubleUnaryOperator;

/**
 * The states of one line-up on one day with the same things broken, at any core speed.
 *
 * <p>At each whole percent of core speed stands a rung: a state that is found from nothing, as
 * {@code offtake state} finds it. A state between two rungs is found from the nearer one, and again
 * from the other; where the two do not lead to the same state, it is found from nothing as well. So
 * an answer takes a small part of the time, and depends on nothing but its question, but for what
 * rounding leaves over.
 */
final class Ladder {
  /** Rungs in a core speed of 1. */
  private static final int RUNGS = 100;

  /** A speed as near to a rung is the rung's, in rungs. */
  private static final double ON_IT = 1e-6;

  /** States nearer to each other are the same: a share of the pressure, and K. */
  private static final double SAME_P = 1e-5;

  private static final double SAME_T = 0.02;

  private final Settlers settlers;
  private final Setup setup;
  private final DoubleUnaryOperator fan;
  private final Map<Object, FutureTask<Solution>> known = new ConcurrentHashMap<>();

  /**
   * Prepares.
   *
   * @param settlers of the question's network
   * @param question at any core speed
   */
  Ladder(Settlers settlers, Question question) {
    this.settlers = settlers;
    setup = question.setup();
    fan = question.fanLine();
  }

  /**
   * The state at speeds of their own, such as those of a power of the file, found from nothing.
   *
   * @param asked differs from the ladder's question in its speeds only
   */
  Solution exact(Setup asked) {
    Conditions c = asked.conditions();
    return known(new Speeds(c.core(), c.fan()), asked);
  }

  private record Speeds(double core, double fan) {}

  /**
   * The state at a core speed, the fan following it.
   *
   * @param core a fraction
   */
  Solution at(double core) {
    double place = core * RUNGS;
    int nearest = (int) Math.rint(place);
    if (Math.abs(place - nearest) < ON_IT) {
      return rung(nearest);
    }
    int other = place > nearest ? nearest + 1 : nearest - 1;
    Setup asked = question(core);
    Solution one = from(rung(nearest), asked);
    Solution two = from(rung(other), asked);
    if (one.solved() && two.solved() && same(one, two)) {
      return one;
    }
    return settlers.lend(settler -> settler.solve(asked));
  }

  /** Finds the rungs between two core speeds, so that nobody has to wait for them. */
  void climb(double low, double high) {
    for (int i = (int) Math.floor(low * RUNGS); i <= Math.ceil(high * RUNGS); i++) {
      rung(i);
    }
  }

  private Solution from(Solution start, Setup asked) {
    return settlers.lend(
        settler -> {
          settler.startFrom(start);
          return settler.solve(asked);
        });
  }

  private Solution rung(int number) {
    return known(number, question((double) number / RUNGS));
  }

  private Setup question(double core) {
    return setup.at(setup.conditions().withSpeeds(core, fan.applyAsDouble(core)));
  }

  /** Each state is looked for once, whoever asks; others wait for it. */
  private Solution known(Object place, Setup asked) {
    FutureTask<Solution> mine = new FutureTask<>(() -> settlers.lend(s -> s.solve(asked)));
    FutureTask<Solution> there = known.putIfAbsent(place, mine);
    if (there == null) {
      mine.run();
    }
    try {
      return (there == null ? mine : there).get();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new Refusal(Refusal.BUSY, "the server is stopping", "start it again");
    } catch (ExecutionException fault) {
      known.remove(place);
      throw new IllegalStateException(fault.getCause());
    }
  }

  private static boolean same(Solution one, Solution two) {
    for (int i = 0; i < one.network().points().size(); i++) {
      double p = two.pressure(i);
      if (Math.abs(one.pressure(i) - p) > SAME_P * p
          || Math.abs(one.temperature(i) - two.temperature(i)) > SAME_T) {
        return false;
      }
    }
    for (int i = 0; i < one.network().parts().size(); i++) {
      for (int k = 0; k < one.network().parts().get(i).controls().size(); k++) {
        if (one.control(i, k) != two.control(i, k)) {
          return false;
        }
      }
    }
    return true;
  }
}

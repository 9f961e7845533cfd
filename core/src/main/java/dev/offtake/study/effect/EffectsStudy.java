package dev.offtake.study.effect;

import dev.offtake.part.Doing;
import dev.offtake.quantity.Style;
import dev.offtake.severity.Criterion;
import dev.offtake.severity.SeverityScale;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Solution;
import dev.offtake.study.Abreast;
import dev.offtake.study.Bench;
import dev.offtake.study.Broken;
import dev.offtake.study.Fault;
import dev.offtake.study.Faults;
import dev.offtake.study.Notice;
import dev.offtake.study.Sign;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.DoubleConsumer;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;

/**
 * Makes the failure-effects table of a system. Failures are worked on side by side; each worker has
 * equations of its own.
 */
public final class EffectsStudy {
  private static final Doing GONE = new Doing("", "", "");

  private final BleedSystem system;
  private final SeverityScale scale;
  private final Style style;
  private final DoubleConsumer progress;
  private final List<Occasion> occasions;
  private final List<Solution> healthy = new ArrayList<>();
  private final Queue<Bench> benches = new ConcurrentLinkedQueue<>();
  private double[] hottest = {};

  private EffectsStudy(BleedSystem system, Style style, DoubleConsumer progress) {
    this.system = system;
    scale = system.severity();
    this.style = style;
    this.progress = progress;
    occasions = Occasion.all(system);
  }

  /**
   * Makes the table.
   *
   * @param system what may fail
   * @param parts full names of the only parts that are asked about; empty for all
   * @param pairs whether partners of dormant failures are looked for
   * @param style units of the words in it
   * @param progress is told the share that is done, 0..1; whatever it throws ends the study
   */
  public static Effects of(
      BleedSystem system, Set<String> parts, boolean pairs, Style style, DoubleConsumer progress) {
    return new EffectsStudy(system, style, progress).effects(parts, pairs);
  }

  private Effects effects(Set<String> parts, boolean pairs) {
    solveHealthy();
    List<List<Fault>> faults = new ArrayList<>();
    Faults.all(system).forEach(fault -> faults.add(List.of(fault)));
    faults.addAll(Faults.common(system));
    List<List<Fault>> asked =
        faults.stream()
            .filter(f -> parts.isEmpty() || f.stream().anyMatch(g -> asked(parts, g)))
            .toList();
    double share = pairs ? 0.15 : 1;
    List<FaultEffect> rows = inParallel(asked.size(), 0, share, i -> effect(asked.get(i)));
    List<Effects.Bite> bites = pairs ? bites(faults, rows, parts.isEmpty()) : List.of();
    return new Effects(occasions, healthy, rows, scale, bites, pairs);
  }

  private List<Effects.Bite> bites(List<List<Fault>> faults, List<FaultEffect> rows, boolean all) {
    // With one part asked about, the others' own effects are still needed as partners.
    List<FaultEffect> partners =
        all ? rows : inParallel(faults.size(), 0.15, 0.3, i -> effect(faults.get(i)));
    List<Fault> dormant =
        rows.stream()
            .filter(row -> row.faults().size() == 1 && row.dormant() && !row.moving())
            .map(FaultEffect::fault)
            .toList();
    Pairs study = new Pairs(this, dormant);
    List<List<Effects.Bite>> found =
        inParallel(partners.size(), all ? 0.15 : 0.3, 1, i -> study.with(partners.get(i)));
    return Pairs.worst(found.stream().flatMap(List::stream).toList());
  }

  private static boolean asked(Set<String> parts, Fault fault) {
    return parts.contains(fault.part().name());
  }

  private void solveHealthy() {
    Settler settler = new Settler(system.network());
    hottest = new double[system.network().points().size()];
    for (Occasion occasion : occasions) {
      settler.forget();
      Solution solution = settler.solve(occasion.setup());
      healthy.add(solution);
      for (int point = 0; point < hottest.length; point++) {
        hottest[point] = Math.max(hottest[point], solution.temperature(point));
      }
    }
  }

  private FaultEffect effect(List<Fault> faults) {
    Broken broken = Broken.of(system.network(), system.sides(), faults);
    return onBench(
        bench -> {
          List<Outcome> outcomes = new ArrayList<>();
          for (int i = 0; i < occasions.size(); i++) {
            outcomes.add(
                outcome(broken, i, bench.solve(broken, occasions.get(i).setup(), healthy.get(i))));
          }
          return new FaultEffect(faults, outcomes);
        });
  }

  private Outcome outcome(Broken broken, int i, Solution now) {
    Fault first = broken.faults().get(0);
    Solution was = healthy.get(i);
    Occasion occasion = occasions.get(i);
    String trouble = trouble(was, now);
    if (!trouble.isEmpty()) {
      List<Finding> none = List.of(Finding.plain(Criterion.NO_REST, first.part().name()));
      return new Outcome(occasion, trouble, doing(was, first), GONE, none, List.of(), List.of());
    }
    List<Sign> signs = Notice.between(was, now);
    return new Outcome(
        occasion,
        "",
        doing(was, first),
        doing(now, first),
        findings(was, now, broken, signs),
        signs,
        Judge.moves(was, now, broken.faults()));
  }

  /** What a broken state leads to. */
  List<Finding> findings(Solution was, Solution now, Broken broken, List<Sign> signs) {
    return Judge.findings(was, now, broken.faults(), system.sides(), hottest, signs);
  }

  private Doing doing(Solution solution, Fault fault) {
    @Nullable Integer at = Judge.place(solution, fault);
    return at == null ? GONE : solution.doing(at, style);
  }

  /** Why two states cannot be compared; empty when they can. */
  static String trouble(Solution was, Solution now) {
    if (!was.solved()) {
      return "the healthy system has no answer here";
    }
    if (now.solved()) {
      return "";
    }
    List<String> cycle = now.outcome().cycle();
    if (!cycle.isEmpty()) {
      return "no state at rest: " + String.join(", ", cycle) + " go to and fro";
    }
    return now.refusals().isEmpty()
        ? "not solved; the place that resists is " + now.outcome().resists()
        : now.refusals().values().iterator().next();
  }

  BleedSystem system() {
    return system;
  }

  SeverityScale scale() {
    return scale;
  }

  List<Occasion> occasions() {
    return occasions;
  }

  Solution healthy(int occasion) {
    return healthy.get(occasion);
  }

  /** A piece of work that needs equations. */
  @FunctionalInterface
  interface Work<T> {
    T on(Bench bench);
  }

  /** Lends out a bench that nobody else has at the time. */
  <T> T onBench(Work<T> work) {
    Bench free = benches.poll();
    Bench bench = free == null ? new Bench(system.network()) : free;
    T done = work.on(bench);
    benches.add(bench);
    return done;
  }

  private <T> List<T> inParallel(int count, double from, double to, IntFunction<T> work) {
    return Abreast.all(count, from, to, progress, work);
  }
}

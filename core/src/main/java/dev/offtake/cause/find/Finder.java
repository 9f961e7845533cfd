package dev.offtake.cause.find;

import dev.offtake.cause.Readings;
import dev.offtake.study.Fault;
import dev.offtake.study.Faults;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleConsumer;
import org.jspecify.annotations.Nullable;

/**
 * Finds what can be wrong by what was read.
 *
 * <p>Every single failure is solved at a few extents and weighed with the slopes of the sound
 * system; those that remain likely are solved at more extents and weighed with slopes of their own;
 * where no single one explains the readings, two at once are tried.
 */
public final class Finder {
  /** Places at which each cause is solved in the first round, and in the second. */
  private static final int FEW_OF_TWO = 6;

  private static final List<Double> BETWEEN = List.of(1 / 6.0, 1 / 3.0, 2 / 3.0, 5 / 6.0);

  /** Causes less likely than the best by this factor are not looked at again (natural log). */
  private static final double FAR_BEHIND = 7.5;

  private static final int MOST = 40;

  /** A cause less likely than the best by this factor is not worth draws (natural log). */
  private static final double WORTH_DRAWS = 2.5;

  /** What moves a forecast by less, in its own errors or as a chance, does not move it. */
  private static final double STILL = 0.02;

  /** What differs by more, in its own errors, jumps; so often it is looked between. */
  private static final double JUMP = 4;

  private static final int JUMPS = 2;

  /** No stretch of an extent that is narrower is cut. */
  private static final double NARROW = 0.05;

  /** Pairs are tried when something else than any single failure is at least so likely. */
  private static final double TRY_PAIRS = 0.3;

  private static final int PAIRS = 48;

  /** So many failures that fit but for a warning are tried with a warning that is dead. */
  private static final int LOUD = 12;

  private static final int CLOSER_PAIRS = 20;

  private final BleedSystem system;
  private final Readings readings;
  private final Prior prior;
  private final long seed;
  private final Team team;
  private final List<Scene> scenes;
  private final List<Scene> stage;
  private final List<SceneState> healthy;
  private final List<Clue> clues;
  private final List<Unknown> unknowns;
  private final double[][] slopes;
  private final boolean recorded;
  private final @Nullable Preview preview;
  private final Map<Cause, Outlook> outlooks = new ConcurrentHashMap<>();
  private final Weigher weigher;

  /** With the slopes of the sound system. */
  private final Weigher.Model model;

  private final Inspected inspected;
  private final Dormancy dormancy;

  private Finder(
      BleedSystem system, Readings readings, Prior prior, long seed, DoubleConsumer progress) {
    this.seed = seed;
    this.readings = readings;
    this.prior = prior;
    recorded = !readings.recordings().isEmpty();
    // What is recorded moves: it seldom stands still long enough for joints to show.
    this.system = recorded ? system : Seeping.of(system);
    team = new Team(this.system, progress);
    ClueMaker maker = new ClueMaker(this.system, readings);
    scenes = maker.scenes();
    healthy = team.on(forecaster -> forecaster.sound(scenes));
    team.latch(scenes, healthy);
    clues = maker.clues(healthy);
    stage = Stage.scenes(this.system);
    List<Scene> all = new ArrayList<>(scenes);
    all.addAll(stage);
    unknowns = new ArrayList<>(Unknowns.of(this.system, all, readings.gauges()));
    unknowns.addAll(Unknowns.unsettled(clues, scenes, healthy));
    slopes = Slopes.of(unknowns, clues, healthy);
    if (recorded) {
      double[] nowhere = new double[unknowns.size()];
      new RunSlopes(unknowns, clues, scenes, true).add(slopes, nowhere, healthy, team);
    }
    weigher = new Weigher(clues);
    model = weigher.model(slopes);
    inspected = new Inspected(readings.seen());
    dormancy = team.on(forecaster -> new Dormancy(this.system, forecaster));
    preview = recorded ? team.on(f -> new Preview(this.system, readings, f)) : null;
  }

  /**
   * Searches.
   *
   * @param system what was looked at
   * @param readings what was read
   * @param prior what is believed before
   * @param seed of the draws that check forecasts which bend; the same seed gives the same answer
   * @param progress is told the share that is done, 0..1; whatever it throws ends the search
   */
  public static Found find(
      BleedSystem system, Readings readings, Prior prior, long seed, DoubleConsumer progress) {
    Finder finder = new Finder(system, readings, prior, seed, progress);
    Found found = finder.found();
    return found.advised(finder.advice(found));
  }

  /** Searches as {@link #find} does, without looking for the next check. */
  public static Found rank(
      BleedSystem system, Readings readings, Prior prior, long seed, DoubleConsumer progress) {
    return new Finder(system, readings, prior, seed, progress).found();
  }

  private Found found() {
    List<Cause> singles = new ArrayList<>();
    Faults.all(system).forEach(fault -> singles.add(Cause.of(fault)));
    Faults.common(system).forEach(faults -> singles.add(new Cause(faults, true)));
    double mass = singles.stream().mapToDouble(prior::weight).sum();
    double faulty = Math.log((1 - prior.healthy()) * (1 - prior.none()) / mass);
    List<Candidate> first = weighed(singles, faulty, 0, 0.4);
    List<Candidate> second = closer(nearest(first), 0.4, 0.7);
    Weighed sound = weigher.weigh(sound(), slopes);
    int unsolved = singles.size() - first.size() - past();
    Found found = ranking(sound, second, singles.size(), unsolved, false);
    // Two at once would have to be played a thousand times.
    if (!recorded && (!found.explained() || found.none() > TRY_PAIRS)) {
      List<Candidate> all = new ArrayList<>(second);
      all.addAll(pairs(first, faulty));
      found = ranking(sound, all, singles.size(), unsolved, true);
    }
    return found;
  }

  /** How many causes were passed over because they cannot be what was recorded. */
  private int past() {
    return (int) outlooks.values().stream().filter(Outlook::past).count();
  }

  /** Solves a cause; empty where its failures cannot be there together. */
  private Optional<CauseSolver> solver(Cause cause, Forecaster forecaster) {
    Outlook outlook =
        preview == null
            ? Outlook.UNKNOWN
            : outlooks.computeIfAbsent(cause, one -> preview.of(one, forecaster));
    return CauseSolver.of(cause, forecaster, scenes, healthy, outlook);
  }

  private List<Candidate> weighed(List<Cause> causes, double faulty, double from, double to) {
    double[] usual = sound().points().get(0).forecast();
    return team
        .all(
            causes.size(),
            from,
            to,
            (forecaster, i) -> candidate(causes.get(i), faulty, usual, forecaster))
        .stream()
        .flatMap(Optional::stream)
        .toList();
  }

  /** A closer look at each that moves what was read, and of those that do the same at one. */
  private List<Candidate> closer(List<Candidate> near, double from, double to) {
    double best = near.isEmpty() ? 0 : near.get(0).log();
    double[] usual = sound().points().get(0).forecast();
    List<Integer> firsts = new Alike(weigher).firsts(near);
    List<Weighed> weighed =
        team.all(
            near.size(),
            from,
            to,
            (forecaster, i) ->
                firsts.get(i) == i && moves(near.get(i).weighed().course(), usual)
                    ? closer(near.get(i), best, forecaster)
                    : near.get(i).weighed());
    return team.all(
        near.size(),
        to,
        to,
        (forecaster, i) -> {
          Candidate one = near.get(i);
          Weighed like = weighed.get(firsts.get(i)).of(one.weighed().cause());
          return dormancy(like, one.before(), forecaster);
        });
  }

  private List<Candidate> pairs(List<Candidate> singles, double faulty) {
    double[] usual = sound().points().get(0).forecast();
    PairSearch search = new PairSearch(weigher, usual, slopes);
    List<Candidate> loud = search.loud(singles, LOUD);
    List<List<Cause>> masked =
        team.all(loud.size(), 0.7, 0.75, (forecaster, i) -> masked(loud.get(i), forecaster));
    Set<Cause> pairs = new LinkedHashSet<>(masked.stream().flatMap(List::stream).toList());
    pairs.addAll(search.best(singles, PAIRS));
    List<Candidate> weighed = weighed(List.copyOf(pairs), faulty, 0.75, 0.8);
    List<Candidate> near = nearest(weighed);
    return closer(near.subList(0, Math.min(CLOSER_PAIRS, near.size())), 0.8, 0.9);
  }

  /** A failure together with each that would keep its warnings silent. */
  private List<Cause> masked(Candidate loud, Forecaster forecaster) {
    Cause cause = loud.weighed().cause();
    double[] usual = sound().points().get(0).forecast();
    double[] place = weigher.loudest(loud.weighed().course(), slopes, usual);
    return solver(cause, forecaster)
        .flatMap(solver -> solver.states(place))
        .map(states -> Masks.of(system, cause, healthy, states))
        .orElse(List.of());
  }

  private Found ranking(
      Weighed sound, List<Candidate> candidates, int considered, int unsolved, boolean pairs) {
    double nothing = Math.log(prior.healthy()) + sound.evidence() + inspected.log(Cause.NOTHING);
    double none =
        Math.log((1 - prior.healthy()) * prior.none())
            + weigher.none(sound.course().points().get(0).forecast(), slopes)
            + inspected.log(Cause.NOTHING);
    LookAlikes lookAlikes = new LookAlikes(clues, slopes);
    return new Ranking(system, readings, prior, scenes, clues, lookAlikes)
        .found(sound, candidates, nothing, none, considered, unsolved, pairs);
  }

  private Advice advice(Found found) {
    List<Suspect> suspects = new ArrayList<>();
    for (int i = 0; i < found.ranked().size(); i++) {
      Ranked ranked = found.ranked().get(i);
      int number = i;
      int group = 0;
      while (!found.groups().get(group).members().contains(number)) {
        group++;
      }
      double[] foretold = ranked.foretold().stream().mapToDouble(v -> v).toArray();
      suspects.add(
          new Suspect(
              ranked.cause(),
              i,
              group,
              ranked.chance(),
              ranked.places(),
              weigher.residual(foretold)));
    }
    double[] usual = sound().points().get(0).forecast();
    double[] none = {};
    suspects.add(
        new Suspect(
            Cause.NOTHING,
            -1,
            found.groups().size(),
            found.nothing(),
            List.of(none, none, none),
            weigher.residual(usual)));
    return new Advisor(
            system, team, scenes, stage, unknowns, weigher.readings(slopes), Running.open(readings))
        .advice(suspects, 0.9);
  }

  private Course sound() {
    double[] forecast = clues.stream().mapToDouble(clue -> clue.value(healthy)).toArray();
    return Course.of(Cause.NOTHING, 1, place -> Optional.of(forecast)).orElseThrow();
  }

  private Optional<Candidate> candidate(
      Cause cause, double faulty, double[] usual, Forecaster forecaster) {
    double before = faulty + Math.log(prior.weight(cause)) + inspected.log(cause);
    return solver(cause, forecaster)
        .flatMap(states -> course(cause, usual, place -> states.states(place).map(this::forecast)))
        .map(course -> new Candidate(weigher.weigh(course, model), before, false));
  }

  /** A cause that moves nothing at its ends and in its middle is not looked at in between. */
  private Optional<Course> course(Cause cause, double[] usual, Course.Solver solver) {
    if (cause.extents() > 1) {
      return Course.of(cause, FEW_OF_TWO, solver);
    }
    return Course.of(cause, 3, solver)
        .map(ends -> moves(ends, usual) ? between(ends, solver) : ends);
  }

  /** More places, and still more where something jumps: a trip, a light, a valve at its stop. */
  private Course between(Course ends, Course.Solver solver) {
    Course course = ends.with(BETWEEN, solver);
    for (int round = 0; !recorded && round < JUMPS; round++) {
      course = course.with(course.rough(this::jumps, NARROW), solver);
    }
    return course;
  }

  private boolean jumps(double[] one, double[] two) {
    return weigher.apart(one, two) > JUMP || weigher.speaks(one, two) > 0.5;
  }

  private double[] forecast(List<SceneState> states) {
    return clues.stream().mapToDouble(clue -> clue.value(states)).toArray();
  }

  /**
   * Those that are worth a closer look, the likeliest first. Of those that move what was read only
   * some, for each of them takes time; of those that move nothing all, for together they hold what
   * chance there is that something is wrong that the readings cannot show.
   */
  private List<Candidate> nearest(List<Candidate> all) {
    double best = all.stream().mapToDouble(Candidate::log).max().orElse(0);
    double far = best - FAR_BEHIND - Math.log(prior.dormant());
    double[] usual = sound().points().get(0).forecast();
    List<Candidate> near = new ArrayList<>();
    int moving = 0;
    for (Candidate candidate : byChance(all)) {
      boolean moves = moves(candidate.weighed().course(), usual);
      if (candidate.log() > far && (!moves || moving < MOST)) {
        near.add(candidate);
        moving += moves ? 1 : 0;
      }
    }
    return near;
  }

  private static List<Candidate> byChance(List<Candidate> all) {
    return all.stream().sorted(Comparator.comparingDouble(candidate -> -candidate.log())).toList();
  }

  /** The same cause with more places and slopes of its own. */
  private Weighed closer(Candidate candidate, double best, Forecaster forecaster) {
    CauseSolver states = solver(candidate.weighed().cause(), forecaster).orElseThrow();
    Weighed weighed =
        new Closer(weigher, place -> states.states(place).map(this::forecast))
            .weigh(candidate.weighed(), place -> own(states, place));
    double rival = best - candidate.before();
    // A draw that plays a whole run costs too much for what it mends.
    if (recorded || weighed.evidence() < rival - WORTH_DRAWS) {
      return weighed;
    }
    return new Draws(weigher, clues, unknowns, scenes)
        .evidence(weighed, own(states, weighed.place()), states, rival, seed)
        .map(weighed::withEvidence)
        .orElse(weighed);
  }

  /** Whether a cause changes anything that was read, at any of its places. */
  private boolean moves(Course course, double[] usual) {
    return course.points().stream()
        .anyMatch(
            point ->
                weigher.apart(point.forecast(), usual) > STILL
                    || weigher.speaks(point.forecast(), usual) > STILL);
  }

  /** With its chance of having lain dormant. */
  private Candidate dormancy(Weighed weighed, double before, Forecaster forecaster) {
    List<Fault> faults = weighed.cause().at(weighed.place());
    boolean dormant = dormancy.dormant(faults, forecaster);
    boolean unheard =
        dormant && !spoken(weighed) && Dormancy.quiet(faults, scenes, healthy, forecaster);
    double more = (dormant ? prior.dormant() : 1) * (unheard ? prior.unheard() : 1);
    return new Candidate(weighed, before + Math.log(more), dormant);
  }

  /** Whether a cause is what a light, a word or a needle that swings told of. */
  private boolean spoken(Weighed weighed) {
    double[] usual = sound().points().get(0).forecast();
    double[] now = weighed.course().points().get(weighed.best()).forecast();
    return weigher.speaks(now, usual) > 0.5;
  }

  /** Slopes at a cause; in a recording those of the sound system, which take many runs to find. */
  private double[][] own(CauseSolver solver, double[] place) {
    Optional<List<SceneState>> states = solver.states(place);
    if (states.isEmpty()) {
      return slopes;
    }
    double[][] own = Slopes.of(unknowns, clues, states.get());
    for (int c = 0; c < own.length; c++) {
      if (RunSlopes.of(clues.get(c), scenes)) {
        own[c] = slopes[c];
      }
    }
    return own;
  }
}

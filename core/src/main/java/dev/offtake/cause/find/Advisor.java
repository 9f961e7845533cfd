package dev.offtake.cause.find;

import dev.offtake.cause.chance.LinearModel;
import dev.offtake.part.Access;
import dev.offtake.quantity.Dimension;
import dev.offtake.system.Assumption;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Plans the next check: the one with the least expected minutes to a finished repair, looking one
 * step ahead; information for each minute only breaks ties.
 */
final class Advisor {
  /** Suspects less likely than this are not asked about. */
  private static final double LIKELY = 0.01;

  private static final int MOST = 14;

  /** So many are asked about however unlikely they are. */
  private static final int FEWEST = 3;

  /** A switch is not moved for less, in bits. */
  private static final double WORTH_A_MOVE = 0.05;

  /** Nor a check made that saves a smaller share of the whole repair. */
  private static final double WORTH_IT = 0.05;

  /** Under a cause that is at least so likely no limit may be passed. */
  private static final double MUST_BE_SAFE = 0.05;

  /** A check that tells less, in bits, is no help. */
  private static final double NO_HELP = 0.03;

  private static final int OFFERS = 4;

  private final BleedSystem system;
  private final Team team;
  private final List<Scene> read;
  private final List<Scene> stage;
  private final List<SceneState> sound;
  private final List<Unknown> unknowns;
  private final LinearModel readings;
  private final Set<Access> open;

  /**
   * Prepares.
   *
   * @param read scenes of the readings; the unknowns count them first, then those of the stage
   * @param stage scenes that may be asked for
   * @param unknowns of all of them
   * @param readings what the readings make of the unknowns
   * @param open access that is already paid for
   */
  Advisor(
      BleedSystem system,
      Team team,
      List<Scene> read,
      List<Scene> stage,
      List<Unknown> unknowns,
      LinearModel readings,
      Set<Access> open) {
    this.system = system;
    this.team = team;
    this.read = read;
    this.stage = stage;
    this.unknowns = unknowns;
    this.readings = readings;
    this.open = open;
    sound = team.on(forecaster -> forecaster.sound(stage));
  }

  /**
   * Plans.
   *
   * @param suspects what may be wrong; the likeliest are asked about
   * @param from share of all work that was done before
   */
  Advice advice(List<Suspect> suspects, double from) {
    List<Suspect> asked = likely(suspects);
    if (asked.isEmpty()) {
      return Advice.NONE;
    }
    List<Instrument.Looked> instruments = Instrument.all(system);
    List<Played> played =
        team.all(stage.size(), from, 1, (forecaster, i) -> play(i, asked, instruments, forecaster));
    Plan plan = new Plan(asked, read, open);
    List<Advice.Offer> offers = new ArrayList<>();
    List<Advice.NoHelp> noHelp = new ArrayList<>();
    List<Advice.Refused> refused = new ArrayList<>();
    for (Played scene : played) {
      for (int k = 0; k < instruments.size(); k++) {
        Instrument instrument = instruments.get(k).instrument();
        Optional<Advice.Offer> offer = plan.run(stage.get(scene.scene()), instrument, scene, k);
        if (!scene.refused().isEmpty()) {
          offer
              .filter(o -> o.finish() < plan.without())
              .ifPresent(o -> refuse(refused, stage.get(scene.scene()), scene.refused()));
        } else if (offer.isPresent()) {
          offers.add(offer.get());
          if (offer.get().bits() < NO_HELP) {
            plan.noHelp(stage.get(scene.scene()), instrument, scene, k).ifPresent(noHelp::add);
          }
        }
      }
    }
    offers.addAll(plan.looks());
    return new Advice(plan.order(), plan.without(), best(offers, plan), noHelp, refused);
  }

  private static void refuse(List<Advice.Refused> refused, Scene scene, String why) {
    if (refused.stream().noneMatch(known -> known.why().equals(why))) {
      refused.add(new Advice.Refused(scene.name(), why));
    }
  }

  private List<Suspect> likely(List<Suspect> suspects) {
    List<Suspect> sorted =
        suspects.stream()
            .sorted(Comparator.comparingDouble(suspect -> -suspect.chance()))
            .limit(MOST)
            .toList();
    long likely = sorted.stream().filter(suspect -> suspect.chance() >= LIKELY).count();
    return sorted.subList(0, (int) Math.min(sorted.size(), Math.max(FEWEST, likely)));
  }

  /** The best few, each scene and each look once. */
  private static List<Advice.Offer> best(List<Advice.Offer> offers, Plan plan) {
    List<Advice.Offer> best = new ArrayList<>();
    offers.stream()
        .filter(offer -> offer.finish() < (1 - WORTH_IT) * plan.without())
        .filter(offer -> offers.stream().noneMatch(plain -> noBetter(offer, plain)))
        .sorted(
            Comparator.comparingDouble((Advice.Offer offer) -> Math.rint(offer.finish()))
                .thenComparingDouble(offer -> -offer.bits() / Math.max(1, offer.minutes())))
        .filter(offer -> best.stream().noneMatch(known -> same(known.check(), offer.check())))
        .limit(OFFERS)
        .forEach(best::add);
    return best;
  }

  /** Whether a run with a switch moved tells no more than one as things sit. */
  private static boolean noBetter(Advice.Offer moved, Advice.Offer plain) {
    return moved.check() instanceof Check.Run there
        && plain.check() instanceof Check.Run here
        && here.scene().name().equals(here.scene().power())
        && !there.scene().name().equals(there.scene().power())
        && here.scene().power().equals(there.scene().power())
        && here.instrument().equals(there.instrument())
        && moved.bits() < plain.bits() + WORTH_A_MOVE;
  }

  private static boolean same(Check one, Check two) {
    if (one instanceof Check.Run a && two instanceof Check.Run b) {
      return a.scene().equals(b.scene());
    }
    return one instanceof Check.Look a
        && two instanceof Check.Look b
        && a.fault().part().name().equals(b.fault().part().name());
  }

  private Played play(
      int scene, List<Suspect> asked, List<Instrument.Looked> instruments, Forecaster forecaster) {
    Scene there = stage.get(scene);
    Optional<Assumption> hangsOn = Interlocks.of(system, there);
    if (!sound.get(scene).solved()) {
      return new Played(scene, List.of(), hangsOn, "the model has no answer there");
    }
    Usual usual = usual(scene, instruments);
    List<List<Showing>> showings = new ArrayList<>();
    String refused = Rules.broken(system, there, sound.get(scene).seen());
    for (Suspect suspect : asked) {
      List<SceneState> states = states(suspect, there, sound.get(scene), forecaster);
      if (states.isEmpty()) {
        return new Played(scene, List.of(), hangsOn, "the model has no answer there");
      }
      if (suspect.chance() >= MUST_BE_SAFE && refused.isEmpty() && !read.contains(there)) {
        refused = Rules.limit(system, sound.get(scene), states);
      }
      List<Showing> own = showings(suspect, states, instruments, usual);
      if (hangsOn.isPresent()) {
        Scene shut = Interlocks.shut(there, hangsOn.get());
        List<SceneState> other = states(suspect, shut, sound.get(scene), forecaster);
        own = other.isEmpty() ? own : either(own, showings(suspect, other, instruments, usual));
      }
      showings.add(own);
    }
    return new Played(scene, showings, hangsOn, refused);
  }

  private static List<Showing> either(List<Showing> one, List<Showing> two) {
    List<Showing> both = new ArrayList<>();
    for (int i = 0; i < one.size(); i++) {
      both.add(one.get(i).or(two.get(i)));
    }
    return both;
  }

  /**
   * What counts for each instrument in a scene whatever has failed there.
   *
   * @param slopes by instrument and unknown
   * @param least how far it is uncertain whatever has failed, SI
   */
  private record Usual(double[][] slopes, double[] least) {}

  private Usual usual(int scene, List<Instrument.Looked> instruments) {
    int at = read.size() + scene;
    SceneState state = sound.get(scene);
    List<Clue> clues =
        instruments.stream()
            .map(
                looked ->
                    new Clue(
                        0,
                        Optional.empty(),
                        List.of(new Clue.Term(at, looked.probe(), 1, "")),
                        Words.NONE))
            .toList();
    double[] least = instruments.stream().mapToDouble(looked -> looked.least(state)).toArray();
    return new Usual(Slopes.of(unknowns, clues, at, state), least);
  }

  /** The scene at each place of a suspect; empty where one has no answer. */
  private static List<SceneState> states(
      Suspect suspect, Scene scene, SceneState start, Forecaster forecaster) {
    Optional<CauseSolver> solver =
        CauseSolver.of(suspect.cause(), forecaster, List.of(scene), List.of(start));
    List<SceneState> states = new ArrayList<>();
    for (double[] place : suspect.places()) {
      Optional<List<SceneState>> state = solver.flatMap(own -> own.states(place));
      if (state.isEmpty()) {
        return List.of();
      }
      states.add(state.get().get(0));
    }
    return states;
  }

  private List<Showing> showings(
      Suspect suspect, List<SceneState> states, List<Instrument.Looked> instruments, Usual usual) {
    List<Showing> showings = new ArrayList<>();
    for (int k = 0; k < instruments.size(); k++) {
      Instrument instrument = instruments.get(k).instrument();
      LinearModel.Foretold foretold = readings.foretell(usual.slopes[k]);
      double shift = instrument.lamp() ? 0 : foretold.moves(suspect.residual());
      double[] means = new double[states.size()];
      for (int i = 0; i < means.length; i++) {
        double value = instruments.get(k).probe().of(states.get(i)) + shift;
        means[i] = Math.max(instrument.low(), Math.min(instrument.high(), value));
      }
      double own = instrument.deviation();
      boolean hot = instrument.dimension() == Dimension.TEMPERATURE;
      double model = Errors.of(system).of(hot, means[0]);
      double marks = instrument.step() * instrument.step() / 12;
      double still = Math.max(usual.least[k], instruments.get(k).unsettled(states));
      double variance = foretold.variance() + own * own + marks + model * model + still * still;
      showings.add(
          new Showing(means, Suspect.WEIGHTS, instrument.lamp() ? 0 : Math.sqrt(variance)));
    }
    return showings;
  }
}

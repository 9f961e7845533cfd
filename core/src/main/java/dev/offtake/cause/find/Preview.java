package dev.offtake.cause.find;

import dev.offtake.cause.Occasion;
import dev.offtake.cause.Reading;
import dev.offtake.cause.Readings;
import dev.offtake.cause.Recording;
import dev.offtake.cause.TripMoment;
import dev.offtake.part.Mode;
import dev.offtake.part.Trip;
import dev.offtake.profile.Action;
import dev.offtake.profile.Sequence;
import dev.offtake.solve.Setup;
import dev.offtake.study.Fault;
import dev.offtake.system.BleedSystem;
import dev.offtake.time.Drive;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What states at rest tell of a run, before it is played: to play a run takes a hundred times as
 * long as to solve a state.
 *
 * <p>Each extent of a cause is judged for itself. One that contradicts the record where it begins,
 * by far more than something that is not on the list would, need not be played; later on something
 * may have tripped, of which a state at rest knows nothing. One that changes nothing at any speed
 * of the run runs as a sound system does, unless it slows something or belongs to what waits for a
 * moment: a trip, a relief valve.
 */
final class Preview {
  /** Places between the ends of a change of speed that are looked at. */
  private static final int ON_THE_WAY = 2;

  /** Less likely by this factor than what is not on the list is not played (natural log). */
  private static final double PAST = 8;

  /** What moves nothing by more, in its own errors, moves nothing worth playing. */
  private static final double STILL = 0.25;

  private static final int PLACES = 7;

  private final List<Scene> scenes = new ArrayList<>();
  private final List<Clue> watched = new ArrayList<>();

  /** Numbers of the watched clues that are judged: those of the beginning. */
  private final List<Integer> begins = new ArrayList<>();

  private final List<SceneState> healthy;
  private final Weigher judge;
  private final Weigher watch;
  private final double[][] slopes;
  private final double none;
  private final double[] usual;

  /** What has to be done with a cause to an extent. */
  enum Verdict {
    /** It has to be played. */
    PLAY,
    /** It runs as a sound system does. */
    AS_SOUND,
    /** It cannot be what was recorded. */
    PAST
  }

  /**
   * Looks at the sound system.
   *
   * @param readings with recordings
   * @param forecaster of the system
   */
  Preview(BleedSystem system, Readings readings, Forecaster forecaster) {
    List<Look> looks = new ArrayList<>();
    for (Recording recording : readings.recordings()) {
      Drive drive = Sequence.of(system, recording.profile(), List.of()).drive();
      looks.addAll(looks(recording, drive));
    }
    looks.stream().map(Look::scene).distinct().forEach(scenes::add);
    healthy = forecaster.sound(scenes);
    looks.forEach(look -> clues(system, look));
    watch = new Weigher(watched);
    List<Clue> judged = begins.stream().map(watched::get).toList();
    judge = new Weigher(judged);
    List<Unknown> unknowns = Unknowns.of(system, scenes, readings.gauges());
    slopes = Slopes.of(unknowns, judged, healthy);
    none = judge.none(forecast(judged, healthy), slopes);
    usual = forecast(watched, healthy);
  }

  /**
   * Where a run is looked at.
   *
   * @param recording what was recorded of it
   * @param at when, s
   */
  private record Look(Recording recording, double at, Setup setup) {
    Scene scene() {
      return new Scene("at rest", "", setup, TripMoment.NONE);
    }
  }

  private static List<Look> looks(Recording recording, Drive drive) {
    List<Look> looks = new ArrayList<>();
    looks.add(new Look(recording, 0, drive.start()));
    double now = 0;
    for (Drive.Span span : drive.spans()) {
      boolean stands = span.begins().equals(span.ends());
      for (int i = 1; !stands && i <= ON_THE_WAY; i++) {
        double at = now + span.seconds() * i / (ON_THE_WAY + 1);
        looks.add(new Look(recording, at, drive.at(at)));
      }
      now += span.seconds();
      looks.add(new Look(recording, now, span.ends()));
    }
    return looks;
  }

  private void clues(BleedSystem system, Look look) {
    int scene = scenes.indexOf(look.scene());
    for (Recording.Channel channel : look.recording().channels()) {
      // Just before the end: what is done then has not begun.
      double value = channel.at(Math.max(channel.from(), look.at() - 0.01), Instants.GAP);
      ClueMaker.Sample sample = ClueMaker.sample(scene, channel, Double.isNaN(value) ? 0 : value);
      List<Clue.Term> terms = List.of(new Clue.Term(scene, sample.probe(), 1, ""));
      Optional<Reading> reading = Optional.of(sample.reading());
      double sound = new Clue(0, reading, terms, Words.NONE).value(healthy);
      Optional<Likelihood> agrees =
          new Agreement(Errors.of(system), Occasion.Teller.READER, sample.reading(), sound)
              .likelihood();
      if (agrees.isPresent()) {
        if (look.at() == 0 && channel.from() <= begun(look.recording())) {
          begins.add(watched.size());
        }
        watched.add(new Clue(0, reading, terms, agrees.get()));
      }
    }
  }

  /**
   * When something is done for the first time, s: a record that begins later tells no beginning.
   */
  private static double begun(Recording recording) {
    return recording.profile().actions().stream().mapToDouble(Action::at).min().orElse(0);
  }

  private static double[] forecast(List<Clue> clues, List<SceneState> states) {
    return clues.stream().mapToDouble(clue -> clue.value(states)).toArray();
  }

  /** What states at rest tell of a cause. */
  Outlook of(Cause cause, Forecaster forecaster) {
    boolean slows = cause.faults().stream().anyMatch(Preview::shows);
    Optional<Course> course =
        CauseSolver.of(cause, forecaster, scenes, healthy)
            .filter(solver -> cause.extents() < 2)
            .flatMap(solver -> Course.of(cause, PLACES, at -> forecast(solver, at)));
    return course.map(found -> outlook(found, slows)).orElse(Outlook.UNKNOWN);
  }

  /** Whether it may show in a run although nothing shows at rest. */
  private static boolean shows(Fault fault) {
    return fault.mode().traits().contains(Mode.Trait.MOVING)
        || fault.part() instanceof Trip
        || fault.part().kind().equals("relief valve");
  }

  private Optional<double[]> forecast(CauseSolver solver, double... place) {
    return solver.states(place).map(states -> forecast(watch.clues(), states));
  }

  private Outlook outlook(Course course, boolean slows) {
    Weigher.Model model = judge.model(slopes);
    List<Outlook.Seen> seen = new ArrayList<>();
    for (Course.Point point : course.points()) {
      double[] judged = new double[begins.size()];
      for (int i = 0; i < judged.length; i++) {
        judged[i] = point.forecast()[begins.get(i)];
      }
      boolean past = judged.length > 0 && model.log(judged) < none - PAST;
      boolean same = !slows && watch.apart(point.forecast(), usual) < STILL;
      Preview.Verdict verdict = past ? Verdict.PAST : same ? Verdict.AS_SOUND : Verdict.PLAY;
      seen.add(new Outlook.Seen(point.place(), verdict));
    }
    return new Outlook(seen);
  }
}

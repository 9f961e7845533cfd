package dev.offtake.cause.find;

import dev.offtake.cause.About;
import dev.offtake.cause.Occasion;
import dev.offtake.cause.Reading;
import dev.offtake.cause.Readings;
import dev.offtake.cause.Recording;
import dev.offtake.cause.TripMoment;
import dev.offtake.cause.Value;
import dev.offtake.part.Trip;
import dev.offtake.profile.Sequence;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes readings ready: scenes to be solved, and what is looked at in them. */
final class ClueMaker {
  /** What comes from a recording was read on no occasion. */
  private static final int NO_OCCASION = -1;

  private final BleedSystem system;
  private final List<Scene> scenes = new ArrayList<>();
  private final List<Draft> drafts = new ArrayList<>();
  private final List<Sample> samples = new ArrayList<>();

  /** One value of a recording. */
  record Sample(int scene, Probe probe, Reading reading) {}

  /** A clue before anything is solved. */
  private record Draft(
      int occasion, Occasion at, Optional<Reading> reading, List<Clue.Term> terms) {}

  ClueMaker(BleedSystem system, Readings readings) {
    this.system = system;
    for (int i = 0; i < readings.occasions().size(); i++) {
      occasion(i, readings.occasions().get(i));
    }
    readings.recordings().forEach(this::recording);
  }

  /** Scenes, those of the occasions first. */
  List<Scene> scenes() {
    return List.copyOf(scenes);
  }

  /**
   * The clues.
   *
   * @param healthy the scenes of a sound system, solved
   */
  List<Clue> clues(List<SceneState> healthy) {
    List<Clue> clues = new ArrayList<>();
    for (Draft draft : drafts) {
      Clue bare = new Clue(draft.occasion(), draft.reading(), draft.terms(), Words.NONE);
      double usual = bare.value(healthy);
      Optional<Likelihood> likelihood =
          draft.reading().isEmpty()
              ? Words.trip(draft.at().trip().when())
              : new Agreement(Errors.of(system), draft.at().teller(), draft.reading().get(), usual)
                  .likelihood();
      likelihood.ifPresent(
          agrees -> clues.add(new Clue(draft.occasion(), draft.reading(), draft.terms(), agrees)));
    }
    samples.forEach(sample -> clue(sample, healthy).ifPresent(clues::add));
    return clues;
  }

  private Optional<Clue> clue(Sample sample, List<SceneState> healthy) {
    Optional<Reading> reading = Optional.of(sample.reading());
    List<Clue.Term> terms = List.of(new Clue.Term(sample.scene(), sample.probe(), 1, ""));
    double usual = new Clue(NO_OCCASION, reading, terms, Words.NONE).value(healthy);
    return new Agreement(Errors.along(system), Occasion.Teller.READER, sample.reading(), usual)
        .likelihood()
        .map(agrees -> new Clue(NO_OCCASION, reading, terms, agrees));
  }

  /** Instants of a recording, one scene each, all of them one after the other. */
  private void recording(Recording recording) {
    Sequence sequence = Sequence.of(system, recording.profile(), List.of());
    for (double at : Instants.of(recording)) {
      Scene scene = Scene.of(new Instant(recording, at), sequence.drive().at(at));
      int number = scenes.size();
      scenes.add(scene);
      for (Recording.Channel channel : recording.channels()) {
        double value = channel.at(at, Instants.GAP);
        if (!Double.isNaN(value)) {
          samples.add(sample(number, channel, value));
        }
      }
    }
  }

  static Sample sample(int scene, Recording.Channel channel, double value) {
    Value figure = new Value.Figure(Stated.of(value, channel.dimension()));
    boolean absolute = channel.dimension() == Dimension.ABSOLUTE_PRESSURE;
    boolean own =
        channel.about() instanceof About.Needle needle
            && needle.gauge().dimension() == channel.dimension();
    Probe probe =
        own
            // What is recorded comes from the sender: it does not stop where the needle does.
            ? new Probe.Needle(
                ((About.Needle) channel.about()).gauge(),
                ((About.Needle) channel.about()).needle(),
                false)
            : new Probe.Port(channel.about().point(), channel.about().temperature(), absolute);
    Reading reading = new Reading(channel.about(), figure, Optional.empty(), "");
    return new Sample(scene, probe, reading);
  }

  private void occasion(int number, Occasion occasion) {
    int scene = scene(Scene.of(system, occasion));
    if (occasion.trip().when() != TripMoment.When.NONE) {
      List<Trip> trips = Forecaster.trips(system, occasion.trip());
      drafts.add(
          new Draft(
              number,
              occasion,
              Optional.empty(),
              List.of(new Clue.Term(scene, new Probe.Margin(trips, Errors.of(system)), 1, ""))));
    }
    for (Reading reading : occasion.readings()) {
      if (reading.taken()) {
        List<Clue.Term> terms = terms(scene, reading);
        if (!terms.isEmpty()) {
          drafts.add(new Draft(number, occasion, Optional.of(reading), terms));
        }
      }
    }
  }

  private int scene(Scene scene) {
    int known = scenes.indexOf(scene);
    if (known >= 0) {
      return known;
    }
    scenes.add(scene);
    return scenes.size() - 1;
  }

  private List<Clue.Term> terms(int scene, Reading reading) {
    String with = reading.with().map(gauge -> gauge.name()).orElse("");
    if (reading.value() instanceof Value.Moved moved
        && reading.about() instanceof About.EngineNeedle engine) {
      return moved(scene, engine, moved);
    }
    Optional<Probe> probe = probe(reading.about(), reading.value(), !with.isEmpty());
    List<Clue.Term> terms = new ArrayList<>();
    probe.ifPresent(looked -> terms.add(new Clue.Term(scene, looked, 1, with)));
    if (reading.value() instanceof Value.Against against) {
      probe(against.other(), reading.value(), !with.isEmpty())
          .ifPresent(other -> terms.add(new Clue.Term(scene, other, -1, with)));
    }
    return terms;
  }

  private List<Clue.Term> moved(int scene, About.EngineNeedle engine, Value.Moved moved) {
    Probe probe = new Probe.Engine(engine.gauge());
    if (moved.control().isEmpty()) {
      return List.of(new Clue.Term(scene, probe, 1, ""));
    }
    Scene there = scenes.get(scene).with(moved.control(), moved.position());
    if (!there.setup().equals(scenes.get(scene).setup())) {
      return List.of(
          new Clue.Term(scene(there), probe, 1, ""), new Clue.Term(scene, probe, -1, ""));
    }
    // The occasion is the one after the switch was moved.
    String other =
        system.switches().getOrDefault(moved.control(), List.of()).stream()
            .filter(position -> !position.equals(moved.position()))
            .findFirst()
            .orElse(moved.position());
    Scene before = scenes.get(scene).with(moved.control(), other);
    return List.of(new Clue.Term(scene, probe, 1, ""), new Clue.Term(scene(before), probe, -1, ""));
  }

  private static Optional<Probe> probe(About about, Value value, boolean brought) {
    if (about instanceof About.Needle needle && !brought) {
      boolean stops = !(value instanceof Value.Pegged);
      return Optional.of(new Probe.Needle(needle.gauge(), needle.needle(), stops));
    }
    if (about instanceof About.Scaled scaled) {
      boolean absolute =
          value instanceof Value.Figure figure
              ? figure.stated().dimension() == Dimension.ABSOLUTE_PRESSURE
              : about instanceof About.Needle needle
                  && needle.gauge().dimension() == Dimension.ABSOLUTE_PRESSURE;
      return Optional.of(new Probe.Port(scaled.point(), scaled.temperature(), absolute));
    }
    if (about instanceof About.Skin skin) {
      return Optional.of(
          value instanceof Value.Figure
              ? new Probe.Port(skin.point(), true, false)
              : new Probe.Warmth(skin.point()));
    }
    if (about instanceof About.Lamp lamp) {
      return Optional.of(new Probe.Stands(lamp.name(), "on"));
    }
    if (about instanceof About.Position place && value instanceof Value.Stands stands) {
      return Optional.of(
          place.valve() && opens(stands)
              ? new Probe.Opening(place.name())
              : new Probe.Stands(place.name(), stands.words()));
    }
    return Optional.empty();
  }

  private static boolean opens(Value.Stands stands) {
    return !Double.isNaN(stands.open()) || stands.words().equals("part open");
  }
}

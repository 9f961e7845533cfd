package dev.offtake.cause.find;

import dev.offtake.cause.About;
import dev.offtake.cause.Occasion;
import dev.offtake.cause.Reading;
import dev.offtake.cause.Readings;
import dev.offtake.cause.Recording;
import dev.offtake.cause.TripMoment;
import dev.offtake.cause.Value;
import dev.offtake.part.Gauge;
import dev.offtake.part.Part;
import dev.offtake.part.Trip;
import dev.offtake.profile.Sequence;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import dev.offtake.study.Notice;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes readings ready: scenes to be solved, and what is looked at in them. */
final class ClueMaker {
  /** What comes from a recording was read on no occasion. */
  private static final int NO_OCCASION = -1;

  /** So long before its end a stretch is looked at: what is done then has not begun, s. */
  private static final double JUST = 1e-6;

  /** A recorder tells how often something swings that is slower than it by more than this share. */
  private static final double SLOWER = 0.4;

  private final BleedSystem system;
  private final List<Occasion> occasions;
  private final List<Scene> scenes = new ArrayList<>();
  private final List<Draft> drafts = new ArrayList<>();
  private final List<Sample> samples = new ArrayList<>();
  private final List<Clue> waves = new ArrayList<>();
  private final List<Swinging> swinging = new ArrayList<>();
  private final List<Unseen> unseen = new ArrayList<>();

  /** One value of a recording. */
  record Sample(int scene, Probe probe, Reading reading) {}

  /** A clue before anything is solved. */
  private record Draft(
      int occasion, Occasion at, Optional<Reading> reading, List<Clue.Term> terms) {}

  /** A needle that was told to swing. */
  private record Swinging(int occasion, int scene, String point, Reading reading) {}

  /** Something that was told to be as it should on an occasion. */
  private record Unseen(int occasion, int scene, List<About.Needle> needles) {}

  ClueMaker(BleedSystem system, Readings readings) {
    this.system = system;
    occasions = readings.occasions();
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
    clues.addAll(waves);
    swinging.forEach(told -> clues.add(clue(told, healthy.get(told.scene()))));
    unseen.forEach(told -> clues.add(clue(told, healthy.get(told.scene()))));
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

  /** A scene for each instant and each stretch of a recording, one after the other. */
  private void recording(Recording recording) {
    Sequence sequence = Sequence.of(system, recording.profile(), List.of());
    List<Stretches.Stretch> stretches = Stretches.of(recording, sequence.drive());
    for (Stretches.Stretch stretch : stretches) {
      Instant instant = new Instant(recording, stretch.until(), stretch.from());
      Scene scene = Scene.of(instant, sequence.drive().at(stretch.until() - JUST));
      int number = scenes.size();
      scenes.add(scene);
      recording.channels().forEach(channel -> swings(number, channel, stretch));
    }
    for (double at : Instants.of(recording, stretches)) {
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

  /** What is alike of two courses that swing out of step. */
  private void swings(int scene, Recording.Channel channel, Stretches.Stretch stretch) {
    Wave wave = Stretches.wave(channel, stretch.from(), stretch.until());
    if (!wave.known()) {
      return;
    }
    String about = channel.about().name();
    Probe needle = sample(scene, channel, wave.mean()).probe();
    samples.add(new Sample(scene, new Probe.Middle(needle, about), middle(channel, wave)));
    double noise = Stretches.noise(channel);
    Value size = new Value.Swing(wave.size(), noise, stretch.from(), stretch.until());
    waves.add(
        wave(scene, channel, new Probe.Size(needle, about, noise), size, Words.swing(wave, noise)));
    if (wave.hertz() > 0 && wave.hertz() * channel.step() < SLOWER && wave.size() > 3 * noise) {
      Value often = new Value.Often(wave.hertz());
      waves.add(wave(scene, channel, new Probe.Pitch(about, wave), often, Words.pitch()));
    }
  }

  /** A stretch that begins or ends on the way to and fro has its middle a little off. */
  private static Reading middle(Recording.Channel channel, Wave wave) {
    double off = wave.size() / (1 + wave.crossings());
    Stated mean = Stated.of(wave.mean(), channel.dimension());
    Stated about =
        new Stated(
            mean.nominal(),
            mean.nominal() - off,
            mean.nominal() + off,
            mean.knowledge(),
            mean.dimension(),
            "",
            "");
    return new Reading(channel.about(), new Value.Figure(about), Optional.empty(), "");
  }

  private static Clue wave(
      int scene, Recording.Channel channel, Probe probe, Value value, Likelihood likelihood) {
    Reading reading = new Reading(channel.about(), value, Optional.empty(), "");
    List<Clue.Term> terms = List.of(new Clue.Term(scene, probe, 1, ""));
    return new Clue(NO_OCCASION, Optional.of(reading), terms, likelihood);
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
    if (occasion.notDuplicated()) {
      List<About.Needle> needles = complaint();
      if (!needles.isEmpty()) {
        unseen.add(new Unseen(number, scene, needles));
      }
    }
    for (Reading reading : occasion.readings()) {
      if (reading.value() instanceof Value.Swinging && reading.about() instanceof About.Scaled at) {
        Reading swings =
            new Reading(at, new Value.Swinging(Optional.empty()), reading.with(), reading.note());
        swinging.add(new Swinging(number, scene, at.point(), swings));
      }
      if (reading.taken()) {
        List<Clue.Term> terms = terms(scene, reading);
        if (!terms.isEmpty()) {
          drafts.add(new Draft(number, occasion, Optional.of(reading), terms));
        }
      }
    }
  }

  /**
   * Needles that were complained of: those that were read on any occasion, else all of the system.
   */
  private List<About.Needle> complaint() {
    List<About.Needle> all = new ArrayList<>();
    for (Occasion occasion : occasions) {
      for (Reading reading : occasion.readings()) {
        if (reading.about() instanceof About.Needle at) {
          all.add(at);
        }
      }
    }
    for (Part part : all.isEmpty() ? system.parts() : List.<Part>of()) {
      if (part instanceof Gauge gauge) {
        for (int i = 0; i < gauge.needles().size(); i++) {
          all.add(new About.Needle(gauge.name(), gauge, i));
        }
      }
    }
    return all.stream().distinct().toList();
  }

  private static Clue clue(Swinging told, SceneState healthy) {
    double sound = new Probe.Hunts(told.point(), Double.NaN).of(healthy);
    Probe probe = new Probe.Hunts(told.point(), sound);
    List<Clue.Term> terms = List.of(new Clue.Term(told.scene(), probe, 1, ""));
    return new Clue(told.occasion(), Optional.of(told.reading()), terms, Words.swinging());
  }

  /** A complaint that does not come back: its needles stand where a person takes them for sound. */
  private static Clue clue(Unseen told, SceneState healthy) {
    List<Probe.Needle> needles =
        told.needles().stream()
            .map(needle -> new Probe.Needle(needle.gauge(), needle.needle(), true))
            .toList();
    List<Double> usual = needles.stream().map(needle -> needle.of(healthy)).toList();
    List<Double> bands = needles.stream().map(ClueMaker::band).toList();
    Probe off = new Probe.Off(needles, usual, bands);
    List<Clue.Term> terms = List.of(new Clue.Term(told.scene(), off, 1, ""));
    Reading reading = new Reading(told.needles().get(0), new Value.AsUsual(), Optional.empty(), "");
    return new Clue(told.occasion(), Optional.of(reading), terms, Words.unseen());
  }

  private static double band(Probe.Needle needle) {
    Gauge gauge = needle.gauge();
    double least = gauge.temperature() ? Notice.CREW_TEMPERATURE : Notice.CREW_PRESSURE;
    double constant = gauge.parameters().get(0).high();
    return Math.max(least, 2 * (constant + gauge.each()));
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

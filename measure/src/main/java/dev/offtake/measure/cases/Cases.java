package dev.offtake.measure.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * Draws cases. The same number gives the same case, whatever was drawn before. Not for use by
 * several threads at once.
 */
public final class Cases {
  /** Healthy plants that tell the scatter. */
  public static final int PLANTS = 300;

  /** Plants and runs that are tried for a bin before it is given up. */
  private static final int TRIES = 25;

  private final Healthy healthy;
  private final Effects effects = Effects.all();
  private final Strangers strangers = Strangers.all();
  private final List<ModeLine> modes;
  private final List<Stranger> listedStrangers = Lists.strangers();
  private int runs;
  private int restless;

  /** Makes a drawer whose scatter comes from {@link #PLANTS} plants. */
  public Cases() {
    this(PLANTS);
  }

  /**
   * Makes a drawer.
   *
   * @param plants healthy plants that tell the scatter
   */
  Cases(int plants) {
    healthy = new Healthy(plants);
    modes = Lists.modes().stream().filter(line -> effects.of(line).isPresent()).toList();
  }

  /** The healthy plants that tell the scatter. */
  Healthy scatter() {
    return healthy;
  }

  /** Modes that are drawn. */
  public List<ModeLine> modes() {
    return modes;
  }

  /** Runs that were worked out, those below included. */
  public int runs() {
    return runs;
  }

  /** Runs that were drawn again because a state of rest was not found. */
  public int restless() {
    return restless;
  }

  /** A healthy plant. */
  public Case healthy(long number) {
    return again(number, chance -> new Fault(Truth.healthy(), knobs -> knobs));
  }

  /** A listed mode, drawn by its rate, to an extent that may be lost in scatter. */
  public Case byRate(long number) {
    return again(number, chance -> listed(weighted(chance), chance));
  }

  /** A listed mode, to an extent that may be lost in scatter. */
  public Case listed(ModeLine line, long number) {
    return again(number, chance -> listed(line, chance));
  }

  /**
   * A listed mode that stands out so far.
   *
   * @return empty when {@value #TRIES} plants, runs and extents have none
   */
  public Optional<Case> listed(ModeLine line, Bin bin, long number) {
    SplittableRandom numbers = new SplittableRandom(number);
    for (int i = 0; i < TRIES; i++) {
      Case one = listed(line, numbers.nextLong());
      if (bin.holds(one.shift())) {
        return Optional.of(one);
      }
    }
    return Optional.empty();
  }

  /** A failure that is on no list, each alike. */
  public Case stranger(long number) {
    return again(
        number,
        chance -> strange(listedStrangers.get(chance.nextInt(listedStrangers.size())), chance));
  }

  /** One failure that is on no list. */
  public Case stranger(Stranger which, long number) {
    return again(number, chance -> strange(which, chance));
  }

  /** What is wrong and what it turns. */
  private record Fault(Truth truth, UnaryOperator<Knobs> breaks) {}

  private Fault listed(ModeLine line, SplittableRandom chance) {
    double extent = line.extent(chance);
    Truth truth =
        new Truth(Truth.Kind.LISTED, line.part(), line.mode(), extent, List.of(line.part()));
    SplittableRandom open = chance.split();
    return new Fault(truth, knobs -> effects.broken(line, knobs, extent, open));
  }

  private Fault strange(Stranger which, SplittableRandom chance) {
    Side side = chance.nextBoolean() ? Side.LEFT : Side.RIGHT;
    double size = Strangers.size(chance);
    Truth truth =
        new Truth(Truth.Kind.STRANGER, side.word(), which.name(), size, which.accepted(side));
    return new Fault(truth, knobs -> strangers.broken(which, knobs, side, size));
  }

  private ModeLine weighted(SplittableRandom chance) {
    double left = chance.nextDouble() * modes.stream().mapToDouble(ModeLine::rate).sum();
    for (ModeLine line : modes) {
      left -= line.rate();
      if (left < 0) {
        return line;
      }
    }
    return modes.get(modes.size() - 1);
  }

  private Case again(long number, Function<SplittableRandom, Fault> draw) {
    SplittableRandom chance = new SplittableRandom(number);
    while (true) {
      Fault fault = draw.apply(chance);
      Optional<Case> one = run(number, fault, chance.split());
      runs++;
      if (one.isPresent()) {
        return one.get();
      }
      restless++;
    }
  }

  private Optional<Case> run(long number, Fault fault, SplittableRandom chance) {
    Schedule schedule = Schedule.draw(chance);
    Plant sound = new Plant(Scatter.draw(chance));
    Plant broken = new Plant(fault.breaks.apply(sound.knobs()));
    List<Running> runnings = new ArrayList<>();
    for (Occasion occasion : schedule.occasions()) {
      runnings.add(Running.about(occasion.stop(), chance));
    }
    Optional<Trace> now = trace(broken, schedule, runnings);
    boolean same = fault.truth.kind() == Truth.Kind.HEALTHY;
    Optional<Trace> before = same ? now : trace(sound, schedule, runnings);
    if (now.isEmpty() || before.isEmpty()) {
      return Optional.empty();
    }
    double shift =
        same ? 0 : Spread.of(healthy, schedule).between(now.get().shown(), before.get().shown());
    CaseText text = new CaseText(healthy, schedule, now.get().states());
    Eyes eyes = new Eyes(chance);
    Sheet sheet = text.told(now.get().shown(), eyes);
    Aircraft aircraft = new Aircraft(broken.knobs(), eyes.biases());
    return Optional.of(
        new Case(number, fault.truth, text.write(number, sheet), shift, sheet, aircraft));
  }

  private static Optional<Trace> trace(Plant plant, Schedule schedule, List<Running> runnings) {
    List<State> rest = new ArrayList<>();
    for (Running running : runnings) {
      Optional<State> state = plant.at(running);
      if (state.isEmpty()) {
        return Optional.empty();
      }
      rest.add(state.get());
    }
    return Optional.of(Trace.of(schedule, runnings, rest, plant.knobs()));
  }
}

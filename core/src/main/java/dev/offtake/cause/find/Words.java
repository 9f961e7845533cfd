package dev.offtake.cause.find;

import dev.offtake.cause.TripMoment;
import dev.offtake.cause.Value;
import dev.offtake.cause.chance.Gauss;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * Chances of what people say instead of a number. All of them are assumptions, from memory of how
 * often such words are right.
 */
final class Words {
  /** Of a word that a person chooses. */
  static final double RIGHT = 0.85;

  /** Of a light, a trip or a position that is told wrong. */
  static final double WRONG_LIGHT = 0.02;

  /**
   * A needle that stands on its dial is told to stand beyond its end: one slip in ten, an
   * assumption.
   */
  private static final double WRONG_END = 0.1 * Weigher.SLIP;

  /** A hand feels a duct to be warm when it is so much warmer than the air, K. */
  private static final double FELT = 30;

  private static final double FELT_SPREAD = 12;

  /** How sharply people draw the line between two words, a share of what still is normal. */
  private static final double EDGE = 0.25;

  /** Forecasts of a swing are half to twice as large, all alike (natural log): an assumption. */
  private static final double SWING = Math.log(2) / Math.sqrt(3);

  /** Width of what a swing, or how often it comes, can be by a slip (natural log). */
  private static final double LOGS = 5;

  /** A needle that stands still is told to swing: bumps, a leaking snubber. */
  private static final double STEADY = 0.05;

  /** A damping ratio at which friction and luck decide whether a needle comes to rest. */
  private static final double BARELY = 0.1;

  /** How far forecasts of how often it swings are wrong, a share: an assumption. */
  private static final double PITCH = 0.2;

  static final Likelihood NONE = new Likelihood.Said(value -> 1, 1, true);

  private Words() {}

  /** On or off, tripped or not: told right but for a few. */
  static Likelihood.Said either(boolean said) {
    return new Likelihood.Said(
        value -> {
          double yes = WRONG_LIGHT + (1 - 2 * WRONG_LIGHT) * Math.max(0, Math.min(1, value));
          return said ? yes : 1 - yes;
        },
        0.5,
        false);
  }

  /**
   * How far something that was recorded swings. A few swings that are not alike tell less.
   *
   * @param wave how it swings
   * @param noise what its needle does by itself, SI
   */
  static Likelihood.Measured swing(Wave wave, double noise) {
    double share = wave.size() / noise;
    double scaled = new Value.Swing(wave.size(), noise, 0, 0).scaled();
    double own = 1 / (1 + share * share);
    double few = 1 / (1.0 + wave.crossings());
    double variance = own + SWING * SWING + few * few;
    return new Likelihood.Measured(scaled, variance, variance, own, LOGS);
  }

  /** How often it swings, beside what is foretold, a natural logarithm. */
  static Likelihood.Measured pitch() {
    return new Likelihood.Measured(0, PITCH * PITCH, PITCH * PITCH, PITCH * PITCH / 9, LOGS);
  }

  /**
   * Low, normal or high against what is usual.
   *
   * @param usual value of a sound system
   * @param band so far from it all is still normal
   */
  static Likelihood.Said level(Value.Word word, double usual, double band) {
    DoubleUnaryOperator low = value -> Gauss.below((usual - band - value) / (EDGE * band));
    DoubleUnaryOperator high = value -> Gauss.below((value - usual - band) / (EDGE * band));
    return oneOfThree(
        switch (word) {
          case LOW -> low;
          case HIGH -> high;
          case NORMAL -> value -> 1 - low.applyAsDouble(value) - high.applyAsDouble(value);
        });
  }

  /** Below, the same or above. */
  static Likelihood.Said compared(Value.Sense sense, double band) {
    return oneOfThree(
        switch (sense) {
          case BELOW -> value -> Gauss.below((-band - value) / (EDGE * band));
          case ABOVE -> value -> Gauss.below((value - band) / (EDGE * band));
          case SAME -> value -> Gauss.below((band - Math.abs(value)) / (EDGE * band));
        });
  }

  private static Likelihood.Said oneOfThree(DoubleUnaryOperator fits) {
    double wrong = (1 - RIGHT) / 2;
    return new Likelihood.Said(
        value -> wrong + (RIGHT - wrong) * fits.applyAsDouble(value), 1 / 3.0, true);
  }

  /**
   * Beyond an end of the scale.
   *
   * @param end where it is, SI
   * @param high whether the upper one
   * @param deviation of the reading
   */
  static Likelihood.Said pegged(double end, boolean high, double deviation) {
    return new Likelihood.Said(
        value -> {
          double over = (high ? value - end : end - value) / deviation;
          return WRONG_END + (1 - 2 * WRONG_END) * Gauss.below(over);
        },
        0.2,
        false);
  }

  /** A needle that swings, by how far it is from swinging for ever: the lags are not known well. */
  static Likelihood.Said swinging() {
    return new Likelihood.Said(
        value -> STEADY + (RIGHT - STEADY) * Gauss.below((value + BARELY) / BARELY), 0.3, false);
  }

  /** A complaint that does not come back, by how far its needles are from usual, in bands. */
  static Likelihood.Said unseen() {
    return new Likelihood.Said(
        off -> 1 - RIGHT + (2 * RIGHT - 1) * Gauss.below((1 - off) / EDGE), 0.5, true);
  }

  static Likelihood.Said felt(Value.Felt felt) {
    return new Likelihood.Said(
        value -> {
          double warm = Gauss.below((value - FELT) / FELT_SPREAD);
          double right = felt == Value.Felt.WARM ? warm : 1 - warm;
          return 1 - RIGHT + (2 * RIGHT - 1) * right;
        },
        0.5,
        true);
  }

  /**
   * That something tripped, by how far what it watches is beyond its limit.
   *
   * @param when on which side of the trip the reading was made
   */
  static Optional<Likelihood> trip(TripMoment.When when) {
    return switch (when) {
      case NONE -> Optional.empty();
      // A swing on the way may have done it; had it stayed beyond, the reset would not have held.
      case RESET_HELD ->
          Optional.of(
              tripped(over -> 2 * Gauss.below(over / 3) * (1 - Gauss.below(over)), WRONG_LIGHT));
      case TRIPPED_AGAIN -> Optional.of(tripped(Gauss::below, WRONG_LIGHT / 2));
      case BEFORE, AFTER -> Optional.of(tripped(Gauss::below, WRONG_LIGHT));
    };
  }

  private static Likelihood tripped(DoubleUnaryOperator does, double wrong) {
    return new Likelihood.Said(
        over -> wrong + (1 - 2 * wrong) * does.applyAsDouble(over), 0.3, false);
  }
}

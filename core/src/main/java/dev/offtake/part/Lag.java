package dev.offtake.part;

/**
 * One quantity of a part that comes late behind another: a held pressure at the end of its sense
 * line, a temperature at its sensor, a servo chamber, a disc.
 *
 * <p>It moves by
 *
 * <pre>
 *   ds/dt = (input − s ∓ play)/τ, at most ± rate; still while |input − s| ≤ play
 * </pre>
 *
 * In a steady state it is where its input is, and passes it on as it is. While time passes, an
 * implicit method asks for s = kept + H ds/dt at the end of a stage of length H; that s is a
 * function of the input, so that a lag adds no unknown to a network, only its slope.
 *
 * <p>A disc with inertia swings about its input, and stops without a bounce at 0 and at 1:
 *
 * <pre>
 *   dv/dt = ω² (input − s) − 2 ζ ω v,  ds/dt = v
 * </pre>
 *
 * <p>Mutable on purpose: it belongs to one element; who plays time sets it.
 */
public final class Lag {
  /** What a lag stands for. */
  public enum What {
    /** Held pressure at the control head, Pa. */
    SENSE_LINE,
    /** Temperature at a sensor, K. */
    SENSOR,
    /** Filling of a servo chamber, as the opening that it asks for, 0..1. */
    SERVO,
    /** Opening of a disc or of a user's valve, 0..1. */
    POSITION
  }

  private enum Mode {
    PASSES,
    HELD,
    FOLLOWS,
    SWINGS
  }

  private final What what;
  private Mode mode = Mode.PASSES;
  private double seconds;
  private double rate = Double.POSITIVE_INFINITY;
  private double play;
  private double circular;
  private double damping;
  private double inverse;
  private double kept;
  private double keptSpeed;
  private double input;
  private double value;
  private double speed;
  private double slope = 1;

  /** Makes a lag that passes its input on. */
  public Lag(What what) {
    this.what = what;
  }

  /** What it stands for. */
  public What what() {
    return what;
  }

  /**
   * Says how it moves.
   *
   * @param timeConstant τ, s
   * @param mostRate units per second
   * @param friction by how much its input must be ahead before it moves; less near 0 and 1, where
   *     what drives it has force to spare
   */
  public void moves(double timeConstant, double mostRate, double friction) {
    seconds = timeConstant;
    rate = mostRate;
    play = friction;
    circular = 0;
  }

  /**
   * Says that it swings.
   *
   * @param circularFrequency ω, 1/s
   * @param ratio damping ratio ζ
   */
  public void swings(double circularFrequency, double ratio) {
    circular = circularFrequency;
    damping = ratio;
  }

  /** From now on it is where its input is. */
  public void pass() {
    mode = Mode.PASSES;
    slope = 1;
  }

  /** Whether it is where its input is. */
  boolean passes() {
    return mode == Mode.PASSES;
  }

  /** From now on it stays where it is put. */
  public void hold(double at, double withSpeed) {
    mode = Mode.HELD;
    value = at;
    speed = withSpeed;
    slope = 0;
  }

  /**
   * From now on it is where the end of a stage finds it.
   *
   * @param before what it is without the rate of this stage
   * @param speedBefore the same of its speed, for one that swings
   * @param inverseLength 1/H; 0 for an endless stage, whose end is the steady state
   */
  public void stage(double before, double speedBefore, double inverseLength) {
    kept = before;
    keptSpeed = speedBefore;
    inverse = inverseLength;
    mode = inverse == 0 ? Mode.PASSES : circular > 0 ? Mode.SWINGS : Mode.FOLLOWS;
    speed = 0;
  }

  /**
   * Tells it its input.
   *
   * @return where it is
   */
  double follow(double now) {
    input = now;
    switch (mode) {
      case PASSES -> value = now;
      case HELD -> slope = 0;
      case FOLLOWS -> lag();
      case SWINGS -> swing();
    }
    return value;
  }

  private void lag() {
    double beyond = beyond(kept);
    double share = 1 / (1 + seconds * inverse);
    if (Math.abs(beyond) * share * inverse > rate) {
      value = kept + Math.copySign(rate, beyond) / inverse;
      slope = 0;
    } else {
      value = kept + share * beyond;
      slope = beyond == 0 && play > 0 ? 0 : spares(kept) ? 2 * share : share;
    }
  }

  private void swing() {
    double h = 1 / inverse;
    double stiff = circular * circular * h;
    double divisor = 1 + 2 * damping * circular * h + stiff * h;
    speed = (keptSpeed + stiff * (input - kept)) / divisor;
    value = kept + h * speed;
    slope = stiff * h / divisor;
    if (value <= 0 || value >= 1) {
      value = Clamp.value(value);
      speed = 0;
      slope = 0;
    }
  }

  /** How far its input is ahead of a place, without what friction takes. */
  private double beyond(double at) {
    double ahead = input - at;
    double takes = spares(at) ? Math.max(0, room(at)) : play;
    return ahead > takes ? ahead - takes : ahead < -takes ? ahead + takes : 0;
  }

  /** Whether its input is so near to the stop before it that friction takes less than it could. */
  private boolean spares(double at) {
    return play > 0 && room(at) < play;
  }

  /** From its input to the stop that it goes towards. */
  private double room(double at) {
    return input > at ? 1 - input : input;
  }

  /** How fast it moves where it is held, by its last input, units per second. */
  public double rate() {
    if (circular > 0) {
      return speed;
    }
    double free = seconds > 0 ? beyond(value) / seconds : 0;
    return Math.max(-rate, Math.min(rate, free));
  }

  /** How fast the speed of one that swings changes where it is held. */
  public double acceleration() {
    if (circular == 0) {
      return 0;
    }
    double pull = circular * (circular * (input - value) - 2 * damping * speed);
    boolean rests = (value <= 0 && pull < 0) || (value >= 1 && pull > 0);
    return rests ? 0 : pull;
  }

  /** Where it is. */
  public double value() {
    return value;
  }

  /** Speed of one that swings, units per second. */
  public double speed() {
    return speed;
  }

  /** Slope of where it is by its input. */
  double slope() {
    return slope;
  }
}

package dev.offtake.part;

import java.util.List;

/**
 * A regulating and shutoff valve: holds the pressure at a point by throttling, moved by the muscle
 * of bleed air.
 *
 * <p>Opening = demand · muscle · reverse closing, each between 0 and 1: demand = ½ + (set − trim −
 * sensed)/droop, muscle = (p − none)/(full − none), reverse closing = (p ahead − p behind)/0.3 psi.
 * A command shuts it or lets demand be 1. Stuck or locked, nothing of this counts.
 *
 * @param holds point whose static pressure it senses
 * @param muscleFrom point that moves it
 * @param absolute whether its set counts from vacuum (else from the air outside)
 * @param opensWithoutMuscle whether its spring opens it
 * @param command what logic makes of it
 */
public record Regulator(
    String name,
    ValveBody body,
    String holds,
    String muscleFrom,
    boolean absolute,
    boolean opensWithoutMuscle,
    Control command)
    implements Valve {

  /** The kind. */
  public static final Kind KIND = new RegulatorKind();

  /** Control: {@link Command#SHUT}, {@link Command#LIVE} or {@link Command#WIDE}. */
  static final int COMMAND = 1;

  /** Parameter: set pressure, Pa above the air outside, or absolute. */
  static final int SET = ValveBody.COUNT;

  /** Parameter: rise of sensed pressure from wide open to shut, Pa. */
  static final int DROOP = SET + 1;

  /** Parameter: share of the sensed gauge pressure that its sense line loses. */
  static final int SENSE_LOSS = DROOP + 1;

  /** Parameter: share of the muscle's gauge pressure that its servo line loses. */
  static final int SERVO_LOSS = SENSE_LOSS + 1;

  /** Parameter: muscle at which it begins to move, Pa above the air outside. */
  static final int NONE = SERVO_LOSS + 1;

  /** Parameter: further muscle that gives it its whole stroke, Pa. */
  static final int MUSCLE_SPAN = NONE + 1;

  /** Observables, by position. */
  static final int OPENING = 0;

  static final int DEMAND = 1;
  static final int MUSCLE = 2;
  static final int REVERSE = 3;
  static final int TRIM = 4;

  /** Whether the file says what muscle it needs. */
  boolean needsMuscle() {
    return body.own() > SERVO_LOSS - ValveBody.COUNT;
  }

  @Override
  public String kind() {
    return KIND.name();
  }

  @Override
  public List<Control> controls() {
    return List.of(ValveBody.lock(), command);
  }

  @Override
  public List<String> observables() {
    return List.of("opening", "demand", "muscle", "reverse closing", "trim");
  }

  @Override
  public Element element(Wiring wiring) {
    return RegulatorElement.of(this, wiring);
  }

  @Override
  public Doing moving(View view) {
    return new RegulatorWords(this, view).doing();
  }
}

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
 * <p>What a sense line, a vent or an actuator does wrong enters as sensed = open · (outside + (1 −
 * loss) · (p − outside)) + held, as a set that counts from open · outside + held, and as a share of
 * the muscle; healthy, each open and share is 1 and each held pressure is 0 (for an absolute set
 * the vent's open is 0).
 *
 * @param holds point whose static pressure it senses
 * @param muscleFrom point that moves it
 * @param absolute whether its set counts from vacuum (else from the air outside)
 * @param opensWithoutMuscle whether its spring opens it
 * @param command what logic makes of it
 * @param withoutPower {@code shuts}, {@code opens} or {@code stays}
 */
public record Regulator(
    String name,
    ValveBody body,
    String holds,
    String muscleFrom,
    boolean absolute,
    boolean opensWithoutMuscle,
    Control command,
    String withoutPower)
    implements Commanded {

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

  /** Parameter: 1 when its sense line is open, 0 when blocked. */
  static final int SENSE_OPEN = SENSE_LOSS + 1;

  /** Parameter: pressure added in its sense line, or trapped in a blocked one, Pa. */
  static final int SENSE_HELD = SENSE_OPEN + 1;

  /** Parameter: how many times slower than usual its sense line follows. */
  static final int SENSE_SLOWNESS = SENSE_HELD + 1;

  /** Parameter: share of the pressure outside that its set counts from. */
  static final int VENT_OPEN = SENSE_SLOWNESS + 1;

  /** Parameter: pressure trapped behind its blocked vent, Pa absolute. */
  static final int VENT_HELD = VENT_OPEN + 1;

  /** Parameter: share of its muscle that its actuator makes use of. */
  static final int MUSCLE_SHARE = VENT_HELD + 1;

  /** Parameter: share of the muscle's gauge pressure that its servo line loses. */
  static final int SERVO_LOSS = MUSCLE_SHARE + 1;

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

  /** Static pressure where its sense line sits, Pa absolute. */
  static final int SENSED = 5;

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
    return List.of("opening", "demand", "muscle", "reverse closing", "trim", "sensed");
  }

  @Override
  public List<Mode> modes() {
    return RegulatorModes.of(this);
  }

  @Override
  public Part obeying(Control other) {
    return new Regulator(
        name, body, holds, muscleFrom, absolute, opensWithoutMuscle, other, withoutPower);
  }

  /** The same regulator with its sense line at another point. */
  Regulator holding(String point) {
    return new Regulator(
        name, body, point, muscleFrom, absolute, opensWithoutMuscle, command, withoutPower);
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

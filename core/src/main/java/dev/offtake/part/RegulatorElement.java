package dev.offtake.part;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The law of a {@link Regulator} at work. */
final class RegulatorElement extends ValveElement {
  /** Pressure difference over which it shuts against reverse flow, Pa (0.3 psi; assumption). */
  static final double REVERSE_SPAN = 0.3 * 6894.757293168;

  private final Regulator valve;
  private final int sensedSlot;
  private final int muscleSlot;
  private final int[] trimSlots;
  private final int[] trimParameters;
  private final Lag line = new Lag(Lag.What.SENSE_LINE);
  private final Lag[] sensors;
  private final List<Lag> lags = new ArrayList<>();

  // Scratch of the latest evaluation.
  private double sensedP;
  private double muscleP;
  private double want;
  private double demand;
  private double muscleX;
  private double muscle;
  private double reverseX;
  private double reverse;
  private double trim;

  /**
   * Makes the law.
   *
   * @param valve the regulator
   * @param trims thermostats that trim its set
   * @param moved variables of its sensed pressure, its muscle and the trims' temperatures
   * @param stream moved by those variables
   */
  private RegulatorElement(
      Regulator valve,
      List<Wiring.Attached<Thermostat>> trims,
      List<Integer> moved,
      ValveStream stream) {
    super(stream);
    this.valve = valve;
    sensedSlot = stream.slot(moved.get(0));
    muscleSlot = stream.slot(moved.get(1));
    trimSlots = new int[trims.size()];
    trimParameters = new int[trims.size()];
    sensors = new Lag[trims.size()];
    for (int i = 0; i < trimSlots.length; i++) {
      trimSlots[i] = stream.slot(moved.get(2 + i));
      trimParameters[i] = trims.get(i).parameters();
      sensors[i] = new Lag(Lag.What.SENSOR);
    }
    lags.add(line);
    lags.addAll(List.of(sensors));
    lags.addAll(stream.lags());
  }

  /** The law of a regulator with the thermostats that are attached to it. */
  static RegulatorElement of(Regulator valve, Wiring wiring) {
    List<Wiring.Attached<Thermostat>> trims = wiring.attached(valve.name(), Thermostat.class);
    List<Integer> moved = new ArrayList<>();
    moved.add(wiring.sensed(valve.holds(), valve.name()));
    moved.add(wiring.lnP(wiring.point(valve.muscleFrom())));
    for (Wiring.Attached<Thermostat> t : trims) {
      moved.add(wiring.t(wiring.point(t.part().point())));
    }
    int[] variables = moved.stream().mapToInt(Integer::intValue).toArray();
    ValveStream stream = new ValveStream(wiring, valve.body(), variables);
    return new RegulatorElement(valve, trims, moved, stream);
  }

  @Override
  public List<Lag> lags() {
    return Collections.unmodifiableList(lags);
  }

  @Override
  void slopes(Evaluation e) {
    double spring = valve.opensWithoutMuscle() ? 1 : 0;
    demandSlopes(e, reverse * muscle);
    if (valve.needsMuscle()) {
      double share = stream.parameter(e, Regulator.MUSCLE_SHARE);
      double slope = share * Clamp.slope(muscleX) * felt(e, Regulator.SERVO_LOSS, muscleP);
      double span = stream.parameter(e, Regulator.MUSCLE_SPAN);
      stream.movedBy(muscleSlot, reverse * (demand - spring) * slope / span);
    }
    double slope = Clamp.slope(reverseX) * (spring + muscle * (demand - spring)) / REVERSE_SPAN;
    stream.movedBy(Branch.LN_P_FROM, slope * stream.p(e, Branch.LN_P_FROM));
    stream.movedBy(Branch.LN_P_TO, -slope * stream.p(e, Branch.LN_P_TO));
  }

  @Override
  public void observe(Evaluation e, double[] out, int at) {
    super.observe(e, out, at + Regulator.OPENING);
    out[at + Regulator.DEMAND] = demand;
    out[at + Regulator.MUSCLE] = muscle;
    out[at + Regulator.REVERSE] = reverse;
    out[at + Regulator.TRIM] = trim;
    out[at + Regulator.SENSED] = sensedP;
  }

  /** Demand, muscle and reverse closing, and the opening that follows. */
  @Override
  double free(Evaluation e) {
    double command = stream.control(e, Regulator.COMMAND);
    want = want(e);
    demand = command == Command.LIVE ? Clamp.value(want) : command == Command.SHUT ? 0 : 1;
    muscleX = muscle(e);
    muscle = stream.parameter(e, Regulator.MUSCLE_SHARE) * Clamp.value(muscleX);
    double drop = stream.p(e, Branch.LN_P_FROM) - stream.p(e, Branch.LN_P_TO);
    reverseX = drop / REVERSE_SPAN;
    reverse = Clamp.value(reverseX);
    double spring = valve.opensWithoutMuscle() ? 1 : 0;
    return reverse * (spring + muscle * (demand - spring));
  }

  private double want(Evaluation e) {
    double ambient = e.conditions.ambientP();
    double reference =
        stream.parameter(e, Regulator.VENT_OPEN) * ambient
            + stream.parameter(e, Regulator.VENT_HELD);
    double set = stream.parameter(e, Regulator.SET) + reference;
    double loss = stream.parameter(e, Regulator.SENSE_LOSS);
    sensedP = stream.p(e, sensedSlot);
    double arrives = ambient + (1 - loss) * (line.follow(sensedP) - ambient);
    double sensed =
        stream.parameter(e, Regulator.SENSE_OPEN) * arrives
            + stream.parameter(e, Regulator.SENSE_HELD);
    trim = 0;
    for (int i = 0; i < trimSlots.length; i++) {
      int at = trimParameters[i];
      trim += e.parameters[at + Thermostat.MOST] * Clamp.value(trimShare(e, i));
    }
    return 0.5 + (set - trim - sensed) / stream.parameter(e, Regulator.DROOP);
  }

  private double trimShare(Evaluation e, int i) {
    int at = trimParameters[i];
    double feels =
        e.parameters[at + Thermostat.FOLLOWS] * sensors[i].follow(stream.variable(e, trimSlots[i]))
            + e.parameters[at + Thermostat.ADDS];
    return (feels - e.parameters[at + Thermostat.FROM]) / e.parameters[at + Thermostat.SPAN];
  }

  private double muscle(Evaluation e) {
    if (!valve.needsMuscle()) {
      return 1;
    }
    muscleP = stream.p(e, muscleSlot);
    double above = muscleP - e.conditions.ambientP();
    double servo = (1 - stream.parameter(e, Regulator.SERVO_LOSS)) * above;
    double none = stream.parameter(e, Regulator.NONE);
    return (servo - none) / stream.parameter(e, Regulator.MUSCLE_SPAN);
  }

  private void demandSlopes(Evaluation e, double byDemand) {
    boolean live = stream.control(e, Regulator.COMMAND) == Command.LIVE;
    double slope = live ? Clamp.slope(want) * byDemand / stream.parameter(e, Regulator.DROOP) : 0;
    double open = stream.parameter(e, Regulator.SENSE_OPEN);
    double arrives = line.slope() * felt(e, Regulator.SENSE_LOSS, sensedP);
    stream.movedBy(sensedSlot, -slope * open * arrives);
    for (int i = 0; i < trimSlots.length; i++) {
      int at = trimParameters[i];
      double most = e.parameters[at + Thermostat.MOST] * e.parameters[at + Thermostat.FOLLOWS];
      double perKelvin = sensors[i].slope() * most / e.parameters[at + Thermostat.SPAN];
      stream.movedBy(trimSlots[i], -slope * Clamp.slope(trimShare(e, i)) * perKelvin);
    }
  }

  /** Slope by ln p of the pressure that arrives at the end of a line that loses a share of it. */
  private double felt(Evaluation e, int loss, double p) {
    return (1 - stream.parameter(e, loss)) * p;
  }
}

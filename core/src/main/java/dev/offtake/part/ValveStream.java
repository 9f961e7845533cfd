package dev.offtake.part;

import dev.offtake.air.GasState;
import dev.offtake.flow.Flow;
import dev.offtake.flow.FlowLaw;
import dev.offtake.flow.ValveLaw;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A {@link ValveBody} at work: turns an opening and its slopes into the stream of a branch. */
final class ValveStream {
  /** The stream. */
  final Branch branch;

  /** Position of the part's first parameter. */
  final int parameters;

  /** Position of the part's first control. */
  final int controls;

  private final ValveBody body;
  private final FlowLaw law;
  private final @Nullable ValveLaw iec;
  private final Flow flow = new Flow();
  private final Lag servo = new Lag(Lag.What.SERVO);
  private final Lag disc = new Lag(Lag.What.POSITION);
  private double byOpening;

  /**
   * Makes the stream.
   *
   * @param wiring the network under construction
   * @param body of the valve
   * @param movedBy variables that move the valve; those of its own ends may be among them
   */
  ValveStream(Wiring wiring, ValveBody body, int... movedBy) {
    this.body = body;
    law = body.law();
    iec = law instanceof ValveLaw valve ? valve : null;
    parameters = wiring.parameters();
    controls = wiring.controls();
    int from = wiring.point(body.leg().from());
    int to = wiring.point(body.leg().to());
    int[] ends = {wiring.lnP(from), wiring.t(from), wiring.lnP(to), wiring.t(to)};
    int[] others =
        Arrays.stream(movedBy)
            .distinct()
            .filter(v -> Arrays.stream(ends).noneMatch(end -> end == v))
            .toArray();
    double nominal = body.parameters().get(ValveBody.AREA).value();
    branch = new Branch(wiring, from, to, nominal, others);
  }

  /** Position of a variable among those of the branch. */
  int slot(int variable) {
    for (int i = 0; i < branch.variables.length; i++) {
      if (branch.variables[i] == variable) {
        return i;
      }
    }
    throw new IllegalArgumentException("the branch does not depend on variable " + variable);
  }

  /** A parameter of the part in force, by its position within the part. */
  double parameter(Evaluation e, int which) {
    return e.parameters[parameters + which];
  }

  /** A control of the part, by its position within the part. */
  double control(Evaluation e, int which) {
    return e.controls[controls + which];
  }

  /** The value of one of the branch's variables. */
  double variable(Evaluation e, int slot) {
    return e.variables[branch.variables[slot]];
  }

  /** The pressure whose logarithm is one of the branch's variables, Pa absolute. */
  double p(Evaluation e, int slot) {
    return switch (slot) {
      case Branch.LN_P_FROM -> e.gas[branch.from].p;
      case Branch.LN_P_TO -> e.gas[branch.to].p;
      default -> GasState.REFERENCE_PRESSURE * Math.exp(variable(e, slot));
    };
  }

  /**
   * The opening that counts: a cap, a stuck valve and a lock, in this order, replace the free one.
   *
   * @param free opening that the valve would have, 0..1
   */
  double opening(Evaluation e, double free) {
    double lock = control(e, ValveBody.LOCK);
    if (lock == ValveBody.CAPPED) {
      return 0;
    }
    double stuck = parameter(e, ValveBody.STUCK);
    if (stuck >= 0) {
      return Math.min(stuck, 1);
    }
    double most = parameter(e, ValveBody.MOST_OPENING);
    return Math.min(lock >= 0 ? lock : free, most);
  }

  /** The chamber that fills before the disc moves, and the disc. */
  List<Lag> lags() {
    return List.of(servo, disc);
  }

  /**
   * Where the disc stands: in a steady state at {@link #opening}, while time passes on its way
   * there.
   *
   * @param free opening that the valve would have, 0..1
   */
  double position(Evaluation e, double free) {
    return disc.follow(opening(e, servo.follow(free)));
  }

  /** Whether the valve moves freely: neither locked nor stuck. */
  boolean moves(Evaluation e) {
    return control(e, ValveBody.LOCK) < 0 && !(parameter(e, ValveBody.STUCK) >= 0);
  }

  /**
   * Lets air pass.
   *
   * @param e what is known
   * @param free opening that the valve would have, 0..1
   */
  void pass(Evaluation e, double free) {
    double lock = control(e, ValveBody.LOCK);
    boolean moves = moves(e);
    double opening = position(e, free);
    double leak = Math.max(body.floor(), parameter(e, ValveBody.LEAK));
    double span = Math.max(0, parameter(e, ValveBody.AREA) - leak);
    double area =
        lock == ValveBody.CAPPED ? body.floor() : leak + span * body.curve().area(opening);
    if (iec != null) {
      double xT = parameter(e, body.xT());
      iec.pressureRatioFactor(Math.max(ValveBody.LEAST_XT, Math.min(ValveBody.MOST_XT, xT)));
    }
    law.evaluate(e.gas[branch.from], e.gas[branch.to], area, flow);
    double most = parameter(e, ValveBody.MOST_OPENING);
    moves &= most >= 1 || servo.value() < most;
    double lagging = servo.slope() * disc.slope();
    byOpening = moves ? flow.dSize * span * body.curve().slope(opening) * lagging : 0;
    branch.clearOthers();
    branch.throttled(flow, e.gas[branch.from], e.gas[branch.to]);
  }

  /**
   * After {@link #pass}: adds how the free opening answers to a variable.
   *
   * @param slot position among the branch's variables
   * @param slope of the opening by that variable
   */
  void movedBy(int slot, double slope) {
    branch.alsoBy(slot, byOpening * slope);
  }
}

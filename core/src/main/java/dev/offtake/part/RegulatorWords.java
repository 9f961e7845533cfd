package dev.offtake.part;

import dev.offtake.quantity.Dimension;

/** What a regulator that is free to move does, and why. */
final class RegulatorWords {
  private final Regulator valve;
  private final View view;

  RegulatorWords(Regulator valve, View view) {
    this.valve = valve;
    this.view = view;
  }

  Doing doing() {
    boolean springOpens = valve.opensWithoutMuscle() && view.observed(Regulator.MUSCLE) < 1;
    String because = view.because(Regulator.COMMAND);
    if (view.control(Regulator.COMMAND) == Command.SHUT && !springOpens) {
      return new Doing("shut by command", "shut", because);
    }
    Doing does = uncommanded();
    boolean live = view.control(Regulator.COMMAND) == Command.LIVE;
    return live && !because.isEmpty()
        ? new Doing(does.regime(), does.word(), does.why() + "; " + because)
        : does;
  }

  private Doing uncommanded() {
    if (view.observed(Regulator.MUSCLE) <= 0 && !valve.opensWithoutMuscle()) {
      return new Doing("no muscle", "shut", muscle("no muscle: "));
    }
    if (view.observed(Regulator.REVERSE) <= 0) {
      return new Doing("held shut in reverse", "shut", fromBehind());
    }
    if (view.control(Regulator.COMMAND) == Command.WIDE) {
      return open("opened by command", view.because(Regulator.COMMAND));
    }
    if (view.observed(Regulator.MUSCLE) < 1) {
      String regime = valve.opensWithoutMuscle() ? "opened by its spring" : "short of muscle";
      return open(regime, muscle("short of muscle: "));
    }
    return byPressure();
  }

  private Doing byPressure() {
    double demand = view.observed(Regulator.DEMAND);
    String there = valve.holds() + " " + view.gauge(view.sensed(valve.holds()));
    String feels = feels();
    String remark = feels.isEmpty() ? stream(demand) : feels;
    String sensed = remark.isEmpty() ? there : there + " (" + remark + ")";
    if (demand >= 1) {
      String from = valve.body().leg().from();
      String spent = remark.isEmpty() ? "; " + from + " has no more to give" : "";
      String more = view.choked(0) ? "; it is choked" : spent;
      return new Doing("wide open", word(), sensed + " is under its set " + set() + more);
    }
    if (demand <= 0) {
      return new Doing("shut by pressure", "shut", sensed + " is above its set " + set());
    }
    return open("regulating", "holds " + sensed + ", its set is " + set());
  }

  /**
   * Where its sense line sits in a stream so fast that a gauge at the point reads the other side of
   * its set: what it feels there.
   */
  private String stream(double demand) {
    double felt = view.observed(Regulator.SENSED);
    double reference = valve.absolute() ? 0 : view.conditions().ambientP();
    double set = reference + view.parameter(Regulator.SET) - view.observed(Regulator.TRIM);
    double over = view.sensed(valve.holds()) - set;
    boolean odd = demand >= 1 ? over > 0 : demand <= 0 && over < 0;
    return odd ? "it feels " + view.gauge(felt) + " in its own fast stream" : "";
  }

  /** What a faulty sense line makes of the pressure; empty for a sound one. */
  private String feels() {
    double outside = view.conditions().ambientP();
    double loss = view.parameter(Regulator.SENSE_LOSS);
    double held = view.parameter(Regulator.SENSE_HELD);
    double arrives = outside + (1 - loss) * (view.sensed(valve.holds()) - outside);
    if (view.parameter(Regulator.SENSE_OPEN) <= 0) {
      return "its sense line is blocked, it feels the trapped " + view.gauge(held);
    }
    if (loss > 0) {
      String share = view.print(loss, Dimension.SHARE);
      return "it feels " + view.gauge(arrives + held) + ", " + share + " is lost on the way";
    }
    return held > 0 ? "it feels " + view.difference(held) + " more, of water in the line" : "";
  }

  private Doing open(String regime, String why) {
    return new Doing(regime, word(), Openings.chokedOr(view, why));
  }

  private String word() {
    return Openings.word(view.observed(Regulator.OPENING));
  }

  private String set() {
    double set = view.parameter(Regulator.SET);
    double trim = view.observed(Regulator.TRIM);
    double healthyVent = valve.absolute() ? 0 : 1;
    if (view.parameter(Regulator.VENT_OPEN) != healthyVent) {
      return withoutVent(set - trim);
    }
    if (trim <= 0) {
      return pressure(set);
    }
    return pressure(set - trim)
        + " ("
        + pressure(set)
        + " less "
        + view.difference(trim)
        + " by its thermostat)";
  }

  private String withoutVent(double set) {
    double held = view.parameter(Regulator.VENT_HELD);
    String from =
        valve.absolute()
            ? "its capsule has filled with the air outside"
            : "its vent is shut with " + view.print(held, Dimension.ABSOLUTE_PRESSURE) + " in it";
    double outside = valve.absolute() ? view.conditions().ambientP() : 0;
    return view.gauge(set + held + outside) + " (" + from + ")";
  }

  private String pressure(double set) {
    return valve.absolute() ? view.gauge(set) : view.gaugeOf(set);
  }

  private String muscle(String lead) {
    double share = view.parameter(Regulator.MUSCLE_SHARE);
    if (share <= 0) {
      return lead + "none reaches its actuator";
    }
    if (share < 1 && view.observed(Regulator.MUSCLE) >= share) {
      return lead + "it makes use of only " + view.print(share, Dimension.SHARE) + " of it";
    }
    double at = view.p(valve.muscleFrom());
    double none = view.parameter(Regulator.NONE);
    double needed = none + view.parameter(Regulator.MUSCLE_SPAN);
    boolean nothing = view.observed(Regulator.MUSCLE) <= 0;
    String limit =
        nothing
            ? " is under the " + view.gaugeOf(none) + " that move it"
            : " is under the " + view.gaugeOf(needed) + " that give it its whole stroke";
    double lost = view.parameter(Regulator.SERVO_LOSS);
    String line = lost > 0 ? ", and its servo line loses some" : "";
    return lead + valve.muscleFrom() + " " + view.gauge(at) + limit + line;
  }

  private String fromBehind() {
    Leg leg = valve.body().leg();
    return Openings.heldFromBehind(view, view.p(leg.from()), view.p(leg.to()));
  }
}

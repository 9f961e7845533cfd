package dev.offtake.part;

/** What a regulator that is free to move does, and why. */
final class RegulatorWords {
  private final Regulator valve;
  private final View view;

  RegulatorWords(Regulator valve, View view) {
    this.valve = valve;
    this.view = view;
  }

  Doing doing() {
    if (view.control(Regulator.COMMAND) == Command.SHUT) {
      return new Doing("shut by command", "shut", view.because(Regulator.COMMAND));
    }
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
    String sensed = valve.holds() + " " + view.gauge(view.sensed(valve.holds()));
    if (demand >= 1) {
      String from = valve.body().leg().from();
      String more = (view.choked(0) ? "; it is choked" : "; " + from + " has no more to give");
      return new Doing("wide open", word(), sensed + " is under its set " + set() + more);
    }
    if (demand <= 0) {
      return new Doing("shut by pressure", "shut", sensed + " is above its set " + set());
    }
    return open("regulating", "holds " + sensed + ", its set is " + set());
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
    if (trim <= 0) {
      return pressure(set);
    }
    return pressure(set - trim) + " (" + pressure(set) + " less " + view.difference(trim)
        + " by its thermostat)";
  }

  private String pressure(double set) {
    return valve.absolute() ? view.gauge(set) : view.gaugeOf(set);
  }

  private String muscle(String lead) {
    double at = view.p(valve.muscleFrom());
    double none = view.parameter(Regulator.NONE);
    double needed = none + view.parameter(Regulator.MUSCLE_SPAN);
    boolean nothing = view.observed(Regulator.MUSCLE) <= 0;
    String limit = nothing ? " is under the " + view.gaugeOf(none) + " that move it"
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

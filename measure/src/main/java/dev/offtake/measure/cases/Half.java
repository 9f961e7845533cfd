package dev.offtake.measure.cases;

/** One engine with its valves, cooler and users. */
final class Half {
  private static final double CRITICAL = 0.5;

  /** Conductance of a duct's wall to the engine bay, W/K. */
  private static final double WALL = 1.5;

  /** Heat from and to which a loose clamp opens, K. */
  private static final double CLAMP_FROM = Shop.kelvin(250);

  private static final double CLAMP_TO = Shop.kelvin(400);

  final Tap mid;
  final Tap high;
  final Flapper check;
  final Controller highStage;
  final Controller regulator;
  final Cooler cooler;
  private final Tap fan;
  private final Relief relief;
  private final User pack;
  private final User wing;
  private final User cowl;
  private final User starter;
  private final Side side;
  private final Knobs knobs;
  private final double interstageHole;
  private final double regulatedHole;
  private final double ductHole;
  private final double midHole;
  private final double highHole;
  private final double slow;
  private final double thermostat;

  Half(Knobs knobs, Side side) {
    this.knobs = knobs;
    this.side = side;
    mid = Tap.of(knobs, side, Parts.MID_TAP, Nominal.MID);
    high = Tap.of(knobs, side, Parts.HIGH_TAP, Nominal.HIGH);
    fan = Tap.of(knobs, side, Parts.FAN_TAP, Nominal.FAN);
    check = new Flapper(knobs, side.of(Parts.CHECK));
    highStage = new Controller(knobs, side.of(Parts.HIGH_STAGE));
    regulator = new Controller(knobs, side.of(Parts.REGULATOR));
    cooler = new Cooler(knobs, side, fan.area());
    relief = new Relief(knobs, side.of(Parts.RELIEF));
    pack = new User(knobs, side.of(Parts.PACK), 12 * Shop.PSI);
    wing = new User(knobs, side.of(Parts.WING_HEAT), 18 * Shop.PSI);
    cowl = new User(knobs, side.of(Parts.COWL_HEAT), 10 * Shop.PSI);
    starter = new User(knobs, side.of(Parts.STARTER), 30 * Shop.PSI);
    midHole = mid.hole + get(Parts.CHECK, Knob.HOLE_UP);
    highHole = high.hole + get(Parts.HIGH_STAGE, Knob.HOLE_UP);
    interstageHole =
        get(Parts.CHECK, Knob.HOLE)
            + get(Parts.HIGH_STAGE, Knob.HOLE)
            + get(Parts.REGULATOR, Knob.HOLE_UP)
            + get(Parts.INTERSTAGE_PLUG, Knob.HOLE);
    regulatedHole =
        get(Parts.REGULATOR, Knob.HOLE) + get(Parts.PRECOOLER, Knob.HOLE_UP) + cowl.hole;
    ductHole =
        get(Parts.PRECOOLER, Knob.HOLE)
            + get(Parts.DUCT_PLUG, Knob.HOLE)
            + pack.hole
            + wing.hole
            + starter.hole;
    slow = get(Parts.ENGINE, Knob.SLOW);
    thermostat = get(Parts.THERMOSTAT, Knob.DRIFT);
  }

  private double get(String part, Knob knob) {
    return knobs.get(side.of(part), knob);
  }

  /** What a stage gives at a moment; worked out once for a state. */
  record Stages(double midP, double midT, double highP, double highT, double fanP, double fanT) {}

  /** The stages at a moment. */
  Stages stages(Running running) {
    double core = running.core(side) * (1 - slow);
    Outside air = running.outside();
    return new Stages(
        mid.p(core, air),
        mid.t(core, air),
        high.p(core, air),
        high.t(core, air),
        fan.p(running.fan(), air),
        fan.t(running.fan(), air));
  }

  /** What the heads of both valves are told. */
  record Told(Controller.Asked highStage, Controller.Asked regulator) {}

  /** What the heads are told, with the points where their lines end. */
  Told told(Running running, double highFeels, double regulatorFeels, double ductT, boolean shut) {
    double outside = running.outside().p();
    double core = running.core(side);
    int first = side.pick(0, 1);
    double[] stuck = running.friction();
    double highTrim = stuck[first] * highStage.stiction();
    double trim = 20 * Shop.PSI * Gas.ramp(ductT + thermostat, Shop.kelvin(450), Shop.kelvin(490));
    double regulatorTrim = trim + stuck[first + 2] * regulator.stiction();
    return new Told(
        new Controller.Asked(highStage.felt(highFeels, outside), highTrim, false, core, outside),
        new Controller.Asked(
            regulator.felt(regulatorFeels, outside), regulatorTrim, shut, core, outside));
  }

  /** Adds what flows in this half to the sums of its points. */
  void flows(Points at, Stages stages, Told told, Running running, Sums sums) {
    double outside = running.outside().p();
    double cold = running.outside().t();
    double[] p = at.p();
    double[] t = at.t();
    sums.from(
        Points.MID, stages.midT, mid.flow(stages.midP, stages.midT, p[Points.MID], t[Points.MID]));
    sums.from(
        Points.HIGH,
        stages.highT,
        high.flow(stages.highP, stages.highT, p[Points.HIGH], t[Points.HIGH]));
    sums.between(
        Points.MID,
        Points.INTERSTAGE,
        check.flow(p[Points.MID], t[Points.MID], p[Points.INTERSTAGE], t[Points.INTERSTAGE]));
    sums.between(
        Points.HIGH,
        Points.INTERSTAGE,
        highStage.flow(
            told.highStage,
            p[Points.HIGH],
            t[Points.HIGH],
            p[Points.INTERSTAGE],
            t[Points.INTERSTAGE]));
    sums.between(
        Points.INTERSTAGE,
        Points.REGULATED,
        regulator.flow(
            told.regulator,
            p[Points.INTERSTAGE],
            t[Points.INTERSTAGE],
            p[Points.REGULATED],
            t[Points.REGULATED]));
    cool(p, t, stages, outside, sums);
    use(p, t, running, outside, sums);
    for (int i = 0; i < Points.COUNT; i++) {
      double hole = hole(i, t[i]);
      double bypass = i == Points.REGULATED ? relief.flow(p[i], t[i], outside) : 0;
      sums.from(i, cold, -Gas.flow(hole, CRITICAL, p[i], t[i], outside, cold) - bypass);
      sums.wall(i, WALL * (cold - t[i]));
    }
  }

  private void cool(double[] p, double[] t, Stages stages, double outside, Sums sums) {
    double hot =
        cooler.hotFlow(p[Points.REGULATED], t[Points.REGULATED], p[Points.DUCT], t[Points.DUCT]);
    double cold = cooler.coldFlow(stages.fanP, stages.fanT, t[Points.DUCT], outside);
    double outlet = cooler.outlet(hot, t[Points.REGULATED], cold, stages.fanT);
    sums.cooled(Points.REGULATED, Points.DUCT, hot, outlet);
  }

  private void use(double[] p, double[] t, Running running, double outside, Sums sums) {
    Stop stop = running.stop();
    double duct = p[Points.DUCT];
    double ductT = t[Points.DUCT];
    double takes =
        pack.flow(!stop.has(Stop.Switch.PACKS_OFF), duct, ductT, outside)
            + wing.flow(stop.has(Stop.Switch.WING_HEAT), duct, ductT, outside)
            + starter.flow(false, duct, ductT, outside);
    sums.from(Points.DUCT, ductT, -takes);
    double heat =
        cowl.flow(
            stop.has(Stop.Switch.COWL_HEAT), p[Points.REGULATED], t[Points.REGULATED], outside);
    sums.from(Points.REGULATED, t[Points.REGULATED], -heat);
  }

  private double hole(int point, double t) {
    return switch (point) {
      case Points.MID -> midHole;
      case Points.HIGH -> highHole;
      case Points.INTERSTAGE -> interstageHole;
      case Points.REGULATED -> regulatedHole + joint(Parts.PYLON_JOINT, t);
      default -> ductHole + joint(Parts.WING_JOINT, t);
    };
  }

  private double joint(String part, double t) {
    return get(part, Knob.HOLE) + get(part, Knob.HOT_HOLE) * Gas.step(t, CLAMP_FROM, CLAMP_TO);
  }

  /** Temperature of the zone around a joint, K. */
  double zone(String part, double p, double t, Outside outside) {
    double heat =
        Gas.CP * Math.max(0, Gas.flow(joint(part, t), CRITICAL, p, t, outside.p(), outside.t()));
    double loss = get(part, Knob.LOSS);
    return (heat * t + loss * outside.t()) / (heat + loss);
  }
}

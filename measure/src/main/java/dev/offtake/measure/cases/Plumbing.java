package dev.offtake.measure.cases;

/** What flows into each point of both sides at a moment: zero everywhere at rest. */
final class Plumbing {
  private static final double CRITICAL = 0.35;

  private final Half left;
  private final Half right;
  private final Half.Stages leftStages;
  private final Half.Stages rightStages;
  private final Source auxiliary;
  private final Source ground;
  private final Running running;
  private final boolean leftShut;
  private final boolean rightShut;
  private final double isolation;
  private final double interstageLine;
  private final double ductLine;
  private final double tank;
  private final double isolationHole;

  /**
   * Makes the sums of a moment.
   *
   * @param leftTripped whether a trip has shut the left regulator
   * @param rightTripped the same on the right
   */
  Plumbing(
      Knobs knobs,
      Half left,
      Half right,
      Running running,
      boolean leftTripped,
      boolean rightTripped) {
    this.left = left;
    this.right = right;
    this.running = running;
    leftStages = left.stages(running);
    rightStages = right.stages(running);
    Stop stop = running.stop();
    leftShut = leftTripped || stop.bleedOff(Side.LEFT);
    rightShut = rightTripped || stop.bleedOff(Side.RIGHT);
    auxiliary = new Source(knobs, Parts.AUXILIARY, Nominal.AUXILIARY, Nominal.AUXILIARY_HEAT);
    ground = new Source(knobs, Parts.GROUND, Nominal.GROUND, Nominal.GROUND_HEAT);
    isolation =
        knobs.get(Parts.ISOLATION, Knob.LEAK)
            + knobs.get(Parts.ISOLATION, Knob.AREA) * opening(knobs, stop);
    interstageLine = knobs.get(Parts.INTERSTAGE_LINE, Knob.AREA);
    ductLine = knobs.get(Parts.DUCT_LINE, Knob.AREA);
    tank = knobs.get(Parts.TANK, Knob.HOLE) + knobs.get(Parts.ISOLATION, Knob.HOLE_UP);
    isolationHole = knobs.get(Parts.ISOLATION, Knob.HOLE);
  }

  /** How far the isolation valve stands open. */
  static double opening(Knobs knobs, Stop stop) {
    double held = knobs.get(Parts.ISOLATION, Knob.HELD);
    if (!Double.isNaN(held)) {
      return held;
    }
    boolean open = stop.isolationOpen() || knobs.on(Parts.ISOLATION, Knob.DEAF);
    return open ? knobs.get(Parts.ISOLATION, Knob.CEILING) : 0;
  }

  /** A first guess: each point as if the stronger stage fed it through its regulator. */
  double[] guess() {
    double[] unknowns = new double[2 * Points.UNKNOWNS];
    guess(leftStages).into(unknowns, Side.LEFT);
    guess(rightStages).into(unknowns, Side.RIGHT);
    return unknowns;
  }

  private Points guess(Half.Stages stages) {
    double outside = running.outside().p();
    double interstage =
        Math.max(0.99 * stages.midP(), Math.min(0.98 * stages.highP(), 30 * Shop.PSI + outside));
    double regulated = Math.min(0.99 * interstage, 42 * Shop.PSI + outside);
    double[] p = {
      0.995 * stages.midP(), 0.995 * stages.highP(), interstage, regulated, 0.98 * regulated
    };
    double warm = stages.midT();
    return new Points(p, new double[] {warm, warm, warm, warm, Math.min(warm, 475)});
  }

  /** The sums of both sides, left first. */
  Sums[] sums(Points l, Points r) {
    Sums leftSums = new Sums(l);
    Sums rightSums = new Sums(r);
    left.flows(l, leftStages, told(left, l, r, leftStages, leftShut), running, leftSums);
    right.flows(r, rightStages, told(right, r, l, rightStages, rightShut), running, rightSums);
    across(Points.DUCT, isolation + ductLine, l, r, leftSums, rightSums);
    across(Points.INTERSTAGE, interstageLine, l, r, leftSums, rightSums);
    supply(auxiliary, Stop.Switch.AUX_ON, l, leftSums);
    supply(ground, Stop.Switch.GROUND_ON, r, rightSums);
    blow(tank, l, leftSums);
    blow(isolationHole, r, rightSums);
    return new Sums[] {leftSums, rightSums};
  }

  private Half.Told told(Half half, Points own, Points other, Half.Stages stages, boolean shut) {
    Points high = half.highStage.crossed ? other : own;
    double highFeels = half.highStage.wrongBoss ? stages.highP() : high.p()[Points.INTERSTAGE];
    Points regulated = half.regulator.crossed ? other : own;
    int boss = half.regulator.wrongBoss ? Points.INTERSTAGE : Points.REGULATED;
    return half.told(running, highFeels, regulated.p()[boss], own.t()[Points.DUCT], shut);
  }

  private static void across(int point, double area, Points l, Points r, Sums left, Sums right) {
    double lt = l.t()[point];
    double rt = r.t()[point];
    double flow = Gas.flow(area, CRITICAL, l.p()[point], lt, r.p()[point], rt);
    left.from(point, rt, -flow);
    right.from(point, lt, flow);
  }

  private void supply(Source source, Stop.Switch on, Points at, Sums sums) {
    double p = at.p()[Points.DUCT];
    double t = at.t()[Points.DUCT];
    double outside = running.outside().p();
    double gives = source.flow(running.stop().has(on), p, outside);
    sums.from(Points.DUCT, source.t(), gives);
    sums.from(Points.DUCT, t, -source.backFlow(gives, p, t, outside));
  }

  private void blow(double hole, Points at, Sums sums) {
    double p = at.p()[Points.DUCT];
    double t = at.t()[Points.DUCT];
    Outside outside = running.outside();
    sums.from(
        Points.DUCT, t, -Math.max(0, Gas.flow(hole, CRITICAL, p, t, outside.p(), outside.t())));
  }

  /** Imbalances of all points for all unknowns. */
  double[] imbalance(double[] unknowns) {
    double[] out = new double[unknowns.length];
    Sums[] sums = sums(Points.of(unknowns, Side.LEFT), Points.of(unknowns, Side.RIGHT));
    sums[0].imbalance(out, Side.LEFT);
    sums[1].imbalance(out, Side.RIGHT);
    return out;
  }
}

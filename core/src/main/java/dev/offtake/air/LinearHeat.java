package dev.offtake.air;

/**
 * Heat capacity on a straight line that continues another law past an end of its range.
 *
 * <p>Values and first derivatives meet at the joint. This is no physics: it gives an iteration that
 * strays out of range a smooth way back.
 */
record LinearHeat(double joint, double cpAtJoint, double slope, double hAtJoint, double s0AtJoint)
    implements HeatLaw {

  /** The line that leaves a law at a temperature, K. */
  static LinearHeat continuing(HeatLaw law, double joint) {
    return new LinearHeat(joint, law.cp(joint), law.dCp(joint), law.h(joint), law.s0(joint));
  }

  @Override
  public double cp(double t) {
    return cpAtJoint + slope * (t - joint);
  }

  @Override
  public double dCp(double t) {
    return slope;
  }

  @Override
  public double h(double t) {
    double step = t - joint;
    return hAtJoint + step * (cpAtJoint + slope / 2 * step);
  }

  @Override
  public void fill(GasState gas, double t) {
    gas.h = h(t);
    gas.cp = cp(t);
    gas.dcp = slope;
  }

  @Override
  public double s0(double t) {
    return s0AtJoint + (cpAtJoint - slope * joint) * Math.log(t / joint) + slope * (t - joint);
  }
}

package dev.offtake.measure.cases;

/**
 * What could be seen on the plant if gauges were perfect.
 *
 * @param left left side
 * @param right right side
 * @param isolation how far the isolation valve stands open
 */
record State(HalfState left, HalfState right, double isolation) {
  /**
   * One side.
   *
   * @param duct static, above the air outside, Pa
   * @param interstage static, above the air outside, Pa
   * @param ductT K
   * @param tripped whether a trip has shut the regulator
   * @param tripLight whether the light is lit
   * @param leakLight whether the light is lit
   */
  record HalfState(
      double duct,
      double interstage,
      double ductT,
      boolean tripped,
      boolean tripLight,
      boolean leakLight) {
    private HalfState withDuctT(double t) {
      return new HalfState(duct, interstage, t, tripped, tripLight, leakLight);
    }
  }

  /** One side. */
  HalfState of(Side side) {
    return side.pick(left, right);
  }

  /**
   * The same before its temperatures have settled.
   *
   * @param before the duct's temperatures at the stop before, left and right, K
   * @param left what is left of the way from there, 0 to 1
   */
  State unsettled(double[] before, double left) {
    return new State(
        this.left.withDuctT(this.left.ductT() + left * (before[0] - this.left.ductT())),
        right.withDuctT(right.ductT() + left * (before[1] - right.ductT())),
        isolation);
  }
}

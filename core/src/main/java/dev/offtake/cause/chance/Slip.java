package dev.offtake.cause.chance;

/**
 * A person may misread a needle or write down another number. Half of the slips are by a figure or
 * two of the dial, normal about what it shows with a tenth of its scale, and half lie anywhere on
 * it: assumptions.
 *
 * <p>At most one reading of a set is taken to be a slip. With p(i | rest) the density of a reading
 * given all the others and q(i | rest) that of a slip, a slip multiplies the evidence by q(i |
 * rest)/p(i | rest), so that the whole sum over which one it was needs no further model (the
 * mixture is Box and Tiao's, A Bayesian approach to some outlier problems, Biometrika 55, 1968).
 *
 * @param chance that one reading is a slip
 * @param scale width of the scale on which a slip lies, in the unit of the readings
 */
public record Slip(double chance, double[] scale) {
  private static final double NEAR = 0.1;
  private static final double HALF = Math.log(0.5);

  /**
   * Evidence with the possibility of a slip, a natural logarithm.
   *
   * @param model of the readings
   * @param residual of the readings
   */
  public double logEvidence(LinearModel model, double[] residual) {
    return model.logEvidence(residual) + Logs.sum(terms(model, residual));
  }

  /** Chance that each reading is a slip, given that the model holds. */
  public double[] chances(LinearModel model, double[] residual) {
    double[] shares = Logs.shares(terms(model, residual));
    double[] own = new double[residual.length];
    System.arraycopy(shares, 1, own, 0, own.length);
    return own;
  }

  /** Of no slip, then of each reading, against the evidence of all readings. */
  private double[] terms(LinearModel model, double[] residual) {
    int m = residual.length;
    double[] terms = new double[m + 1];
    terms[0] = m * Math.log1p(-chance);
    for (int i = 0; i < m; i++) {
      LinearModel.Normal sound = model.against(residual, i);
      terms[i + 1] = (m - 1) * Math.log1p(-chance) + slip(i, sound) - sound.logDensity();
    }
    return terms;
  }

  /** Density of one reading about its exact forecast, slips included; a natural logarithm. */
  public double logDensity(int reading, LinearModel.Normal own) {
    return Logs.sum(Math.log1p(-chance) + own.logDensity(), slip(reading, own));
  }

  /** Density of a slip, a natural logarithm. */
  private double slip(int reading, LinearModel.Normal sound) {
    double near = NEAR * scale[reading];
    double about = sound.wider(near * near).logDensity();
    return Math.log(chance) + HALF + Logs.sum(about, -Math.log(scale[reading]));
  }
}

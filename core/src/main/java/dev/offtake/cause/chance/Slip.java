package dev.offtake.cause.chance;

/**
 * A person may misread a needle or write down another number: then the reading tells nothing and
 * lies anywhere on its scale.
 *
 * <p>At most one reading of a set is taken to be a slip. With p(i | rest) the density of a reading
 * given all the others, leaving reading i out multiplies the evidence by 1/p(i | rest), so that the
 * whole sum over which one it was needs no further model (the mixture is Box and Tiao's, A Bayesian
 * approach to some outlier problems, Biometrika 55, 1968).
 *
 * @param chance that one reading is a slip
 * @param scale width of the scale on which a slip lies, in the unit of the readings
 */
public record Slip(double chance, double[] scale) {

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
      double sound = model.against(residual, i).logDensity();
      terms[i + 1] = (m - 1) * Math.log1p(-chance) + Math.log(chance / scale[i]) - sound;
    }
    return terms;
  }

  /** Density of one reading about its exact forecast, slips included; a natural logarithm. */
  public double logDensity(int reading, LinearModel.Normal own) {
    return Logs.sum(Math.log1p(-chance) + own.logDensity(), Math.log(chance / scale[reading]));
  }
}

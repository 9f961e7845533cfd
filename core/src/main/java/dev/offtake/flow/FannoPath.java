package dev.offtake.flow;

/**
 * Solves a duct's Fanno path: the inlet flow function whose friction just leads to the outlet.
 *
 * <p>With y = ln φ₁, u = y − L = ln φ₂ (total temperature and flow do not change along the duct)
 * and F the Fanno length to the choke as a function of ln φ, the path satisfies
 *
 * <p>G = F(y) − H(u) − κ(y) − k = 0, dF/dy = −2/(γ·M²).
 *
 * <p>H is F up to M₂ = {@value #KINK_MACH}, where the outlet passes 99.5 % of what it can; from
 * there a parabola with F's value and slope leads to zero with slope zero. So the choke is found,
 * not clipped, and the flow meets its choked value with a continuous slope.
 *
 * <p>G falls strictly in y, because the friction number falls with Re no faster than 1/Re; the
 * search is Newton's method on ln[(F − H)/(κ + k)], nearly a straight line, inside a bracket.
 *
 * <p>Within one search each step begins its inner iterations (Mach numbers at both ends) at those
 * of the step before. Nothing is remembered from one search to the next, so that the same question
 * has the same answer to the last bit, whatever was asked before.
 *
 * <p>Mutable scratch, owned by a {@link Flow}.
 */
final class FannoPath {
  /** Outlet Mach number at which the kink's smoothing begins. */
  static final double KINK_MACH = 0.925;

  private static final double LEAST_LN_FLOW = -300;
  private static final double MOST_ROUGH = 0.5;
  private static final int MOST_STEPS = 100;

  /** A step in ln φ after which none is needed: the next would be of the order of its square. */
  private static final double LAST_STEP = 3e-8;

  final Churchill friction = new Churchill();

  /** Inlet ln φ. */
  double y;

  /** Inlet Mach number. */
  double mach;

  /** Outlet Mach number, not above {@link #KINK_MACH}. */
  double exitMach;

  /** Place on the parabola, 0..1; negative before it. */
  double bend;

  /** f·L/D at the path found. */
  double kappa;

  /** ∂y/∂L. */
  double yL;

  /** ∂y by the parameter of the last {@link #along}. */
  double yTheta;

  /** ∂²y/∂L by the parameter of the last {@link #along}. */
  double yLTheta;

  private boolean placed;
  private double lnMach;
  private double rootGamma;
  private double chokeY;
  private double kinkY;
  private double rise;

  private double l;
  private double gamma;
  private double k;
  private double slenderness;
  private double roughness;
  private double lnReAtOne;
  private double drop;
  private double dDrop;

  private double inSlope;
  private double inCurve;
  private double inSlopeG;
  private double outSlope;
  private double outCurve;
  private double outSlopeG;
  private double gG;
  private double gY;

  /**
   * Finds the path.
   *
   * @param newL ln(p_down/p_up), negative
   * @param newGamma ratio of heat capacities
   * @param newK loss coefficients that do not depend on Re, above 0
   * @param newSlenderness L/D
   * @param newRoughness roughness/D
   * @param newLnRe ln Re at φ = 1
   */
  void solve(
      double newL,
      double newGamma,
      double newK,
      double newSlenderness,
      double newRoughness,
      double newLnRe) {
    l = newL;
    gamma = newGamma;
    k = newK;
    slenderness = newSlenderness;
    roughness = Math.min(newRoughness, MOST_ROUGH);
    lnReAtOne = newLnRe;
    search();
  }

  /** Whether the outlet passes all it can. */
  boolean choked() {
    return bend >= 1;
  }

  private void search() {
    rootGamma = 0.5 * Math.log(gamma);
    chokeY = Isentropic.lnFlow(1, gamma);
    kinkY = Isentropic.lnFlow(KINK_MACH, gamma);
    double high = chokeY;
    double low = LEAST_LN_FLOW;
    double guess = -NearOne.expm1(2 * l) / (k + 0.02 * slenderness);
    y = Math.min(Math.max(0.5 * Math.log(guess), low + 1), high - 1e-3);
    placed = false;
    rise = 0;
    for (int i = 0; i < MOST_STEPS; i++) {
      place();
      double needed = kappa + k;
      boolean tooFast = drop <= needed;
      if (tooFast) {
        high = y;
      } else {
        low = y;
      }
      double step =
          drop > 0
              ? -Math.log(drop / needed) / (dDrop / drop - kappa * friction.dLnRe / needed)
              : Double.NaN;
      if (Math.abs(step) < LAST_STEP) {
        y += step;
        place();
        return;
      }
      double next = y + step;
      y = next > low && next < high ? next : 0.5 * (low + high);
      if (high - low < 1e-15 * Math.abs(high)) {
        place();
        return;
      }
    }
    place();
  }

  /** Sets everything that follows from {@link #y}; the Mach number of the step before helps. */
  private void place() {
    lnMach = y < chokeY ? Isentropic.lnMach(y - rootGamma, gamma, guess()) : 0;
    mach = Math.exp(lnMach);
    placed = true;
    friction.evaluate(y + lnReAtOne, roughness);
    kappa = slenderness * Math.exp(friction.lnF);
    double over = y - l - kinkY;
    if (over <= 0) {
      double lnRise = rise();
      exitMach = mach * Math.exp(lnRise);
      bend = -1;
      drop = Fanno.lengthBetween(mach, lnRise, gamma);
      dDrop = slope(mach) * -NearOne.expm1(-2 * lnRise);
      return;
    }
    exitMach = KINK_MACH;
    double height = Fanno.lengthToChoke(KINK_MACH, gamma);
    bend = Math.min(over / width(), 1);
    double rest = 1 - bend;
    drop = Fanno.lengthToChoke(mach, gamma) - height * rest * rest;
    dDrop = slope(mach) - slope(KINK_MACH) * rest;
  }

  /** ln M of the step before, or what it would be if the air did not thin out. */
  private double guess() {
    return placed && lnMach < 0 ? lnMach : Math.min(y - rootGamma, 0);
  }

  /** Width of the parabola in ln φ₂. */
  double width() {
    return Fanno.lengthToChoke(KINK_MACH, gamma) * gamma * KINK_MACH * KINK_MACH;
  }

  /** dF/d ln φ. */
  double slope(double m) {
    return -2 / (gamma * m * m);
  }

  /**
   * ln(M₂/M₁) from ln(φ₂/φ₁) = −L, by Newton's method from that of the step before, whose last step
   * squares an error of 10⁻⁹. Concave and started left of the root it never oversteps.
   */
  private double rise() {
    double c = Isentropic.exponent(gamma);
    double head = 0.5 * (gamma - 1) * mach * mach;
    double d = rise > 0 && mach * Math.exp(rise) < KINK_MACH ? rise : -l;
    for (int i = 0; i < MOST_STEPS; i++) {
      double gain = NearOne.expm1(2 * d);
      double miss = -l - d + c * NearOne.log1p(head * gain / (1 + head));
      double step = miss * (1 + head * (1 + gain)) / (1 - mach * mach * (1 + gain));
      d += step;
      if (!(Math.abs(step) > 1e-9 * d)) {
        break;
      }
    }
    rise = d;
    return d;
  }

  /** Derivatives of the path found, by the implicit function theorem. */
  void differentiate() {
    inSlope = slope(mach);
    inCurve = curve(mach);
    inSlopeG = slopeByGamma(mach);
    double outByGamma;
    if (bend < 0) {
      outSlope = slope(exitMach);
      outCurve = curve(exitMach);
      outSlopeG = slopeByGamma(exitMach);
      outByGamma = byGamma(exitMach);
    } else {
      outByGamma = bendByGamma();
    }
    gG = byGamma(mach) - outByGamma;
    gY = (bend < 0 ? dDrop : inSlope - outSlope) - kappa * friction.dLnRe;
    yL = -outSlope / gY;
  }

  /**
   * Derivatives by a parameter θ.
   *
   * @param gammaTheta dγ/dθ
   * @param reTheta ∂ ln Re/∂θ at constant φ
   * @param lnSlenderTheta d ln(1/D)/dθ: the share by which L/D and roughness/D grow
   */
  void along(double gammaTheta, double reTheta, double lnSlenderTheta) {
    double n = friction.dLnRe;
    boolean capped = roughness >= MOST_ROUGH;
    double e = capped ? 0 : roughness * lnSlenderTheta;
    double lnKappa = lnSlenderTheta + n * reTheta + friction.dRough * e;
    yTheta = -(gG * gammaTheta - kappa * lnKappa) / gY;
    double dN = friction.dLnRe2 * (reTheta + yTheta) + friction.dLnReRough * e;
    double dKappaY = kappa * ((lnKappa + n * yTheta) * n + dN);
    double dIn = inCurve * yTheta + inSlopeG * gammaTheta;
    double dOut = outCurve * yTheta + outSlopeG * gammaTheta;
    double dGy = dIn - dOut - dKappaY;
    yLTheta = -(dOut + yL * dGy) / gY;
  }

  /** d²F/d(ln φ)². */
  private double curve(double m) {
    return -2 * slope(m) * lnMachByFlow(m);
  }

  /** ∂/∂γ of dF/d ln φ at constant φ. */
  private double slopeByGamma(double m) {
    double lnMachG = -Isentropic.dLnFlowByGamma(m, gamma) * lnMachByFlow(m);
    return slope(m) * (-1 / gamma - 2 * lnMachG);
  }

  /** ∂F/∂γ at constant φ. */
  private double byGamma(double m) {
    return Fanno.dLengthByGamma(m, gamma) - slope(m) * Isentropic.dLnFlowByGamma(m, gamma);
  }

  private double lnMachByFlow(double m) {
    return Isentropic.q(m, gamma) / (1 - m * m);
  }

  /** Sets the outlet's slopes on H = h·(1 − s)², s = (u − start)/width; returns ∂H/∂γ. */
  private double bendByGamma() {
    double m2 = KINK_MACH * KINK_MACH;
    double height = Fanno.lengthToChoke(KINK_MACH, gamma);
    double heightG = Fanno.dLengthByGamma(KINK_MACH, gamma);
    double w = width();
    double wG = heightG * gamma * m2 + height * m2;
    double rest = 1 - bend;
    double sG = rest > 0 ? -(Isentropic.dLnFlowByGamma(KINK_MACH, gamma) + bend * wG) / w : 0;
    double top = slope(KINK_MACH);
    outSlope = top * rest;
    outCurve = rest > 0 ? -top / w : 0;
    outSlopeG = -top / gamma * rest - top * sG;
    return heightG * rest * rest - 2 * height * rest * sG;
  }
}

package dev.offtake.air;

/**
 * Nine-coefficient polynomial of the NASA Glenn form.
 *
 * <p>cp/R = a1 T⁻² + a2 T⁻¹ + a3 + a4 T + a5 T² + a6 T³ + a7 T⁴, with b1 and b2 as the constants of
 * integration of enthalpy and entropy.
 *
 * <p>Source: McBride, Zehe and Gordon, NASA Glenn Coefficients for Calculating Thermodynamic
 * Properties of Individual Species, NASA/TP-2002-211556 (2002), equations 1 to 3.
 */
record GlennPolynomial(
    double a1,
    double a2,
    double a3,
    double a4,
    double a5,
    double a6,
    double a7,
    double b1,
    double b2)
    implements HeatLaw {

  /**
   * The same law with its constants of integration moved so that enthalpy and entropy meet those of
   * another law at a temperature, K. Printed coefficients leave a gap of some 1e-8 there, and
   * enthalpy would not rise through it.
   */
  GlennPolynomial meeting(HeatLaw other, double joint) {
    double riseB1 = (other.h(joint) - h(joint)) / Air.R;
    double riseB2 = (other.s0(joint) - s0(joint)) / Air.R;
    return new GlennPolynomial(a1, a2, a3, a4, a5, a6, a7, b1 + riseB1, b2 + riseB2);
  }

  @Override
  public double cp(double t) {
    double inverse = 1 / t;
    double falling = (a1 * inverse + a2) * inverse;
    return Air.R * (falling + a3 + t * (a4 + t * (a5 + t * (a6 + t * a7))));
  }

  @Override
  public double dCp(double t) {
    double inverse = 1 / t;
    double falling = -(2 * a1 * inverse + a2) * inverse * inverse;
    return Air.R * (falling + a4 + t * (2 * a5 + t * (3 * a6 + t * 4 * a7)));
  }

  @Override
  public double h(double t) {
    double rising = t * (a3 + t * (a4 / 2 + t * (a5 / 3 + t * (a6 / 4 + t * a7 / 5))));
    return Air.R * (-a1 / t + a2 * Math.log(t) + rising + b1);
  }

  @Override
  public void fill(GasState gas, double t) {
    double inverse = 1 / t;
    double first = a1 * inverse;
    gas.cp = Air.R * ((first + a2) * inverse + a3 + t * (a4 + t * (a5 + t * (a6 + t * a7))));
    gas.dcp =
        Air.R
            * (a4
                - (2 * first + a2) * inverse * inverse
                + t * (2 * a5 + t * (3 * a6 + t * 4 * a7)));
    double rising = t * (a3 + t * (a4 / 2 + t * (a5 / 3 + t * (a6 / 4 + t * (a7 / 5)))));
    gas.h = Air.R * (a2 * Math.log(t) - first + rising + b1);
  }

  @Override
  public double s0(double t) {
    double inverse = 1 / t;
    double falling = -(a1 / 2 * inverse + a2) * inverse;
    double rising = t * (a4 + t * (a5 / 2 + t * (a6 / 3 + t * a7 / 4)));
    return Air.R * (falling + a3 * Math.log(t) + rising + b2);
  }
}

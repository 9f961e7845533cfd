package dev.offtake.heat;

/** Flow and surface of one side of an exchanger while it is evaluated. Mutable. */
final class Side {
  /** Flow, relative to the rated one, at which a side fades out. */
  private static final double FADE = 1e-6;

  /** Softened flow m̃ = √(m² + m₀²), kg/s. */
  double soft;

  /** Measure of presence m/m̃; also the derivative of m̃ by m. */
  double presence;

  /** Derivative of {@link #presence} by the flow, s/kg. */
  double bend;

  /** Thermal resistance of the surface, K/W. */
  double resistance;

  /** Heat capacity rate of the softened flow, W/K. */
  double rate;

  /** Derivative of the heat by the flow, W per kg/s. */
  double heatByFlow;

  /**
   * Sets what follows from the flow alone.
   *
   * @param flow kg/s
   * @param rated flow at the rated point, kg/s
   * @param exponent of the surface conductance
   * @param ratedResistance at the rated point, K/W
   * @param cp mean heat capacity, J/(kg K)
   */
  void set(double flow, double rated, double exponent, double ratedResistance, double cp) {
    double floor = FADE * rated;
    soft = Math.sqrt(flow * flow + floor * floor);
    presence = flow / soft;
    bend = floor / soft * (floor / soft) / soft;
    resistance = ratedResistance * Math.exp(-exponent * Math.log(soft / rated));
    rate = soft * cp;
  }
}

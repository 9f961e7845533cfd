package dev.offtake.air;

/**
 * The air that an engine stands or flies in.
 *
 * <p>Ram is that of a subsonic inlet without loss, with the ratio of heat capacities of the static
 * air. Corrected speed refers to the total temperature at the inlet over 288.15 K.
 *
 * @param pressure static pressure, Pa absolute, above 0
 * @param temperature static temperature, K, above 0
 * @param mach flight Mach number, 0 to 1
 */
public record Day(double pressure, double temperature, double mach) {
  /** Standard day at sea level, engine at rest. */
  public static final Day STANDARD = at(0);

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if one cannot be
   */
  public Day {
    if (!(pressure > 0 && pressure < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "pressure of the day must be above 0 Pa absolute, not "
              + pressure
              + "; give it absolute");
    }
    if (!(temperature > 0 && temperature < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "temperature of the day must be above 0 K, not " + temperature + "; check its unit");
    }
    if (!(mach >= 0 && mach <= 1)) {
      throw new IllegalArgumentException(
          "Mach number must lie between 0 and 1, not " + mach + "; 0 is an engine at rest");
    }
  }

  /**
   * Standard day at an altitude.
   *
   * @param altitudeMetres pressure altitude, m, −5 to 32 km
   */
  public static Day at(double altitudeMetres) {
    return deviating(altitudeMetres, 0);
  }

  /**
   * Hotter or colder day at an altitude.
   *
   * @param altitudeMetres pressure altitude, m, −5 to 32 km
   * @param deltaK air temperature less that of the standard day, K
   */
  public static Day deviating(double altitudeMetres, double deltaK) {
    double temperature = Atmosphere.temperature(altitudeMetres) + deltaK;
    return new Day(Atmosphere.pressure(altitudeMetres), temperature, 0);
  }

  /**
   * Day by a barometer that reads the pressure of the place.
   *
   * @param pressure station pressure, Pa absolute
   * @param temperature air temperature, K
   */
  public static Day station(double pressure, double temperature) {
    return new Day(pressure, temperature, 0);
  }

  /**
   * Day by a barometer that is reduced to sea level: an altimeter set to it shows the elevation.
   *
   * @param pressure QNH, Pa absolute
   * @param elevationMetres elevation of the place above mean sea level, m
   * @param temperature air temperature, K
   */
  public static Day qnh(double pressure, double elevationMetres, double temperature) {
    double pressureAltitude = elevationMetres + Atmosphere.altitude(pressure);
    return new Day(Atmosphere.pressure(pressureAltitude), temperature, 0);
  }

  /** The same air met at a Mach number, 0 to 1. */
  public Day withMach(double newMach) {
    return new Day(pressure, temperature, newMach);
  }

  /** Total temperature at the inlet, K. */
  public double inletTemperature() {
    return temperature * ramRatio();
  }

  /** Total pressure at the inlet, Pa absolute. */
  public double inletPressure() {
    double gamma = Air.gamma(temperature);
    return pressure * Math.pow(ramRatio(), gamma / (gamma - 1));
  }

  /** Total temperature at the inlet over 288.15 K. */
  public double theta() {
    return inletTemperature() / Atmosphere.SEA_LEVEL_T;
  }

  /** Total pressure at the inlet over 101.325 kPa. */
  public double delta() {
    return inletPressure() / Atmosphere.SEA_LEVEL_P;
  }

  /** Corrected speed N/√θ of a physical speed, in the same unit. */
  public double correctedSpeed(double physical) {
    return physical / Math.sqrt(theta());
  }

  /** Physical speed N of a corrected speed N/√θ, in the same unit. */
  public double physicalSpeed(double corrected) {
    return corrected * Math.sqrt(theta());
  }

  private double ramRatio() {
    return 1 + (Air.gamma(temperature) - 1) / 2 * mach * mach;
  }
}

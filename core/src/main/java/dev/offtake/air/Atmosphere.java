package dev.offtake.air;

/**
 * The U.S. Standard Atmosphere 1976 against geopotential altitude, −5 to 32 km.
 *
 * <p>Geopotential altitude is what an altimeter set to 1013.25 hPa shows; geometric altitude is
 * another thing (0.3 % in pressure at 11 km). Source: NOAA-S/T 76-1562 (1976), equations 23 and 33,
 * constants of the standard itself, its older gas constant included.
 */
public final class Atmosphere {
  /** Temperature at sea level, K. */
  public static final double SEA_LEVEL_T = 288.15;

  /** Pressure at sea level, Pa. */
  public static final double SEA_LEVEL_P = 101325;

  /** Lowest altitude, m. */
  public static final double LOWEST = -5000;

  /** Highest altitude, m. */
  public static final double HIGHEST = 32000;

  /** Standard gravity, m/s². */
  private static final double GRAVITY = 9.80665;

  /** Gas constant of the standard, J/(kg K): 8314.32 over 28.9644. */
  private static final double GAS_CONSTANT = 8314.32 / 28.9644;

  private static final double K = GRAVITY / GAS_CONSTANT;

  private static final Layer[] LAYERS = layers();

  private Atmosphere() {}

  /**
   * One layer of constant lapse.
   *
   * @param base altitude of its base, m
   * @param t temperature at the base, K
   * @param p pressure at the base, Pa
   * @param lapse change of temperature with altitude, K/m
   */
  private record Layer(double base, double t, double p, double lapse) {
    double temperature(double altitude) {
      return t + lapse * (altitude - base);
    }

    double pressure(double altitude) {
      if (lapse == 0) {
        return p * Math.exp(-K * (altitude - base) / t);
      }
      return p * Math.pow(temperature(altitude) / t, -K / lapse);
    }

    double altitude(double pressure) {
      double ln = Math.log(pressure / p);
      if (lapse == 0) {
        return base - ln * t / K;
      }
      return base + t / lapse * Math.expm1(-ln * lapse / K);
    }

    Layer next(double altitude, double nextLapse) {
      return new Layer(altitude, temperature(altitude), pressure(altitude), nextLapse);
    }
  }

  private static Layer[] layers() {
    Layer troposphere = new Layer(0, SEA_LEVEL_T, SEA_LEVEL_P, -6.5e-3);
    Layer tropopause = troposphere.next(11000, 0);
    Layer stratosphere = tropopause.next(20000, 1e-3);
    return new Layer[] {stratosphere, tropopause, troposphere};
  }

  /**
   * Temperature of the standard day.
   *
   * @param altitude geopotential altitude, m, −5 to 32 km
   * @return temperature, K
   * @throws IllegalArgumentException outside that range
   */
  public static double temperature(double altitude) {
    return layer(altitude).temperature(altitude);
  }

  /**
   * Pressure of the standard day.
   *
   * @param altitude geopotential altitude, m, −5 to 32 km
   * @return pressure, Pa
   * @throws IllegalArgumentException outside that range
   */
  public static double pressure(double altitude) {
    return layer(altitude).pressure(altitude);
  }

  /**
   * Altitude at which the standard day has a pressure, the inverse of {@link #pressure}.
   *
   * @param pressure pressure, Pa absolute, 868.1 Pa to 177.6 kPa
   * @return geopotential altitude, m
   * @throws IllegalArgumentException outside that range
   */
  public static double altitude(double pressure) {
    if (!(pressure > 0)) {
      throw new IllegalArgumentException(
          "pressure must be above 0 Pa absolute, not "
              + pressure
              + "; was a gauge pressure given?");
    }
    for (Layer layer : LAYERS) {
      if (pressure <= layer.p || layer.base == 0) {
        return checked(layer.altitude(pressure));
      }
    }
    throw new AssertionError("the lowest layer takes every pressure");
  }

  private static Layer layer(double altitude) {
    checked(altitude);
    for (Layer layer : LAYERS) {
      if (altitude >= layer.base) {
        return layer;
      }
    }
    return LAYERS[LAYERS.length - 1];
  }

  private static double checked(double altitude) {
    // A hair beyond the ends is rounding of a pressure at the end.
    if (!(altitude >= LOWEST - 1e-6 && altitude <= HIGHEST + 1e-6)) {
      throw new IllegalArgumentException(
          "altitude must lie between -5 and 32 km, not at "
              + altitude / 1000
              + " km; check its unit");
    }
    return altitude;
  }
}

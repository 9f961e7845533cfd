package dev.offtake.heat;

import dev.offtake.air.Air;

/**
 * Free convection in air around a long horizontal cylinder.
 *
 * <p>Source: Churchill and Chu, Correlating equations for laminar and turbulent free convection
 * from a horizontal cylinder, Int. J. Heat Mass Transfer 18 (1975), up to Ra of 1e12, air at the
 * mean of surface and surroundings. Good to about 20 % (common practice, no source).
 */
final class FreeConvection {
  /** Standard gravity, m/s². */
  private static final double GRAVITY = 9.80665;

  private FreeConvection() {}

  /**
   * Mean Nusselt number on the diameter.
   *
   * @param rayleigh Rayleigh number on the diameter, 0 to 1e12
   * @param prandtl Prandtl number
   */
  static double nusselt(double rayleigh, double prandtl) {
    double fluid = Math.pow(1 + Math.pow(0.559 / prandtl, 9.0 / 16), 8.0 / 27);
    double root = 0.60 + 0.387 * Math.pow(rayleigh, 1.0 / 6) / fluid;
    return root * root;
  }

  /**
   * Heat transfer coefficient, W/(m² K).
   *
   * @param diameter m
   * @param surfaceT K
   * @param aroundT K
   * @param pressure Pa absolute
   */
  static double coefficient(double diameter, double surfaceT, double aroundT, double pressure) {
    double film = (surfaceT + aroundT) / 2;
    double density = pressure / (Air.R * film);
    double conductivity = Air.conductivity(film);
    double kinematic = Air.viscosity(film) / density;
    double diffusivity = conductivity / (density * Air.cp(film));
    double buoyancy = GRAVITY * Math.abs(surfaceT - aroundT) / film;
    double rayleigh = buoyancy * diameter * diameter * diameter / (kinematic * diffusivity);
    return nusselt(rayleigh, kinematic / diffusivity) * conductivity / diameter;
  }
}

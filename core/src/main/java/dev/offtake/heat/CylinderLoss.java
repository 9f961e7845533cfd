package dev.offtake.heat;

/**
 * Heat loss of a horizontal round duct in still air: insulation, then free convection and radiation
 * side by side from its surface.
 *
 * <p>The resistance from the flowing air to the wall is left out: at bleed flows it is below a
 * twentieth of that outside (assumption).
 *
 * @param outerDiameter outside diameter of the bare duct, m, above 0
 * @param length m, above 0
 * @param insulationThickness m; 0 is a bare duct
 * @param insulationConductivity W/(m K), above 0; of no effect on a bare duct
 * @param emissivity of the outermost surface, 0 to 1
 */
public record CylinderLoss(
    double outerDiameter,
    double length,
    double insulationThickness,
    double insulationConductivity,
    double emissivity) {
  /** Stefan–Boltzmann constant, W/(m² K⁴) (SI of 2019). */
  private static final double STEFAN_BOLTZMANN = 5.670374419e-8;

  /** Halvings of the search for the surface's temperature; more than a double can hold. */
  private static final int HALVINGS = 60;

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if one is out of its range
   */
  public CylinderLoss {
    Requirement.above(0, outerDiameter, "outside diameter of a duct, m,");
    Requirement.above(0, length, "length of a duct, m,");
    Requirement.within(0, 1, insulationThickness, "thickness of a duct's insulation, m,");
    Requirement.above(0, insulationConductivity, "conductivity of insulation, W/(m K),");
    Requirement.within(0, 1, emissivity, "emissivity of a duct");
  }

  /**
   * Conductance from the air inside to the surroundings.
   *
   * @param insideT temperature inside, K
   * @param aroundT temperature of surrounding air and walls, K
   * @param pressure of the surrounding air, Pa absolute
   * @return conductance, W/K
   */
  public double conductance(double insideT, double aroundT, double pressure) {
    if (insulationThickness == 0) {
      return surface(insideT, aroundT, pressure);
    }
    double through = insulation();
    double near = aroundT;
    double far = insideT;
    for (int i = 0; i < HALVINGS; i++) {
      double surfaceT = (near + far) / 2;
      double arrives = through * Math.abs(insideT - surfaceT);
      double leaves = surface(surfaceT, aroundT, pressure) * Math.abs(surfaceT - aroundT);
      if (arrives > leaves) {
        near = surfaceT;
      } else {
        far = surfaceT;
      }
    }
    double outside = surface((near + far) / 2, aroundT, pressure);
    return 1 / (1 / through + 1 / outside);
  }

  /** Conductance of the insulation, W/K. */
  private double insulation() {
    double radii = Math.log1p(2 * insulationThickness / outerDiameter);
    return 2 * Math.PI * insulationConductivity * length / radii;
  }

  /** Conductance from the outermost surface to the surroundings, W/K. */
  private double surface(double surfaceT, double aroundT, double pressure) {
    double diameter = outerDiameter + 2 * insulationThickness;
    double squares = surfaceT * surfaceT + aroundT * aroundT;
    double radiation = emissivity * STEFAN_BOLTZMANN * squares * (surfaceT + aroundT);
    double convection = FreeConvection.coefficient(diameter, surfaceT, aroundT, pressure);
    return (convection + radiation) * Math.PI * diameter * length;
  }
}

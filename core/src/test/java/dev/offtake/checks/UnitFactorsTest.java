package dev.offtake.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Units;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Conversion factors against NIST SP 811 (2008), appendix B.8, seven printed digits (from memory);
 * the exact ones follow from the definitions of inch, pound and standard gravity.
 */
class UnitFactorsTest {

  @ParameterizedTest
  @CsvSource({
    "psi, PRESSURE_DIFFERENCE, 6.894757E+03",
    "inHg, PRESSURE_DIFFERENCE, 3.386389E+03",
    "inH2O, PRESSURE_DIFFERENCE, 2.490889E+02",
    "lb/min, MASS_FLOW, 7.559873E-03",
    "lb/s, MASS_FLOW, 4.535924E-01",
    "lb/h, MASS_FLOW, 1.259979E-04",
    "in, LENGTH, 2.54E-02",
    "ft, LENGTH, 3.048E-01",
    "in2, AREA, 6.4516E-04",
    "ft2, AREA, 9.290304E-02",
    "in3, VOLUME, 1.638706E-05",
    "ft3, VOLUME, 2.831685E-02",
    "lbf ft, TORQUE, 1.355818E+00",
    "deg, ANGLE, 1.745329E-02",
    "rpm, SPEED, 1.666667E-02",
  })
  void agreesWithPrintedFactors(String unit, Dimension dimension, double printed) {
    double factor = Units.find(unit, dimension).orElseThrow().factor();
    double halfUnitInLastPlace = 0.5e-6 * Math.pow(10, Math.floor(Math.log10(printed)));
    assertThat(factor).isCloseTo(printed, within(halfUnitInLastPlace * 1.001));
  }
}

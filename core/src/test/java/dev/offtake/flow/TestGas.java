package dev.offtake.flow;

import dev.offtake.air.Air;
import dev.offtake.air.GasState;

/** Fills gas states for tests of the laws: smooth γ(T) near that of air, own case. */
public final class TestGas {
  private TestGas() {}

  /** A state whose γ falls with temperature as that of air does, about 1.40 to 1.30. */
  public static GasState at(double lnP, double t) {
    double u = t / 800;
    GasState gas = constant(1e5 * Math.exp(lnP), t, 1.3 + 0.1 / (1 + u * u * u));
    gas.lnP = lnP;
    gas.dGamma = -0.1 * 3 * u * u / 800 / ((1 + u * u * u) * (1 + u * u * u));
    return gas;
  }

  /** A state with constant γ. */
  public static GasState constant(double p, double t, double gamma) {
    GasState gas = new GasState();
    gas.p = p;
    gas.lnP = Math.log(p / 1e5);
    gas.t = t;
    gas.flux = p / Math.sqrt(Air.R * t);
    gas.gamma = gamma;
    return gas;
  }

  /** Sutherland's viscosity, Pa s. */
  public static double viscosity(double t) {
    return 1.458e-6 * t * Math.sqrt(t) / (t + 110.4);
  }

  /** Slope of {@link #viscosity}. */
  public static double dViscosity(double t) {
    return viscosity(t) * (1.5 / t - 1 / (t + 110.4));
  }

  /** A duct with this gas. */
  public static DuctLaw duct(double length, double roughness, double k) {
    return new DuctLaw(length, roughness, k, TestGas::viscosity, TestGas::dViscosity);
  }
}

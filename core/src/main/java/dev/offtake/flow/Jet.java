package dev.offtake.flow;

/**
 * A law seen from its upstream end: flow as a function of L = ln(p_down/p_up) ≤ 0 and of the
 * upstream ln p, T and size, with first derivatives and the mixed second derivatives by L that the
 * near-zero band needs.
 *
 * <p>Mutable scratch, owned by a {@link Flow}.
 */
final class Jet {
  /** Flow away from the upstream end, kg/s. */
  double value;

  /** ∂/∂L at constant upstream state, kg/s. */
  double dL;

  /** ∂/∂ ln p at constant L, kg/s. */
  double dLnP;

  /** ∂/∂T at constant L, kg/(s K). */
  double dT;

  /** ∂/∂size at constant L. */
  double dSize;

  /** ∂²/∂L∂ ln p, kg/s. */
  double dLdLnP;

  /** ∂²/∂L∂T, kg/(s K). */
  double dLdT;

  /** ∂²/∂L∂size. */
  double dLdSize;

  /** Whether the flow is choked. */
  boolean choked;

  /** Flow function ψ, or a law's own shape factor. */
  double psi;

  /** ∂ψ/∂L. */
  double psiL;

  /** ∂ψ/∂γ. */
  double psiG;

  /** ∂²ψ/∂L∂γ. */
  double psiLG;

  /** ∂ψ/∂ ln p, for laws whose shape depends on pressure itself. */
  double psiP;

  /**
   * Flow = size·flux·ψ with flux ∝ p/√T.
   *
   * @param size of the law
   * @param flux per unit of size at ψ = 1, kg/s
   * @param t upstream total temperature, K
   * @param dGamma dγ/dT, 1/K
   */
  void fromPsi(double size, double flux, double t, double dGamma) {
    double full = size * flux;
    double half = -0.5 / t;
    value = full * psi;
    dL = full * psiL;
    dLnP = full * (psi + psiP);
    dT = full * (half * psi + psiG * dGamma);
    dSize = flux * psi;
    dLdLnP = full * psiL;
    dLdT = full * (half * psiL + psiLG * dGamma);
    dLdSize = flux * psiL;
  }

  /** Sets everything to no flow. */
  void zero() {
    value = 0;
    dL = 0;
    dLnP = 0;
    dT = 0;
    dSize = 0;
    dLdLnP = 0;
    dLdT = 0;
    dLdSize = 0;
    choked = false;
  }
}

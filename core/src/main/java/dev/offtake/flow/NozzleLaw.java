package dev.offtake.flow;

/**
 * Ideal nozzle, orifice or leak; size is the effective area CdA, m².
 *
 * <p>ṁ = CdA·p₁/√(R·T₁)·ψ(r, γ(T₁)), choked below r* = (2/(γ+1))^(γ/(γ−1)).
 */
public final class NozzleLaw extends AreaLaw {
  @Override
  void psi(double l, double gamma, Jet out) {
    NozzleFunction.evaluate(l, gamma, out);
  }
}

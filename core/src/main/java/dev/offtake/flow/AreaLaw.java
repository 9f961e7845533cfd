package dev.offtake.flow;

import dev.offtake.air.GasState;

/** Laws of the form ṁ = area·p/√(R·T)·ψ(r, γ); size is the area, m². */
abstract class AreaLaw extends UpstreamLaw {
  @Override
  final void jet(double l, GasState up, double size, FannoPath path, Jet out) {
    double t = Math.max(up.t, LEAST_T);
    psi(l, up.gamma, out);
    out.fromPsi(size, up.flux, t, up.dGamma);
  }

  /** Sets psi, psiL, psiG, psiLG, psiP and choked. */
  abstract void psi(double l, double gamma, Jet out);
}

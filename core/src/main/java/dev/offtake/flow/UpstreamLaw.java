package dev.offtake.flow;

import dev.offtake.air.GasState;

/**
 * A law written for flow away from its upstream end; turns it into a law of two ends.
 *
 * <p>The sign of ln p₂ − ln p₁ decides which end is upstream; within the band around zero {@link
 * NearZero} takes over.
 */
abstract class UpstreamLaw implements FlowLaw {
  /** Least temperature that a law computes with, K, so that a wild Newton step stays finite. */
  static final double LEAST_T = GasState.LEAST_T;

  @Override
  public final void evaluate(GasState one, GasState two, double size, Flow out) {
    double l = two.lnP - one.lnP;
    if (Math.abs(l) < NearZero.WELL_BEYOND) {
      double s = NearZero.scaled(l);
      double ds = NearZero.dScaled(l);
      NearZero.share(s, ds, out);
      if (Math.abs(s) < 1 && !startsFlat()) {
        jet(NearZero.EDGE_L, one, size, out.path, out.fromOne);
        jet(NearZero.EDGE_L, two, size, out.path, out.fromTwo);
        NearZero.blend(s, ds, out);
        return;
      }
    } else {
      NearZero.oneWay(l, out);
    }
    if (l <= 0) {
      jet(l, one, size, out.path, out.fromOne);
      forward(out.fromOne, out);
    } else {
      jet(-l, two, size, out.path, out.fromTwo);
      reverse(out.fromTwo, out);
    }
  }

  /**
   * Flow away from the upstream end.
   *
   * @param l ln(p_down/p_up), zero or less
   * @param up air at the upstream end
   * @param size of the law
   * @param path scratch
   * @param out receives the flow and its derivatives
   */
  abstract void jet(double l, GasState up, double size, FannoPath path, Jet out);

  /** Whether the law leaves zero with zero slope by itself and needs no cubic there. */
  boolean startsFlat() {
    return false;
  }

  private static void forward(Jet jet, Flow out) {
    out.mdot = jet.value;
    out.dLnP1 = jet.dLnP - jet.dL;
    out.dLnP2 = jet.dL;
    out.dT1 = jet.dT;
    out.dT2 = 0;
    out.dSize = jet.dSize;
    out.choked = jet.choked;
  }

  private static void reverse(Jet jet, Flow out) {
    out.mdot = -jet.value;
    out.dLnP2 = jet.dL - jet.dLnP;
    out.dLnP1 = -jet.dL;
    out.dT2 = -jet.dT;
    out.dT1 = 0;
    out.dSize = -jet.dSize;
    out.choked = jet.choked;
  }
}

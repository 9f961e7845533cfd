package dev.offtake.flow;

/**
 * What a flow law answers: mass flow and its partial derivatives.
 *
 * <p>Mutable on purpose: the caller owns one object for each stream and the law overwrites every
 * field. It also carries the law's scratch space, so that laws stay stateless and allocate nothing.
 */
public final class Flow {
  /** Mass flow, kg/s, positive from one to two. */
  public double mdot;

  /** ∂ṁ/∂ ln p₁, kg/s. */
  public double dLnP1;

  /** ∂ṁ/∂T₁, kg/(s K). */
  public double dT1;

  /** ∂ṁ/∂ ln p₂, kg/s. */
  public double dLnP2;

  /** ∂ṁ/∂T₂, kg/(s K). */
  public double dT2;

  /** ∂ṁ/∂size, kg/s per unit of the law's size. */
  public double dSize;

  /**
   * Share of the carried enthalpy that is that of end one: 1 in forward flow, 0 in reverse, between
   * where still.
   */
  public double share1;

  /** ∂share₁/∂ ln p₁. */
  public double dShareLnP1;

  /** ∂share₁/∂ ln p₂. */
  public double dShareLnP2;

  /** Whether the flow is choked. */
  public boolean choked;

  /** Scratch: the law with end one upstream. */
  final Jet fromOne = new Jet();

  /** Scratch: the law with end two upstream. */
  final Jet fromTwo = new Jet();

  /** Scratch of the duct law. */
  final FannoPath path = new FannoPath();
}

package dev.offtake.heat;

/**
 * What an exchanger is told and what it does. Mutable on purpose: one object for each exchanger is
 * refilled at every evaluation, so that nothing is allocated in the inner loop.
 *
 * <p>Derivatives are by hot flow (kg/s), hot inlet temperature (K), cold flow and cold inlet
 * temperature, in this order.
 */
public final class Exchange {
  /** Place of the hot side's flow among the derivatives. */
  public static final int M_HOT = 0;

  /** Place of the hot side's inlet temperature among the derivatives. */
  public static final int T_HOT = 1;

  /** Place of the cold side's flow among the derivatives. */
  public static final int M_COLD = 2;

  /** Place of the cold side's inlet temperature among the derivatives. */
  public static final int T_COLD = 3;

  /** Input: share of the rated overall conductance lost to fouling, 0 up to but not 1. */
  public double fouling;

  /** Overall conductance in force, W/K. */
  public double ua;

  /** Heat from the hot side to the cold side, W; negative if the cold side is the hotter. */
  public double q;

  /** Derivatives of {@link #q}. */
  public final double[] dq = new double[4];

  /** Enthalpy at the hot side's outlet, J/kg. */
  public double hHotOut;

  /** Derivatives of {@link #hHotOut}. */
  public final double[] dHHotOut = new double[4];

  /** Enthalpy at the cold side's outlet, J/kg. */
  public double hColdOut;

  /** Derivatives of {@link #hColdOut}. */
  public final double[] dHColdOut = new double[4];

  /** The law of the core, kept here so that evaluating allocates nothing. */
  final CrossFlow core = new CrossFlow();

  /** Mean heat capacity between the inlets, likewise. */
  final MeanHeat heat = new MeanHeat();

  /** The two sides, likewise. */
  final Side hotSide = new Side();

  /** The other of the two. */
  final Side coldSide = new Side();

  /** Makes a clean one; the outputs are zero until evaluated. */
  public Exchange() {}
}

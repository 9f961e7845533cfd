package dev.offtake.part;

import dev.offtake.air.GasState;
import dev.offtake.flow.Flow;
import java.util.Arrays;

/**
 * One stream of air through a part, from one point to another, with what it carries and how that
 * answers to the variables of the network.
 *
 * <p>Mutable on purpose: an {@link Element} owns its branches and refreshes them at each evaluation
 * without allocating. The first four variables of a branch are always ln p and T of its
 * <em>from</em> end and ln p and T of its <em>to</em> end; others (a sensed pressure, a sensed
 * temperature, the far side of an exchanger) follow.
 */
public final class Branch {
  /** Position of the from end's ln p among {@link #variables}. */
  public static final int LN_P_FROM = 0;

  /** Position of the from end's temperature among {@link #variables}. */
  public static final int T_FROM = 1;

  /** Position of the to end's ln p among {@link #variables}. */
  public static final int LN_P_TO = 2;

  /** Position of the to end's temperature among {@link #variables}. */
  public static final int T_TO = 3;

  /** Point that the stream leaves when its flow is positive. */
  public final int from;

  /** Point that the stream enters when its flow is positive. */
  public final int to;

  /** Effective area at nominal opening, m²; only used to find a start for the solver. */
  public final double nominalArea;

  /** Identifiers of the variables that the stream depends on. */
  public final int[] variables;

  /** Mass flow, kg/s, positive in the direction of the path. */
  public double mdot;

  /** Partials of {@link #mdot} by {@link #variables}, kg/s per unit of ln p and kg/s per K. */
  public final double[] dMdot;

  /** Enthalpy that the stream carries at its from end, J/kg. */
  public double hFrom;

  /** Partials of {@link #hFrom} by {@link #variables}. */
  public final double[] dHFrom;

  /** Enthalpy that the stream carries at its to end, J/kg. */
  public double hTo;

  /** Partials of {@link #hTo} by {@link #variables}. */
  public final double[] dHTo;

  /** Whether the stream is choked. */
  public boolean choked;

  /** Whether the stream is so nearly still that its flow is a matter of rounding. */
  public boolean still;

  /**
   * Makes a branch.
   *
   * @param wiring knows the variables of points
   * @param from point id
   * @param to point id
   * @param nominalArea m², for the solver's start
   * @param others identifiers of further variables
   */
  public Branch(Wiring wiring, int from, int to, double nominalArea, int... others) {
    this.from = from;
    this.to = to;
    this.nominalArea = nominalArea;
    variables =
        Arrays.copyOf(
            new int[] {wiring.lnP(from), wiring.t(from), wiring.lnP(to), wiring.t(to)},
            4 + others.length);
    System.arraycopy(others, 0, variables, 4, others.length);
    dMdot = new double[variables.length];
    dHFrom = new double[variables.length];
    dHTo = new double[variables.length];
  }

  /**
   * Takes over the result of a flow law between the branch's ends, with air that is throttled and
   * not heated: it arrives with the enthalpy of the end that it left, however slowly. (A blend of
   * both ends where the flow vanishes would let air that leaves a point warm it beyond its
   * sources.)
   *
   * @param flow the law's result
   * @param one air at the from end
   * @param two air at the to end
   */
  public void throttled(Flow flow, GasState one, GasState two) {
    mdot = flow.mdot;
    dMdot[LN_P_FROM] = flow.dLnP1;
    dMdot[T_FROM] = flow.dT1;
    dMdot[LN_P_TO] = flow.dLnP2;
    dMdot[T_TO] = flow.dT2;
    choked = flow.choked;
    still = flow.share1 > 0 && flow.share1 < 1;
    boolean forward = flow.mdot >= 0;
    hFrom = forward ? one.h : two.h;
    dHFrom[LN_P_FROM] = 0;
    dHFrom[T_FROM] = forward ? one.cp : 0;
    dHFrom[LN_P_TO] = 0;
    dHFrom[T_TO] = forward ? 0 : two.cp;
    hTo = hFrom;
    System.arraycopy(dHFrom, 0, dHTo, 0, 4);
  }

  /**
   * Adds the dependence of the flow on an area that itself depends on one of the branch's
   * variables.
   *
   * @param variable position among {@link #variables}
   * @param slope kg/s per unit of that variable
   */
  public void alsoBy(int variable, double slope) {
    dMdot[variable] += slope;
  }

  /** Clears the partials by the further variables, which laws do not write. */
  public void clearOthers() {
    Arrays.fill(dMdot, 4, dMdot.length, 0);
  }
}

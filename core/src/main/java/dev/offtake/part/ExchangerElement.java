package dev.offtake.part;

import dev.offtake.air.Air;
import dev.offtake.air.GasState;
import dev.offtake.flow.Flow;
import dev.offtake.flow.NozzleLaw;
import dev.offtake.heat.Exchange;
import java.util.List;

/** A heat exchanger at work: two resistances whose streams leave with what the core gives or takes, either way round. */
final class ExchangerElement extends Element {
  private static final double MOST_FOULED = 0.999;

  private final ExchangerPart part;
  private final int parameters;
  private final Branch hot;
  private final Branch cold;
  private final NozzleLaw law = new NozzleLaw();
  private final Flow flow = new Flow();
  private final Exchange exchange = new Exchange();

  ExchangerElement(ExchangerPart part, Wiring wiring) {
    this.part = part;
    parameters = wiring.parameters();
    Leg hotLeg = part.legs().get(0);
    Leg coldLeg = part.legs().get(1);
    int[] hotEnds = {wiring.point(hotLeg.from()), wiring.point(hotLeg.to())};
    int[] coldEnds = {wiring.point(coldLeg.from()), wiring.point(coldLeg.to())};
    hot = branch(wiring, hotEnds, coldEnds, ExchangerPart.HOT_AREA);
    cold = branch(wiring, coldEnds, hotEnds, ExchangerPart.COLD_AREA);
  }

  private Branch branch(Wiring wiring, int[] own, int[] other, int area) {
    return new Branch(
        wiring,
        own[0],
        own[1],
        part.parameters().get(area).value(),
        wiring.lnP(other[0]),
        wiring.t(other[0]),
        wiring.lnP(other[1]),
        wiring.t(other[1]));
  }

  @Override
  public List<Branch> branches() {
    return List.of(hot, cold);
  }

  @Override
  public void evaluate(Evaluation e) {
    flowThrough(hot, e, ExchangerPart.HOT_AREA);
    flowThrough(cold, e, ExchangerPart.COLD_AREA);
    GasState hotIn = e.gas[hot.mdot >= 0 ? hot.from : hot.to];
    GasState coldIn = e.gas[cold.mdot >= 0 ? cold.from : cold.to];
    double fouling = e.parameters[parameters + ExchangerPart.FOULING];
    exchange.fouling = Math.max(0, Math.min(MOST_FOULED, fouling));
    part.law().evaluate(Math.abs(hot.mdot), hotIn, Math.abs(cold.mdot), coldIn, exchange);
    double[] dHot = exchange.dHHotOut;
    leave(hot, hotIn, cold, exchange.hHotOut, dHot, Exchange.M_HOT, Exchange.M_COLD);
    double[] dCold = exchange.dHColdOut;
    leave(cold, coldIn, hot, exchange.hColdOut, dCold, Exchange.M_COLD, Exchange.M_HOT);
  }

  private void flowThrough(Branch branch, Evaluation e, int area) {
    GasState one = e.gas[branch.from];
    GasState two = e.gas[branch.to];
    law.evaluate(one, two, e.parameters[parameters + area], flow);
    branch.throttled(flow, one, two);
  }

  /**
   * Writes the enthalpies of a stream that enters at one end and leaves, exchanged, at the other.
   *
   * @param own the stream
   * @param in air that enters it
   * @param other the other stream
   * @param out enthalpy that it leaves with, J/kg
   * @param d partials of that enthalpy
   * @param mOwn place of the own flow among them; its temperature follows
   * @param mOther place of the other flow among them; its temperature follows
   */
  private static void leave(
      Branch own, GasState in, Branch other, double out, double[] d, int mOwn, int mOther) {
    boolean forward = own.mdot >= 0;
    double[] enters = forward ? own.dHFrom : own.dHTo;
    double[] leaves = forward ? own.dHTo : own.dHFrom;
    double signOwn = d[mOwn] * (forward ? 1 : -1);
    double signOther = d[mOther] * (other.mdot >= 0 ? 1 : -1);
    for (int k = 0; k < 4; k++) {
      enters[k] = 0;
      enters[4 + k] = 0;
      leaves[k] = signOwn * own.dMdot[k];
      leaves[4 + k] = signOther * other.dMdot[k];
    }
    int inlet = forward ? Branch.T_FROM : Branch.T_TO;
    enters[inlet] = in.cp;
    leaves[inlet] += d[mOwn + 1];
    leaves[4 + (other.mdot >= 0 ? Branch.T_FROM : Branch.T_TO)] += d[mOther + 1];
    own.hFrom = forward ? in.h : out;
    own.hTo = forward ? out : in.h;
  }

  @Override
  public void observe(Evaluation e, double[] out, int at) {
    out[at + ExchangerPart.HEAT] = exchange.q;
    out[at + 1] = Air.temperature(exchange.hHotOut);
    out[at + 2] = Air.temperature(exchange.hColdOut);
  }
}

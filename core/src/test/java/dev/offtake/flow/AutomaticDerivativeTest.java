package dev.offtake.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.air.Air;
import dev.offtake.air.GasState;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.hipparchus.analysis.differentiation.Gradient;

/** Nozzle and valve written a second time, as printed, in a library's differentiable numbers. */
class AutomaticDerivativeTest {
  private static final double SIZE = 1.5e-3;
  private static final double X_T = 0.55;

  @Property(tries = 300, seed = "41")
  void nozzle(
      @ForAll @Scale(6) @DoubleRange(min = -1, max = 3) double lnP1,
      @ForAll @Scale(6) @DoubleRange(min = 2e-4, max = 2) double fall,
      @ForAll @Scale(6) @DoubleRange(min = 220, max = 900) double t) {
    agree(new NozzleLaw(), lnP1, fall, t, AutomaticDerivativeTest::nozzlePsi);
  }

  @Property(tries = 300, seed = "42")
  void valve(
      @ForAll @Scale(6) @DoubleRange(min = -1, max = 3) double lnP1,
      @ForAll @Scale(6) @DoubleRange(min = 2e-4, max = 2) double fall,
      @ForAll @Scale(6) @DoubleRange(min = 220, max = 900) double t) {
    agree(new ValveLaw(X_T), lnP1, fall, t, AutomaticDerivativeTest::valvePsi);
  }

  private interface Psi {
    Gradient of(Gradient r, Gradient gamma);
  }

  private static void agree(FlowLaw law, double lnP1, double fall, double t, Psi psi) {
    Gradient lp1 = Gradient.variable(4, 0, lnP1);
    Gradient t1 = Gradient.variable(4, 1, t);
    Gradient lp2 = Gradient.variable(4, 2, lnP1 - fall);
    Gradient size = Gradient.variable(4, 3, SIZE);
    GasState up = TestGas.at(lnP1, t);
    Gradient gamma = t1.subtract(t).multiply(up.dGamma).add(up.gamma);
    Gradient m =
        psi.of(lp2.subtract(lp1).exp(), gamma)
            .multiply(size)
            .multiply(lp1.exp().multiply(1e5))
            .divide(t1.multiply(Air.R).sqrt());
    Flow forward = new Flow();
    Flow back = new Flow();
    GasState down = TestGas.at(lnP1 - fall, 350);
    law.evaluate(up, down, SIZE, forward);
    law.evaluate(down, up, SIZE, back);
    double room = 1e-9 * (1 + 1e-3 / fall);
    near(forward.mdot, m.getValue(), room);
    near(forward.dLnP1, m.getPartialDerivative(0), room);
    near(forward.dT1, m.getPartialDerivative(1), room);
    near(forward.dLnP2, m.getPartialDerivative(2), room);
    near(forward.dSize, m.getPartialDerivative(3), room);
    near(back.dLnP2, -m.getPartialDerivative(0), room);
    near(back.dT2, -m.getPartialDerivative(1), room);
    near(back.dLnP1, -m.getPartialDerivative(2), room);
  }

  private static void near(double exact, double oracle, double room) {
    assertThat(exact).isCloseTo(oracle, within(room * Math.abs(oracle) + 1e-13));
  }

  private static Gradient nozzlePsi(Gradient r, Gradient g) {
    Gradient below = g.subtract(1);
    Gradient above = g.add(1);
    Gradient critical = above.reciprocal().multiply(2).pow(g.divide(below));
    if (r.getValue() <= critical.getValue()) {
      return g.sqrt().multiply(above.reciprocal().multiply(2).pow(above.divide(below.multiply(2))));
    }
    Gradient bracket = r.pow(g.reciprocal().multiply(2)).subtract(r.pow(above.divide(g)));
    return g.multiply(2).divide(below).multiply(bracket).sqrt();
  }

  private static Gradient valvePsi(Gradient r, Gradient g) {
    Gradient choke = g.divide(1.4).multiply(X_T);
    Gradient x = r.negate().add(1);
    if (x.getValue() >= choke.getValue()) {
      return choke.multiply(2).sqrt().multiply(2.0 / 3);
    }
    return x.multiply(2).sqrt().multiply(x.divide(choke.multiply(3)).negate().add(1));
  }
}

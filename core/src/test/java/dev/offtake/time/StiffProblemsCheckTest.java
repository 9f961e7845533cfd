package dev.offtake.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * The method apart from any network, on published stiff problems.
 *
 * <p>Source of the reference values at the end times: the test set for initial value problems
 * (Bari), as carried by the public R package deTestSet; the early values of Robertson's problem are
 * own, recomputed with SciPy's Radau at a relative tolerance of 1e-12.
 */
class StiffProblemsCheckTest {
  private static final double TOLERANCE = 1e-8;
  private static final double SAME = 1e-6;

  /** H. H. Robertson's reactions (1966). */
  private static class Robertson extends Rates {
    Robertson() {
      this(1e-14);
    }

    Robertson(double least) {
      super(3, least);
    }

    @Override
    void f(double[] y, double[] out) {
      out[0] = -0.04 * y[0] + 1e4 * y[1] * y[2];
      out[2] = 3e7 * y[1] * y[1];
      out[1] = -out[0] - out[2];
    }

    @Override
    void jacobian(double[] y, double[][] out) {
      out[0][0] = -0.04;
      out[0][1] = 1e4 * y[2];
      out[0][2] = 1e4 * y[1];
      out[2][1] = 6e7 * y[1];
      for (int k = 0; k < 3; k++) {
        out[1][k] = -out[0][k] - out[2][k];
      }
    }
  }

  /** The same with the last equation replaced by the sum of all, which stores nothing. */
  private static final class RobertsonSum extends Robertson {
    /** The sum is 1 to rounding, which is far more than the second state at the beginning. */
    RobertsonSum() {
      super(1e-7);
    }

    @Override
    public boolean stores(int row) {
      return row < 2;
    }

    @Override
    void f(double[] y, double[] out) {
      super.f(y, out);
      out[2] = y[0] + y[1] + y[2] - 1;
    }

    @Override
    void jacobian(double[] y, double[][] out) {
      super.jacobian(y, out);
      java.util.Arrays.fill(out[2], 1);
    }
  }

  private static void assertClose(double[] y, double... reference) {
    for (int i = 0; i < reference.length; i++) {
      double size = Math.abs(reference[i]);
      assertThat(y[i]).as("state " + i).isCloseTo(reference[i], within(SAME * size));
    }
  }

  @Test
  void robertson() {
    double[] y = {1, 0, 0};
    Rates.run(new Robertson(), y, 0, 1e11, TOLERANCE);
    assertClose(y, 0.2083340149701255e-7, 0.8333360770334713e-13, 0.9999999791665050);
    assertThat(y[0] + y[1] + y[2]).isCloseTo(1, within(1e-12));
  }

  @Test
  void robertsonEarly() {
    double[] y = {1, 0, 0};
    Rates.run(new Robertson(), y, 0, 0.4, TOLERANCE);
    assertClose(y, 0.985172113860990, 3.38639537897e-5, 1.47940221852e-2);
    Rates.run(new Robertson(), y, 0.4, 40, TOLERANCE);
    assertClose(y, 0.715827068719, 9.18553476456e-6, 0.284163745746);
  }

  @Test
  void robertsonWithAnEquationThatStoresNothing() {
    double[] y = {1, 0, 0};
    Rates.run(new RobertsonSum(), y, 0, 40, TOLERANCE);
    assertClose(y, 0.715827068719, 9.18553476456e-6, 0.284163745746);
    assertThat(y[0] + y[1] + y[2]).isCloseTo(1, within(1e-12));
  }

  /** Balthasar van der Pol's oscillator, in its own and in scaled time. */
  private static final class VanDerPol extends Rates {
    private final double mu;
    private final double scale;

    VanDerPol(double mu, double scale) {
      super(2, 1e-6);
      this.mu = mu;
      this.scale = scale;
    }

    @Override
    void f(double[] y, double[] out) {
      out[0] = y[1];
      out[1] = scale * (mu * (1 - y[0] * y[0]) * y[1] - y[0]);
    }

    @Override
    void jacobian(double[] y, double[][] out) {
      out[0][1] = 1;
      out[1][0] = scale * (-2 * mu * y[0] * y[1] - 1);
      out[1][1] = scale * mu * (1 - y[0] * y[0]);
    }
  }

  @Test
  void vanDerPol() {
    double[] y = {2, 0};
    Rates.run(new VanDerPol(1000, 1), y, 0, 2000, TOLERANCE);
    assertClose(y, 1.706167732170469, -0.8928097010248125e-3);
  }

  @Test
  void vanDerPolScaled() {
    double[] y = {2, 0};
    Rates.run(new VanDerPol(1, 1e6), y, 0, 2, TOLERANCE);
    assertClose(y, 1.706167732170483, -0.8928097010247975);
  }

  /** High irradiance responses of photomorphogenesis (Schäfer 1975). */
  private static final class Hires extends Rates {
    Hires() {
      super(8, 1e-8);
    }

    @Override
    void f(double[] y, double[] f) {
      f[0] = -1.71 * y[0] + 0.43 * y[1] + 8.32 * y[2] + 0.0007;
      f[1] = 1.71 * y[0] - 8.75 * y[1];
      f[2] = -10.03 * y[2] + 0.43 * y[3] + 0.035 * y[4];
      f[3] = 8.32 * y[1] + 1.71 * y[2] - 1.12 * y[3];
      f[4] = -1.745 * y[4] + 0.43 * y[5] + 0.43 * y[6];
      double meets = 280 * y[5] * y[7];
      f[5] = -meets + 0.69 * y[3] + 1.71 * y[4] - 0.43 * y[5] + 0.69 * y[6];
      f[6] = meets - 1.81 * y[6];
      f[7] = -f[6];
    }

    @Override
    void jacobian(double[] y, double[][] out) {
      double[][] fixed = {
        {-1.71, 0.43, 8.32, 0, 0, 0, 0, 0},
        {1.71, -8.75, 0, 0, 0, 0, 0, 0},
        {0, 0, -10.03, 0.43, 0.035, 0, 0, 0},
        {0, 8.32, 1.71, -1.12, 0, 0, 0, 0},
        {0, 0, 0, 0, -1.745, 0.43, 0.43, 0},
        {0, 0, 0, 0.69, 1.71, -0.43 - 280 * y[7], 0.69, -280 * y[5]},
        {0, 0, 0, 0, 0, 280 * y[7], -1.81, 280 * y[5]},
        {0, 0, 0, 0, 0, -280 * y[7], 1.81, -280 * y[5]}
      };
      for (int i = 0; i < 8; i++) {
        System.arraycopy(fixed[i], 0, out[i], 0, 8);
      }
    }
  }

  @Test
  void hires() {
    double[] y = {1, 0, 0, 0, 0, 0, 0, 0.0057};
    Rates.run(new Hires(), y, 0, 321.8122, TOLERANCE);
    assertClose(
        y,
        0.7371312573325668e-3,
        0.1442485726316185e-3,
        0.5888729740967575e-4,
        0.1175651343283149e-2,
        0.2386356198831331e-2,
        0.6238968252742796e-2,
        0.2849998395185769e-2,
        0.2850001604814231e-2);
  }

  /** y″ = −y as two equations, with a bend: the exact answer is known. */
  private static final class Pendulum extends Rates {
    Pendulum() {
      super(2, 1);
    }

    @Override
    void f(double[] y, double[] out) {
      double speed = 1 + y[0] * y[0] + y[1] * y[1];
      out[0] = speed * y[1];
      out[1] = -speed * y[0];
    }

    @Override
    void jacobian(double[] y, double[][] out) {
      double speed = 1 + y[0] * y[0] + y[1] * y[1];
      out[0][0] = 2 * y[0] * y[1];
      out[0][1] = speed + 2 * y[1] * y[1];
      out[1][0] = -speed - 2 * y[0] * y[0];
      out[1][1] = -2 * y[0] * y[1];
    }
  }

  /** On the unit circle the pendulum goes round at 2 rad/s: halved steps err an eighth as much. */
  @Test
  void errsByTheThirdPower() {
    double[] errors = new double[4];
    for (int i = 0; i < errors.length; i++) {
      int steps = 40 << i;
      double[] y = {0, 1};
      Rates.run(new Pendulum(), y, 2.0 / steps, steps);
      errors[i] = Math.hypot(y[0] - Math.sin(4), y[1] - Math.cos(4));
    }
    for (int i = 1; i < errors.length; i++) {
      double order = Math.log(errors[i - 1] / errors[i]) / Math.log(2);
      assertThat(order).isBetween(2.85, 3.4);
    }
  }

  /** Between its ends a step errs by the fourth power of its length, as a cubic does. */
  @Test
  void isAsGoodBetweenItsEnds() {
    double[] errors = new double[3];
    for (int i = 0; i < errors.length; i++) {
      double h = 0.1 / (1 << i);
      Step step = new Step(new Pendulum());
      step.start(0, new double[] {0, 1});
      step.make(0, h, 1e-10);
      double[] y = new double[2];
      for (double share : new double[] {0.2, 0.5, 0.8}) {
        step.at(share, h, y);
        double angle = 2 * share * h;
        double error = Math.hypot(y[0] - Math.sin(angle), y[1] - Math.cos(angle));
        errors[i] = Math.max(errors[i], error);
      }
    }
    for (int i = 1; i < errors.length; i++) {
      assertThat(Math.log(errors[i - 1] / errors[i]) / Math.log(2)).isBetween(3.6, 4.6);
    }
  }
}

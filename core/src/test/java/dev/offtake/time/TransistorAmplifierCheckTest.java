package dev.offtake.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * The method on a circuit whose mass matrix is singular: the transistor amplifier of P. Rentrop, M.
 * Roche and G. Steinebach (1989), an equation of index 1.
 *
 * <p>Source of the values at 0.2 s: the test set for initial value problems (Bari), as carried by
 * the public R package deTestSet. Its circuit's numbers are from memory; that the values come out
 * proves them. Each capacitor between two nodes is written by its own voltage, which stores, and
 * the sum of the two nodes' currents, which does not.
 */
class TransistorAmplifierCheckTest {
  private static final double SUPPLY = 6;
  private static final double R0 = 1000;
  private static final double R = 9000;
  private static final double THERMAL = 0.026;
  private static final double ALPHA = 0.99;
  private static final double BETA = 1e-6;

  /** Places: y1 − y2, y2, y3, y4 − y5, y5, y6, y7 − y8, y8, and time. */
  private static final class Amplifier extends Rates {
    Amplifier() {
      super(9, 1e-2);
    }

    @Override
    public boolean stores(int row) {
      return row != 1 && row != 4 && row != 7;
    }

    @Override
    void f(double[] z, double[] out) {
      double input = 0.1 * Math.sin(200 * Math.PI * z[8]);
      double first = BETA * Math.expm1((z[1] - z[2]) / THERMAL);
      double second = BETA * Math.expm1((z[4] - z[5]) / THERMAL);
      double f1 = (z[0] + z[1] - input) / R0;
      double f2 = (2 * z[1] - SUPPLY) / R + (1 - ALPHA) * first;
      double f4 = (z[3] + z[4] - SUPPLY) / R + ALPHA * first;
      double f5 = (2 * z[4] - SUPPLY) / R + (1 - ALPHA) * second;
      double f7 = (z[6] + z[7] - SUPPLY) / R + ALPHA * second;
      out[0] = -f1 / 1e-6;
      out[1] = f1 + f2;
      out[2] = -(z[2] / R - first) / 2e-6;
      out[3] = -f4 / 3e-6;
      out[4] = f4 + f5;
      out[5] = -(z[5] / R - second) / 4e-6;
      out[6] = -f7 / 5e-6;
      out[7] = f7 + z[7] / R;
      out[8] = 1;
    }

    @Override
    void jacobian(double[] z, double[][] out) {
      double input = 20 * Math.PI * Math.cos(200 * Math.PI * z[8]);
      double first = BETA / THERMAL * Math.exp((z[1] - z[2]) / THERMAL);
      double second = BETA / THERMAL * Math.exp((z[4] - z[5]) / THERMAL);
      out[0][0] = -1e6 / R0;
      out[0][1] = -1e6 / R0;
      out[0][8] = 1e6 * input / R0;
      out[1][0] = 1 / R0;
      out[1][1] = 1 / R0 + 2 / R + (1 - ALPHA) * first;
      out[1][2] = -(1 - ALPHA) * first;
      out[1][8] = -input / R0;
      out[2][1] = first / 2e-6;
      out[2][2] = -(1 / R + first) / 2e-6;
      out[3][1] = -ALPHA * first / 3e-6;
      out[3][2] = ALPHA * first / 3e-6;
      out[3][3] = -1 / R / 3e-6;
      out[3][4] = -1 / R / 3e-6;
      out[4][1] = ALPHA * first;
      out[4][2] = -ALPHA * first;
      out[4][3] = 1 / R;
      out[4][4] = 3 / R + (1 - ALPHA) * second;
      out[4][5] = -(1 - ALPHA) * second;
      out[5][4] = second / 4e-6;
      out[5][5] = -(1 / R + second) / 4e-6;
      out[6][4] = -ALPHA * second / 5e-6;
      out[6][5] = ALPHA * second / 5e-6;
      out[6][6] = -1 / R / 5e-6;
      out[6][7] = -1 / R / 5e-6;
      out[7][4] = ALPHA * second;
      out[7][5] = -ALPHA * second;
      out[7][6] = 1 / R;
      out[7][7] = 2 / R;
    }
  }

  @Test
  void transistorAmplifier() {
    double half = SUPPLY / 2;
    double[] z = {-half, half, half, SUPPLY - half, half, half, SUPPLY, 0, 0};

    Rates.run(new Amplifier(), z, 0, 0.2, 1e-7);

    double[] y = {z[0] + z[1], z[1], z[2], z[3] + z[4], z[4], z[5], z[6] + z[7], z[7]};
    double[] reference = {
      -0.5562145012262709e-2,
      3.006522471903042,
      2.849958788608128,
      2.926422536206241,
      2.704617865010554,
      2.761837778393145,
      4.770927631616772,
      1.236995868091548
    };
    for (int i = 0; i < y.length; i++) {
      assertThat(y[i]).as("y" + (i + 1)).isCloseTo(reference[i], within(2e-5));
    }
  }
}

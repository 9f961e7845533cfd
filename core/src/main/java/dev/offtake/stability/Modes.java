package dev.offtake.stability;

import dev.offtake.stability.Motion.What;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.complex.Complex;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionNonSymmetric;
import org.hipparchus.linear.RealMatrix;

/** Finds the modes of small motions. */
final class Modes {
  /** When a coupling counts as none, as a share of its neighbours. */
  private static final double[] TOLERANCES = {1e-15, 1e-13, 1e-11};

  private final Motion motion;
  private final List<Mode> modes = new ArrayList<>();

  private Modes(Motion motion) {
    this.motion = motion;
  }

  /**
   * Finds all modes, the one that grows fastest or fades slowest first.
   *
   * @throws MathRuntimeException when the QR algorithm does not converge
   */
  static List<Mode> of(Motion motion) {
    Modes found = new Modes(motion);
    for (int[] circle : Circles.of(motion.rates())) {
      found.circle(circle);
    }
    found.modes.sort(Comparator.comparingDouble((Mode m) -> -m.growth()));
    return found.modes;
  }

  private void circle(int[] circle) {
    if (circle.length == 1) {
      add(motion.rates()[circle[0]][circle[0]], 0, circle, new double[] {1});
      return;
    }
    double[][] block = new double[circle.length][circle.length];
    for (int r = 0; r < circle.length; r++) {
      for (int c = 0; c < circle.length; c++) {
        block[r][c] = motion.rates()[circle[r]][circle[c]];
      }
    }
    EigenDecompositionNonSymmetric eigen = decompose(Balanced.of(block));
    Complex[] values = eigen.getEigenvalues();
    double[][] right = eigen.getV().getData();
    double[][] left = left(eigen, right);
    int i = 0;
    while (i < values.length) {
      double swing = Math.abs(values[i].getImaginary());
      int pair = swing > 0 ? i + 1 : i;
      add(values[i].getReal(), swing, circle, taking(right, left, i, pair));
      i = pair + 1;
    }
  }

  /** Decomposes; where the algorithm does not end it is tried with the next tolerance. */
  private static EigenDecompositionNonSymmetric decompose(double[][] block) {
    for (int i = 0; i < TOLERANCES.length - 1; i++) {
      try {
        return decompose(block, TOLERANCES[i]);
      } catch (MathRuntimeException endless) {
        // The last one throws it to the caller.
      }
    }
    return decompose(block, TOLERANCES[TOLERANCES.length - 1]);
  }

  private static EigenDecompositionNonSymmetric decompose(double[][] block, double tolerance) {
    return new EigenDecompositionNonSymmetric(new Array2DRowRealMatrix(block, true), tolerance);
  }

  /** Rows of the left eigenvectors; where modes coincide and have none, the right ones serve. */
  private static double[][] left(EigenDecompositionNonSymmetric eigen, double[][] right) {
    try {
      return eigen.getVInv().getData();
    } catch (MathRuntimeException coincide) {
      RealMatrix turned = new Array2DRowRealMatrix(right).transpose();
      return turned.getData();
    }
  }

  /** How much each state takes part: |w v|, of a pair of columns for a mode that swings. */
  private static double[] taking(double[][] right, double[][] left, int one, int two) {
    double[] taking = new double[right.length];
    for (int k = 0; k < taking.length; k++) {
      double v = one == two ? right[k][one] : Math.hypot(right[k][one], right[k][two]);
      double w = one == two ? left[one][k] : Math.hypot(left[one][k], left[two][k]);
      taking[k] = Math.abs(v * w);
    }
    return taking;
  }

  private void add(double growth, double circular, int[] circle, double[] taking) {
    Map<String, Mode.Share> shares = new LinkedHashMap<>();
    double total = 0;
    for (double each : taking) {
      total += each;
    }
    for (int k = 0; k < circle.length; k++) {
      Motion.State state = motion.states().get(circle[k]);
      double share = taking[k] / total;
      boolean valve = state.what() == What.VALVE;
      // A valve may have the name of a point.
      shares.merge(
          (valve ? "valve " : "point ") + state.owner(),
          new Mode.Share(state.owner(), valve, share),
          (a, b) -> new Mode.Share(a.name(), a.valve(), a.share() + b.share()));
    }
    List<Mode.Share> sorted = new ArrayList<>(shares.values());
    sorted.sort(Comparator.comparingDouble((Mode.Share s) -> -s.share()));
    modes.add(new Mode(growth, circular, sorted));
  }
}

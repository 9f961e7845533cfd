package dev.offtake.sparse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import dev.offtake.sparse.Matrices.Sample;
import java.util.Random;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Factors against dense ones of two independent libraries. */
class SparseLuTest {
  private static double[] hipparchus(double[][] a, double[] rhs) {
    return new LUDecomposition(new Array2DRowRealMatrix(a), 0)
        .getSolver()
        .solve(new ArrayRealVector(rhs))
        .toArray();
  }

  private static double[] ejml(double[][] a, double[] rhs) {
    DMatrixRMaj x = new DMatrixRMaj(rhs.length, 1);
    assertThat(CommonOps_DDRM.solve(new DMatrixRMaj(a), new DMatrixRMaj(rhs), x)).isTrue();
    return x.getData();
  }

  private static double[] solve(SparseLu lu, double[] rhs) {
    double[] x = new double[rhs.length];
    lu.solve(rhs, x);
    return x;
  }

  private static double[] solveTransposed(SparseLu lu, double[] rhs) {
    double[] x = new double[rhs.length];
    lu.solveTransposed(rhs, x);
    return x;
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 7, 10, 25, 60, 61, 150})
  void agreesWithDenseFactorsOnNetworks(int n) {
    Random random = new Random(n);
    for (int trial = 0; trial < 20; trial++) {
      Sample a = Matrices.network(n, random);
      double[] rhs = Matrices.vector(n, random);
      SparseLu lu = new SparseLu(a.pattern());

      assertThat(lu.order(a.values())).isTrue();
      assertThat(lu.growth()).isLessThanOrEqualTo(2 + 1e-9);
      assertThat(lu.singularRow()).isEqualTo(-1);
      double[] x = solve(lu, rhs);
      assertThat(a.backwardError(x, rhs)).isLessThan(16);
      assertThat(Matrices.distance(x, hipparchus(a.dense(), rhs))).isLessThan(1e-8);
      assertThat(Matrices.distance(x, ejml(a.dense(), rhs))).isLessThan(1e-8);
      double[] t = solveTransposed(lu, rhs);
      double[] dense = hipparchus(Matrices.transposed(a.dense()), rhs);
      assertThat(Matrices.distance(t, dense)).isLessThan(1e-8);
    }
  }

  @Test
  void agreesOnMatricesWithoutDiagonal() {
    Random random = new Random(5);
    for (int trial = 0; trial < 50; trial++) {
      int n = 2 + random.nextInt(30);
      double[][] a = new double[n][n];
      for (int r = 0; r < n; r++) {
        a[r][(r + 1) % n] = 1 + random.nextDouble();
        a[r][(r + 1 + random.nextInt(n - 1)) % n] += random.nextGaussian();
      }
      Sample sample = Matrices.sample(a);
      double[] rhs = Matrices.vector(n, random);
      SparseLu lu = new SparseLu(sample.pattern());

      assertThat(lu.order(sample.values())).isTrue();
      assertThat(sample.backwardError(solve(lu, rhs), rhs)).isLessThan(16);
    }
  }

  @Test
  void solvesALargeNetworkInBothForms() {
    Random random = new Random(1500);
    Sample a = Matrices.network(1500, random);
    double[] rhs = Matrices.vector(1500, random);
    SparseLu lu = new SparseLu(a.pattern());
    assertThat(lu.order(a.values())).isTrue();
    double[] x = solve(lu, rhs);

    assertThat(a.backwardError(x, rhs)).isLessThan(16);
    assertThat(Matrices.distance(x, ejml(a.dense(), rhs))).isLessThan(1e-8);
    Scales scales = new Scales(a.pattern(), a.values());
    PivotSequence pivots = PivotSearch.run(a.pattern(), scales.apply(a.values()));
    assertThat(pivots.operations()).isLessThan(40 * 1500);
    Factors looking = new Factors(a.pattern(), pivots, scales.columns(), 0);
    Factors listed = new Factors(a.pattern(), pivots, scales.columns());
    assertThat(looking.compute(a.values())).isTrue();
    assertThat(listed.compute(a.values())).isTrue();
    assertThat(solution(looking, rhs)).isEqualTo(solution(listed, rhs));
  }

  private static double[] solution(Factors factors, double[] rhs) {
    double[] x = new double[rhs.length];
    factors.solve(rhs, new double[rhs.length], x);
    return x;
  }

  @Test
  void fallsBackToLookingWhenTheListWouldBeTooLong() {
    Random random = new Random(3);
    int n = 260;
    double[][] a = new double[n][];
    for (int r = 0; r < n; r++) {
      a[r] = Matrices.vector(n, random);
    }
    Sample full = Matrices.sample(a);
    double[] rhs = Matrices.vector(n, random);
    SparseLu lu = new SparseLu(full.pattern());

    assertThat(lu.order(full.values())).isTrue();
    assertThat(lu.refactor(full.values())).isTrue();
    assertThat(full.backwardError(solve(lu, rhs), rhs)).isLessThan(64);
  }

  @Test
  void doesNotMindScales() {
    Random random = new Random(11);
    for (int trial = 0; trial < 100; trial++) {
      int n = 40;
      Sample a = Matrices.network(n, random);
      double[] rows = powers(n, random);
      double[] columns = powers(n, random);
      double[] scaled = new double[a.values().length];
      for (int r = 0; r < n; r++) {
        for (int s = a.pattern().start(r); s < a.pattern().start(r + 1); s++) {
          scaled[s] = a.values()[s] * rows[r] * columns[a.pattern().column(s)];
        }
      }
      double[] rhs = Matrices.vector(n, random);
      double[] scaledRhs = new double[n];
      for (int i = 0; i < n; i++) {
        scaledRhs[i] = rhs[i] * rows[i];
      }
      SparseLu lu = new SparseLu(a.pattern());
      assertThat(lu.order(scaled)).isTrue();
      double[] x = solve(lu, scaledRhs);
      for (int i = 0; i < n; i++) {
        x[i] *= columns[i];
      }
      assertThat(Matrices.distance(x, hipparchus(a.dense(), rhs))).isLessThan(1e-8);
    }
  }

  /** Powers of two, so that scaling itself does not round. */
  private static double[] powers(int n, Random random) {
    return random.ints(n, -60, 60).mapToDouble(e -> Math.scalb(1.0, e)).toArray();
  }

  /**
   * A chain of wide ducts that reaches the air outside only through a leak a million times smaller.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1e-6, 1e-8, 1e-10})
  void keepsTheLeakOfAWideDuct(double leak) {
    int n = 30;
    double[][] a = new double[n][n];
    for (int i = 0; i + 1 < n; i++) {
      a[i][i] += 1;
      a[i + 1][i + 1] += 1;
      a[i][i + 1] -= 1;
      a[i + 1][i] -= 1;
    }
    a[n - 1][n - 1] += leak;
    Sample sample = Matrices.sample(a);
    SparseLu lu = new SparseLu(sample.pattern());
    assertThat(lu.order(sample.values())).isTrue();
    double[] rhs = new double[n];
    rhs[0] = leak;

    // All that enters at one end leaves by the leak, and the drops along the chain are as small as
    // the leak.
    double[] x = solve(lu, rhs);
    assertThat(x[n - 1]).isCloseTo(1, org.assertj.core.data.Offset.offset(1e-14 / leak));
    assertThat(x[0] - x[n - 1])
        .isCloseTo((n - 1) * leak, org.assertj.core.data.Offset.offset(1e-14));
  }

  @Test
  void solvesInPlace() {
    Random random = new Random(8);
    Sample a = Matrices.network(50, random);
    double[] rhs = Matrices.vector(50, random);
    SparseLu lu = new SparseLu(a.pattern());
    assertThat(lu.order(a.values())).isTrue();
    double[] inPlace = rhs.clone();
    lu.solve(inPlace, inPlace);
    assertThat(inPlace).isEqualTo(solve(lu, rhs));
    double[] transposedInPlace = rhs.clone();
    lu.solveTransposed(transposedInPlace, transposedInPlace);
    assertThat(transposedInPlace).isEqualTo(solveTransposed(lu, rhs));
  }

  @Test
  void transposesIncludingRefinement() {
    Random random = new Random(9);
    for (int trial = 0; trial < 50; trial++) {
      Sample a = Matrices.network(80, random);
      Sample t = Matrices.sample(Matrices.transposed(a.dense()));
      double[] rhs = Matrices.vector(80, random);
      SparseLu lu = new SparseLu(a.pattern());
      assertThat(lu.order(a.values())).isTrue();
      assertThat(t.backwardError(solveTransposed(lu, rhs), rhs)).isLessThan(64);
    }
  }

  @Test
  void emptyAndSingle() {
    SparseLu empty = new SparseLu(SparsePattern.of(0, new int[0], new int[0]));
    assertThat(empty.order(new double[0])).isTrue();
    assertThat(empty.refactor(new double[0])).isTrue();
    assertThat(solve(empty, new double[0])).isEmpty();
    assertThat(solveTransposed(empty, new double[0])).isEmpty();

    SparseLu single = new SparseLu(SparsePattern.of(1, new int[] {0}, new int[] {0}));
    assertThat(single.order(new double[] {-4})).isTrue();
    assertThat(solve(single, new double[] {2})).containsExactly(-0.5);
    assertThat(solveTransposed(single, new double[] {2})).containsExactly(-0.5);
    assertThat(single.order(new double[] {0})).isFalse();
    assertThat(single.singularRow()).isZero();
    SparseLu nothing = new SparseLu(SparsePattern.of(1, new int[0], new int[0]));
    assertThat(nothing.order(new double[0])).isFalse();
    assertThat(nothing.singularRow()).isZero();
  }

  @Test
  void tellsRowsThatDepend() {
    Random random = new Random(21);
    for (int trial = 0; trial < 200; trial++) {
      int n = 3 + random.nextInt(60);
      double[][] a = Matrices.network(n, random).dense();
      int bad = random.nextInt(n);
      int first = (bad + 1) % n;
      int second = (bad + 2) % n;
      for (int c = 0; c < n; c++) {
        a[bad][c] = a[first][c] - 0.7 * a[second][c];
      }
      Sample sample = Matrices.sample(a);
      SparseLu lu = new SparseLu(sample.pattern());
      assertThat(lu.order(sample.values())).as("trial %d", trial).isFalse();
      assertThat(lu.singularRow()).isIn(bad, first, second);
    }
  }

  @Test
  void tellsANetworkThatNothingTies() {
    int n = 12;
    double[][] a = new double[n][n];
    Random random = new Random(4);
    for (int i = 0; i + 1 < n; i++) {
      double g = 0.1 + random.nextDouble();
      a[i][i] += g;
      a[i + 1][i + 1] += g;
      a[i][i + 1] -= g;
      a[i + 1][i] -= g;
    }
    Sample sample = Matrices.sample(a);
    SparseLu lu = new SparseLu(sample.pattern());
    assertThat(lu.order(sample.values())).isFalse();
    assertThat(lu.singularRow()).isBetween(0, n - 1);
    assertThatIllegalStateException().isThrownBy(() -> solve(lu, new double[n]));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void refusesWhatIsNotFinite(double bad) {
    Sample a = Matrices.network(40, new Random(2));
    for (int s = 0; s < a.values().length; s++) {
      double[] values = a.values().clone();
      values[s] = bad;
      SparseLu lu = new SparseLu(a.pattern());
      assertThat(lu.order(values)).isFalse();
      assertThat(s)
          .isBetween(
              a.pattern().start(lu.singularRow()), a.pattern().start(lu.singularRow() + 1) - 1);
      assertThat(lu.order(a.values())).isTrue();
      assertThat(lu.refactor(values)).isFalse();
      assertThatIllegalStateException().isThrownBy(() -> solve(lu, new double[40]));
      // One bad matrix must not outlive its step.
      assertThat(lu.refactor(a.values())).isTrue();
    }
  }

  @Test
  void refusesEmptyRowsAndColumns() {
    double[][] row = {{1, 2, 0}, {0, 0, 0}, {0, 1, 3}};
    SparseLu lu = new SparseLu(Matrices.sample(row).pattern());
    assertThat(lu.order(Matrices.sample(row).values())).isFalse();
    assertThat(lu.singularRow()).isEqualTo(1);
    Sample column = Matrices.sample(Matrices.transposed(row));
    lu = new SparseLu(column.pattern());
    assertThat(lu.order(column.values())).isFalse();
    assertThat(lu.singularRow()).isBetween(0, 2);
  }

  @Test
  void refusesAMatrixThatBecameSingular() {
    double[][] a = {{2, 1, 0}, {1, 3, 1}, {0, 1, 2}};
    Sample sample = Matrices.sample(a);
    SparseLu lu = new SparseLu(sample.pattern());
    assertThat(lu.order(sample.values())).isTrue();
    double[] singular = sample.values().clone();
    // Third row 0 1 2 becomes 0 2.5 1 = second row − half the first.
    singular[sample.pattern().slot(2, 1)] = 2.5;
    singular[sample.pattern().slot(2, 2)] = 1;
    assertThat(lu.refactor(singular)).isFalse();
    assertThat(lu.order(singular)).isFalse();
  }

  @Test
  void keepsOrFlagsASequenceWhileValuesDrift() {
    Random random = new Random(31);
    int flagged = 0;
    int kept = 0;
    for (int trial = 0; trial < 60; trial++) {
      int n = 60;
      Sample a = Matrices.network(n, random);
      SparseLu lu = new SparseLu(a.pattern());
      assertThat(lu.order(a.values())).isTrue();
      double[] values = a.values().clone();
      double[] rhs = Matrices.vector(n, random);
      for (int point = 0; point < 40; point++) {
        for (int s = 0; s < values.length; s++) {
          values[s] *= Math.exp(0.7 * random.nextGaussian());
        }
        if (lu.refactor(values)) {
          kept++;
          assertThat(lu.growth()).isLessThanOrEqualTo(Factors.LARGEST_GROWTH);
        } else {
          flagged++;
          assertThat(lu.order(values)).isTrue();
          assertThat(lu.growth()).isLessThanOrEqualTo(2 + 1e-9);
        }
        assertThat(a.with(values).backwardError(solve(lu, rhs), rhs)).isLessThan(256);
      }
    }
    // Both branches must really have been walked.
    assertThat(flagged).isPositive();
    assertThat(kept).isPositive();
  }

  @Test
  void flagsAPivotThatVanishes() {
    double[][] a = {{1, 0.5}, {0.5, 0.1}};
    Sample sample = Matrices.sample(a);
    SparseLu lu = new SparseLu(sample.pattern());
    assertThat(lu.order(sample.values())).isTrue();
    for (int s = 0; s < 4; s++) {
      double[] values = {1, 1, 1, 1};
      values[s] = 1e-14;
      double[] rhs = {1, 2};
      boolean suits = lu.refactor(values);
      assertThat(suits || lu.order(values)).isTrue();
      assertThat(sample.with(values).backwardError(solve(lu, rhs), rhs)).isLessThan(8);
      assertThat(lu.order(sample.values())).isTrue();
    }
  }

  @Test
  void opensWhatWasShutWhenItWasOrdered() {
    Random random = new Random(77);
    for (int trial = 0; trial < 50; trial++) {
      Sample a = Matrices.network(60, random);
      double[] shut = a.values().clone();
      for (int s = 0; s < shut.length; s++) {
        boolean diagonal = s == a.pattern().slot(rowOf(a, s), rowOf(a, s));
        shut[s] = !diagonal && random.nextInt(3) == 0 ? 0 : shut[s];
      }
      SparseLu lu = new SparseLu(a.pattern());
      assertThat(lu.order(shut)).isTrue();
      double[] rhs = Matrices.vector(60, random);
      assertThat(lu.refactor(a.values()) || lu.order(a.values())).isTrue();
      assertThat(a.backwardError(solve(lu, rhs), rhs)).isLessThan(256);
    }
  }

  private static int rowOf(Sample a, int slot) {
    int row = 0;
    while (a.pattern().start(row + 1) <= slot) {
      row++;
    }
    return row;
  }

  @Test
  void doesNotWriteIntoWhatItIsGiven() {
    Random random = new Random(6);
    Sample a = Matrices.network(20, random);
    double[] values = a.values().clone();
    double[] rhs = Matrices.vector(20, random);
    double[] before = rhs.clone();
    SparseLu lu = new SparseLu(a.pattern());
    assertThat(lu.order(values)).isTrue();
    double[] x = solve(lu, rhs);
    assertThat(values).isEqualTo(a.values());
    assertThat(rhs).isEqualTo(before);
    // The caller may overwrite its values before it solves: Newton's next assembly does.
    java.util.Arrays.fill(values, Double.NaN);
    assertThat(solve(lu, rhs)).isEqualTo(x);
  }

  @Test
  void saysWhatIsMissing() {
    SparseLu lu = new SparseLu(SparsePattern.of(2, new int[] {0, 1}, new int[] {0, 1}));
    assertThat(lu.refactor(new double[] {1, 1})).isFalse();
    assertThat(lu.growth()).isZero();
    assertThatIllegalStateException()
        .isThrownBy(() -> lu.solve(new double[2], new double[2]))
        .withMessageContaining("order or refactor");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> lu.order(new double[3]))
        .withMessageContaining("2 places");
  }
}

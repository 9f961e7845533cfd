package dev.offtake.cause.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import dev.offtake.part.Extent;
import dev.offtake.part.Kinds;
import dev.offtake.part.Mode;
import dev.offtake.quantity.Dimension;
import dev.offtake.study.Fault;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Evidence over an extent, at its bound and over clamps, against the integral of the closed-form
 * normal density by Hipparchus' adaptive Gauss–Legendre rule, within 5 %.
 */
class EvidenceTest {
  private static final double[][] SLOPES = {{0.8, 0.3}, {0.5, -0.6}};
  private static final double[] VARIANCE = {0.4, 0.5};

  /** A course of forecasts with what was read. */
  private record Row(
      String name, DoubleUnaryOperator first, DoubleUnaryOperator second, double[] read) {}

  private static final List<Row> ROWS =
      List.of(
          row("straight, in its middle", u -> 10 * u, u -> -4 * u, 5, -2),
          row("straight, at its least", u -> 10 * u, u -> -4 * u, 0, 0),
          row("straight, beyond its most", u -> 10 * u, u -> -4 * u, 12, -5),
          row("steep, narrow within a hundredth", u -> 400 * u, u -> 100 * u, 171, 43),
          row("steep, beyond its least", u -> 400 * u, u -> 100 * u, -1, -1),
          row("clamped from the middle on", u -> 10 * Math.min(u, 0.5), u -> 0, 5, 0),
          row("clamped, read above the clamp", u -> 10 * Math.min(u, 0.5), u -> 0, 7, 0),
          row("dead until two thirds", u -> 30 * Math.max(0, u - 2 / 3.0), u -> 1, 0, 1),
          row("dead until two thirds, read off", u -> 30 * Math.max(0, u - 2 / 3.0), u -> 1, 4, 1),
          row("bent at both ends", u -> 20 * Math.max(0.3, Math.min(u, 0.7)), u -> u, 6, 0.3),
          row("curved", u -> 8 * u * u, u -> 3 * Math.sqrt(u), 2, 1.5),
          row("exponential", u -> Math.exp(4 * u) - 1, u -> 0, 20, 0),
          row("up and down again", u -> 8 * Math.sin(Math.PI * u), u -> 2 * u, 7, 1));

  private static Row row(
      String name, DoubleUnaryOperator first, DoubleUnaryOperator second, double... read) {
    return new Row(name, first, second, read);
  }

  @TestFactory
  Stream<DynamicTest> evidenceOverAnExtent() {
    Cause cause = cause();
    return ROWS.stream().map(row -> dynamicTest(row.name(), () -> check(row, cause)));
  }

  private static void check(Row row, Cause cause) {
    Weigher weigher = new Weigher(clues(row.read()));
    Course.Solver solver =
        place ->
            Optional.of(
                new double[] {
                  row.first().applyAsDouble(place[0]), row.second().applyAsDouble(place[0])
                });
    Course rough = Course.of(cause, 3, solver).orElseThrow();
    Weighed weighed =
        new Closer(weigher, solver).weigh(weigher.weigh(rough, SLOPES), place -> SLOPES);

    assertThat(Math.exp(weighed.evidence() - Math.log(exact(row)))).isCloseTo(1, within(0.05));
  }

  private static List<Clue> clues(double[] read) {
    return Stream.of(0, 1)
        .map(
            i ->
                new Clue(
                    0,
                    Optional.empty(),
                    List.of(),
                    // The scale is so wide that a slip of the pen has no part in it.
                    new Likelihood.Measured(read[i], VARIANCE[i], VARIANCE[i], 0.1, 1e12)))
        .toList();
  }

  /** The integral over the extent of the two-dimensional normal density, both sound. */
  private static double exact(Row row) {
    double a = 0.8 * 0.8 + 0.3 * 0.3 + VARIANCE[0];
    double b = 0.8 * 0.5 - 0.3 * 0.6;
    double d = 0.5 * 0.5 + 0.6 * 0.6 + VARIANCE[1];
    double det = a * d - b * b;
    UnivariateFunction density =
        u -> {
          double x = row.read()[0] - row.first().applyAsDouble(u);
          double y = row.read()[1] - row.second().applyAsDouble(u);
          double square = (d * x * x - 2 * b * x * y + a * y * y) / det;
          return Math.exp(-0.5 * square) / (2 * Math.PI * Math.sqrt(det));
        };
    double sum = 0;
    for (int i = 0; i < 60; i++) {
      sum +=
          new IterativeLegendreGaussIntegrator(8, 1e-8, 1e-14)
              .integrate(1_000_000, density, i / 60.0, (i + 1) / 60.0);
    }
    return 0.99 * 0.99 * sum;
  }

  private static Cause cause() {
    String file =
        """
        offtake: 1
        title: Two valves
        parts:
          source: {kind: supply, to: duct, temperature: 300 degF, table: {columns: [psig, lb/min], rows: [[40, 0], [20, 100]]}}
          user: {kind: orifice user, takes from: duct, bore: 1 in}
        """;
    BleedSystem system =
        SystemReader.readText("two.yaml", file, Kinds.all()).system().orElseThrow();
    Mode mode =
        Mode.named("worn", "body", "It is worn")
            .extent(new Extent("share worn", Dimension.SHARE, 0.01, 0.1, 1));
    return Cause.of(Fault.usual(system.parts().get(0), mode));
  }

  /**
   * Ionides' bound: no weight counts for more than the square root of their number times the mean.
   */
  @Test
  void oneLuckyDrawDoesNotOutweighAllOthers() {
    double[] alike = new double[100];
    assertThat(Draws.truncated(alike)).isCloseTo(0, within(1e-12));
    double[] lucky = alike.clone();
    lucky[7] = 20;
    double mean = (99 + Math.exp(20)) / 100;
    double bounded = Math.log((99 + 10 * mean) / 100);
    assertThat(Draws.truncated(lucky)).isCloseTo(bounded, within(1e-9));
  }
}

package dev.offtake.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.air.Air;
import dev.offtake.flow.Iso6358Law;
import dev.offtake.flow.NozzleLaw;
import dev.offtake.network.Passage;
import dev.offtake.network.Solved;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Two, three and four elements in series and in parallel against closed forms.
 *
 * <p>Source: own cases. Nozzles: ψ(r) of any textbook of gas dynamics, for example NACA Report
 * 1135. ISO 6358: the formula of one element, from memory of the standard; two elements in series
 * follow from it exactly where the second is choked, the standard method of ISO 6358-3 (from
 * memory) elsewhere.
 */
class SeriesParallelCheckTest {
  private static final double EXACT = 1e-9;
  private static final double T = 600;
  private static final double AMBIENT = 101325;

  /** An ISO 6358 element, begun with the area of a nozzle that passes the same when choked. */
  static Passage iso(String name, String from, String to, double c, Supplier<Iso6358Law> law) {
    return Passage.between(name, from, to, c, law).startingWith(c / 1.992e-3);
  }

  private static double psi(double r) {
    double g = Air.gamma(T);
    return Math.sqrt(2 * g / (g - 1) * (Math.pow(r, 2 / g) - Math.pow(r, (g + 1) / g)));
  }

  private static double critical() {
    double g = Air.gamma(T);
    return Math.pow(2 / (g + 1), g / (g - 1));
  }

  /** Elements one behind the other from a reservoir at T to the air outside, named 0, 1, 2 … */
  private static List<Passage> series(double p, List<Passage> elements) {
    List<Passage> parts = new ArrayList<>();
    for (int i = 0; i < elements.size(); i++) {
      Passage one = elements.get(i);
      String to = i == elements.size() - 1 ? "ambient" : "point " + i;
      Passage placed =
          Passage.between(String.valueOf(i), "point " + (i - 1), to, one.size(), one.law())
              .startingWith(one.nominalArea());
      parts.add(i == 0 ? placed.fromReservoir(p, T) : placed);
    }
    return parts;
  }

  private static Passage nozzle(double area) {
    return Passage.between("", "", "", area, NozzleLaw::new);
  }

  private static Passage iso(double c, double b) {
    return iso("", "", "", c, () -> new Iso6358Law(b, 0.5, 0));
  }

  private static double isoFlow(double c, double p1) {
    return c * Iso6358Law.DENSITY * p1 * Math.sqrt(Iso6358Law.TEMPERATURE / T);
  }

  /** All choked: p₂ = p₁·A₁/A₂ and so on, since each passes A·p·ψ(r*)/√(RT) at one temperature. */
  @ParameterizedTest
  @ValueSource(ints = {2, 3, 4})
  void nozzlesThatAllChokeShareThePressureByTheirAreas(int n) {
    List<Passage> elements = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      elements.add(nozzle(1e-4 * Math.pow(2.2, i)));
    }
    Solved solved = Solved.adiabatic(series(4e6, elements));
    double flow = 1e-4 * 4e6 / Math.sqrt(Air.R * T) * psi(critical());
    for (int i = 0; i < n; i++) {
      assertThat(solved.choked(String.valueOf(i))).isTrue();
      assertThat(solved.flow(String.valueOf(i))).isCloseTo(flow, within(EXACT * flow));
    }
    for (int i = 0; i < n - 1; i++) {
      double p = 4e6 / Math.pow(2.2, i + 1);
      assertThat(solved.p("point " + i)).isCloseTo(p, within(EXACT * p));
      assertThat(solved.t("point " + i)).isCloseTo(T, within(EXACT * T));
    }
  }

  /**
   * The last chokes: areas chosen backwards from chosen ratios, A_k·p_k·ψ(r_k) the same for all.
   */
  @ParameterizedTest
  @CsvSource({"0.9, 1, 1", "0.7, 1, 1", "0.95, 0.9, 1", "0.6, 0.8, 1", "0.97, 0.9, 0.8"})
  void nozzlesWithChosenRatios(double r1, double r2, double r3) {
    double p = 1.5e6;
    List<Passage> elements = new ArrayList<>();
    List<Double> pressures = new ArrayList<>();
    double flow = 0.5;
    for (double r : new double[] {r1, r2, r3, 0}) {
      if (r < 1) {
        elements.add(nozzle(flow * Math.sqrt(Air.R * T) / (p * psi(Math.max(r, critical())))));
        p *= r;
        pressures.add(p);
      }
    }
    Solved solved = Solved.adiabatic(series(1.5e6, elements));
    assertThat(solved.flow("0")).isCloseTo(flow, within(EXACT * flow));
    for (int i = 0; i < elements.size() - 1; i++) {
      double expected = pressures.get(i);
      assertThat(solved.p("point " + i)).isCloseTo(expected, within(EXACT * expected));
    }
  }

  /** Elements side by side pass what one of their summed size passes, choked or not. */
  @ParameterizedTest
  @CsvSource({"2, 8e5", "3, 8e5", "4, 8e5", "2, 1.2e5", "3, 1.2e5", "4, 1.2e5"})
  void sideBySideSizesAddUp(int n, double p) {
    for (boolean nozzles : new boolean[] {true, false}) {
      double[] sizes = {1e-4, 2.5e-4, 0.5e-4, 3e-4};
      double sum = 0;
      List<Passage> parts = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        parts.add(element(String.valueOf(i), "duct", sizes[i], nozzles).fromReservoir(p, T));
        sum += sizes[i];
      }
      Passage out = Passage.between("out", "duct", "ambient", 4e-4, NozzleLaw::new);
      Passage one = element("one", "duct", sum, nozzles).fromReservoir(p, T);
      parts.add(out);
      Solved many = Solved.adiabatic(parts);
      Solved single = Solved.adiabatic(List.of(one, out));
      double flow = single.flow("one");
      assertThat(many.flow("out")).isCloseTo(flow, within(EXACT * flow));
      assertThat(many.p("duct")).isCloseTo(single.p("duct"), within(EXACT * p));
      for (int i = 0; i < n; i++) {
        double share = flow * sizes[i] / sum;
        assertThat(many.flow(String.valueOf(i))).isCloseTo(share, within(EXACT * flow));
      }
    }
  }

  private static Passage element(String name, String to, double size, boolean nozzle) {
    return nozzle
        ? Passage.between(name, "", to, size, NozzleLaw::new)
        : iso(name, "", to, 2e-3 * size, () -> new Iso6358Law(0.3, 0.5, 0));
  }

  /** Both choke, or only the second; C₁₂ with α = C₁/(C₂·b₁), exact for m = ½. */
  @ParameterizedTest
  @CsvSource({
    "1e-8, 6e-8, 0.30, 0.25",
    "3e-8, 2e-8, 0.30, 0.40",
    "3e-8, 3e-8, 0.50, 0.50",
    "2e-8, 3e-8, 0.20, 0.30",
    "9e-8, 2e-8, 0.45, 0.10"
  })
  void sonicConductanceOfTwoInSeries(double c1, double c2, double b1, double b2) {
    Solved solved = Solved.adiabatic(series(3e6, List.of(iso(c1, b1), iso(c2, b2))));
    double flow = isoFlow(two(c1, c2, b1), 3e6);
    assertThat(solved.choked("1")).isTrue();
    assertThat(solved.flow("0")).isCloseTo(flow, within(EXACT * flow));
    assertThat(solved.t("point 0")).isCloseTo(T, within(EXACT * T));
  }

  /**
   * Sonic conductance of two elements: the second passes C₂·x, the first an ellipse in x = p₂/p₁.
   */
  private static double two(double c1, double c2, double b1) {
    double alpha = c1 / (c2 * b1);
    if (alpha <= 1) {
      return c1;
    }
    double beta = (1 - b1) / b1;
    double length = alpha * alpha + beta * beta;
    return c2 * alpha * (alpha * b1 + (1 - b1) * Math.sqrt(length - 1)) / length;
  }

  /**
   * The standard method (from memory of ISO 6358-3): b₁₂ = 1 − C₁₂²·Σ(1 − b)/C². It is exact when
   * nearly still, where each drop goes with ṁ²·(1 − b)/C², and at choke; in between it was found to
   * lie within 1 % of the network.
   */
  @ParameterizedTest
  @CsvSource({"3e-8, 2e-8, 0.30, 0.40", "3e-8, 3e-8, 0.50, 0.50", "2e-8, 3e-8, 0.20, 0.30"})
  void criticalRatioOfTwoInSeries(double c1, double c2, double b1, double b2) {
    double c = two(c1, c2, b1);
    double b = 1 - c * c * ((1 - b1) / (c1 * c1) + (1 - b2) / (c2 * c2));
    double worst = 0;
    for (double r : new double[] {0.995, 0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3, 0.2}) {
      double p = AMBIENT / r;
      Solved solved = Solved.adiabatic(series(p, List.of(iso(c1, b1), iso(c2, b2))));
      double gap = Math.max(0, (r - b) / (1 - b));
      double method = isoFlow(c, p) * Math.sqrt(1 - gap * gap);
      double off = Math.abs(method / solved.flow("0") - 1);
      if (r == 0.995) {
        assertThat(off).as("nearly still").isLessThan(2e-3);
      }
      worst = Math.max(worst, off);
    }
    assertThat(worst).isLessThan(0.01);
  }

  /**
   * Three and four elements by the standard method two at a time, from the first on: the network
   * was found to lie within 1 % of it at choke.
   */
  @ParameterizedTest
  @CsvSource({"3, 0.2", "4, 0.2", "3, 0.3", "4, 0.3", "3, 0.5", "4, 0.5"})
  void manyInSeriesTwoAtATime(int n, double b) {
    List<Passage> elements = new ArrayList<>();
    double sonic = 3e-8;
    double ratio = b;
    for (int i = 0; i < n; i++) {
      elements.add(iso(3e-8, b));
      if (i > 0) {
        double both = two(sonic, 3e-8, ratio);
        ratio = 1 - both * both * ((1 - ratio) / (sonic * sonic) + (1 - b) / (3e-8 * 3e-8));
        sonic = both;
      }
    }
    Solved solved = Solved.adiabatic(series(3e6, elements));
    assertThat(solved.flow("0") / isoFlow(sonic, 3e6)).isBetween(0.99, 1.01);
  }

  /** Two streams mix to the mean of their enthalpies, not of their temperatures. */
  @Test
  void streamsMixByEnthalpy() {
    Passage hot = Passage.between("hot", "", "mix", 1e-4, NozzleLaw::new).fromReservoir(9e5, 900);
    Passage cold = Passage.between("cold", "", "mix", 2e-4, NozzleLaw::new).fromReservoir(9e5, 250);
    Passage out = Passage.between("out", "mix", "ambient", 9e-4, NozzleLaw::new);
    Solved solved = Solved.adiabatic(List.of(hot, cold, out));
    double mixed =
        (solved.flow("hot") * Air.h(900) + solved.flow("cold") * Air.h(250))
            / (solved.flow("hot") + solved.flow("cold"));
    double mean =
        (solved.flow("hot") * 900 + solved.flow("cold") * 250)
            / (solved.flow("hot") + solved.flow("cold"));
    assertThat(solved.t("mix")).isCloseTo(Air.temperature(mixed), within(EXACT * T));
    assertThat(Math.abs(solved.t("mix") - mean)).isGreaterThan(2);
  }
}

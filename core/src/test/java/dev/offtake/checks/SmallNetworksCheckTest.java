package dev.offtake.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.flow.Iso6358Law;
import dev.offtake.flow.NozzleLaw;
import dev.offtake.network.Passage;
import dev.offtake.network.Solved;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Series, parallel, bridged, mixing and drawn networks of nozzles and ISO 6358 elements against
 * SciPy's root finder.
 *
 * <p>Source: own cases; {@code small_networks.py} beside the table is written from the published
 * formulas and shares nothing with Offtake. Its first lines hold the command that made the table.
 */
class SmallNetworksCheckTest {
  private static final double SAME = 1e-8;

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "small-networks.csv", numLinesToSkip = 1)
  void sciPyFindsTheSame(
      String name, String reservoirs, String elements, String points, String flows) {
    Solved solved = Solved.adiabatic(parts(reservoirs, elements));
    for (String point : points.split("\\|")) {
      String[] told = point.split(" ");
      double p = Double.parseDouble(told[1]);
      double t = Double.parseDouble(told[2]);
      assertThat(solved.p(told[0])).as(told[0]).isCloseTo(p, within(SAME * p));
      assertThat(solved.t(told[0])).as(told[0]).isCloseTo(t, within(SAME * t));
    }
    String[] told = flows.split("\\|");
    double largest = 0;
    for (String flow : told) {
      largest = Math.max(largest, Math.abs(Double.parseDouble(flow)));
    }
    for (int i = 0; i < told.length; i++) {
      double flow = Double.parseDouble(told[i]);
      assertThat(solved.flow("element " + i)).as(told[i]).isCloseTo(flow, within(SAME * largest));
    }
  }

  private static List<Passage> parts(String reservoirs, String elements) {
    Map<String, double[]> sources = new HashMap<>();
    for (String reservoir : reservoirs.split("\\|")) {
      String[] told = reservoir.split(" ");
      sources.put(told[0], new double[] {Double.parseDouble(told[1]), Double.parseDouble(told[2])});
    }
    List<Passage> parts = new ArrayList<>();
    for (String element : elements.split("\\|")) {
      String[] told = element.split(" ");
      Passage passage = passage("element " + parts.size(), told);
      double[] source = sources.get(told[1]);
      parts.add(source == null ? passage : passage.fromReservoir(source[0], source[1]));
    }
    return parts;
  }

  private static Passage passage(String name, String[] told) {
    double size = Double.parseDouble(told[3]);
    if (told[0].equals("nozzle")) {
      return Passage.between(name, told[1], told[2], size, NozzleLaw::new);
    }
    double b = Double.parseDouble(told[4]);
    double m = Double.parseDouble(told[5]);
    return SeriesParallelCheckTest.iso(name, told[1], told[2], size, () -> new Iso6358Law(b, m, 0));
  }
}

package dev.offtake.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class QuantityPropertiesTest {

  /** Anything that is typed is either a sane value or a problem with a mend. */
  @Property(tries = 2000, seed = "11")
  void anyTextIsReadOrRefused(@ForAll("typed") String text, @ForAll Dimension dimension) {
    readOrRefused(text, dimension);
  }

  @Property(tries = 1000, seed = "12")
  void anyCharactersAreReadOrRefused(@ForAll String text, @ForAll Dimension dimension) {
    readOrRefused(text, dimension);
  }

  private static void readOrRefused(String text, Dimension dimension) {
    try {
      Stated stated = QuantityReader.read(text, dimension);
      assertThat(stated.dimension()).isNotEqualTo(Dimension.PRESSURE);
      boolean bare = stated.unknown() && Double.isNaN(stated.nominal());
      if (!bare) {
        assertThat(stated.low()).isLessThanOrEqualTo(stated.nominal()).isFinite();
        assertThat(stated.high()).isGreaterThanOrEqualTo(stated.nominal()).isFinite();
      }
    } catch (QuantityProblem problem) {
      assertThat(problem.wrong()).isNotBlank();
      assertThat(problem.mend()).isNotBlank();
    }
  }

  @Provide
  Arbitrary<String> typed() {
    List<String> scraps =
        List.of(
            "32", "-", "+", "+/-", "±", "..", ",", ".", "e", "E9", "1e400", "psig", "psia", "psi",
            "%", "of", "value", "points", "unknown", "to", "at", "scfm", "degF", "°", ";", "(",
            "lb/min", "59", "ppm", "0", "12,000", "1,5", "NaN", "\u0000", "m²", " ");
    return Arbitraries.of(scraps)
        .list()
        .ofMaxSize(9)
        .flatMap(list -> Arbitraries.of("", " ").map(gap -> String.join(gap, list)));
  }

  /** Every unit of the table is read by its symbol and each of its spellings. */
  @Property(tries = 500, seed = "13")
  void everySpellingIsRead(
      @ForAll("units") Unit unit, @ForAll @DoubleRange(min = 1, max = 1e4) double number)
      throws QuantityProblem {
    for (String spelling : spellings(unit)) {
      Stated stated = QuantityReader.read(number + " " + spelling, unit.dimension());
      assertThat(stated.nominal())
          .as(spelling)
          .isCloseTo(unit.toSi(number), within(1e-12 * Math.abs(unit.toSi(number))));
      assertThat(stated.dimension()).isEqualTo(unit.dimension());
      assertThat(unit.fromSi(stated.nominal())).isCloseTo(number, within(1e-9 * (1 + number)));
    }
  }

  private static List<String> spellings(Unit unit) {
    return Stream.concat(Stream.of(unit.symbol()), unit.spellings().stream()).toList();
  }

  @Provide
  Arbitrary<Unit> units() {
    return Arbitraries.of(Units.all());
  }

  /** What is printed is read back to within what is shown. */
  @Property(tries = 1000, seed = "14")
  void printedValuesAreReadBack(
      @ForAll Style style,
      @ForAll("single") Dimension dimension,
      @ForAll @DoubleRange(min = 0, max = 1) double share)
      throws QuantityProblem {
    Unit unit = Units.find(style.unit(dimension), dimension).orElseThrow();
    double si = unit.toSi(1000 * share);
    double back = QuantityReader.read(style.print(si, dimension), dimension).nominal();
    assertThat(unit.fromSi(back)).isCloseTo(1000 * share, within(0.501));
  }

  @Provide
  Arbitrary<Dimension> single() {
    return Arbitraries.of(Dimension.class).filter(dimension -> dimension != Dimension.PRESSURE);
  }
}

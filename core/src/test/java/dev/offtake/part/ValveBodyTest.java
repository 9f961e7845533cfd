package dev.offtake.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.quantity.Dimension;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What all valves share. */
class ValveBodyTest {
  static Stream<Kind> valves() {
    return Kinds.all().stream()
        .filter(kind -> kind.keys().stream().anyMatch(key -> key.name().equals("x_T")));
  }

  private static BenchFacts facts(Kind kind) {
    BenchFacts facts = new BenchFacts(kind);
    for (String key : List.of("from", "to", "set to", "cracks at")) {
      if (kind.keys().stream().anyMatch(k -> k.name().equals(key))) {
        facts.si(key, key.equals("to") ? 500 : 400, Dimension.TEMPERATURE);
      }
    }
    return facts;
  }

  private static Parameter xT(Part valve) {
    List<Parameter> all = valve.parameters();
    return all.get(all.size() - 1);
  }

  @Test
  void thereAreFiveKindsOfValves() {
    assertThat(valves()).hasSize(5);
  }

  @ParameterizedTest
  @MethodSource("valves")
  void areaLeakAndStuckComeFirstAndTheRatioFactorLast(Kind kind) {
    List<Parameter> all = facts(kind).build().parameters();
    assertThat(all.get(0).name()).isEqualTo("effective area");
    assertThat(all.get(1).name()).isIn("leak", "back leak");
    assertThat(all.get(2).name()).isEqualTo("stuck at");
    Parameter xT = xT(facts(kind).build());
    assertThat(xT.name()).isEqualTo("x_T");
    assertThat(xT.min()).isEqualTo(0.15);
    assertThat(xT.max()).isEqualTo(0.95);
    assertThat(kind.removableUnits()).contains(xT.unit());
    assertThat(facts(kind).say("law", "nozzle").build().parameters())
        .extracting(Parameter::name)
        .doesNotContain("x_T")
        .hasSize(all.size() - 1);
  }

  @ParameterizedTest
  @CsvSource({
    "check valve, 0.7 +/- 0.1",
    "regulator, 0.4 +/- 0.1",
    "shutoff valve, 0.4 +/- 0.1",
    "temperature control valve, 0.4 +/- 0.1",
    "relief valve, 0.7 +/- 0.1"
  })
  void usuallyIsAButterflyOrAPoppet(String kind, String usual) {
    assertThat(usual(kind, "x_T")).isEqualTo(usual);
  }

  @ParameterizedTest
  @CsvSource({
    "check valve, back leak, 0.02 lb/min +0.08 -0.02 at 30 psid",
    "regulator, leak, 0.02 lb/min +0.48 -0.02 at 30 psid",
    "shutoff valve, leak, 0.02 lb/min +0.48 -0.02 at 30 psid",
    "temperature control valve, leak, 0.02 lb/min +0.48 -0.02 at 30 psid",
    "relief valve, leak, 0.02 lb/min +0.08 -0.02 at 30 psid"
  })
  void usuallyLeaksLikeASoundOne(String kind, String key, String usual) {
    assertThat(usual(kind, key)).isEqualTo(usual);
  }

  private static String usual(String kind, String key) {
    return valves()
        .filter(k -> k.name().equals(kind))
        .flatMap(k -> k.keys().stream())
        .filter(k -> k.name().equals(key))
        .findFirst()
        .orElseThrow()
        .typical();
  }

  /** Choked flow of IEC 60534 goes with √(F_γ·x_T): Y = 2/3 and x = F_γ·x_T. */
  @ParameterizedTest
  @CsvSource({"0.4", "0.2", "0.55"})
  void chokedFlowFollowsItsRatioFactor(double xT) {
    Bench bench = new Bench(facts(ShutoffValve.KIND).build()).at("ahead", 200, 450);
    int at = bench.part.parameters().size() - 1;
    double healthy = bench.run().mdot;
    double now = bench.parameter(at, xT).run().mdot;
    assertThat(now / healthy).isCloseTo(Math.sqrt(xT / 0.7), within(1e-12));
    assertThat(bench.worstPartial()).isLessThan(1e-5);
  }

  @Test
  void staysWithinItsBoundsWhateverItIsTold() {
    Bench bench = new Bench(facts(ShutoffValve.KIND).build()).at("ahead", 200, 450);
    int at = bench.part.parameters().size() - 1;
    double least = bench.parameter(at, 0.15).run().mdot;
    assertThat(bench.parameter(at, -3).run().mdot).isEqualTo(least);
  }

  @ParameterizedTest
  @CsvSource({"0.1", "1"})
  void refusesARatioFactorThatNoValveHas(double xT) {
    BenchFacts facts = facts(CheckValve.KIND).si("x_T", xT, Dimension.NUMBER);
    assertThat(xT(facts.build()).value()).isEqualTo(0.7);
    assertThat(facts.problems).containsExactly("x_T");
  }
}

package dev.offtake.system;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.part.Facts;
import dev.offtake.quantity.Stated.Knowledge;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The twin of the reference, line by line. */
class SystemReaderTest {
  private static BleedSystem twin;

  @BeforeAll
  static void read() {
    Path file = Path.of("src/test/resources/systems/twin.yaml");
    Reading reading = SystemReader.read(file, TradeKinds.ALL);
    assertThat(reading.problems()).isEmpty();
    twin = reading.system().orElseThrow();
  }

  private static Facts facts(String part) {
    return twin.parts().stream()
        .filter(p -> p.name().equals(part))
        .map(p -> ((TradeKinds.Told) p).facts())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void headIsKeptAsTyped() {
    assertThat(twin.title()).isEqualTo("Test twin");
    assertThat(twin.papers()).extracting(Paper::id).containsExactly("SD", "TR");
    assertThat(twin.papers().get(0).date()).isEqualTo("2024-05-01");
    assertThat(twin.sides()).containsExactly("left", "right");
    assertThat(twin.switches())
        .containsEntry("dc bus", List.of("LIVE", "DEAD"))
        .containsEntry("left pack switch", List.of("ON", "OFF"));
  }

  @Test
  void daysAndSettings() {
    assertThat(twin.days()).containsOnlyKeys("standard day", "cruise day");
    assertThat(Objects.requireNonNull(twin.days().get("cruise day")).mach()).isEqualTo(0.78);
    Setting idle = Objects.requireNonNull(twin.settings().get("ground idle"));
    assertThat(idle.core()).isCloseTo(0.62, within(1e-12));
    assertThat(idle.holds()).isEqualTo(Setting.Holds.PHYSICAL);
    assertThat(idle.source()).isEqualTo("SD p.2");
    assertThat(Objects.requireNonNull(twin.settings().get("take-off")).holds())
        .isEqualTo(Setting.Holds.UNKNOWN);
    assertThat(Objects.requireNonNull(twin.settings().get("cruise")).day()).isEqualTo("cruise day");
  }

  @Test
  void lineUpsHoldPositionsAndLocks() {
    assertThat(twin.lineUps()).containsOnlyKeys("usual", "packs off", "one engine");
    assertThat(Objects.requireNonNull(twin.lineUps().get("packs off")).positions())
        .containsEntry("left pack switch", "OFF");
    assertThat(Objects.requireNonNull(twin.lineUps().get("one engine")).locks())
        .containsEntry("left high stage valve", LineUp.Lock.LOCKED_SHUT);
  }

  @Test
  void sidesAreUnfolded() {
    assertThat(twin.parts()).hasSize(2 * 8 + 2 + 2);
    assertThat(twin.network().points())
        .extracting(p -> p.name())
        .containsExactlyInAnyOrder(
            "left mid duct",
            "left high duct",
            "left interstage",
            "left duct",
            "right mid duct",
            "right high duct",
            "right interstage",
            "right duct");
    Facts.Path path = facts("isolation valve").path("path");
    assertThat(path).isEqualTo(new Facts.Path("left duct", "right duct", true));
    int duct = twin.network().point("right duct");
    assertThat(twin.network().points().get(duct).wall()).isEqualTo(0.8);
    assertThat(twin.network().points().get(duct).volume()).isEqualTo(0.2);
  }

  @Test
  void thePaperListedFirstIsInForceAndBothAreKept() {
    Facts valve = facts("left high stage valve");
    assertThat(valve.stated("set to").source()).isEqualTo("SD p.7");
    assertThat(twin.conflicts()).hasSize(1);
    Conflict conflict = twin.conflicts().get(0);
    assertThat(conflict.subject()).isEqualTo("left high stage valve");
    assertThat(conflict.statements()).extracting(Statement::paper).containsExactly("SD", "TR");
    assertThat(conflict.statements()).extracting(Statement::inForce).containsExactly(true, false);
    assertThat(conflict.statements().get(1).line()).isEqualTo(60);
  }

  @Test
  void onlyOneSideOverridesKeyByKey() {
    Facts valve = facts("right high stage valve");
    assertThat(valve.stated("set to").source()).isEqualTo("SD p.7 note 2");
    assertThat(valve.path("path").from()).isEqualTo("right high duct");
    assertThat(twin.overrides()).extracting(SideOverride::key).containsExactly("set to");
  }

  @Test
  void whatIsNotKnownIsAssumedAndSaidSo() {
    assertThat(facts("left high stage valve").stated("droop").knowledge())
        .isEqualTo(Knowledge.UNKNOWN);
    assertThat(facts("left bleed regulator").stated("droop").knowledge())
        .isEqualTo(Knowledge.UNKNOWN);
    assertThat(facts("left mid check valve").stated("cracks at").knowledge())
        .isEqualTo(Knowledge.TYPICAL);
    assertThat(facts("left mid check valve").has("cracks at")).isFalse();
    assertThat(twin.assumptions())
        .anyMatch(a -> a.subject().equals("left mid check valve") && a.key().equals("cracks at"))
        .anyMatch(a -> a.key().equals("resets") && a.says().contains("no source"));
  }

  @Test
  void smallSentencesAreRead() {
    Facts.Limit limit = Objects.requireNonNull(facts("left overheat trip").limit("above"));
    assertThat(limit.seconds()).isEqualTo(3);
    assertThat(limit.value().nominal()).isCloseTo((490 + 459.67) / 1.8, within(1e-9));
    Facts.Reset reset = Objects.requireNonNull(facts("left overheat trip").reset("resets"));
    assertThat(reset.byHand()).isTrue();
    Facts.Below below =
        Objects.requireNonNull(facts("left bleed regulator").below("without muscle"));
    assertThat(below.word()).isEqualTo("shuts");
    assertThat(below.value().source()).isEqualTo("SD p.8");
    Facts.At leak = facts("right mid check valve").at("back leak");
    assertThat(leak.at().nominal()).isCloseTo(30 * 6894.757293168361, within(1e-6));
    assertThat(facts("left pack").whens("takes")).hasSize(1);
    assertThat(facts("left bleed regulator").reading("holds"))
        .isEqualTo(new Facts.Reading("left duct", false));
  }

  @Test
  void tableComesInSiAndAbsolute() {
    List<double[]> rows = facts("left mid tap").table("table");
    assertThat(rows).hasSize(2);
    assertThat(rows.get(0)[0]).isCloseTo(0.62, within(1e-12));
    assertThat(rows.get(0)[1]).isCloseTo(101325 + 8.1 * 6894.757293168361, within(1e-6));
    assertThat(rows.get(1)[2]).isCloseTo((610 + 459.67) / 1.8, within(1e-9));
  }

  @Test
  void gaugesStandWhereTheyAreSaidToBe() {
    assertThat(facts("duct gauge").needles("needles"))
        .extracting(needle -> needle.mark() + " " + needle.reads().name())
        .containsExactly("L left duct pressure", "R right duct pressure");
    assertThat(facts("right interstage port").reading("reads"))
        .isEqualTo(new Facts.Reading("right interstage", false));
    assertThat(facts("duct gauge").stated("good to constant").text()).isEqualTo("0.8 psi");
  }

  @Test
  void conditionsKnowFullNames() {
    assertThat(Objects.requireNonNull(facts("left bleed regulator").condition("shut when")).names())
        .containsExactly("left bleed switch", "left overheat trip");
    assertThat(Objects.requireNonNull(facts("right bleed regulator").powered("fed by")).names())
        .containsExactly("dc bus");
    assertThat(twin.never()).hasSize(2);
    assertThat(twin.never().get(0).condition()).isPresent();
    assertThat(twin.never().get(1).condition()).isEmpty();
  }
}

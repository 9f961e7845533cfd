package dev.offtake.system;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.part.Kinds;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is possible and looks like a slip is asked back, and the file is read all the same. */
class DoubtsTest {
  private static final String FILE =
      """
      offtake: 1
      title: One engine
      power settings:
        idle: {core: 62 %, holds: physical}
        take-off: {core: 99 %, holds: physical}
      switches:
        bleed switch: [ON, OFF]
        ground supply switch: [OFF, ON]
      parts:
        tap:
          kind: compressor tap
          to: tap duct
          bore: 3 in
          taken on: standard day
          table:
            columns: [core %, psig, degF]
            rows:
              - [62, 8.1, 188]
              - [99, 51.9, 480]
        bleed regulator:
          kind: regulator
          path: tap duct -> duct
          bore: 3 in
          holds: duct pressure
          set to: 42 psig +/- 2
        pack: {kind: flow user, takes from: duct, takes: 40 lb/min, needs: 12 psig}
      never:
        - bleed switch is ON and ground supply switch is ON
        - bleed switch is ON with the duct open
      """;

  private static List<Problem> doubts(String text) {
    Reading reading = SystemReader.readText("engine.yaml", text, Kinds.all());
    assertThat(reading.problems()).isEmpty();
    return reading.system().orElseThrow().doubts();
  }

  private static Problem only(String text) {
    List<Problem> doubts = doubts(text);
    assertThat(doubts).hasSize(1);
    return doubts.get(0);
  }

  @Test
  void anOrdinaryFileIsNotDoubted() {
    assertThat(doubts(FILE)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"demo-twin.yaml", "demo-rotor.yaml"})
  void theDemosAreNotDoubted(String demo) {
    Reading reading = SystemReader.read(Path.of("../demo").resolve(demo));
    assertThat(reading.system().orElseThrow().doubts()).isEmpty();
  }

  @Test
  void aSetThatNothingReachesIsTold() {
    Problem doubt = only(FILE.replace("42 psig +/- 2", "60 psig"));
    assertThat(doubt.wrong())
        .isEqualTo(
            "Set 60 psig of bleed regulator is above what tap gives at any power:"
                + " 51.9 psig at most, at take-off");
    assertThat(doubt.line()).isEqualTo(25);
  }

  /** The lower end of the tolerance counts: a set that may be reachable is not doubted. */
  @Test
  void aSetThatIsReachableWithinItsToleranceIsNotTold() {
    assertThat(doubts(FILE.replace("42 psig +/- 2", "53 psig +/- 2"))).isEmpty();
  }

  @Test
  void aSupplyThatReachesItSatisfies() {
    String cart =
        """
          cart:
            kind: supply
            to: tap duct
            table: {columns: [psig, lb/min], rows: [[65, 0], [50, 100]]}
        never:
        """;
    assertThat(doubts(FILE.replace("42 psig +/- 2", "60 psig").replace("never:\n", cart)))
        .isEmpty();
  }

  @Test
  void aSetUnderTheAirOutsideIsAskedBack() {
    Problem doubt = only(FILE.replace("42 psig +/- 2", "12 psia"));
    assertThat(doubt.toString())
        .contains("set to: 12 psia is under the air outside", "is it psig, not psia?");
  }

  @Test
  void aNeedUnderTheAirOutsideIsAskedBack() {
    String trip =
        """
        trips:
          low pressure trip: {watches: duct pressure, below: 10 psia, resets: by hand}
        never:
        """;
    assertThat(only(FILE.replace("never:\n", trip)).wrong()).contains("10 psia");
  }

  /**
   * 8.1 psig at 188 °F is 22.8 psia. Typed as gauge, 22.8 psig would need some 226 °F without any
   * loss (recomputed: 518.67 °R · (37.5/14.7)^0.2854).
   */
  @Test
  void absolutePressuresUnderAGaugeHeadingAreAskedBack() {
    Problem doubt = only(FILE.replace("[62, 8.1, 188]", "[62, 22.8, 188]"));
    assertThat(doubt.wrong())
        .isEqualTo("22.8 psig at 188 °F is colder than compression without any loss");
    assertThat(doubt.mend()).contains("is it psia, not psig?");
    assertThat(doubt.line()).isEqualTo(18);
  }

  /**
   * A point that slipped: 519 psig at 480 °F would need some 980 °F without any loss, and 0.81 psig
   * at 188 °F has an efficiency of 0.07 (recomputed: (γ − 1)/γ · ln(p/p₀) / ln(T/T₀)).
   */
  @Test
  void aSlippedPointIsAskedBack() {
    Problem high = only(FILE.replace("[99, 51.9, 480]", "[99, 519, 480]"));
    assertThat(high.wrong())
        .isEqualTo("519 psig at 480 °F is colder than compression without any loss");
    assertThat(high.mend()).contains("A tenth of the pressure", "decimal point slipped?");
    Problem low = only(FILE.replace("[62, 8.1, 188]", "[62, 0.81, 188]"));
    assertThat(low.wrong())
        .isEqualTo("0.81 psig at 188 °F is hotter than a compressor would make it");
    assertThat(low.mend()).contains("Ten times the pressure", "decimal point slipped?");
  }

  @Test
  void gaugePressuresUnderAnAbsoluteHeadingAreAskedBack() {
    String absolute =
        FILE.replace("core %, psig", "core %, psia").replace("[62, 8.1, 188]", "[62, 26, 322]");
    List<Problem> doubts = doubts(absolute.replace("42 psig +/- 2", "25 psig"));
    assertThat(doubts).hasSize(1);
    assertThat(doubts.get(0).wrong()).contains("26 psia at 322 °F is hotter");
  }

  @Test
  void aTapUnderTheAirOutsideIsRefusedWithTheQuestion() {
    String text = FILE.replace("core %, psig", "core %, psia");
    Reading reading = SystemReader.readText("engine.yaml", text, Kinds.all());
    assertThat(reading.problems()).hasSize(1);
    assertThat(reading.problems().get(0).toString())
        .contains("row 1 is not above the pressure", "psig or psia?");
  }

  @ParameterizedTest
  @CsvSource({
    "bleed switch is ON and grond supply switch is ON, ground supply switch",
    "bleed swich is ON with the duct open, bleed switch",
    "bleed switch is OOFF, OFF",
    "dcut pressure above 60 psig, duct pressure",
  })
  void aMistypedNeverIsNotLeftToAPersonInSilence(String never, String meant) {
    String text = FILE.replace("bleed switch is ON and ground supply switch is ON", never);
    Problem doubt = only(text);
    assertThat(doubt.wrong()).startsWith("Only you can judge `" + never + "`");
    assertThat(doubt.mend()).isEqualTo("Did you mean " + meant + "?");
    assertThat(doubt.line()).isEqualTo(28);
  }

  @Test
  void wordsForAPersonStayWordsForAPerson() {
    BleedSystem system =
        SystemReader.readText("engine.yaml", FILE, Kinds.all()).system().orElseThrow();
    assertThat(system.never()).extracting(NeverLine::judgedByAPerson).containsExactly(false, true);
  }

  @Test
  void aForgottenSourceBesideSourcedValuesIsAskedFor() {
    String papers = FILE.replace("power settings:", "papers: {R1: Bench record}\npower settings:");
    String set =
        """
        set to:
                - 30 psig; R1
                - 42 psig +/- 2
        """;
    Problem doubt = only(papers.replace("set to: 42 psig +/- 2\n", set));
    assertThat(doubt.wrong())
        .isEqualTo(
            "Bleed regulator, set to: 42 psig +/- 2 has no source, beside values that have one;"
                + " 30 psig is used");
    assertThat(doubt.mend()).contains("`42 psig +/- 2; ...`");
    assertThat(doubt.line()).isEqualTo(28);
    assertThat(doubts(papers.replace("set to: 42 psig +/- 2\n", set.replace("2\n", "2; R1 p.3\n"))))
        .isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "set to: 32 psig; R2 against 47 psig",
        "set to: 32 psig; 47 psi in the other manual",
        "set to: 32 psig; SD p.4 (was 3.2 bar g)"
      })
  void aSecondValueInTheSourceIsNotSwallowed(String set) {
    Problem doubt = only(FILE.replace("set to: 42 psig +/- 2", set));
    assertThat(doubt.wrong()).startsWith("`set to` states 32 psig, and its source \"");
    assertThat(doubt.mend()).startsWith("Write a line for each value, `- 32 psig; its source`");
    assertThat(doubt.line()).isEqualTo(25);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bore: 3 in; SD p. 4 in the second table",
        "bore: 3 in; 2024-05-01 m",
        "bore: 3 in; 4 in all papers",
        "bore: 3 in; SD fig. 12 m",
        "bore: 3 in; measured at 59 degF"
      })
  void anOrdinarySourceIsNotDoubted(String bore) {
    assertThat(doubts(FILE.replaceFirst("bore: 3 in", bore))).isEmpty();
  }
}

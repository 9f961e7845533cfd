package dev.offtake.cause;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.cause.TripMoment.When;
import dev.offtake.quantity.Dimension;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What can be said of a thing that was read, and of when it was read. */
class ValuesTest {
  /** Pa in 1 psi: NIST SP 811 (2008), appendix B.8. */
  private static final double PSI = 6894.757;

  private static Value of(String reading) {
    return Told.value(Told.TWIN, "ground idle", reading);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "left duct pressure low | low",
        "left duct HIGH | high",
        "duct gauge L normal | normal",
        "left duct pegged high | pegged high",
        "left duct pegged | pegged",
        "left duct swinging | swinging",
        "left duct swinging 10..14 psig | swinging 10..14 psig",
        "left duct 7 psi below right | 7 psi below right duct pressure",
        "left duct below right duct pressure | below right duct pressure",
        "left duct same as right | same as right duct pressure",
        "left leak light lit | on",
        "left pylon loop off | off",
        "isolation valve position shut | shut",
        "left bleed regulator closed | shut",
        "left bleed regulator 1/3 open | 1/3 open",
        "left bleed regulator part open | part open",
        "left overheat trip tripped | tripped",
        "left duct skin warm | warm",
        "left interstage skin COLD | cold",
        "left interstage test port 23 psig | 23 psig",
        "left interstage 37.7 psia with test gauge 7 | 37.7 psia",
        "left duct temperature 400 degF with pyrometer | 400 degF",
        "left duct - | not read",
      })
  void isWrittenAsItWasMeant(String reading, String words) {
    assertThat(of(reading).words()).isEqualTo(words);
  }

  @Test
  void numbersAreInSi() {
    Value.Swinging swinging = (Value.Swinging) of("left duct swinging 10..14 psig");
    assertThat(swinging.between().orElseThrow().low()).isCloseTo(10 * PSI, within(0.1));
    Value.Against against = (Value.Against) of("left duct 7 psi below right");
    assertThat(against.by().orElseThrow().nominal()).isCloseTo(7 * PSI, within(0.1));
    assertThat(against.by().orElseThrow().dimension()).isEqualTo(Dimension.PRESSURE_DIFFERENCE);
    assertThat(((Value.Stands) of("left bleed regulator half open")).open()).isEqualTo(0.5);
  }

  /** As in the agreed example: the second reading of a gauge may leave its unit out. */
  @Test
  void aNumberWithoutUnitHasThatOfTheGaugesReadingBefore() {
    Readings readings =
        Told.line("ground idle: left duct 15 psig", "cruise: left duct swinging 10..14");
    Value.Swinging swinging =
        (Value.Swinging) readings.occasions().get(1).readings().get(0).value();
    assertThat(swinging.between().orElseThrow().high()).isCloseTo(14 * PSI, within(0.1));
  }

  @Test
  void anEngineGaugeMoves() {
    String at = "core 80 %";
    Value.Moved moved =
        (Value.Moved) Told.value(Told.EVERY_KIND, at, "exhaust temperature up 12 degF");
    assertThat(moved.move()).isEqualTo(Value.Move.UP);
    assertThat(moved.by().orElseThrow().nominal()).isCloseTo(12 / 1.8, within(1e-9));
    String name = Told.EVERY_KIND.switches().keySet().iterator().next();
    String last = Told.EVERY_KIND.switches().get(name).get(1);
    String when = "exhaust temperature unmoved when " + name + " goes " + last;
    Value.Moved still = (Value.Moved) Told.value(Told.EVERY_KIND, at, when);
    assertThat(still).isEqualTo(new Value.Moved(Value.Move.UNMOVED, still.by(), name, last));
    assertThat(still.by()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "before left overheat trip | BEFORE | left overheat trip",
        "before the trip | BEFORE | ''",
        "after left overheat trip | AFTER | left overheat trip",
        "after left overheat trip, reset held | RESET_HELD | left overheat trip",
        "after a trip, tripped again | TRIPPED_AGAIN | ''",
      })
  void beforeAndAfterATripAreTwoStates(String head, When when, String trip) {
    Occasion occasion = Told.only(Told.line("take-off, " + head + ": left duct 15 psig"));
    assertThat(occasion.trip()).isEqualTo(new TripMoment(when, trip));
  }

  @Test
  void switchesAndValvesMayStandDifferently() {
    Occasion occasion =
        Told.only(
            Told.line(
                "core 61.4 %, left bleed switch OFF, isolation valve locked shut, crew:"
                    + " isolation OPEN, could not duplicate"));
    assertThat(occasion.standing().positions())
        .containsEntry("left bleed switch", "OFF")
        .containsEntry("isolation", "OPEN");
    assertThat(occasion.standing().locks()).containsEntry("isolation valve", "locked shut");
    assertThat(occasion.notDuplicated()).isTrue();
    assertThat(occasion.teller()).isEqualTo(Occasion.Teller.CREW);
    assertThat(occasion.readings()).isEmpty();
  }

  @Test
  void aSpeedThatWasReadReplacesThatOfTheNamedPower() {
    Occasion occasion = Told.only(Told.line("ground idle, N2 61.4 %: left duct 15 psig"));
    assertThat(occasion.power().name()).isEqualTo("ground idle");
    assertThat(occasion.power().core()).isCloseTo(0.614, within(1e-12));
    assertThat(occasion.power().fan()).isEqualTo(0.24);
  }

  /**
   * A thing that is read again in a table is a second reading, so that errors can be told apart.
   */
  @Test
  void aSecondLookIsAnOccasionOfItsOwn() {
    Readings readings =
        Told.csv("at,what,read\ncruise,left duct,15 psig\ncruise,left duct,16 psig\n");
    assertThat(readings.occasions()).hasSize(2);
    assertThat(readings.count()).isEqualTo(2);
  }

  @Test
  void aModeThatIsNamedIsAVerdict() {
    Readings readings =
        Told.csv(
            """
            at,what,read
            ,seen left mid check valve,"by hand, stuck 1/3 open"
            ,seen right mid check valve,"borescope, sound"
            """);
    List<Seen> seen = readings.seen();
    assertThat(seen.get(0).verdict()).isEqualTo(Seen.Verdict.FAULTY);
    assertThat(seen.get(0).mode()).isEqualTo("stuck");
    assertThat(seen.get(1).verdict()).isEqualTo(Seen.Verdict.SOUND);
  }
}

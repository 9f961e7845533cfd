package dev.offtake.cause;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.air.Day;
import dev.offtake.cause.Occasion.Teller;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * The examples by which the format was agreed, with the names of the demo's file: the sides of
 * lights and valves, and a barometer that says whether it is that of the station.
 */
class ReadingsExamplesTest {
  /** Pa in 1 psi: NIST SP 811 (2008), appendix B.8. */
  private static final double PSI = 6894.757;

  static final String FILE =
      """
      offtake readings: 1
      system: demo-twin.yaml
      squawk: Left duct low at idle, normal in cruise
      item: left engine, serial DEMO-0042
      gauges used:
        test gauge 7: {good to: 0.5 psi, calibration due: 2027-03-01}
      day: {barometer: 29.71 inHg station, air: 41 degF}
      readings:
        - at: {core: 61.4 %}
          left duct pressure: 15 psig
          right duct pressure: 22 psig
          left interstage pressure: not read
          left bleed trip light: off
        - at: cruise
          said by: crew                     # weaker than a reading
          left duct pressure: normal        # low | normal | high | swinging 10..14 | pegged
      seen:
        left mid check valve: borescope, flapper not seating, gap 0.4 in
      """;

  @Test
  void oneLine() {
    Occasion occasion =
        Told.only(
            Told.line(
                "ground idle, packs off: left duct 15 psig, right duct 22 psig, left bleed trip"
                    + " light off"));
    assertThat(occasion.power().name()).isEqualTo("ground idle");
    assertThat(occasion.lineUp()).isEqualTo("packs off");
    assertThat(occasion.standing().positions())
        .containsEntry("left pack switch", "OFF")
        .containsEntry("left bleed switch", "ON");
    assertThat(occasion.readings()).hasSize(3);
    Value.Figure left = (Value.Figure) occasion.readings().get(0).value();
    assertThat(left.stated().nominal()).isCloseTo(15 * PSI, within(0.1));
    assertThat(occasion.readings().get(0).about()).isInstanceOf(About.Needle.class);
    assertThat(Told.words(occasion))
        .isEqualTo(
            Map.of(
                "left duct pressure", "15 psig",
                "right duct pressure", "22 psig",
                "left bleed trip light", "off"));
  }

  /** The lights of the demo stand on both sides, so that the short name asks back. */
  @Test
  void aLightThatIsOnBothSidesIsAskedBack() {
    ReadingsRead read = ReadingsReader.readLines(List.of("ground idle: trip light off"), Told.TWIN);
    assertThat(read.problems().toString())
        .contains("`trip light` could be `left bleed trip light`, `right bleed trip light`");
  }

  @Test
  void aFile() {
    Readings readings = Told.yaml(FILE);
    assertThat(readings.system()).isEqualTo("demo-twin.yaml");
    assertThat(readings.squawk()).isEqualTo("Left duct low at idle, normal in cruise");
    assertThat(readings.item()).isEqualTo("left engine, serial DEMO-0042");
    assertThat(readings.count()).isEqualTo(4);
    Occasion idle = readings.occasions().get(0);
    assertThat(idle.power().core()).isCloseTo(0.614, within(1e-12));
    assertThat(idle.power().name()).isEmpty();
    assertThat(Told.words(idle)).containsEntry("left interstage pressure", "not read").hasSize(4);
    Occasion cruise = readings.occasions().get(1);
    assertThat(cruise.teller()).isEqualTo(Teller.CREW);
    assertThat(cruise.readings().get(0).value()).isEqualTo(Value.Word.NORMAL);
  }

  /** 29.71 inHg of 3386.389 Pa each (NIST SP 811, appendix B.8) and 41 °F, which is 5 °C. */
  @Test
  void theBarometerHoldsWhereTheReaderStood() {
    Readings readings = Told.yaml(FILE);
    Day ground = readings.occasions().get(0).day();
    assertThat(ground.pressure()).isCloseTo(29.71 * 3386.389, within(1.0));
    assertThat(ground.temperature()).isCloseTo(278.15, within(1e-6));
    Day cruise = readings.occasions().get(1).day();
    assertThat(cruise).isEqualTo(Told.TWIN.days().get("cruise day"));
  }

  @Test
  void aTestGaugeIsOverdueFromTheDayAfter() {
    UsedGauge gauge = Told.yaml(FILE).gauges().get(0);
    assertThat(gauge.constant() + gauge.each()).isCloseTo(0.5 * PSI, within(0.01));
    assertThat(gauge.overdue(LocalDate.of(2027, 3, 1))).isFalse();
    assertThat(gauge.overdue(LocalDate.of(2027, 3, 2))).isTrue();
    assertThat(Told.yaml(FILE).cautions(LocalDate.of(2027, 3, 2)))
        .containsExactly("The calibration of test gauge 7 was due on 2027-03-01: it is overdue");
    assertThat(Told.yaml(FILE).cautions(LocalDate.of(2027, 3, 1))).isEmpty();
  }

  /** Readings are judged by the day they were taken, whenever they are looked at. */
  @Test
  void theDateOfTheReadingsCounts() {
    String dated = FILE.replace("squawk:", "date: 2027-02-28\nsquawk:");
    assertThat(Told.yaml(dated).cautions(LocalDate.of(2031, 1, 1))).isEmpty();
  }

  @Test
  void anInspection() {
    Seen seen = Told.yaml(FILE).seen().get(0);
    assertThat(seen.part()).isEqualTo("left mid check valve");
    assertThat(seen.words()).isEqualTo("borescope, flapper not seating, gap 0.4 in");
    assertThat(seen.verdict()).isEqualTo(Seen.Verdict.TO_JUDGE);
    assertThat(seen.what()).isEqualTo("gap");
    assertThat(seen.measured().orElseThrow().nominal()).isCloseTo(0.4 * 0.0254, within(1e-9));
  }

  /** A plain barometer may be 2.5 psi out at elevation: as in a system file, it is asked back. */
  @Test
  void aBarometerThatDoesNotSayWhatItIsIsAskedBack() {
    ReadingsRead read = ReadingsReader.readText("r.yaml", FILE.replace(" station", ""), Told.TWIN);
    assertThat(read.problems().toString()).contains("r.yaml:7").contains("29.71 inHg station");
  }

  @Test
  void aTable() {
    Readings readings =
        Told.csv(
            """
            at,line-up,what,read,with,note
            ground idle,packs off,left duct pressure,15 psig,,
            ground idle,packs off,right duct,22 psig,,"steady, both packs off"
            ground idle,,left interstage pressure,23 psig,test gauge 7,
            cruise,,left duct pressure,normal,crew,
            ,,seen left mid check valve,"borescope, gap 0.4 in",,
            """);
    assertThat(readings.occasions()).hasSize(3);
    assertThat(readings.occasions().get(0).readings().get(1).note())
        .isEqualTo("steady, both packs off");
    Reading port = readings.occasions().get(1).readings().get(0);
    assertThat(port.with()).map(UsedGauge::name).contains("test gauge 7");
    assertThat(port.about()).isInstanceOf(About.Port.class);
    assertThat(port.about().name()).isEqualTo("left interstage test port");
    assertThat(readings.occasions().get(2).teller()).isEqualTo(Teller.CREW);
    assertThat(readings.seen()).hasSize(1);
    assertThat(readings.cautions(LocalDate.of(2027, 1, 1)))
        .containsExactly(
            "Nothing says until when the calibration of test gauge 7 holds",
            "Nothing says how good test gauge 7 is");
  }

  @Test
  void askedOneByOne() {
    Interview interview = new Interview(Told.TWIN);
    assertThat(interview.questions())
        .startsWith(
            "left duct pressure",
            "right duct pressure",
            "left duct temperature",
            "right duct temperature",
            "left interstage pressure")
        .contains("left bleed trip light", "right leak light", "left wing loop");
    Occasion occasion =
        Told.only(
            Told.sound(interview.read("ground idle", List.of("15 psig", "", "", "", "23 psig"))));
    assertThat(occasion.readings()).hasSameSizeAs(interview.questions());
    assertThat(occasion.readings().stream().filter(Reading::taken)).hasSize(2);
    assertThat(interview.one("ground idle", 0, "15 degF").problems()).hasSize(1);
  }
}

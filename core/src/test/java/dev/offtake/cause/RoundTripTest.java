package dev.offtake.cause;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Readings that are written are the same when they are read again. */
class RoundTripTest {
  private static void sameAgain(Readings readings, BleedSystem system) {
    String text = ReadingsWriter.yaml(readings, system);
    ReadingsRead again = ReadingsReader.readText("again.yaml", text, system);
    assertThat(again.problems()).as(text).isEmpty();
    assertThat(again.readings().orElseThrow()).as(text).isEqualTo(readings);
  }

  @Test
  void theAgreedExample() {
    sameAgain(Told.yaml(ReadingsExamplesTest.FILE), Told.TWIN);
  }

  @Test
  void aFileWithEverythingInIt() {
    sameAgain(
        Told.yaml(
            """
            offtake readings: 1
            squawk: 'Trips at: "take-off" # every time \\ left'
            date: 2026-11-02
            gauges used:
              test gauge 7:
                good to: {constant: 0.4 psi, each reading: 0.1 psi}
                scale: 0..160 psig
                step: 0.5 psi
                calibration due: 2027-03-01
                shares the sender of: duct gauge
              pyrometer: {good to: 5 degF}
              "gauge: odd": {}
            day: hot day
            readings:
              - at: ground idle, N2 61.4 %, packs off
                day: {barometer: 29.71 inHg QNH at 1000 ft, air: 41 degF}
                set: {left bleed switch: OFF, isolation valve: locked shut}
                trip: after left overheat trip, tripped again
                could not duplicate:
                left duct pressure: "7 psi below right duct pressure; and falling, slowly: see log"
                left interstage pressure: 23.5 psig +/- 0.5 with test gauge 7
                left duct temperature: 400 degF with pyrometer
                left bleed regulator position: 1/3 open
                left duct skin: warm
                left overheat trip: tripped
              - at: {core: 61.4 %, fan: 23.7 %}
                day: 35000 ft, ISA +10 degF, Mach 0.78
                said by: crew
                left duct pressure: swinging 10..14 psig
                right duct pressure: pegged high
            seen:
              left mid check valve: "borescope, flapper not seating, gap 0.4 in"
            """),
        Told.TWIN);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "at,what,read,with,note\ncruise,left interstage,23 psig,test gauge 7,\"a, b\"\n",
        "at,what,read,with\ncruise,left duct,low,crew\n",
      })
  void tables(String text) {
    sameAgain(Told.csv(text), Told.TWIN);
  }

  @Test
  void everySpeed() {
    List<String> lines = new ArrayList<>();
    for (int tenths = 1; tenths <= 1300; tenths += 7) {
      lines.add("core " + tenths / 10.0 + " %: left duct 15 psig");
    }
    sameAgain(Told.line(lines.toArray(new String[0])), Told.TWIN);
  }

  /** Each thing that can be asked for is found again by the name that is written. */
  @Test
  void everyNameMeansItself() {
    for (BleedSystem system : List.of(Told.TWIN, Told.EVERY_KIND)) {
      Vocabulary vocabulary = new Vocabulary(system);
      assertThat(vocabulary.asked()).hasSizeGreaterThan(3);
      for (About about : vocabulary.asked()) {
        assertThat(vocabulary.find(about.name())).containsExactly(about);
      }
    }
  }
}

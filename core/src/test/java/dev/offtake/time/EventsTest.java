package dev.offtake.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.explain.Question;
import dev.offtake.network.Demos;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.solve.Quantity;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Setup.PartNumber;
import dev.offtake.system.BleedSystem;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What happens is found, when it happens, and told once. */
class EventsTest {
  private static final BleedSystem TWIN = Demos.demo("twin");
  private static final double TRIPS = (490 + 459.67) / 1.8;

  private static Setup at(String power) throws QuantityProblem {
    return Question.of(TWIN, power, "", "", List.of()).setup();
  }

  private static Setup with(Setup setup, String part, String number, double value) {
    Map<PartNumber, Double> changed = new HashMap<>(setup.changed());
    changed.put(new PartNumber(part, number), value);
    return new Setup(setup.conditions(), setup.positions(), setup.locks(), changed);
  }

  private static Played play(Drive drive, Settings settings) {
    Played played = new Transient(TWIN.network()).run(drive, settings, s -> true);
    assertThat(played.end()).isEqualTo(Played.End.DONE);
    return played;
  }

  /** The left duct overheats: its cooling air valve has stuck shut and its thermostat is off. */
  private static Played overheats() throws QuantityProblem {
    Setup hot = with(at("99 %"), "left cooling air valve", "stuck at", 0);
    hot = with(hot, "left regulator thermostat", "by at most", 0);
    Settings.Limit limit = new Settings.Limit("left duct", true, true, TRIPS);
    return play(
        Drive.from(at("99 %")).hold(5).jump(hot).hold(115),
        Settings.usual().withLimits(List.of(limit)));
  }

  @Test
  void aTripWaitsForItsDelay() throws QuantityProblem {
    Played played = overheats();
    Event passed =
        played.events().stream()
            .filter(e -> e.kind() == Event.Kind.LIMIT && e.part().equals("left duct"))
            .findFirst()
            .orElseThrow();
    Event trip =
        played.events().stream().filter(e -> e.kind() == Event.Kind.TRIP).findFirst().orElseThrow();
    assertThat(passed.seconds()).isBetween(5.0, 110.0);
    assertThat(trip.part()).isEqualTo("left overheat trip");
    assertThat(trip.seconds()).isCloseTo(passed.seconds() + 3, within(0.01));
    double before = trip.seconds() - 1;
    double[] seconds = {before, trip.seconds() + 20};
    int regulator = TWIN.network().part("left bleed regulator");
    double[] opening = played.course(List.of(Quantity.observed(regulator, 0)), seconds)[0];
    assertThat(opening[0]).isGreaterThan(0.05);
    assertThat(opening[1]).isLessThan(0.01);
  }

  @Test
  void aTripShutsItsValveAndLightsItsLight() throws QuantityProblem {
    Played played = overheats();
    assertThat(played.events())
        .extracting(Event::part)
        .contains("left bleed regulator", "left bleed trip light");
    assertThat(played.at(120).is("left overheat trip", "tripped")).isTrue();
    assertThat(played.at(4).is("left overheat trip", "tripped")).isFalse();
    assertThat(played.at(120).is("right overheat trip", "tripped")).isFalse();
  }

  /** The instant at which a limit is passed is that at which the course crosses it. */
  @Test
  void aLimitIsPassedWhereTheCourseSaysSo() throws QuantityProblem {
    Played played = overheats();
    Event passed =
        played.events().stream()
            .filter(e -> e.kind() == Event.Kind.LIMIT && e.part().equals("left duct"))
            .findFirst()
            .orElseThrow();
    int duct = TWIN.network().point("left duct");
    double[] seconds = {passed.seconds() - 0.002, passed.seconds()};
    double[] t = played.course(List.of(Quantity.temperature(duct)), seconds)[0];
    assertThat(t[0]).isLessThan(TRIPS);
    assertThat(t[1]).isGreaterThanOrEqualTo(TRIPS);
  }

  @Test
  void aSwitchCommandsItsValve() throws QuantityProblem {
    Setup off = Question.of(TWIN, "82 %", "", "", List.of("left bleed switch: OFF")).setup();
    Played played = play(Drive.from(at("82 %")).hold(2).jump(off).hold(20), Settings.usual());
    Event first = played.events().get(0);
    assertThat(first.part()).isEqualTo("left bleed regulator");
    assertThat(first.kind()).isEqualTo(Event.Kind.COMMAND);
    assertThat(first.seconds()).isEqualTo(2);
    assertThat(first.why()).contains("bleed switch is OFF");
    int duct = TWIN.network().point("left duct");
    double outside = off.conditions().ambientP();
    assertThat(played.at(22).pressure(duct)).isLessThan(outside + 2e4);
  }

  @Test
  void eventsComeInTheOrderOfTime() throws QuantityProblem {
    Played played = play(Drive.from(at("62 %")).ramp(8, at("99 %")).hold(10), Settings.usual());
    double last = 0;
    for (Event event : played.events()) {
      assertThat(event.seconds()).isGreaterThanOrEqualTo(last);
      assertThat(event.before()).isNotEqualTo(event.after());
      last = event.seconds();
    }
    assertThat(played.events()).extracting(Event::part).contains("left high stage valve");
  }

  @Test
  void isCalledOff() throws QuantityProblem {
    Drive drive = Drive.from(at("62 %")).ramp(8, at("99 %")).hold(10);
    Played played = new Transient(TWIN.network()).run(drive, Settings.usual(), s -> s < 3);
    assertThat(played.end()).isEqualTo(Played.End.CANCELLED);
    assertThat(played.seconds()).isBetween(3.0, 6.0);
  }

  @Test
  void plansThatCannotBeginSaySo() throws QuantityProblem {
    Drive drive = Drive.from(at("52 %"));
    Played played = new Transient(TWIN.network()).run(drive, Settings.usual(), s -> true);
    assertThat(played.end()).isEqualTo(Played.End.NO_START);
    assertThat(played.resists()).contains("mid tap");
  }
}

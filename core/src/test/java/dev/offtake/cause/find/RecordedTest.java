package dev.offtake.cause.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.cause.Readings;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.study.Fault;
import dev.offtake.study.FaultReader;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What was played with something wrong is found again in the recording of it. */
class RecordedTest {
  private static List<Fault> broken(String words) throws QuantityProblem {
    return new FaultReader(RecordedBench.SYSTEM).read(words);
  }

  private static Found found(Readings readings) {
    return Finder.rank(
        RecordedBench.SYSTEM, readings, Prior.of(Prior.Reason.SQUAWK), 1, share -> {});
  }

  private static double chance(Found found, String name) {
    return found.ranked().stream()
        .filter(ranked -> ranked.cause().name().contains(name))
        .mapToDouble(Ranked::chance)
        .sum();
  }

  @Test
  void aSlowValveIsToldFromADriftedSet() throws QuantityProblem {
    Found slow = found(RecordedBench.recorded("", broken("regulator slow 8")));

    assertThat(slow.ranked().get(0).cause().name()).isEqualTo("regulator slow");
    assertThat(slow.ranked().get(0).low().get(0).extent()).isBetween(4.0, 8.0);
    assertThat(slow.ranked().get(0).high().get(0).extent()).isBetween(8.0, 16.0);
    assertThat(chance(slow, "drifted")).isLessThan(0.01);

    Found drifted = found(RecordedBench.recorded("", broken("regulator set drifted low 8 psi")));

    assertThat(chance(drifted, "regulator slow")).isLessThan(0.01);
    assertThat(chance(drifted, "regulator set drifted low")).isGreaterThan(0.2);
  }

  @Test
  void frictionIsToldFromADriftedSetAndFromSlowness() throws QuantityProblem {
    Found found = found(RecordedBench.recorded("", broken("regulator moves in jerks 4 %")));

    assertThat(found.ranked().get(0).cause().name()).isEqualTo("regulator moves in jerks");
    assertThat(found.ranked().get(0).low().get(0).extent()).isBetween(0.035, 0.045);
    assertThat(found.ranked().get(0).high().get(0).extent()).isBetween(0.035, 0.045);
    assertThat(chance(found, "drifted")).isLessThan(0.05);
    assertThat(chance(found, "regulator slow")).isLessThan(0.05);
  }

  @Test
  void frictionIsFoundByTheSwingThatItMakes() throws QuantityProblem {
    Found found = found(RecordedBench.recorded("", broken("regulator moves in jerks 8 %")));

    assertThat(found.ranked().get(0).cause().name()).isEqualTo("regulator moves in jerks");
    assertThat(found.ranked().get(0).low().get(0).extent()).isBetween(0.075, 0.085);
    assertThat(found.ranked().get(0).high().get(0).extent()).isBetween(0.075, 0.085);
    assertThat(found.explained()).isTrue();
  }

  /** As a slam does: what is done next begins where the valve swings, but does not stand there. */
  @Test
  void frictionIsFoundWhereTheNextThingDoneTakesItsTime() throws QuantityProblem {
    Found found = found(RecordedBench.creeping(broken("regulator moves in jerks 8 %")));

    assertThat(found.ranked().get(0).cause().name()).isEqualTo("regulator moves in jerks");
    assertThat(found.ranked().get(0).low().get(0).extent()).isBetween(0.07, 0.09);
    assertThat(found.ranked().get(0).high().get(0).extent()).isBetween(0.07, 0.09);
    assertThat(found.explained()).isTrue();
  }

  /** What stands first in the table is then not how it began. */
  @Test
  void aRecordThatBeginsOnTheWayIsWeighedAsWell() throws QuantityProblem {
    List<Fault> faults = broken("regulator slow 8");

    Found slow = found(RecordedBench.recorded("", faults, 5.3));

    assertThat(slow.ranked().get(0).cause().name()).isEqualTo("regulator slow");
  }

  @Test
  void aSoundRunIsNotTakenForABrokenOne() {
    Found found = found(RecordedBench.recorded("", List.of()));

    double sound = found.nothing();
    for (Found.Group group : found.groups()) {
      sound += group.asSound() ? group.chance() : 0;
    }
    assertThat(sound).isGreaterThan(0.5);
    assertThat(found.explained()).isTrue();
  }

  @Test
  void aServoThatIsSlowerThanAssumedIsMatched() throws QuantityProblem {
    Readings readings = RecordedBench.recorded("valves: {regulator: {servo: 3.4 s}}", List.of());

    Match match = Matcher.match(RecordedBench.SYSTEM, readings, share -> {});

    MatchedPace servo = pace(match, "regulator", PaceLine.SERVO);
    assertThat(match.settled()).isTrue();
    assertThat(servo.before()).isEqualTo(2);
    assertThat(servo.value()).isCloseTo(3.4, within(0.6));
    assertThat(servo.told()).isGreaterThan(0.5);
    assertThat(match.courses().get(0).after()).isLessThan(match.courses().get(0).before() / 3);
  }

  @Test
  void frictionIsMatched() throws QuantityProblem {
    Readings readings = RecordedBench.recorded("valves: {regulator: {friction: 5 %}}", List.of());

    Match match = Matcher.match(RecordedBench.SYSTEM, readings, share -> {});

    MatchedPace friction = pace(match, "regulator", PaceLine.FRICTION);
    assertThat(friction.before()).isZero();
    assertThat(friction.value()).isCloseTo(0.05, within(0.015));
    assertThat(friction.told()).isGreaterThan(0.75);
  }

  @Test
  void whatIsQuickerThanTheRecorderIsNotGuessed() throws QuantityProblem {
    Match match =
        Matcher.match(RecordedBench.SYSTEM, RecordedBench.recorded("", List.of()), share -> {});

    assertThat(match.paces()).noneMatch(pace -> pace.line() == PaceLine.SENSE_LINE);
    assertThat(match.paces())
        .noneMatch(pace -> pace.line() == PaceLine.DISC && pace.before() < 0.1);
  }

  private static MatchedPace pace(Match match, String part, PaceLine line) {
    return match.paces().stream()
        .filter(pace -> pace.part().equals(part) && pace.line() == line)
        .findFirst()
        .orElseThrow();
  }
}

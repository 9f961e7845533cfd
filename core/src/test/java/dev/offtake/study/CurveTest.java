package dev.offtake.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.explain.CurveAnswer;
import dev.offtake.explain.Question;
import dev.offtake.network.Demos;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Curves and their events, against closed forms where there are any. */
class CurveTest {
  private static final double PSI = 6894.757293168361;
  private static final double AMBIENT = 101325;

  /** Allowed error of an event, a fraction of core speed: a hundredth of what the issue allows. */
  private static final double EXACT = 0.00001;

  /** Two taps of the standard day on one manifold, with a check valve behind the lower one. */
  private static final String TWO_TAPS =
      """
      power settings:
        idle: {core: 60 %, holds: physical}
      parts:
        low tap:
          kind: compressor tap
          to: low duct
          bore: 3 in
          table:
            columns: [core %, psig, degF]
            rows: [[60, 10, 200], [100, 80, 500]]
        high tap:
          kind: compressor tap
          to: manifold
          bore: 3 in
          table:
            columns: [core %, psig, degF]
            rows: [[60, 30, 350], [100, 60, 700]]
        check:
          kind: check valve
          path: low duct -> manifold
          bore: 3 in
          cracks at: 0.5 psid
          back leak: 0.0001 lb/min at 30 psid
      """;

  /** A tap into a closed duct with a relief valve. */
  private static final String RELIEF =
      """
      power settings:
        idle: {core: 60 %, holds: physical}
      parts:
        tap:
          kind: compressor tap
          to: duct
          bore: 3 in
          table:
            columns: [core %, psig, degF]
            rows: [[60, 10, 200], [100, 80, 500]]
        relief:
          kind: relief valve
          path: duct -> ambient
          bore: 1 in
          leak: 0.0001 lb/min at 30 psid
          cracks at: 70 psig
          full at: 80 psig
          reseats at: 60 psig
      """;

  private static Curve curve(BleedSystem system, String over, int points, String... sets) {
    try {
      Question question = Question.of(system, "", "", "", List.of(sets));
      CurveAnswer.Request request = new CurveAnswer.Request(over, points, "");
      return CurveAnswer.of(question, request, Style.SHOP, share -> {}).curve();
    } catch (QuantityProblem wrong) {
      throw new IllegalArgumentException(wrong.wrong() + "; " + wrong.mend(), wrong);
    }
  }

  /** The one event at which a part reaches a state, on a way. */
  private static Curve.Event event(Curve curve, String subject, String after, Curve.Way... ways) {
    List<Curve.Event> found = new ArrayList<>();
    for (Curve.Event event : curve.events()) {
      boolean here = event.changes().stream().anyMatch(c -> is(c, subject, after));
      if (here && (ways.length == 0 || List.of(ways).contains(event.way()))) {
        found.add(event);
      }
    }
    assertThat(found).as("%s %s in %s", subject, after, curve.events()).hasSize(1);
    return found.get(0);
  }

  private static boolean is(Curve.Change change, String subject, String after) {
    return change.subject().equals(subject) && change.after().equals(after);
  }

  /** Gauge pressure of a two-row table at a speed, by its power law in speed. */
  private static double gauge(double low, double high, double core) {
    double exponent = Math.log(high / low) / Math.log(100.0 / 60.0);
    return low * PSI * Math.pow(core / 0.6, exponent);
  }

  /**
   * Nothing flows, so that the check valve opens where the low stage is 0.5 psi above the high one:
   * both are power laws between two rows, and the root of their difference is bisected here.
   */
  @Test
  void aCheckValveOpensWhereTheTapsCross() {
    double low = 0.6;
    double high = 1;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      boolean over = gauge(10, 80, middle) - gauge(30, 60, middle) > 0.5 * PSI;
      low = over ? low : middle;
      high = over ? middle : high;
    }
    Curve curve = curve(Demos.text(TWO_TAPS), "core=60..100", 0);
    Curve.Event event = event(curve, "check", "partly open");
    assertThat(event.x()).isCloseTo(low, within(EXACT));
    assertThat(event.way()).isEqualTo(Curve.Way.BOTH);
    assertThat(curve.remembers()).isFalse();
  }

  /** The event does not depend on the stops between which it was found. */
  @Test
  void anEventIsNotReadOffTheStops() {
    double fine = event(curve(Demos.text(TWO_TAPS), "core=60..100", 81), "check", "open").x();
    double coarse = event(curve(Demos.text(TWO_TAPS), "core=60..100", 3), "check", "open").x();
    assertThat(coarse).isCloseTo(fine, within(EXACT));
  }

  /**
   * The spread of the same event: d(difference)/d(bump) over d(difference)/d(speed), each tap at 5
   * % times four s(1 − s) of its gap, root of the sum of squares. (The closed form is linear, the
   * search is not: a tenth.)
   */
  @Test
  void tapCurvesMoveAnEventByTheirSlopes() {
    Curve.Event event =
        event(curve(Demos.text(TWO_TAPS), "core=60..100", 0), "check", "partly open");
    double x = event.x();
    double s = Math.log(x / 0.6) / Math.log(100.0 / 60.0);
    double bump = 0.05 * 4 * s * (1 - s);
    double h = 1e-5;
    double slope =
        (gauge(10, 80, x + h) - gauge(30, 60, x + h) - gauge(10, 80, x - h) + gauge(30, 60, x - h))
            / (2 * h);
    double one = gauge(10, 80, x) * bump / slope;
    double two = gauge(30, 60, x) * bump / slope;
    double both = Math.hypot(one, two);
    assertThat(x - event.low()).isCloseTo(both, within(0.1 * both));
    assertThat(event.high() - x).isCloseTo(both, within(0.1 * both));
    assertThat(event.causes())
        .extracting(Curve.Cause::parameter)
        .containsOnly("curve between points");
  }

  /**
   * Up to 70 psig and again down to 60 psig nothing but a trace flows, so that the duct has the
   * pressure of the stage, a power law in speed.
   */
  @Test
  void aReliefLiftsAtOnePressureAndReseatsAtAnother() {
    Curve curve = curve(Demos.text(RELIEF), "core=60..100", 0);
    assertThat(curve.remembers()).isTrue();
    double perPressure = Math.log(100.0 / 60.0) / Math.log(80.0 / 10.0);
    Curve.Event lifts = event(curve, "relief", "not reseated", Curve.Way.UP);
    assertThat(lifts.x()).isCloseTo(0.6 * Math.pow(7, perPressure), within(EXACT));
    Curve.Event reseats = event(curve, "relief", "shut", Curve.Way.DOWN);
    assertThat(reseats.x()).isCloseTo(0.6 * Math.pow(6, perPressure), within(EXACT));
    assertThat(lifts.x() - reseats.x()).isGreaterThan(0.03);
  }

  @Test
  void aTripStaysTrippedOnTheWayDown() {
    Curve curve =
        curve(Demos.demo("twin"), "core=62..99", 30, "left cooling air valve: locked shut");
    Curve.Event trips = event(curve, "left overheat trip", "tripped");
    assertThat(trips.way()).isEqualTo(Curve.Way.UP);
    assertThat(curve.events())
        .filteredOn(e -> e.way() == Curve.Way.DOWN)
        .flatExtracting(Curve.Event::changes)
        .extracting(Curve.Change::after)
        .doesNotContain("normal");
    int duct = 1;
    double up = curve.up().get(0).values().get(duct);
    double down = curve.down().get(0).values().get(duct);
    assertThat(up).isGreaterThan(20 * PSI);
    assertThat(down).isLessThan(2 * PSI);
  }

  /** The limit itself is what is met: duct temperature at the trip is that of the trip. */
  @Test
  void aTripIsWhereItsLimitIs() {
    BleedSystem system = Demos.demo("twin");
    Curve curve = curve(system, "core=62..99", 30, "left cooling air valve: locked shut");
    double core = event(curve, "left overheat trip", "tripped").x();
    Curve near =
        curve(
            system,
            "core=" + (100 * core - 0.01) + ".." + (100 * core - 0.002),
            2,
            "left cooling air valve: locked shut");
    double t = near.up().get(1).values().get(2);
    assertThat(t).isCloseTo((490 - 32) / 1.8 + 273.15, within(0.05));
  }

  @Test
  void theDemoHandsOverFromTheHighStageToTheMidStage() {
    Curve curve = curve(Demos.demo("twin"), "", 0);
    Curve.Event over = event(curve, "left", "left mid tap");
    assertThat(over.x()).isBetween(0.75, 0.82);
    assertThat(over.low()).isLessThan(over.x() - 0.005);
    assertThat(over.high()).isGreaterThan(over.x() + 0.005);
    assertThat(curve.remembers()).isFalse();
    assertThat(curve.up().get(0).feeding().get(0)).containsExactly("left high tap");
    Curve.Row last = curve.up().get(curve.up().size() - 1);
    assertThat(last.feeding().get(0)).containsExactly("left mid tap");
  }

  /** A sweep of a set pressure: the regulator begins to hold where its duct would be anyway. */
  @Test
  void aSetPressureIsSwept() {
    Curve curve = curve(Demos.demo("twin"), "left bleed regulator set=15..45 psig", 20);
    assertThat(curve.sweep().unit().symbol()).isEqualTo("psig");
    assertThat(event(curve, "left bleed regulator", "wide open").causes())
        .extracting(Curve.Cause::parameter)
        .doesNotContain("set");
    assertThat(curve.up().get(0).values().get(1)).isLessThan(20 * PSI);
  }

  /**
   * More than 15 % outside the table there is no answer, and the edge is where it is said to be.
   */
  @Test
  void aCurveEndsWhereItsTablesEnd() {
    Curve curve = curve(Demos.text(TWO_TAPS), "core=40..100", 0);
    assertThat(curve.gaps()).hasSize(1);
    Curve.Gap gap = curve.gaps().get(0);
    assertThat(gap.from()).isEqualTo(0.4);
    assertThat(gap.why()).contains("tap", "its table runs from 60 to 100 %");
    Curve.Row first = curve.up().stream().filter(Curve.Row::answered).findFirst().orElseThrow();
    assertThat(first.x()).isCloseTo(0.6 * 0.85, within(EXACT));
    Curve.Event within = event(curve, "low tap", "within its table");
    assertThat(within.x()).isCloseTo(0.6, within(EXACT));
  }

  @Test
  void altitudeTakesTheAirWithIt() {
    Curve curve = curve(Demos.demo("twin"), "altitude=0..20000 ft", 11);
    double first = curve.up().get(0).values().get(1) + AMBIENT;
    double last = curve.up().get(10).values().get(1);
    assertThat(curve.up().get(10).x()).isCloseTo(6096, within(1e-6));
    assertThat(last).isLessThan(0.7 * first);
  }

  @Test
  void everyEventLiesInItsRangeAndInTheSweep() {
    Curve curve = curve(Demos.demo("twin"), "", 0);
    assertThat(curve.events()).hasSizeGreaterThan(10);
    for (Curve.Event event : curve.events()) {
      assertThat(event.x()).isBetween(event.low(), event.high()).isBetween(0.55, 1.0);
      assertThat(event.changes()).isNotEmpty();
    }
    assertThat(curve.events()).isSortedAccordingTo((a, b) -> Double.compare(a.x(), b.x()));
  }
}

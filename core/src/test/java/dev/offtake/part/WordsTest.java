package dev.offtake.part;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What each kind says in each of its states: regime, word and the reason in full. */
class WordsTest {
  private static final double PSI = Bench.PSI;

  /** A state of a kind and what is said of it. */
  record Row(Bench bench, String regime, String word, String why) {
    @Override
    public String toString() {
      return bench.part.kind() + ": " + regime;
    }
  }

  private static Row row(Bench bench, String regime, String word, String why) {
    return new Row(bench, regime, word, why);
  }

  static Stream<Row> rows() {
    return Stream.of(
            held(),
            checkValve(),
            regulator(),
            shutoff(),
            temperatureControl(),
            relief(),
            thermostat(),
            trip(),
            taps(),
            supply(),
            resistances(),
            exchanger(),
            users(),
            starter())
        .flatMap(rows -> rows);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void saysWhatItDoesAndWhy(Row row) {
    assertThat(row.bench().doing()).isEqualTo(new Doing(row.regime(), row.word(), row.why()));
  }

  /** States whose numbers have tests elsewhere: what they are called. */
  @Test
  void namesItsOtherStates() {
    assertThat(tap(CompressorTap.KIND, 1.2, 39).doing().word()).isEqualTo("outside its table");
    assertThat(tap(CompressorTap.KIND, 1.05, 39).doing().why())
        .contains("corrected speed is 6 % above its table", "a guess");
    Bench hotter = core(320, 650).at("hot out", 38, 330).at("cold out", 3.2, 600);
    assertThat(hotter.doing().regime()).isEqualTo("heats");
    assertThat(fed(OrificeUser.KIND, tube(), 12.5, 1).doing().regime()).isEqualTo("forward");
    assertThat(over(Orifice.KIND, hole(), 20, 21).doing().word()).endsWith(", backwards");
  }

  /** Watching kinds have tests of their own for each of their words. */
  @Test
  void everyKindThatPassesAirHasRows() {
    Set<String> told = rows().map(r -> r.bench().part.kind()).collect(Collectors.toSet());
    Set<String> all = Kinds.all().stream().map(Kind::name).collect(Collectors.toSet());
    Set<String> rest = new HashSet<>(all);
    rest.removeAll(told);
    assertThat(rest)
        .containsExactlyInAnyOrder("gauge", "engine gauge", "light", "leak loop", "limit");
  }

  private static Bench between(BenchFacts facts, double ahead, double behind) {
    return new Bench(facts.build()).at("ahead", ahead, 500).at("behind", behind, 480);
  }

  private static Stream<Row> held() {
    UnaryOperator<Bench> on = bench -> bench.at("ahead", 20, 450);
    return Stream.of(
        row(
            on.apply(new Bench(shut().build())).control(ValveBody.LOCK, ValveBody.CAPPED),
            "removed and capped",
            "capped",
            "it is removed and its port is capped"),
        row(
            on.apply(new Bench(shut().build())).parameter(ValveBody.STUCK, 0.33),
            "stuck",
            "stuck about 1/3 open",
            "it is stuck and no longer moves"),
        row(
            on.apply(new Bench(shut().build())).control(ValveBody.LOCK, ValveBody.LOCKED_SHUT),
            "locked shut",
            "locked shut",
            "the line-up locks it shut"),
        row(
            on.apply(new Bench(shut().build())).control(ValveBody.LOCK, ValveBody.LOCKED_OPEN),
            "locked open",
            "locked open",
            "the line-up locks it open"));
  }

  private static BenchFacts shut() {
    return new BenchFacts(ShutoffValve.KIND).say("shut when", "bleed switch is OFF");
  }

  private static Stream<Row> checkValve() {
    BenchFacts facts =
        new BenchFacts(CheckValve.KIND)
            .si("cracks at", 0.3 * PSI, Dimension.PRESSURE_DIFFERENCE)
            .si("full at", 0.8 * PSI, Dimension.PRESSURE_DIFFERENCE);
    return Stream.of(
        row(
            between(facts, 8.1, 23.1),
            "shut",
            "shut",
            "23.1 psig behind it, 8.1 psig ahead: 15.0 psi hold it"),
        row(between(facts, 10.2, 10), "shut", "shut", "0.2 psi across it, it cracks at 0.3 psi"),
        row(
            between(facts, 10.55, 10),
            "partly open",
            "about 1/2 open",
            "0.6 psi push it open, it is wide open at 0.8 psi"),
        row(
            between(facts, 12, 10),
            "open",
            "open",
            "2.0 psi push it open, it is wide open at 0.8 psi"),
        row(
            between(facts, 90, 10),
            "open",
            "open",
            "80.0 psi push it open, it is wide open at 0.8 psi; the air is choked in it"));
  }

  private static BenchFacts holding(String word) {
    return new BenchFacts(Regulator.KIND)
        .say("holds", new Facts.Reading("behind", false))
        .si("set to", 32 * PSI, Dimension.GAUGE_PRESSURE)
        .si("droop", 4 * PSI, Dimension.PRESSURE_DIFFERENCE)
        .say("shut when", "bleed switch is OFF")
        .say("without muscle", new Facts.Below(word, Stated.of(8 * PSI, Dimension.GAUGE_PRESSURE)));
  }

  private static Stream<Row> regulator() {
    BenchFacts shuts = holding("shuts");
    BenchFacts opens = holding("opens");
    return Stream.of(
        row(
            between(shuts, 60, 20).control(1, Command.SHUT),
            "shut by command",
            "shut",
            "bleed switch is OFF"),
        row(between(shuts, 60, 20).control(1, Command.WIDE), "opened by command", "open", ""),
        row(
            between(shuts, 6, 3),
            "no muscle",
            "shut",
            "no muscle: ahead 6.0 psig is under the 8.0 psig that move it"),
        row(
            between(shuts, 10, 3),
            "short of muscle",
            "about 1/2 open",
            "short of muscle: ahead 10.0 psig is under the 12.0 psig that give it its whole"
                + " stroke"),
        row(
            between(opens, 6, 3),
            "opened by its spring",
            "open",
            "short of muscle: ahead 6.0 psig is under the 8.0 psig that move it"),
        row(
            between(shuts, 20, 23),
            "held shut in reverse",
            "shut",
            "23.0 psig behind it, 20.0 psig ahead: 3.0 psi hold it"),
        row(
            between(shuts, 29.4, 29),
            "wide open",
            "open",
            "behind 29.0 psig is under its set 32.0 psig; ahead has no more to give"),
        row(
            between(shuts, 60, 40),
            "shut by pressure",
            "shut",
            "behind 40.0 psig is above its set 32.0 psig"),
        row(
            between(shuts, 36, 32),
            "regulating",
            "about 1/2 open",
            "holds behind 32.0 psig, its set is 32.0 psig"));
  }

  private static Stream<Row> shutoff() {
    return Stream.of(
        row(
            between(shut(), 20, 19).control(1, 0),
            "shut by command",
            "shut",
            "bleed switch is OFF"),
        row(
            between(new BenchFacts(ShutoffValve.KIND), 20, 19),
            "open",
            "open",
            "nothing commands it shut"),
        row(
            between(new BenchFacts(ShutoffValve.KIND), 90, 0),
            "open",
            "open",
            "nothing commands it shut; the air is choked in it"));
  }

  private static Bench warm(double t, String way) {
    BenchFacts facts =
        new BenchFacts(TemperatureControlValve.KIND)
            .say("watches", new Facts.Reading("duct", true))
            .say("as it warms", way)
            .say("shut when", "fan air is OFF")
            .si("from", 470, Dimension.TEMPERATURE)
            .si("to", 500, Dimension.TEMPERATURE);
    return new Bench(facts.build()).at("ahead", 3, 330).at("behind", 2, 340).at("duct", 30, t);
  }

  private static Stream<Row> temperatureControl() {
    return Stream.of(
        row(warm(460, "opens"), "shut, cold", "shut", "duct 460 K is under the 470 K"),
        row(warm(460, "shuts"), "open, cold", "open", "duct 460 K is under the 470 K"),
        row(
            warm(485, "opens"),
            "controlling",
            "about 1/2 open",
            "duct 485 K is within its 470 to 500 K"),
        row(warm(510, "opens"), "open, hot", "open", "duct 510 K is above the 500 K"),
        row(warm(510, "shuts"), "shut, hot", "shut", "duct 510 K is above the 500 K"),
        row(
            warm(485, "opens").control(1, Command.SHUT),
            "shut by command",
            "shut",
            "fan air is OFF"),
        row(warm(485, "opens").control(1, Command.WIDE), "opened by command", "open", ""));
  }

  private static Bench pressed(double psig, double popped) {
    BenchFacts facts =
        new BenchFacts(ReliefValve.KIND)
            .say("path", new Facts.Path("duct", Leg.AMBIENT, false))
            .si("cracks at", 70 * PSI, Dimension.GAUGE_PRESSURE)
            .si("full at", 80 * PSI, Dimension.GAUGE_PRESSURE)
            .si("reseats at", 60 * PSI, Dimension.GAUGE_PRESSURE);
    return new Bench(facts.build()).at("duct", psig, 480).control(1, popped);
  }

  private static Stream<Row> relief() {
    return Stream.of(
        row(pressed(50, 0), "shut", "shut", "duct 50.0 psig is under the 70.0 psig that open it"),
        row(
            pressed(75, 0),
            "relieving",
            "about 1/2 open",
            "duct 75.0 psig is above the 70.0 psig that open it; the air is choked in it"),
        row(
            pressed(65, 1),
            "not reseated",
            "about 1/4 open",
            "duct 65.0 psig: it has popped and reseats only under 60.0 psig; the air is choked"
                + " in it"));
  }

  private static Bench trimming(double t) {
    BenchFacts facts =
        new BenchFacts(Thermostat.KIND)
            .say("trims", "bleed regulator")
            .say("watches", new Facts.Reading("duct", true))
            .si("from", 500, Dimension.TEMPERATURE)
            .si("to", 520, Dimension.TEMPERATURE)
            .si("by at most", 10 * PSI, Dimension.PRESSURE_DIFFERENCE);
    return new Bench(facts.build()).at("duct", 40, t);
  }

  private static Stream<Row> thermostat() {
    return Stream.of(
        row(trimming(490), "idle", "idle", "duct is at 490 K, under the 500 K"),
        row(
            trimming(510),
            "trimming",
            "trimming",
            "duct is at 510 K: takes 5.0 psi off the set of bleed regulator"),
        row(
            trimming(530),
            "at its most",
            "at its most",
            "duct is at 530 K: takes 10.0 psi off the set of bleed regulator, the most it can"));
  }

  private static Bench overpressure(double tripped) {
    BenchFacts facts =
        new BenchFacts(Trip.KIND)
            .say("watches", new Facts.Reading("duct", false))
            .say("above", new Facts.Limit(Stated.of(80 * PSI, Dimension.GAUGE_PRESSURE), 0));
    return new Bench(facts.build()).at("duct", 42, 480).control(0, tripped);
  }

  private static Stream<Row> trip() {
    return Stream.of(
        row(overpressure(0), "normal", "normal", "duct is at 42.0 psig, not above 80.0 psig"),
        row(overpressure(1), "tripped", "tripped", "duct is at 42.0 psig; only a hand resets it"));
  }

  private static Bench tap(Kind kind, double speed, double duct) {
    Bench bench = new Bench(kind.build(Samples.tapFacts())).at("duct", duct, 400);
    bench.e.conditions = Conditions.standardDay(speed, speed);
    return bench;
  }

  private static Stream<Row> taps() {
    return Stream.of(
        row(
            tap(CompressorTap.KIND, 0.8, 39),
            "gives",
            throughPort("gives ", 40, 470, 39, ""),
            "stage 40.0 psig is over duct 39.0 psig by 1.0 psi"),
        row(
            tap(CompressorTap.KIND, 0.8, 41),
            "takes back",
            throughPort("takes back ", 41, 400, 40, " into the engine"),
            "stage 40.0 psig is under duct 41.0 psig by 1.0 psi"),
        row(
            tap(CompressorTap.KIND, 0.8, 41).control(0, 0),
            "stopped",
            "stopped",
            "the engine does not turn"),
        row(
            tap(FanTap.KIND, 0.8, 39),
            "gives",
            throughPort("gives ", 40, 470, 39, ""),
            "stage 40.0 psig is over duct 39.0 psig by 1.0 psi"));
  }

  /** What the port of the sample tap passes between two gauge pressures, as printed. */
  private static String throughPort(String verb, double from, double t, double to, String tail) {
    double area = 0.8 * ClosedForms.circle(0.0762);
    double ahead = Bench.AMBIENT + from * PSI;
    double flow = ClosedForms.nozzle(area, ahead, t, Bench.AMBIENT + to * PSI);
    return verb + String.format(Locale.ROOT, "%.3f kg/s", flow) + tail;
  }

  private static Bench cart(double duct, double on) {
    KindFacts facts = Samples.supply().with("on when", new BenchFacts.Words("cart is ON"));
    return new Bench(Supply.KIND.build(facts)).at("duct", duct, 400).control(0, on);
  }

  private static Stream<Row> supply() {
    return Stream.of(
        row(cart(20, 0), "off", "off", "not: cart is ON"),
        row(
            cart(38 - 0.3, 1),
            "gives",
            "gives 0.907 kg/s",
            "it gives 45.0 psig without flow, duct 37.7 psig takes the rest"),
        row(
            cart(10, 1),
            "overdrawn",
            // Its last straight line goes on: 200 + 14.7·80/13 lb/min at 10.3 psig.
            String.format(Locale.ROOT, "gives %.3f kg/s", (200 + 14.7 * 80 / 13) * Samples.LB_MIN),
            "it gives 45.0 psig without flow, duct 10.0 psig takes the rest; more than its table"
                + " knows, a guess"),
        row(
            cart(60, 1),
            "deadheaded",
            "deadheaded",
            "duct 60.0 psig holds its check valve: it gives 45.0 psig without flow; all of its"
                + " air goes through its own surge or load valve"));
  }

  private static KindFacts hole() {
    return new KindFacts()
        .with("path", new Facts.Path("up", "down", false))
        .with("at", "up")
        .si("bore", 0.02, Dimension.LENGTH)
        .si("throat", 0.02, Dimension.LENGTH)
        .si("recovery", 0.8, Dimension.NUMBER)
        .si("loss coefficient", 0.3, Dimension.NUMBER)
        .si("area", 0, Dimension.AREA)
        .si("flow coefficient", 0.6, Dimension.NUMBER);
  }

  private static Bench over(Kind kind, KindFacts facts, double up, double down) {
    return new Bench(kind.build(facts)).at("up", up, 480).at("down", down, 480);
  }

  private static String choked(String ends) {
    return ends + ": air goes at the speed of sound, no more can pass";
  }

  private static Stream<Row> resistances() {
    KindFacts vent = hole().with("open when", new BenchFacts.Words("dump is OPEN"));
    return Stream.of(
        row(
            over(Orifice.KIND, hole(), 60, 0),
            "choked",
            flow("passes ", 60, ", choked"),
            choked("up 60.0 psig is over down 0.0 psig by 60.0 psi")),
        row(
            over(Orifice.KIND, hole(), 0, 60),
            "choked",
            flow("passes ", 60, ", backwards, choked"),
            choked("up 0.0 psig is under down 60.0 psig by 60.0 psi")),
        row(
            over(Orifice.KIND, hole(), 20, 20),
            "still",
            "no flow",
            "up 20.0 psig is over down 20.0 psig by 0.0 psi"),
        row(
            over(Venturi.KIND, hole(), 20, 20),
            "still",
            "no flow",
            "up 20.0 psig is over down 20.0 psig by 0.0 psi"),
        row(
            over(Bend.KIND, hole(), 20, 20),
            "still",
            "no flow",
            "up 20.0 psig is over down 20.0 psig by 0.0 psi"),
        row(
            new Bench(Duct.KIND.build(Samples.duct())).at("up", 9, 480).at("down", 9, 480),
            "still",
            "no flow",
            "up 9.0 psig is over down 9.0 psig by 0.0 psi"),
        row(over(Leak.KIND, hole(), 20, 0), "tight", "tight", "no hole is assumed at up"),
        row(
            over(Leak.KIND, hole(), 60, 0).parameter(0, ClosedForms.circle(0.02)),
            "choked",
            flow("loses ", 60, ", choked"),
            choked("up 60.0 psig is over the air outside by 60.0 psi")),
        row(over(TestPort.KIND, hole(), 20, 0), "plugged", "plugged", "up 20.0 psig"),
        row(
            over(TestPort.KIND, hole(), 60, 0).parameter(0, ClosedForms.circle(0.02)),
            "choked",
            flow("blows ", 60, ", choked"),
            choked("up 60.0 psig is over the air outside by 60.0 psi")),
        row(over(Vent.KIND, vent, 60, 0), "shut", "shut", "not: dump is OPEN"),
        row(
            over(Vent.KIND, vent, 60, 0).control(0, 1),
            "choked",
            flow("lets out ", 60, ", choked"),
            choked("up 60.0 psig is over the air outside by 60.0 psi")));
  }

  /** Flow of a hole of 0.02 m and 0.6 from a gauge pressure to the air outside, as printed. */
  private static String flow(String verb, double psig, String tail) {
    double area = 0.6 * ClosedForms.circle(0.02);
    double flow = ClosedForms.nozzle(area, Bench.AMBIENT + psig * PSI, 480, Bench.AMBIENT);
    return verb + String.format(Locale.ROOT, "%.3f kg/s", flow) + tail;
  }

  private static Bench core(double hot, double cold) {
    return new Bench(HeatExchanger.KIND.build(Samples.exchanger()))
        .at("hot in", 40, hot)
        .at("hot out", 40, hot)
        .at("cold in", 4, cold)
        .at("cold out", 4, cold);
  }

  private static Stream<Row> exchanger() {
    return Stream.of(
        row(
            core(650, 320),
            "still",
            "no heat",
            "0.000 kg/s of 650 K air against 0.000 kg/s of 320 K air: nothing to exchange"),
        row(
            core(650, 320).at("hot out", 38, 480).at("cold out", 3.2, 430),
            "cools",
            "cools to 480 K",
            "0.700 kg/s of 650 K air against 1.000 kg/s of 320 K air"));
  }

  private static Bench fed(Kind kind, KindFacts facts, double psig, double control) {
    return new Bench(kind.build(facts)).at("duct", psig, 450).control(0, control);
  }

  private static KindFacts tube() {
    return hole()
        .with("takes from", "duct")
        .with("open when", new BenchFacts.Words("anti-ice is ON"))
        .si("needs", 12 * PSI, Dimension.GAUGE_PRESSURE);
  }

  private static Stream<Row> users() {
    double wanted = 52 * Samples.LB_MIN;
    KindFacts tank =
        new KindFacts().with("takes from", "duct").si("needs", 10 * PSI, Dimension.GAUGE_PRESSURE);
    Bench tankHigh = new Bench(DeadEndedUser.KIND.build(tank)).at("duct", 15, 400);
    Bench tankLow = new Bench(DeadEndedUser.KIND.build(tank)).at("duct", 7, 400);
    return Stream.of(
        row(fed(FlowUser.KIND, Samples.user(), 30, 0), "off", "off", "nothing asks for air"),
        row(
            fed(FlowUser.KIND, Samples.user(), 45, wanted),
            "fed",
            "takes 0.393 kg/s",
            "duct 45.0 psig is over the 12.0 psig it needs by 33.0 psi"),
        row(
            fed(FlowUser.KIND, Samples.user(), 0, wanted),
            "starved",
            "starved, takes 0.000 kg/s",
            "duct 0.0 psig is under the 12.0 psig it needs by 12.0 psi: it gets none of"
                + " its 0.393 kg/s"),
        row(fed(OrificeUser.KIND, tube(), 30, 0), "off", "off", "not: anti-ice is ON"),
        row(
            fed(OrificeUser.KIND, tube(), 0, 1),
            "starved",
            "starved, no flow",
            "duct 0.0 psig is under the 12.0 psig it needs by 12.0 psi"),
        row(
            tankHigh,
            "held up",
            "held up",
            "duct 15.0 psig is over the 10.0 psig it needs by 5.0 psi"),
        row(tankLow, "low", "low", "duct 7.0 psig is under the 10.0 psig it needs by 3.0 psi"));
  }

  private static Bench turning(double psig, double open) {
    Bench bench = new Bench(Starter.KIND.build(StarterTest.facts())).at("duct", psig, 478);
    bench.e.conditions = Conditions.standardDay(0, 0);
    return bench.control(0, open);
  }

  private static Stream<Row> starter() {
    return Stream.of(
        row(turning(35, 0), "off", "off", "not: start switch is START"),
        row(
            turning(35, 1),
            "turns",
            "takes 0.718 kg/s",
            "duct 35.0 psig is over the 28.0 psig it needs by 7.0 psi; torque 100 % of its map"),
        row(
            turning(21, 1),
            "starved",
            "starved, takes 0.516 kg/s",
            "duct 21.0 psig is under the 28.0 psig it needs by 7.0 psi; torque 60 % of its map"));
  }
}

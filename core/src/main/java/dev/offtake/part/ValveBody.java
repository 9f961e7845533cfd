package dev.offtake.part;

import dev.offtake.air.GasState;
import dev.offtake.flow.Flow;
import dev.offtake.flow.FlowLaw;
import dev.offtake.flow.NozzleLaw;
import dev.offtake.flow.OpeningCurve;
import dev.offtake.flow.ValveLaw;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What all valves share: a body with a bore, an effective area, a leak, a law and a way of being locked or stuck.
 *
 * <p>Area = leak + (effective area − leak)·curve(opening), in both directions (physics §5). The first parameters of
 * every valve are {@link #AREA}, {@link #LEAK} and {@link #STUCK}; its first control is {@link #LOCK}.
 *
 * @param leg way of air
 * @param xT pressure ratio factor of IEC 60534; NaN for the nozzle law
 * @param curve opening to share of area
 * @param floor smallest area, m²: no point of a network is ever exactly isolated
 * @param parameters of the body
 */
record ValveBody(Leg leg, double xT, OpeningCurve curve, double floor, List<Parameter> parameters) {
  /** Parameter: effective area when open, m². */
  static final int AREA = 0;

  /** Parameter: effective area when shut, m². */
  static final int LEAK = 1;

  /** Parameter: opening at which the valve is stuck, 0..1; {@link #FREE} when it moves. */
  static final int STUCK = 2;

  /** Number of parameters of a body. */
  static final int COUNT = 3;

  /** Control: {@link #FREE}, {@link #LOCKED_SHUT}, {@link #LOCKED_OPEN} or {@link #CAPPED}. */
  static final int LOCK = 0;

  static final double FREE = -1;
  static final double LOCKED_SHUT = 0;
  static final double LOCKED_OPEN = 1;
  static final double CAPPED = 2;

  /** Tightest closure that is reckoned with, as a share of the effective area. */
  private static final double TIGHTEST = 1e-5;

  /** A bore that keeps a part complete when the file gives none, m. */
  private static final double HARMLESS_BORE = 0.1;

  /** Effective area of a Kv of 1 m³/h: water of 1000 kg/m³ at 1 bar, IEC 60534-1; m². */
  private static final double AREA_OF_KV = 1 / 3600.0 * Math.sqrt(1000 / 2e5);

  /** Temperature and outlet pressure at which a stated leak is understood, K and Pa. */
  private static final double LEAK_T = 288.15;

  private static final double LEAK_P = 101325;

  /** Keeps its parameters. */
  ValveBody {
    parameters = List.copyOf(parameters);
  }

  /**
   * How a kind's body usually is.
   *
   * @param leakKey key of the leak, as manuals of that kind call it
   * @param usualLeak assumed when nothing is said
   * @param usualXt pressure ratio factor, assumption ±0.1
   * @param curves names of opening curves, the usual one first
   * @param unit removable unit that is the body
   */
  record Usual(
      String leakKey, String usualLeak, String usualXt, List<String> curves, String unit) {}

  /** Keys of a body, followed by those of the kind itself. */
  static List<Key> keys(Usual usual, String path, Key... own) {
    List<Key> keys = new ArrayList<>();
    keys.add(
        Key.of("path", Form.PATH, path, "Where air comes from and where it goes through the valve.")
            .must());
    keys.add(Key.quantity("bore", Dimension.LENGTH, "3.5 in", "Inner diameter of the valve."));
    keys.addAll(List.of(own));
    keys.add(
        Key.at(
                usual.leakKey(),
                Dimension.MASS_FLOW,
                Dimension.PRESSURE_DIFFERENCE,
                "0..0.2 lb/min at 30 psid",
                "What the shut valve lets pass, and the pressure difference at which it does.")
            .usually(usual.usualLeak()));
    keys.add(
        Key.quantity(
                "flow coefficient",
                Dimension.NUMBER,
                "0.7",
                "Effective area of the open valve over the area of its bore.")
            .usually("0.7"));
    keys.add(
        Key.quantity(
            "capacity",
            Dimension.VALVE_CAPACITY,
            "120 Kv",
            "Flow coefficient Kv or Cv of the open valve, in place of bore and flow coefficient."));
    keys.add(
        Key.choice(
            "law",
            List.of("valve", "nozzle"),
            "Flow law: that of IEC 60534 for valves, or an ideal nozzle of the effective area."));
    keys.add(
        Key.quantity(
                "x_T",
                Dimension.NUMBER,
                usual.usualXt(),
                "Share of the upstream pressure that may be lost before the valve chokes.")
            .usually(usual.usualXt()));
    keys.add(Key.choice("curve", usual.curves(), "How opening turns into area."));
    return List.copyOf(keys);
  }

  /** Reads a body from a file. */
  static ValveBody read(Facts facts, Usual usual) {
    Facts.Path path = facts.path("path");
    double xT = "nozzle".equals(facts.choice("law")) ? Double.NaN : facts.si("x_T");
    Parameter area = area(facts, usual.unit());
    double floor = TIGHTEST * area.value();
    Parameter leak = leak(facts, usual, law(xT), floor, area.max());
    Parameter stuck =
        new Parameter("stuck at", FREE, FREE, FREE, FREE, 1, Dimension.SHARE, usual.unit());
    double bore = facts.has("bore") ? facts.si("bore") : Double.NaN;
    return new ValveBody(
        new Leg(path.from(), path.to(), bore, path.bothWays()),
        xT,
        OpeningCurve.named(facts.choice("curve")),
        floor,
        List.of(area, leak, stuck));
  }

  /** The body's parameters followed by those of the kind. */
  List<Parameter> with(List<Parameter> own) {
    List<Parameter> all = new ArrayList<>(parameters);
    all.addAll(own);
    return List.copyOf(all);
  }

  /** The control that line-ups set. */
  static Control lock() {
    return Control.memory("lock", FREE);
  }

  /** Makes the law of the body. */
  FlowLaw law() {
    return law(xT);
  }

  /** What a valve does that is capped, stuck or locked; null when it moves freely. */
  static @Nullable Doing held(View view) {
    double lock = view.control(LOCK);
    if (lock == CAPPED) {
      return new Doing("removed and capped", "removed", "it is removed and its port is capped");
    }
    double stuck = view.parameter(STUCK);
    if (stuck >= 0) {
      String word = Openings.word(stuck);
      return new Doing("stuck", "stuck " + word, "it is stuck and no longer moves");
    }
    if (lock == LOCKED_SHUT) {
      return new Doing("locked shut", "locked shut", "the line-up locks it shut");
    }
    if (lock == LOCKED_OPEN) {
      return new Doing("locked open", "locked open", "the line-up locks it open");
    }
    return null;
  }

  private static FlowLaw law(double xT) {
    return Double.isNaN(xT) ? new NozzleLaw() : new ValveLaw(xT);
  }

  private static Parameter area(Facts facts, String unit) {
    if (facts.has("capacity")) {
      Stated kv = facts.stated("capacity");
      double area = kv.nominal() * AREA_OF_KV;
      return new Parameter(
          "effective area",
          area,
          kv.low() * AREA_OF_KV,
          kv.high() * AREA_OF_KV,
          0,
          2 * area,
          Dimension.AREA,
          unit);
    }
    Stated coefficient = facts.stated("flow coefficient");
    Stated bore = facts.has("bore") ? facts.stated("bore") : missingBore(facts);
    return new Parameter(
        "effective area",
        coefficient.nominal() * circle(bore.nominal()),
        coefficient.low() * circle(bore.low()),
        coefficient.high() * circle(bore.high()),
        0,
        Math.max(1, coefficient.high()) * circle(bore.high()),
        Dimension.AREA,
        unit);
  }

  private static Stated missingBore(Facts facts) {
    facts.problem(
        "bore",
        "Neither a bore nor a capacity says how much air the valve passes",
        "Add a line such as `bore: 3.5 in` or `capacity: 120 Kv`");
    return Stated.of(HARMLESS_BORE, Dimension.LENGTH);
  }

  private static Parameter leak(
      Facts facts, Usual usual, FlowLaw law, double floor, double most) {
    Facts.At leak = facts.at(usual.leakKey());
    double drop = leak.at().nominal();
    double perArea = drop > 0 ? flowOfOneSquareMetre(law, drop) : Double.NaN;
    if (!(perArea > 0)) {
      facts.problem(
          usual.leakKey(),
          "A leak needs the pressure difference at which it was measured",
          "Write it as `0..0.2 lb/min at 30 psid`");
      perArea = Double.POSITIVE_INFINITY;
    } else if (facts.has(usual.leakKey())) {
      facts.assume(
          usual.leakKey(), "the leak was measured with air of 59 °F into 14.7 psia, no more said");
    }
    return new Parameter(
        usual.leakKey(),
        Math.max(floor, leak.value().nominal() / perArea),
        Math.max(floor, leak.value().low() / perArea),
        Math.max(floor, leak.value().high() / perArea),
        floor,
        most,
        Dimension.AREA,
        usual.unit());
  }

  private static double flowOfOneSquareMetre(FlowLaw law, double drop) {
    GasState one = new GasState();
    one.set(Math.log((LEAK_P + drop) / 1e5), LEAK_T);
    GasState two = new GasState();
    two.set(Math.log(LEAK_P / 1e5), LEAK_T);
    Flow flow = new Flow();
    law.evaluate(one, two, 1, flow);
    return flow.mdot;
  }

  private static double circle(double diameter) {
    return Math.PI / 4 * diameter * diameter;
  }
}

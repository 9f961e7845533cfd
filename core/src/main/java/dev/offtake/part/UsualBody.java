package dev.offtake.part;

import dev.offtake.air.GasState;
import dev.offtake.flow.Flow;
import dev.offtake.flow.FlowLaw;
import dev.offtake.flow.NozzleLaw;
import dev.offtake.flow.OpeningCurve;
import dev.offtake.flow.ValveLaw;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How the {@link ValveBody} of a kind usually is, and how it is read from a file.
 *
 * @param leakKey key of the leak, as manuals of that kind call it
 * @param mostLeak largest leak of a usual valve, lb/min at 30 psid
 * @param xT usual pressure ratio factor x_T of IEC 60534, good to 0.1: 0.4 for a butterfly, 0.7 for
 *     a poppet or a flapper (assumptions)
 * @param curves names of opening curves, the usual one first
 * @param unit removable unit that is the body
 */
record UsualBody(String leakKey, String mostLeak, String xT, List<String> curves, String unit) {
  /** Opening curves of a valve whose area grows with its stroke. */
  static final List<String> LINEAR_FIRST = List.of("linear", "butterfly", "equal percentage");

  /** Opening curves of a disc that turns. */
  static final List<String> BUTTERFLY_FIRST = List.of("butterfly", "linear", "equal percentage");

  /**
   * Leak of a sound valve where the file gives none, lb/min at 30 psid (common practice, no
   * source).
   *
   * <p>Seat leaks spread over decades, and a sound valve sits near the low end of the usual range,
   * at what a shop's leak test can just measure. The middle of the range would be a worn seat: in a
   * dead space between shut valves, where nothing but leaks decides the pressure, it would let a
   * healthy system rise until it trips.
   */
  private static final String SOUND_LEAK = "0.02";

  /** Tightest closure that is reckoned with, as a share of the effective area. */
  private static final double TIGHTEST = 1e-5;

  /** Slower than this a valve is stuck (common practice, no source). */
  private static final double SLOWEST = 100;

  /** With more friction than this a valve counts as stuck. */
  private static final double STIFFEST = 0.5;

  /** A bore that keeps a part complete when the file gives none, m. */
  private static final double HARMLESS_BORE = 0.1;

  private static final double HARMLESS_XT = 0.7;

  /** Effective area of a Kv of 1 m³/h: water of 1000 kg/m³ at 1 bar, IEC 60534-1; m². */
  private static final double AREA_OF_KV = 1 / 3600.0 * Math.sqrt(1000 / 2e5);

  /** Temperature and outlet pressure at which a stated leak is understood, K and Pa. */
  private static final double LEAK_T = 288.15;

  private static final double LEAK_P = 101325;

  /** Keeps its curves. */
  UsualBody {
    curves = List.copyOf(curves);
  }

  /** The sound leak within the usual range, as a file would write it. */
  private String usualLeak() {
    BigDecimal sound = new BigDecimal(SOUND_LEAK);
    return "%s lb/min +%s -%s at 30 psid"
        .formatted(sound, new BigDecimal(mostLeak).subtract(sound), sound);
  }

  /**
   * Keys of a body with those of the kind itself among them.
   *
   * @param path example of the path
   * @param own keys of the kind
   */
  List<Key> keys(String path, Key... own) {
    List<Key> keys = new ArrayList<>();
    keys.add(
        Key.of("path", Form.PATH, path, "Where air comes from and where it goes through the valve.")
            .must());
    keys.add(Key.quantity("bore", Dimension.LENGTH, "3.5 in", "Inner diameter of the valve."));
    keys.addAll(List.of(own));
    keys.add(
        Key.at(
                leakKey,
                Dimension.MASS_FLOW,
                Dimension.PRESSURE_DIFFERENCE,
                "0..0.2 lb/min at 30 psid",
                "What the shut valve lets pass, and the pressure difference at which it does.")
            .usually(usualLeak()));
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
                "0.7",
                "Share of the upstream pressure that may be lost before the valve chokes.")
            .usually(xT + " +/- 0.1"));
    keys.add(Key.choice("curve", curves, "How opening turns into area."));
    return List.copyOf(keys);
  }

  /** Reads a body from a file; the parameters of its kind are still missing. */
  ValveBody read(Facts facts) {
    Facts.Path path = facts.path("path");
    boolean iec = !"nozzle".equals(facts.choice("law"));
    Parameter area = area(facts);
    double floor = TIGHTEST * area.value();
    List<Parameter> parameters = new ArrayList<>();
    parameters.add(area);
    @Nullable Parameter xT = iec ? xT(facts) : null;
    if (xT != null) {
      parameters.add(leak(facts, new ValveLaw(xT.value()), floor, area.max()));
    } else {
      parameters.add(leak(facts, new NozzleLaw(), floor, area.max()));
    }
    parameters.add(stuck());
    parameters.add(Parameter.exactly("most opening", 1, 0, 1, Dimension.SHARE, unit));
    parameters.add(Parameter.exactly("slowness", 1, 0.1, SLOWEST, Dimension.NUMBER, unit));
    parameters.add(Parameter.exactly("friction", 0, 0, STIFFEST, Dimension.SHARE, unit));
    if (xT != null) {
      parameters.add(xT);
    }
    double bore = facts.has("bore") ? facts.si("bore") : Double.NaN;
    return new ValveBody(
        new Leg(path.from(), path.to(), bore, path.bothWays()),
        iec,
        OpeningCurve.named(facts.choice("curve")),
        floor,
        parameters);
  }

  private Parameter stuck() {
    double free = ValveBody.FREE;
    return new Parameter("stuck at", free, free, free, free, 1, Dimension.SHARE, unit);
  }

  private Parameter xT(Facts facts) {
    double least = ValveBody.LEAST_XT;
    double most = ValveBody.MOST_XT;
    Parameter stated = facts.parameter("x_T", least, most, unit);
    if (stated.low() >= least && stated.high() <= most) {
      return stated;
    }
    facts.problem(
        "x_T",
        "It must lie between " + least + " and " + most + ", its tolerance included",
        "Usual are 0.4 to 0.8");
    return Parameter.exactly("x_T", HARMLESS_XT, least, most, Dimension.NUMBER, unit);
  }

  private Parameter area(Facts facts) {
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
        coefficient.nominal() * Bore.area(bore.nominal()),
        coefficient.low() * Bore.area(bore.low()),
        coefficient.high() * Bore.area(bore.high()),
        0,
        Math.max(1, coefficient.high()) * Bore.area(bore.high()),
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

  private Parameter leak(Facts facts, FlowLaw law, double floor, double most) {
    Facts.At leak = facts.at(leakKey);
    double drop = leak.at().nominal();
    double perArea = drop > 0 ? flowOfOneSquareMetre(law, drop) : Double.NaN;
    if (!(perArea > 0)) {
      facts.problem(
          leakKey,
          "A leak needs the pressure difference at which it was measured",
          "Write it as `0..0.2 lb/min at 30 psid`");
      perArea = Double.POSITIVE_INFINITY;
    } else if (facts.has(leakKey)) {
      facts.assume(leakKey, "the leak was measured with air of 59 °F into 14.7 psia, no more said");
    }
    return new Parameter(
        leakKey,
        Math.max(floor, leak.value().nominal() / perArea),
        Math.max(floor, leak.value().low() / perArea),
        Math.max(floor, leak.value().high() / perArea),
        floor,
        most,
        Dimension.AREA,
        unit);
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
}

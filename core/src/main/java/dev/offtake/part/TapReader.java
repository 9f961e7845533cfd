package dev.offtake.part;

import dev.offtake.air.GasState;
import dev.offtake.flow.Flow;
import dev.offtake.flow.NozzleLaw;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.quantity.Stated;
import java.util.List;

/**
 * Makes a tap from what a file says: corrects speeds and takes the port's loss out of the readings.
 */
final class TapReader {
  private final TapKind kind;
  private final Facts facts;
  private final Conditions day;
  private final Parameter area;
  private final Flow flow = new Flow();
  private final NozzleLaw port = new NozzleLaw();

  TapReader(TapKind kind, Facts facts) {
    this.kind = kind;
    this.facts = facts;
    day = facts.day("taken on");
    area =
        Bore.parameter("flow area", facts.stated("bore"), facts.stated("flow coefficient"), "tap");
  }

  Tap tap() {
    TapCurve curve = curve();
    Parameter between =
        new Parameter(
            "curve between points",
            0,
            -TapCurve.SPREAD,
            TapCurve.SPREAD,
            -4 * TapCurve.SPREAD,
            4 * TapCurve.SPREAD,
            Dimension.NUMBER,
            "engine");
    facts.assume(
        "table",
        "between the table's points the pressure above the inlet's is good to 5 % at mid-gap");
    List<Parameter> parameters =
        List.of(facts.parameter("pressure factor", 0.2, 1.5, "engine"), between, area, droop());
    Leg leg = new Leg("", facts.point("to"), facts.si("bore"), false);
    Control runs = Commands.onWhen(facts, "runs when", "running");
    return new Tap(facts.name(), kind, leg, parameters, runs, curve, coreFlowFactor(curve));
  }

  private Parameter droop() {
    boolean given = facts.has("droop");
    if (!facts.has("core flow")) {
      facts.assume(
          "droop",
          "the engine's pressure does not fall with the air drawn: core flow is not known");
    }
    if (!given) {
      return new Parameter("droop", 0, 0, 1, 0, 3, Dimension.NUMBER, "engine");
    }
    return facts.parameter("droop", 0, 3, "engine");
  }

  /** Core flow over p/√T of the tap, kg/s √K/Pa: a choked turbine holds it constant. */
  private double coreFlowFactor(TapCurve curve) {
    if (!facts.has("core flow")) {
      return 0;
    }
    Facts.At at = facts.at("core flow");
    double p = day.inletP() * curve.pressure(corrected(at.at().nominal()), 0);
    double t = day.inletT() * curve.temperature(corrected(at.at().nominal()));
    return at.value().nominal() * Math.sqrt(t) / p;
  }

  private double corrected(double speed) {
    return facts.choice("speeds").equals("corrected")
        ? speed
        : speed / Math.sqrt(day.inletT() / Conditions.REFERENCE_T);
  }

  private TapCurve curve() {
    List<double[]> rows = facts.table("table");
    double bleed = bleed();
    int n = rows.size();
    double[] speed = new double[n];
    double[] p = new double[n];
    double[] t = new double[n];
    for (int i = 0; i < n; i++) {
      double[] row = rows.get(i);
      speed[i] = corrected(row[0]);
      p[i] = stage(row[1], row[2], bleed) / day.inletP();
      t[i] = row[2] / day.inletT();
    }
    return sound(speed, p, t) ? new TapCurve(speed, p, t) : harmless();
  }

  private static TapCurve harmless() {
    return new TapCurve(new double[] {0.6, 1}, new double[] {1.5, 4}, new double[] {1.15, 1.6});
  }

  private boolean sound(double[] speed, double[] p, double[] t) {
    if (speed.length < 2) {
      facts.problem(
          "table", "a tap needs two points or more", "Add a row for another speed, such as idle.");
      return false;
    }
    for (int i = 0; i < speed.length; i++) {
      if (!(p[i] > 1) || !(t[i] > 1) || !(speed[i] > 0)) {
        facts.problem(
            "table",
            "row " + (i + 1) + " is not above the pressure and temperature of the engine's inlet",
            "Check the row and the day under \"taken on\"; psig or psia?");
        return false;
      }
      if (i > 0 && !(speed[i] > speed[i - 1] && p[i] > p[i - 1] && t[i] > t[i - 1])) {
        facts.problem(
            "table",
            "row " + (i + 1) + " does not rise above the row before it",
            "Sort the rows by speed; pressure and temperature must rise with it.");
        return false;
      }
    }
    return true;
  }

  private double bleed() {
    String text = facts.text("with");
    if (text.isBlank() || text.equals("no bleed")) {
      return 0;
    }
    try {
      Stated read = QuantityReader.read(text, Dimension.MASS_FLOW);
      return read.nominal();
    } catch (QuantityProblem problem) {
      facts.problem("with", problem.wrong(), problem.mend());
      return 0;
    }
  }

  /** Pressure behind the port that gives a manifold reading at a bleed, Pa. */
  private double stage(double read, double t, double bleed) {
    if (bleed <= 0 || facts.choice("read").equals("at port")) {
      return read;
    }
    double low = read;
    double high = 2 * read;
    if (passes(high, read, t) < bleed) {
      facts.problem(
          "with",
          "so much air would lose more than half of its pressure in the port",
          "Check the bleed, the bore, and whether the pressures were read in the manifold.");
      return read;
    }
    for (int i = 0; i < 60; i++) {
      double middle = 0.5 * (low + high);
      if (passes(middle, read, t) < bleed) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }

  private double passes(double from, double to, double t) {
    GasState one = new GasState();
    GasState two = new GasState();
    one.set(Math.log(from / 1e5), t);
    two.set(Math.log(to / 1e5), t);
    port.evaluate(one, two, area.value(), flow);
    return flow.mdot;
  }
}

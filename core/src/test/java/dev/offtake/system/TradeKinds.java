package dev.offtake.system;

import dev.offtake.logic.Condition;
import dev.offtake.part.Branch;
import dev.offtake.part.Control;
import dev.offtake.part.Doing;
import dev.offtake.part.Element;
import dev.offtake.part.Evaluation;
import dev.offtake.part.Facts;
import dev.offtake.part.Form;
import dev.offtake.part.Key;
import dev.offtake.part.Kind;
import dev.offtake.part.Leg;
import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import dev.offtake.part.View;
import dev.offtake.part.Wiring;
import dev.offtake.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * Kinds with every form of line and no law, so that the reader is tested without the physics. Their
 * parts keep what they were told.
 */
final class TradeKinds {
  private TradeKinds() {}

  static final Kind TAP =
      kind(
          "compressor tap",
          List.of(),
          Key.of("to", Form.POINT, "mid duct", "Where the air goes.").must(),
          Key.quantity("bore", Dimension.LENGTH, "3.4 in", "Inner diameter.").usually("3 in"),
          Key.of("taken on", Form.DAY, "standard day", "Day of the table."),
          Key.choice("read", List.of("at port", "in manifold"), "Where it was read."),
          Key.of("with", Form.TEXT, "no bleed", "Air drawn."),
          Key.of(
                  "table",
                  Form.TABLE,
                  "columns: [core %, psig, degF], rows: [[62, 8.1, 188]]",
                  "Stage pressures.")
              .among("SHARE", "PRESSURE", "TEMPERATURE")
              .must());

  static final Kind CHECK_VALVE =
      kind(
          "check valve",
          List.of("open", "shut"),
          Key.of("path", Form.PATH, "mid duct -> interstage", "Way of the air.").must(),
          Key.quantity("bore", Dimension.LENGTH, "3.5 in", "Inner diameter.").must(),
          Key.quantity("cracks at", Dimension.PRESSURE_DIFFERENCE, "0.3 psid", "Crack.")
              .usually("0.3 psid"),
          Key.at(
              "back leak",
              Dimension.MASS_FLOW,
              Dimension.PRESSURE_DIFFERENCE,
              "0..0.2 lb/min at 30 psid",
              "Leak when shut."));

  static final Kind REGULATOR =
      kind(
          "regulator",
          List.of("open", "shut"),
          Key.of("path", Form.PATH, "high duct -> interstage", "Way of the air.").must(),
          Key.of("holds", Form.READING, "duct pressure", "What it holds.").must(),
          Key.quantity("set to", Dimension.GAUGE_PRESSURE, "42 psig +/- 3", "Set.").must(),
          Key.quantity("droop", Dimension.PRESSURE_DIFFERENCE, "4..8 psi", "Droop.")
              .usually("6 psi"),
          Key.of("shut when", Form.CONDITION, "bleed switch is OFF", "When it is shut."),
          Key.of("fed by", Form.BUS, "dc bus", "Electrical power."),
          Key.choice("without power", List.of("shuts", "opens", "stays"), "Without power."),
          Key.of("without muscle", Form.BELOW, "shuts below 8 psig", "Without muscle.")
              .in(Dimension.GAUGE_PRESSURE)
              .among("shuts", "opens"));

  static final Kind SHUTOFF_VALVE =
      kind(
          "shutoff valve",
          List.of("open", "shut"),
          Key.of("path", Form.PATH, "left duct <-> right duct", "Way of the air.").must(),
          Key.of("open when", Form.CONDITION, "isolation is OPEN", "When it is open."),
          Key.choice("without power", List.of("stays", "shuts", "opens"), "Without power."));

  static final Kind FLOW_USER =
      kind(
          "flow user",
          List.of(),
          Key.of("takes from", Form.POINT, "duct", "Where it takes air.").must(),
          new Key(
              "takes",
              Form.QUANTITY_WHEN,
              Dimension.MASS_FLOW,
              null,
              true,
              "",
              List.of(),
              "52 lb/min when pack switch is ON",
              "Air that it takes."),
          Key.quantity("needs", Dimension.GAUGE_PRESSURE, "12 psig", "Least pressure."));

  static final Kind TRIP =
      kind(
          "trip",
          List.of("tripped"),
          Key.of("watches", Form.READING, "duct temperature", "What it watches.").must(),
          Key.of("above", Form.LIMIT, "490 degF for 3 s", "Limit.").in(Dimension.TEMPERATURE),
          Key.of("resets", Form.RESET, "by hand below 440 degF", "How it comes back.")
              .in(Dimension.TEMPERATURE));

  static final Kind LIGHT =
      kind(
          "light",
          List.of("lit"),
          Key.of("lit when", Form.CONDITION, "overheat trip is tripped", "When it is lit.").must());

  static final Kind GAUGE =
      kind(
          "gauge",
          List.of(),
          Key.of("needles", Form.NEEDLES, "{L: left duct pressure}", "Needles."),
          Key.of("reads", Form.READING, "interstage pressure", "What it reads."),
          Key.quantity("scale", Dimension.GAUGE_PRESSURE, "0..80 psig", "Scale."),
          Key.quantity("step", Dimension.PRESSURE_DIFFERENCE, "1 psi", "Step."),
          Key.quantity("good to", Dimension.PRESSURE_DIFFERENCE, "1 psi", "Error."),
          Key.quantity("good to constant", Dimension.PRESSURE_DIFFERENCE, "0.8 psi", "Bias."),
          Key.quantity("good to each reading", Dimension.PRESSURE_DIFFERENCE, "0.3 psi", "Noise."),
          Key.of("of", Form.PART, "bleed regulator", "Part on which it sits."),
          Key.of("seen", Form.TEXT, "flight deck", "Where it is seen."));

  static final List<Kind> ALL =
      List.of(TAP, CHECK_VALVE, REGULATOR, SHUTOFF_VALVE, FLOW_USER, TRIP, LIGHT, GAUGE);

  private static Kind kind(String name, List<String> positions, Key... keys) {
    return new Plain(name, List.of(keys), positions);
  }

  private record Plain(String name, List<Key> keys, List<String> positions) implements Kind {
    @Override
    public String says() {
      return "A " + name + " without a law.";
    }

    @Override
    public String symbol() {
      return "";
    }

    @Override
    public List<String> removableUnits() {
      return List.of(name);
    }

    @Override
    public Part build(Facts facts) {
      return Told.of(this, facts);
    }
  }

  /** A part that remembers what it was told. */
  record Told(String name, String kind, List<Leg> legs, List<Control> controls, Facts facts)
      implements Part {
    static Told of(Plain kind, Facts facts) {
      List<Leg> legs = new ArrayList<>();
      List<Control> controls = new ArrayList<>();
      for (Key key : kind.keys()) {
        if (key.form() == Form.PATH) {
          Facts.Path path = facts.path(key.name());
          legs.add(new Leg(path.from(), path.to(), Double.NaN, path.bothWays()));
        } else if (key.form() == Form.POINT) {
          boolean tap = key.name().equals("to");
          String point = facts.point(key.name());
          legs.add(tap ? new Leg("", point, 0.1, false) : new Leg(point, "ambient", 0.1, false));
        } else if (key.form() == Form.CONDITION) {
          Condition when = facts.condition(key.name());
          if (when != null) {
            controls.add(new Control(key.name(), 0, List.of(new Control.Rule(when, 1, "so"))));
          }
        }
      }
      return new Told(facts.name(), kind.name(), legs, controls, facts);
    }

    @Override
    public List<Parameter> parameters() {
      return List.of();
    }

    @Override
    public Element element(Wiring wiring) {
      return new Element() {
        @Override
        public List<Branch> branches() {
          return List.of();
        }

        @Override
        public void evaluate(Evaluation e) {}
      };
    }

    @Override
    public Doing doing(View view) {
      return new Doing("", "", "");
    }
  }
}

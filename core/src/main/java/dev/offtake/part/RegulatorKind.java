package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What a file says of a {@link Regulator}. */
final class RegulatorKind implements Kind {
  /** Standard pressure at sea level, Pa (U.S. Standard Atmosphere 1976). */
  static final double STANDARD_P = 101325;

  private static final double PSI = 6894.757293168;

  /** From first movement to whole stroke when a file does not say, Pa (4 psi; assumption). */
  private static final double USUAL_MUSCLE_SPAN = 4 * PSI;

  private static final double SMALLEST_SPAN = 0.05 * PSI;

  private static final double MOST = 5e6;

  /** A line that is slower than this is blocked (common practice, no source). */
  private static final double MOST_SLOWNESS = 1000;

  private static final UsualBody USUAL =
      new UsualBody("leak", "0.5", "0.4", UsualBody.LINEAR_FIRST, "valve body");

  @Override
  public String name() {
    return "regulator";
  }

  @Override
  public String says() {
    return "Holds the pressure at a point by throttling, and shuts on command; high stage valves"
        + " and bleed regulators are such.";
  }

  @Override
  public List<Key> keys() {
    Key holds =
        Key.of("holds", Form.READING, "interstage pressure", "The pressure that it holds.").must();
    Key set =
        Key.quantity("set to", Dimension.PRESSURE, "32 psig +/- 3", "The pressure it is set to.")
            .must();
    Key droop =
        Key.quantity(
                "droop",
                Dimension.PRESSURE_DIFFERENCE,
                "unknown 4..8 psi",
                "How far the held pressure rises from wide open to shut.")
            .usually("unknown 3..6 psi");
    Key reference =
        Key.choice(
            "reference", List.of("ambient", "absolute"), "What its set pressure counts from.");
    Key without =
        Key.of(
                "without muscle",
                Form.BELOW,
                "shuts below 8 psig",
                "What it does when the air that moves it is too weak, and below which pressure.")
            .in(Dimension.GAUGE_PRESSURE)
            .among("shuts", "opens");
    Key full =
        Key.quantity(
            "full muscle at",
            Dimension.GAUGE_PRESSURE,
            "12 psig",
            "Pressure that gives it its whole stroke; 4 psi above the first movement if not said.");
    Key from =
        Key.of(
            "muscle from",
            Form.POINT,
            "duct",
            "Where the air that moves it is taken; upstream" + " if not said.");
    return USUAL.keys(
        "interstage -> duct",
        holds,
        set,
        droop,
        reference,
        Command.SHUT_WHEN,
        Command.FED_BY,
        Command.WITHOUT_POWER,
        without,
        full,
        from);
  }

  @Override
  public String symbol() {
    return "pressure regulator";
  }

  @Override
  public List<String> removableUnits() {
    return List.of(
        "valve body", "control head", "sense line", "servo line", "solenoid", CommandModes.WIRING);
  }

  @Override
  public List<String> positions() {
    return Valve.POSITIONS;
  }

  @Override
  public Map<String, String> assumes() {
    return Map.of(
        "set to",
        "the set is the middle of the droop: what it holds when half open; wide open it holds half"
            + " the droop less, nearly shut half the droop more");
  }

  @Override
  public Part build(Facts facts) {
    ValveBody body = USUAL.read(facts);
    Facts.Reading reading = facts.reading("holds");
    if (reading != null && reading.temperature()) {
      facts.problem(
          "holds", "A regulator holds a pressure", "Write `" + reading.point() + " pressure`");
    }
    String holds = reading == null ? body.leg().to() : reading.point();
    Facts.Below below = facts.below("without muscle");
    List<Parameter> own = new ArrayList<>();
    boolean absolute = set(facts, own);
    own.add(facts.parameter("droop", 0.02 * PSI, MOST, "control head"));
    own.add(share("sense line loss", 0, "sense line"));
    lines(absolute, own);
    muscle(facts, below, own);
    facts.assume("reverse closing", "it shuts within 0.3 psi of reverse pressure difference");
    return new Regulator(
        facts.name(),
        body.with(own),
        holds,
        facts.has("muscle from") ? facts.point("muscle from") : body.leg().from(),
        absolute,
        below != null && "opens".equals(below.word()),
        Command.read(facts, Command.WIDE),
        facts.choice("without power"));
  }

  /** Adds what lines, vent and actuator do when they are healthy. */
  private static void lines(boolean absolute, List<Parameter> own) {
    own.add(share("sense line open", 1, "sense line"));
    own.add(held("sense line holds", Dimension.PRESSURE_DIFFERENCE, "sense line"));
    own.add(
        Parameter.exactly(
            "sense line slowness", 1, 1, MOST_SLOWNESS, Dimension.NUMBER, "sense line"));
    own.add(share("vent open", absolute ? 0 : 1, "control head"));
    own.add(held("vent holds", Dimension.ABSOLUTE_PRESSURE, "control head"));
    own.add(share("muscle share", 1, "valve body"));
  }

  private static Parameter held(String name, Dimension dimension, String unit) {
    return Parameter.exactly(name, 0, 0, MOST, dimension, unit);
  }

  /** Adds the set and tells whether it counts from vacuum. */
  private static boolean set(Facts facts, List<Parameter> own) {
    Stated set = facts.stated("set to");
    boolean given = set.dimension() == Dimension.ABSOLUTE_PRESSURE;
    boolean absolute =
        facts.has("reference") ? "absolute".equals(facts.choice("reference")) : given;
    double shift = 0;
    if (absolute != given) {
      shift = absolute ? STANDARD_P : -STANDARD_P;
      facts.assume("set to", "its set was stated on a standard day at sea level (14.7 psia)");
    }
    Dimension dimension = absolute ? Dimension.ABSOLUTE_PRESSURE : Dimension.GAUGE_PRESSURE;
    own.add(
        new Parameter(
            "set",
            set.nominal() + shift,
            set.low() + shift,
            set.high() + shift,
            0,
            MOST,
            dimension,
            "control head"));
    return absolute;
  }

  private static void muscle(Facts facts, Facts.@Nullable Below below, List<Parameter> own) {
    if (below == null) {
      facts.assume("without muscle", "it is never short of muscle");
      return;
    }
    Stated none = below.value();
    double span = USUAL_MUSCLE_SPAN;
    if (facts.has("full muscle at")) {
      span = facts.si("full muscle at") - none.nominal();
    } else {
      facts.assume("full muscle at", "4 psi above its first movement it has its whole stroke");
    }
    if (span < SMALLEST_SPAN) {
      facts.problem(
          "full muscle at",
          "It cannot have its whole stroke before it begins to move",
          "Give a pressure above that in `without muscle`");
      span = USUAL_MUSCLE_SPAN;
    }
    own.add(share("servo line loss", 0, "servo line"));
    own.add(
        new Parameter(
            "muscle",
            none.nominal(),
            none.low(),
            none.high(),
            0,
            MOST,
            Dimension.GAUGE_PRESSURE,
            "valve body"));
    own.add(
        Parameter.exactly(
            "muscle span", span, SMALLEST_SPAN, MOST, Dimension.PRESSURE_DIFFERENCE, "valve body"));
  }

  private static Parameter share(String name, double healthy, String unit) {
    return Parameter.exactly(name, healthy, 0, 1, Dimension.SHARE, unit);
  }
}

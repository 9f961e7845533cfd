package dev.offtake.explain;

import dev.offtake.part.Doing;
import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.quantity.Dimension;
import dev.offtake.solve.Solution;
import java.util.Set;

/** What changed at one place, one sentence without a full stop; empty where nothing to speak of. */
final class BreakPlaces {
  /** Regimes of sources and passages that count. */
  private static final Set<String> LOUD =
      Set.of("choked", "deadheaded", "over limit", "outside its table");

  /** What users tell of the pressure above the one that they need. */
  private static final String ROOM = "pressure above need";

  private final Compared c;

  BreakPlaces(Compared c) {
    this.c = c;
  }

  /** What changed at a point: pressure, then temperature. */
  String point(int point) {
    String pressure = c.pressureMoved(point) ? pressure(point) : "";
    String heat = c.temperatureMoved(point) ? heat(point) : "";
    if (pressure.isEmpty() && heat.isEmpty()) {
      return "";
    }
    return c.point(point)
        + " "
        + pressure
        + (pressure.isEmpty() ? "" : heat.isEmpty() ? "" : " and ")
        + heat;
  }

  private String pressure(int point) {
    return (c.pressureChange(point) > 0 ? "rises " : "falls ")
        + c.fromTo(c.pressureWas(point), c.pressureIs(point), Dimension.GAUGE_PRESSURE);
  }

  private String heat(int point) {
    return (c.temperatureChange(point) > 0 ? "heats up " : "cools ")
        + c.fromTo(c.was().temperature(point), c.is().temperature(point), Dimension.TEMPERATURE);
  }

  /** What changed at a part that air flows through; users are told apart. */
  String part(int number) {
    Part part = c.part(number);
    return switch (part.role()) {
      case VALVE -> valve(number);
      case SOURCE -> source(number);
      case PASSAGE -> passage(number);
      case USER -> user(number);
      case WATCH -> "";
    };
  }

  private String valve(int number) {
    Doing did = c.did(number);
    Doing does = c.does(number);
    String name = c.part(number).name();
    boolean regime = c.regimeChanged(number);
    String why = regime ? ": " + does.why() : "";
    double change = c.openingIs(number) - c.openingWas(number);
    if (!did.word().equals(does.word()) && Math.abs(change) > Compared.OPENING) {
      return name
          + " "
          + moves(did.word(), does.word(), change)
          + purpose(number, change, regime)
          + why;
    }
    if (!regime) {
      return "";
    }
    return did.word().equals(does.word())
        ? name + " stays " + does.word() + ", now by another cause" + why
        : name + " is now " + does.word() + ", it was " + did.word() + why;
  }

  private static String moves(String before, String after, double change) {
    boolean share = before.startsWith("about ") && before.endsWith(" open");
    String from = share ? before.substring(0, before.length() - 5) : before;
    if (change > 0) {
      return after.equals("open")
          ? "opens fully from " + from
          : "opens from " + from + " to " + after;
    }
    return after.equals("shut")
        ? "shuts, it was " + before
        : "closes from " + (before.equals("open") ? "wide open" : from) + " to " + after;
  }

  /** What a valve moves for: it makes up what is missing behind it, or holds down what is much. */
  private String purpose(int number, double change, boolean regime) {
    int behind = c.is().network().point(c.part(number).legs().get(0).to());
    if (behind < 0 || !c.pressureMoved(behind)) {
      return "";
    }
    double pressure = c.pressureChange(behind);
    if (change > 0 && pressure < 0) {
      return " to make up";
    }
    return change < 0 && pressure > 0 && !regime ? " to hold it down" : "";
  }

  private String source(int number) {
    String name = c.part(number).name();
    double is = c.flowIs(number);
    double was = c.flowWas(number);
    boolean loud = c.regimeChanged(number) && LOUD.contains(c.does(number).regime());
    if (!c.flowMoved(number)) {
      return loud ? name + " is " + c.does(number).word() + ": " + c.does(number).why() : "";
    }
    String also = loud ? "; " + c.does(number).word() : "";
    if (is < -Compared.FLOW) {
      String heat = c.temperature(c.airThrough(number));
      String before = was < -Compared.FLOW ? ", " + c.flow(was) + " before" : "";
      return name + " takes " + c.flow(is) + " of " + heat + " air back" + before + also;
    }
    String before = was < -Compared.FLOW ? "it took back " + c.flow(was) : c.flow(was) + " before";
    String gives = is < Compared.FLOW ? " gives no more" : " gives " + c.flow(is);
    return name + gives + ", " + before + also;
  }

  private String passage(int number) {
    Part part = c.part(number);
    double is = c.flowIs(number);
    double was = c.flowWas(number);
    if (blows(c, number)) {
      String to = part.legs().get(0).to();
      String where = to.equals(Leg.AMBIENT) ? "to the outside" : "into " + to;
      String air = c.flow(is) + " of " + c.temperature(c.airThrough(number)) + " air";
      return air + " blows " + where + " at " + part.name();
    }
    boolean turned = Math.signum(is) != Math.signum(was) && Math.abs(is) > Compared.FLOW;
    boolean loud = c.regimeChanged(number) && LOUD.contains(c.does(number).regime());
    if (turned && Math.abs(was) > Compared.FLOW) {
      return "air turns round in " + part.name() + ": " + c.does(number).word();
    }
    return loud && c.flowMoved(number) ? part.name() + " " + c.does(number).word() : "";
  }

  /** Whether more air than before gets out at a part that should hold it. */
  static boolean blows(Compared c, int number) {
    boolean hole =
        c.part(number).kind().equals("leak") || c.part(number).kind().equals("test port");
    return hole && c.flowMoved(number) && c.flowIs(number) > c.flowWas(number);
  }

  private String user(int number) {
    Doing does = c.does(number);
    String name = c.part(number).name();
    if (c.regimeChanged(number)) {
      String was = c.did(number).regime();
      String word = was.equals("off") ? takes(number) : userWord(does, was);
      return name + " " + word + ": " + does.why();
    }
    boolean works = !does.regime().equals("off") && !does.regime().equals("shut");
    int from = c.is().network().point(c.part(number).legs().get(0).from());
    boolean touched = c.flowMoved(number) || (from >= 0 && c.pressureMoved(from));
    if (!works || !touched) {
      return "";
    }
    boolean still = does.regime().equals("starved") || does.regime().equals("low");
    boolean under = room(c.is(), number) < 0;
    String enough = under ? " still gets its flow, though " : " has enough: ";
    return name + (still ? stillShort(number) : enough) + does.why() + room(number);
  }

  /** Short before and now: whether by more, by less or by as much. */
  private String stillShort(int number) {
    double more = c.flowIs(number) - c.flowWas(number);
    if (!c.flowMoved(number)) {
      return " is short as before: ";
    }
    String word = more < 0 ? " is shorter than before, " : " is less short than before, ";
    return word + c.flow(c.flowIs(number)) + " where " + c.flow(c.flowWas(number)) + " flowed: ";
  }

  /** What room there was before, for users that tell it and had some. */
  private String room(int number) {
    double room = room(c.was(), number);
    return room >= 0 ? ", it was " + c.style().print(room, Dimension.PRESSURE_DIFFERENCE) : "";
  }

  /** Pressure above the one that a user needs, Pa; NaN where it does not tell. */
  private double room(Solution solution, int number) {
    return solution.view(number, c.style()).observed(c.part(number).name(), ROOM);
  }

  /** What a user does that is off when healthy. */
  private String takes(int number) {
    double flow = c.flowIs(number);
    String air = flow > Compared.FLOW ? "takes " + c.flow(flow) : "is " + c.does(number).word();
    return air + ", healthy it is off";
  }

  private static String userWord(Doing does, String was) {
    return switch (does.regime()) {
      case "starved" -> "GOES SHORT";
      case "low" -> "IS LOW";
      case "fed", "held up", "turns" -> "has enough, healthy it is short";
      default -> "is now " + does.word() + ", it was " + was;
    };
  }

  /** Whether a part takes air for a purpose. */
  boolean isUser(int number) {
    return c.part(number).role() == Role.USER;
  }
}

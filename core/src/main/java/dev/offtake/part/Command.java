package dev.offtake.part;

import dev.offtake.logic.Condition;
import dev.offtake.logic.Situation;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What switches, trips and electrical power command a valve to do.
 *
 * <p>Power comes first: a solenoid without power hears no switch. Then {@code shut when}, then {@code open when}.
 */
final class Command {
  /** Commanded shut. */
  static final double SHUT = 0;

  /** Left to its own devices; for a valve without any, open. */
  static final double LIVE = 1;

  /** Commanded wide open, whatever its regulation would say. */
  static final double WIDE = 2;

  static final Key SHUT_WHEN =
      Key.of(
          "shut when",
          Form.CONDITION,
          "bleed switch is OFF or overheat trip is tripped",
          "When the valve is commanded shut.");

  static final Key OPEN_WHEN =
      Key.of(
          "open when",
          Form.CONDITION,
          "isolation is OPEN",
          "When the valve is commanded open; shut otherwise.");

  static final Key FED_BY =
      Key.of("fed by", Form.BUS, "dc bus", "The bus that gives the valve electrical power.");

  static final Key WITHOUT_POWER =
      Key.choice(
          "without power",
          List.of("shuts", "opens", "stays"),
          "What the valve does when its electrical power is gone.");

  private Command() {}

  /**
   * Reads the command of a valve from a file.
   *
   * @param facts what the file says
   * @param open value when commanded open or opened by loss of power: {@link #LIVE} or {@link #WIDE}
   */
  static Control read(Facts facts, double open) {
    List<Control.Rule> rules = new ArrayList<>();
    powerLoss(facts, open, rules);
    Condition shut = facts.condition("shut when");
    if (shut != null) {
      rules.add(new Control.Rule(shut, SHUT, shut.text()));
    }
    Condition opens = facts.has("open when") ? facts.condition("open when") : null;
    if (opens != null) {
      rules.add(new Control.Rule(opens, LIVE, opens.text()));
      rules.add(new Control.Rule(null, SHUT, "it opens only when " + opens.text()));
    } else {
      rules.add(new Control.Rule(null, LIVE, ""));
    }
    return new Control("command", opens == null ? LIVE : SHUT, rules);
  }

  private static void powerLoss(Facts facts, double open, List<Control.Rule> rules) {
    @Nullable Condition powered = facts.powered("fed by");
    if (powered == null) {
      return;
    }
    String bus = facts.text("fed by");
    String does = facts.choice("without power");
    if (!facts.has("without power")) {
      facts.assume("without power", "it shuts when " + bus + " is dead");
    }
    Condition dead = new Unpowered(powered, bus);
    switch (does) {
      case "opens" -> rules.add(new Control.Rule(dead, open, dead.text()));
      case "stays" ->
          facts.assume("without power", "without power it stays where its switches last sent it");
      default -> rules.add(new Control.Rule(dead, SHUT, dead.text()));
    }
  }

  /** Electrical power is missing. */
  private record Unpowered(Condition powered, String bus) implements Condition {
    @Override
    public boolean holds(Situation situation) {
      return !powered.holds(situation);
    }

    @Override
    public Set<String> names() {
      return powered.names();
    }

    @Override
    public String text() {
      return "no power on " + bus;
    }
  }
}

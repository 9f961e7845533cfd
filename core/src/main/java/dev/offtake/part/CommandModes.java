package dev.offtake.part;

import java.util.ArrayList;
import java.util.List;

/**
 * Ways in which a command fails to move a valve: a solenoid or an actuator that does not answer,
 * and wires that are open.
 *
 * <p>They replace the rules of the command, so that a hand can still lock the valve where it wants
 * it; a stuck body cannot be moved by anything. Rates are orders of magnitude, assumptions.
 */
final class CommandModes {
  /** Unit whose repair is a wire or a connector. */
  static final String WIRING = "wiring";

  private static final Inspection LISTEN =
      Inspection.look(
          "Have the switch moved and feel for the click or the movement: there is none",
          Access.COWLS,
          10);

  private static final Inspection METER =
      new Inspection(
          "Measure the supply at its connector with the switch moved: none arrives",
          Access.COWLS,
          15,
          "multimeter");

  private CommandModes() {}

  /**
   * Modes of what carries a command to a valve; none where no command can reach it.
   *
   * @param valve whose modes they are
   * @param mover removable unit that turns the command into movement
   * @param power value of the command when loss of power opens the valve
   */
  static List<Mode> of(Commanded valve, String mover, double power) {
    List<Mode> modes = new ArrayList<>();
    if (valve.command().rules().stream().noneMatch(rule -> rule.when() != null)) {
      return modes;
    }
    String its = "its " + mover;
    modes.add(
        fixed(mover + " stuck shut", mover, Command.SHUT, its + " does not open it")
            .perMillionHours(10)
            .inspected(LISTEN));
    modes.add(
        fixed(mover + " stuck open", mover, Command.LIVE, its + " does not shut it")
            .perMillionHours(5)
            .inspected(LISTEN));
    String dead = "its wiring is open, no command and no power reach it";
    switch (valve.withoutPower()) {
      case "opens" -> modes.add(wiring("wiring open", power, dead + ": it opens"));
      case "stays" -> {
        modes.add(wiring("wiring open while shut", Command.SHUT, dead + ": it stays shut"));
        modes.add(wiring("wiring open while open", Command.LIVE, dead + ": it stays open"));
      }
      default -> modes.add(wiring("wiring open", Command.SHUT, dead + ": it shuts"));
    }
    return modes;
  }

  private static Mode wiring(String name, double value, String why) {
    return fixed(name, WIRING, value, why).perMillionHours(5).inspected(METER);
  }

  private static Mode fixed(String name, String unit, double value, String why) {
    Control command = new Control("command", value, List.of(new Control.Rule(null, value, why)));
    String means = Character.toUpperCase(why.charAt(0)) + why.substring(1);
    return Mode.named(name, unit, means)
        .rebuilds((part, twin) -> List.of(((Commanded) part).obeying(command)));
  }
}

package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * Ways in which those fail that use air.
 *
 * <p>Rates are orders of magnitude, assumptions; the rest is common practice, no source.
 */
final class UserModes {
  /** Name of a flow user's number that a stuck one takes without being asked. */
  static final String TAKES_AT_LEAST = "takes at least";

  private UserModes() {}

  /**
   * Modes of a user with a schedule.
   *
   * @param part the user
   * @param most largest flow of its schedule, kg/s
   */
  static List<Mode> scheduled(FlowUserPart part, double most) {
    List<Mode> modes = new ArrayList<>();
    // More or less of both, so that it shows as well where the hole and not the schedule rules.
    for (Mode mode : tooMuchOrTooLittle("demand", "user", 2)) {
      modes.add(mode.shift(of("wide open area", mode)));
    }
    modes.add(
        Mode.named("stuck shut", "user", "It stays shut and takes nothing, whatever it is told")
            .puts("demand", 0)
            .perMillionHours(10)
            .inspected(Looks.SWITCH_AND_WATCH));
    if (Stuck.commanded(part.controls().get(0))) {
      modes.add(
          Mode.named("stuck on", "user", "It takes its most all the time, whatever it is told")
              .puts(TAKES_AT_LEAST, most)
              .perMillionHours(5)
              .inspected(Looks.SWITCH_AND_WATCH));
    }
    modes.add(leaks("user", part.leg()));
    return modes;
  }

  /** Modes of a user that is a hole. */
  static List<Mode> hole(Through part) {
    List<Mode> modes = tooMuchOrTooLittle("flow area", "user", HoleModes.MOST_GROWTH - 1);
    stuck(modes, part.controls().get(0), "user");
    modes.add(leaks("user", part.leg()));
    return modes;
  }

  /** Modes of a starter. */
  static List<Mode> starter(StarterPart part) {
    List<Mode> modes = tooMuchOrTooLittle("nozzle area", "starter", 1);
    stuck(modes, part.open(), "starter");
    modes.add(
        Mode.named("torque low", "starter", "Blades, gears or clutch are worn: it turns weakly")
            .extent(new Extent("share lost", Dimension.SHARE, 0.05, 0.2, 0.95))
            .moves("torque", (healthy, share) -> healthy * (1 - share))
            .perMillionHours(20)
            .is(Mode.Trait.MOVING)
            .noticed("The engine turns up slowly or hangs; metal in the starter's oil")
            .inspected(
                Inspection.look(
                    "Pull its magnetic plug and turn the engine by hand: metal, or it slips",
                    Access.COWLS,
                    20)));
    modes.add(leaks("starter", part.leg()));
    return modes;
  }

  /** Modes of a user that holds pressure. */
  static List<Mode> deadEnded(double largest) {
    Extent hole = Holes.extent(0.002 * Holes.IN2, 0.05 * Holes.IN2, largest / Holes.SHARP);
    return List.of(
        Mode.named("leaks", "user", "Its tank, its line or a fitting lets air out")
            .extent(hole)
            .moves("leak", (healthy, area) -> healthy + Holes.SHARP * area)
            .perMillionHours(10)
            .noticed("Hissing at the tank or its line")
            .inspected(Looks.SOAP));
  }

  /** Changes a number as a mode changes its own. */
  private static Mode.Shift of(String number, Mode mode) {
    return new Mode.Shift("", number, mode.shifts().get(0).becomes());
  }

  private static List<Mode> tooMuchOrTooLittle(String number, String unit, double most) {
    List<Mode> modes = new ArrayList<>();
    modes.add(
        Mode.named("takes too much", unit, "It takes more air than it should at the same setting")
            .extent(new Extent("share more", Dimension.SHARE, 0.05, 0.3, most))
            .moves(number, (healthy, share) -> healthy * (1 + share))
            .perMillionHours(10)
            .inspected(
                Inspection.look(
                    "Shut it and watch the duct pressure: it rises more than on the other side",
                    Access.ENGINE_RUN,
                    10)));
    modes.add(
        Mode.named("takes too little", unit, "It is dirty, iced or set low: it takes less air")
            .extent(new Extent("share less", Dimension.SHARE, 0.05, 0.3, 0.95))
            .moves(number, (healthy, share) -> healthy * (1 - share))
            .perMillionHours(10)
            .is(Mode.Trait.COMMON)
            .inspected(Looks.BORESCOPE));
    return modes;
  }

  private static void stuck(List<Mode> modes, Control control, String unit) {
    modes.add(Stuck.shut(unit, "It stays shut and takes nothing, whatever it is told"));
    if (Stuck.commanded(control)) {
      modes.add(Stuck.open("stuck on", unit, "It takes air all the time, whatever it is told"));
    }
  }

  private static Mode leaks(String unit, Leg leg) {
    Mode mode =
        Mode.named("leaks", unit, "Air gets out of it, or of the joint before it, unused")
            .extent(Holes.extent(leg.bore()));
    return Holes.opens(mode, "leak", leg.from(), Leg.AMBIENT)
        .perMillionHours(5)
        .noticed("Hissing or warm air where there should be none")
        .inspected(Looks.SOAP);
  }
}

package dev.offtake.part;

import dev.offtake.quantity.Dimension;

/** A part that opens and shuts on command, and no longer obeys. */
final class Stuck {
  /** Value of the parameter while the part obeys. */
  static final double FREE = -1;

  private static final String NAME = "stuck at";

  private Stuck() {}

  /** The parameter: {@link #FREE}, or the opening, 0 or 1, at which it stays. */
  static Parameter parameter(String unit) {
    return Parameter.exactly(NAME, FREE, FREE, 1, Dimension.SHARE, unit);
  }

  /** The opening in force. */
  static double opening(double stuck, double commanded) {
    return stuck >= 0 ? stuck : commanded;
  }

  /** Whether a control follows a command at all, else the part is always open. */
  static boolean commanded(Control control) {
    return !control.rules().isEmpty() && control.rules().get(0).when() != null;
  }

  /** The mode of a part that stays shut. */
  static Mode shut(String unit, String means) {
    return Mode.named("stuck shut", unit, means)
        .puts(NAME, 0)
        .perMillionHours(10)
        .inspected(Looks.SWITCH_AND_WATCH);
  }

  /** The mode of a part that stays open. */
  static Mode open(String name, String unit, String means) {
    return Mode.named(name, unit, means)
        .puts(NAME, 1)
        .perMillionHours(5)
        .inspected(Looks.SWITCH_AND_WATCH);
  }
}

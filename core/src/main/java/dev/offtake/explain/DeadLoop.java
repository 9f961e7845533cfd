package dev.offtake.explain;

import dev.offtake.part.LeakLoop;
import dev.offtake.part.Part;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import java.util.Optional;

/** Leak loops that stay dark though their zone is hotter than their alarm. */
final class DeadLoop {
  private DeadLoop() {}

  /** Whether a part is a leak loop that a sound one's alarm would have lit, and that is dark. */
  static boolean is(Solution solution, Part part) {
    return part instanceof LeakLoop loop
        && zone(solution, loop) > alarm(loop)
        && !solution.is(loop.name(), "lit");
  }

  /** What is said of such a loop, one sentence without a full stop; empty for any other part. */
  static Optional<String> says(Solution solution, Part part, Style style) {
    if (!(part instanceof LeakLoop loop) || !is(solution, part)) {
      return Optional.empty();
    }
    return Optional.of(
        loop.name()
            + " stays dark though "
            + loop.zone()
            + " has "
            + style.print(zone(solution, loop), Dimension.TEMPERATURE)
            + ": sound, it would have lit at "
            + style.print(alarm(loop), Dimension.TEMPERATURE));
  }

  /** The alarm as the file gives it, K; a failure changes the number in force, not this one. */
  private static double alarm(LeakLoop loop) {
    return loop.parameters().get(0).value();
  }

  private static double zone(Solution solution, LeakLoop loop) {
    int point = solution.network().point(loop.zone());
    return point < 0 ? 0 : solution.temperature(point);
  }
}

package dev.offtake.explain;

import dev.offtake.part.LeakLoop;
import dev.offtake.part.Light;
import dev.offtake.part.Part;
import dev.offtake.part.View;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import java.util.Optional;

/** Leak loops and lights that stay dark though what they warn of is there. */
final class DarkWarning {
  private DarkWarning() {}

  /** Whether a part is such a warning. */
  static boolean is(Solution solution, Part part) {
    if (part instanceof Light light) {
      return light.dark(view(solution, light.name()));
    }
    return part instanceof LeakLoop loop
        && zone(solution, loop) > alarm(loop)
        && !solution.is(loop.name(), "lit");
  }

  /** What is said of such a warning, one sentence without a full stop; empty for other parts. */
  static Optional<String> says(Solution solution, Part part, Style style) {
    if (!is(solution, part)) {
      return Optional.empty();
    }
    if (part instanceof LeakLoop loop) {
      return Optional.of(
          loop.name()
              + " stays dark though "
              + loop.zone()
              + " has "
              + style.print(zone(solution, loop), Dimension.TEMPERATURE)
              + ": sound, it would have lit at "
              + style.print(alarm(loop), Dimension.TEMPERATURE));
    }
    String why = part.doing(view(solution, part.name())).why();
    return Optional.of(part.name() + " stays dark: " + why);
  }

  private static View view(Solution solution, String name) {
    return solution.view(solution.network().part(name), Style.SHOP);
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

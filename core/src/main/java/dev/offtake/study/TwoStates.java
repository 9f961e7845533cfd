package dev.offtake.study;

import dev.offtake.part.Part;
import dev.offtake.part.View;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import java.util.Optional;

/**
 * The healthy and the broken state at one power, of which a person may know neither.
 *
 * @param healthy an answer of the healthy system
 * @param now an answer of the broken one at the same power and line-up
 */
record TwoStates(Solution healthy, Solution now) {
  /** A part as it stands in the broken system; empty where a failure has taken it out. */
  Optional<Part> after(String name) {
    int number = now.network().part(name);
    return number < 0 ? Optional.empty() : Optional.of(now.network().parts().get(number));
  }

  /** What a part sees in the healthy state; empty where it is not there. */
  Optional<View> viewBefore(String name) {
    return view(healthy, name);
  }

  /** What a part sees in the broken state; empty where it is not there. */
  Optional<View> viewAfter(String name) {
    return view(now, name);
  }

  private static Optional<View> view(Solution solution, String name) {
    int number = solution.network().part(name);
    return number < 0 ? Optional.empty() : Optional.of(solution.view(number, Style.SHOP));
  }
}

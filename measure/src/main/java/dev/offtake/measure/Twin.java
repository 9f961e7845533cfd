package dev.offtake.measure;

import dev.offtake.explain.Question;
import dev.offtake.network.Equations;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** The demo with two engines, as its file stands. */
final class Twin {
  /** Folder that holds the demos. */
  private static final Path DEMOS = Path.of(System.getProperty("offtake.demo", "../demo"));

  private static final double USUAL_CORE = 0.8;

  private final BleedSystem system =
      SystemReader.read(DEMOS.resolve("demo-twin.yaml")).system().orElseThrow();

  BleedSystem system() {
    return system;
  }

  /** The question at a core speed, with the fan speed that the file's settings make of it. */
  Setup at(double core) {
    try {
      String words = String.format(Locale.ROOT, "%.3f %%", 100 * core);
      return Question.of(system, words, "", "", List.of()).setup();
    } catch (QuantityProblem e) {
      throw new IllegalStateException(e);
    }
  }

  /** Equations at 80 % with all controls as the logic leaves them there. */
  Equations equations() {
    Solution solution = new Settler(system.network()).solve(at(USUAL_CORE));
    if (!solution.solved()) {
      throw new IllegalStateException("the demo has no state at 80 %");
    }
    Equations equations = new Equations(system.network(), solution.conditions());
    takeControls(solution, equations);
    return equations;
  }

  /** Puts the controls of an answer into equations of the same network. */
  static void takeControls(Solution solution, Equations equations) {
    double[] controls = equations.evaluation().controls;
    for (int i = 0; i < equations.network().parts().size(); i++) {
      int first = equations.firstControl(i);
      for (int k = 0; first + k < equations.firstControl(i + 1); k++) {
        controls[first + k] = solution.control(i, k);
      }
    }
  }
}

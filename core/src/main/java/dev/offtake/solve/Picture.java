package dev.offtake.solve;

import dev.offtake.network.Equations;
import dev.offtake.part.Part;
import java.util.List;
import java.util.Map;

/**
 * What parts would do near a solved state, to first order: pressures and temperatures are moved
 * along the slopes of {@link Sensitivities}, everything else follows by the parts' own laws, rules
 * and memory. No balance is struck, so that a picture is no answer: it tells on which side of a
 * limit the state lies.
 *
 * <p>Belongs to one thread.
 */
public final class Picture {
  private final Solution base;
  private final Equations equations;
  private final Commands commands;

  /** Prepares to draw states near one that is solved. */
  public Picture(Solution base) {
    this.base = base;
    equations = base.equations();
    commands = new Commands(equations);
  }

  /**
   * Draws a state.
   *
   * @param setup what is asked there
   * @param move of every variable from the base; those of the boundary follow exactly instead
   */
  public Solution at(Setup setup, double[] move) {
    base.snapshot().restore(equations, setup.conditions());
    double[] x = equations.evaluation().variables;
    for (int v = 0; v < x.length; v++) {
      x[v] += move[v];
    }
    for (Map.Entry<Setup.PartNumber, Double> entry : setup.changed().entrySet()) {
      int part = base.network().part(entry.getKey().part());
      int at = equations.parameter(part, entry.getKey().parameter());
      equations.evaluation().parameters[at] = entry.getValue();
    }
    equations.evaluate();
    obey(setup);
    Snapshot drawn = new Snapshot(equations, commands.because());
    return new Solution(base.network(), setup, drawn, base.outcome());
  }

  /** Lets rules and memory look at the state, once. */
  private void obey(Setup setup) {
    Snapshot seen = new Snapshot(equations, commands.because());
    List<Double> before = commands.values();
    commands.reset(setup);
    commands.remember(base);
    commands.decide(new StateSituation(base.network(), setup, seen));
    List<Part> parts = base.network().parts();
    for (int i = 0; i < parts.size(); i++) {
      equations.element(i).settle(equations.evaluation());
    }
    if (!commands.values().equals(before)) {
      equations.refreshBoundary();
      equations.evaluate();
    }
  }
}

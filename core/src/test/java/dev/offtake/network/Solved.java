package dev.offtake.network;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.part.Conditions;
import dev.offtake.part.Part;
import dev.offtake.solve.SteadySolver;
import java.util.List;

/** A small network, solved on a standard day; its points and parts by name. */
public final class Solved {
  private final Equations equations;

  private Solved(Equations equations) {
    this.equations = equations;
  }

  /** Solves parts that are joined at points without heat loss. */
  public static Solved adiabatic(List<? extends Part> parts) {
    return of(Passage.adiabatic(parts));
  }

  /** Solves a network. */
  public static Solved of(Network network) {
    Equations equations = new Equations(network, Conditions.standardDay(1, 1));
    SteadySolver.Way way = new SteadySolver(equations).solve();
    assertThat(way).isNotEqualTo(SteadySolver.Way.NOT_SOLVED);
    return new Solved(equations);
  }

  /** Total pressure at a point, Pa absolute. */
  public double p(String point) {
    return equations.evaluation().gas[equations.network().point(point)].p;
  }

  /** Temperature at a point, K. */
  public double t(String point) {
    return equations.evaluation().gas[equations.network().point(point)].t;
  }

  /** Flow of a part with one leg, kg/s. */
  public double flow(String part) {
    return equations.branches(equations.network().part(part))[0].mdot;
  }

  /** Whether a part is choked. */
  public boolean choked(String part) {
    return equations.branches(equations.network().part(part))[0].choked;
  }
}

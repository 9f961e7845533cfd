package dev.offtake.measure;

import dev.offtake.network.Equations;
import dev.offtake.network.Network;
import dev.offtake.part.Kinds;
import dev.offtake.solve.SteadySolver;
import dev.offtake.solve.SteadySolver.Way;
import dev.offtake.solve.Trees;
import dev.offtake.system.SystemReader;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Manifold trees with loops, as the tests of the solver have them. */
final class SyntheticNetwork {
  private static final long SEED = 1;
  private static final String HEAD = "offtake: 1\ntitle: Trees\nabout: Invented.\n";

  private SyntheticNetwork() {}

  /** The network of some points, 3 or more. */
  static Network of(int points) {
    String text = HEAD + Trees.text(points, SEED);
    return SystemReader.readText("trees.yaml", text, Kinds.all()).system().orElseThrow().network();
  }

  /**
   * Solves equations of such a network from the state that an earlier process has left, which saves
   * the long way from nothing; leaves one for the next.
   */
  static void solve(Equations equations, SteadySolver solver) throws IOException {
    Path file = Path.of(System.getProperty("offtake.states", "target"));
    file = file.resolve("trees-" + equations.innerPoints() + ".state");
    double[] x = equations.evaluation().variables.clone();
    if (Files.exists(file) && Files.size(file) == (long) Double.BYTES * x.length) {
      try (DataInputStream in = new DataInputStream(Files.newInputStream(file))) {
        for (int v = 0; v < x.length; v++) {
          x[v] = in.readDouble();
        }
      }
      solver.recall(x);
    }
    if (solver.solve() == Way.NOT_SOLVED) {
      throw new IllegalStateException("no state of " + equations.innerPoints() + " points");
    }
    try (DataOutputStream out = new DataOutputStream(Files.newOutputStream(file))) {
      for (double value : equations.evaluation().variables) {
        out.writeDouble(value);
      }
    }
  }
}

package dev.offtake.measure;

import dev.offtake.network.Network;
import dev.offtake.part.Kinds;
import dev.offtake.solve.Trees;
import dev.offtake.system.SystemReader;

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
}

package dev.offtake.solve;

import dev.offtake.network.Demos;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Invented systems of any size, for the growth of time and memory with the number of points.
 *
 * <p>Manifold trees of {@value #TREE} points: at the root a supply, in every third tree a
 * compressor tap behind a regulator; ducts, orifices and valves along; users at the leaves. Cross
 * ducts make loops within a tree and join each tree to one before it. The same size and seed give
 * the same system.
 */
public final class Trees {
  private static final int TREE = 40;
  private static final double CROSS = 0.1;

  private final Random random;
  private final StringBuilder parts = new StringBuilder("parts:\n");
  private final List<Integer> sizes = new ArrayList<>();

  private Trees(long seed) {
    random = new Random(seed);
  }

  /** Reads a system of some points, 3 or more. */
  public static BleedSystem system(int points, long seed) {
    return Demos.text(text(points, seed));
  }

  /** The system as its file says it, without the head. */
  public static String text(int points, long seed) {
    Trees trees = new Trees(seed);
    for (int left = points; left > 0; ) {
      int size = left < TREE + 3 ? left : TREE;
      trees.tree(size);
      left -= size;
    }
    return trees.parts.toString();
  }

  private void tree(int size) {
    int tree = sizes.size();
    int inner = size;
    if (tree % 3 == 1) {
      tap(tree);
      inner--;
    } else {
      add(
          tree + " supply",
          "supply",
          "to: " + point(tree, 0),
          "temperature: " + (300 + 10 * random.nextInt(15)) + " degF",
          "table: {columns: [psig, lb/min], rows: [[48, 0], [40, 120], [25, 220]]}");
    }
    int[] depth = new int[inner];
    boolean[] leaf = new boolean[inner];
    for (int k = 0; k < inner; k++) {
      leaf[k] = true;
      if (k > 0) {
        int parent = Math.max(0, k - 1 - random.nextInt(5));
        depth[k] = depth[parent] + 1;
        leaf[parent] = false;
        passage(tree + " way " + k, point(tree, parent), point(tree, k), depth[k]);
      }
    }
    sizes.add(inner);
    loops(tree, inner);
    for (int k = 0; k < inner; k++) {
      if (leaf[k]) {
        user(tree + " user " + k, point(tree, k));
      }
    }
  }

  private void tap(int tree) {
    String duct = "tree " + tree + " tap duct";
    add(
        tree + " tap",
        "compressor tap",
        "to: " + duct,
        "bore: 3 in",
        "taken on: standard day",
        "table: {columns: [core %, psig, degF],"
            + " rows: [[62, 26, 322], [80, 98, 590], [99, 285, 950]]}");
    add(
        tree + " regulator",
        "regulator",
        "path: " + duct + " -> " + point(tree, 0),
        "bore: 3 in",
        "holds: " + point(tree, 0) + " pressure",
        "set to: 42 psig",
        "droop: 5 psi");
  }

  private void passage(String name, String from, String to, int depth) {
    String bore = "bore: " + String.format(Locale.ROOT, "%.2f", Math.max(1, 4 - 0.25 * depth));
    double draw = random.nextDouble();
    if (draw < 0.6) {
      String length = "length: " + (20 + random.nextInt(100)) + " in";
      add(name, "duct", "path: " + from + " -> " + to, bore + " in", length);
    } else if (draw < 0.75) {
      add(name, "orifice", "path: " + from + " -> " + to, bore + " in");
    } else if (draw < 0.9) {
      add(name, "shutoff valve", "path: " + from + " <-> " + to, bore + " in");
    } else {
      add(name, "check valve", "path: " + from + " -> " + to, bore + " in");
    }
  }

  private void loops(int tree, int inner) {
    for (int k = 3; k < inner; k++) {
      if (random.nextDouble() < CROSS) {
        int other = random.nextInt(k - 1);
        cross(tree + " cross " + k, point(tree, other), point(tree, k));
      }
    }
    if (tree > 0) {
      int other = Math.max(0, tree - 1 - random.nextInt(3));
      String from = point(other, random.nextInt(sizes.get(other)));
      cross(tree + " link", from, point(tree, random.nextInt(inner)));
    }
  }

  private void cross(String name, String from, String to) {
    add(name, "duct", "path: " + from + " <-> " + to, "bore: 1.5 in", "length: 90 in");
  }

  private void user(String name, String from) {
    if (random.nextBoolean()) {
      int takes = 2 + random.nextInt(5);
      add(name, "flow user", "takes from: " + from, "takes: " + takes + " lb/min", "needs: 8 psig");
    } else {
      add(name, "orifice user", "takes from: " + from, "bore: 0.4 in");
    }
  }

  private void add(String name, String kind, String... lines) {
    parts.append(Benches.part("tree " + name, kind, lines));
  }

  private static String point(int tree, int k) {
    return "tree " + tree + " point " + k;
  }
}

package dev.offtake.study;

import dev.offtake.network.Network;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.List;

/**
 * The sources that may feed one side of a system, or a system without sides.
 *
 * @param side name of the side; empty for a system without sides
 * @param names full names of its sources
 * @param parts their numbers
 */
public record Feeders(String side, List<String> names, int[] parts) {
  /** A source that gives less than this share of what all give is said to give nothing. */
  private static final double NOTHING = 0.03;

  /** A source that gives less than this leads nobody, kg/s. */
  private static final double TRICKLE = 1e-3;

  /** Keeps its names. */
  public Feeders {
    names = List.copyOf(names);
  }

  /**
   * The feeders of a side: its sources but for fan taps, whose air only cools.
   *
   * @param network the system
   * @param side name of a side; empty for the whole system
   */
  public static Feeders of(Network network, String side) {
    List<String> names = new ArrayList<>();
    List<Integer> numbers = new ArrayList<>();
    for (int i = 0; i < network.parts().size(); i++) {
      Part part = network.parts().get(i);
      boolean here = side.isEmpty() || part.name().startsWith(side + " ");
      if (part.role() == Role.SOURCE && here && !part.kind().equals("fan tap")) {
        names.add(part.name());
        numbers.add(i);
      }
    }
    return new Feeders(side, names, numbers.stream().mapToInt(Integer::intValue).toArray());
  }

  /** Full name of the source that gives most; empty when none gives more than a trickle. */
  public String leader(Solution solution) {
    String leader = "";
    double most = TRICKLE;
    for (int i = 0; i < parts.length; i++) {
      double gives = solution.flow(parts[i], 0);
      if (gives > most) {
        most = gives;
        leader = names.get(i);
      }
    }
    return leader;
  }

  /** Full names of those that give a share worth telling, the file's order. */
  public List<String> feeding(Solution solution) {
    double total = 0;
    for (int part : parts) {
      total += Math.max(0, solution.flow(part, 0));
    }
    List<String> feeding = new ArrayList<>();
    for (int i = 0; i < parts.length; i++) {
      double gives = solution.flow(parts[i], 0);
      if (gives > TRICKLE && gives > NOTHING * total) {
        feeding.add(names.get(i));
      }
    }
    return feeding;
  }
}

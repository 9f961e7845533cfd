package dev.offtake.study;

import dev.offtake.network.Network;
import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Where the air at each point comes from: shares of the sources, by perfect mixing at each point.
 *
 * <p>With x_i the share of one source at point i, Σ_in ṁ x_from = x_i Σ_in ṁ; solved by repeated
 * sweeps, which converge because every closed loop of air is fed from outside.
 */
public final class Origins {
  /**
   * Streams below this share of the largest are taken as none, as they may be no more than
   * rounding.
   */
  private static final double TRICKLE = 1e-6;

  private static final int SWEEPS = 500;
  private static final double ENOUGH = 1e-9;

  private final List<String> sources;
  private final double[][] share;

  private record Stream(int from, int source, int to, double flow) {}

  private Origins(List<String> sources, double[][] share) {
    this.sources = sources;
    this.share = share;
  }

  /** Finds the origins in a solved state. */
  public static Origins of(Solution solution) {
    List<String> sources = new ArrayList<>();
    List<Stream> streams = streams(solution, sources);
    int points = solution.network().points().size();
    double[][] share = new double[points][sources.size()];
    for (int sweep = 0; sweep < SWEEPS; sweep++) {
      if (sweep(streams, share) < ENOUGH) {
        break;
      }
    }
    return new Origins(List.copyOf(sources), share);
  }

  private static List<Stream> streams(Solution solution, List<String> sources) {
    List<Stream> streams = new ArrayList<>();
    Network network = solution.network();
    double largest = 0;
    for (int i = 0; i < network.parts().size(); i++) {
      Part part = network.parts().get(i);
      for (int leg = 0; leg < part.legs().size(); leg++) {
        double flow = solution.flow(i, leg);
        largest = Math.max(largest, Math.abs(flow));
        Leg way = part.legs().get(leg);
        String from = flow > 0 ? way.from() : way.to();
        String to = flow > 0 ? way.to() : way.from();
        int start = network.point(from);
        int source = start >= 0 ? -1 : number(sources, part.name(), from);
        streams.add(new Stream(start, source, network.point(to), Math.abs(flow)));
      }
    }
    double least = TRICKLE * largest;
    streams.removeIf(stream -> stream.to() < 0 || stream.flow() <= least);
    return streams;
  }

  private static int number(List<String> sources, String part, String from) {
    String name = from.equals(Leg.AMBIENT) ? Leg.AMBIENT : part;
    if (!sources.contains(name)) {
      sources.add(name);
    }
    return sources.indexOf(name);
  }

  private static double sweep(List<Stream> streams, double[][] share) {
    double moved = 0;
    for (int point = 0; point < share.length; point++) {
      double[] mixed = new double[share[point].length];
      double total = 0;
      for (Stream stream : streams) {
        if (stream.to() == point) {
          total += stream.flow();
          for (int s = 0; s < mixed.length; s++) {
            double carried = stream.from() >= 0 ? share[stream.from()][s] : ofSource(stream, s);
            mixed[s] += stream.flow() * carried;
          }
        }
      }
      for (int s = 0; s < mixed.length; s++) {
        double next = total > 0 ? mixed[s] / total : 0;
        moved = Math.max(moved, Math.abs(next - share[point][s]));
        share[point][s] = next;
      }
    }
    return moved;
  }

  private static double ofSource(Stream stream, int source) {
    return stream.source() == source ? 1 : 0;
  }

  /** Names of the parts that give air, {@code ambient} among them where it does. */
  public List<String> sources() {
    return sources;
  }

  /**
   * Share of a source in the air at a point.
   *
   * @param point number of an inner point
   * @param source a name of {@link #sources}
   * @return 0..1; 0 at a point that no air enters
   */
  public double share(int point, String source) {
    int s = sources.indexOf(source);
    return s < 0 ? 0 : share[point][s];
  }

  /** Whether any air is followed to the point. */
  public boolean fed(int point) {
    return Arrays.stream(share[point]).sum() > 0.5;
  }
}

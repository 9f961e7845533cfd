package dev.offtake.explain;

import dev.offtake.network.Network;
import dev.offtake.part.Gauge;
import dev.offtake.part.Part;
import dev.offtake.part.TestPort;
import dev.offtake.part.View;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where a value of a place is seen: on a gauge, at a test port, or nowhere. */
final class BreakSeen {
  /** What is said of a value that nobody sees. */
  static final String NOWHERE = "nowhere";

  private final Solution solution;
  private final Network network;

  BreakSeen(Solution solution) {
    this.solution = solution;
    network = solution.network();
  }

  /**
   * Where a point's value is seen: on the needle that follows it as things stand, which is that of
   * the other side where lines are crossed, and none where it is stuck.
   *
   * @param point full name
   * @param temperature whether its temperature is meant, else its pressure
   */
  String point(String point, boolean temperature) {
    List<String> ports = new ArrayList<>();
    for (Part part : network.parts()) {
      if (part instanceof Gauge gauge) {
        Optional<String> needle = needle(gauge, point, temperature);
        if (needle.isPresent() && !gauge.seen().contains("port")) {
          return needle.get();
        }
        needle.ifPresent(shows -> ports.add(gauge.seen()));
      } else if (!temperature && isPort(part, point)) {
        ports.add("test port");
      }
    }
    return ports.isEmpty() ? NOWHERE : ports.get(0);
  }

  private Optional<String> needle(Gauge gauge, String point, boolean temperature) {
    View view = solution.view(network.part(gauge.name()), Style.SHOP);
    for (int i = 0; i < gauge.needles().size(); i++) {
      boolean shows =
          gauge
              .follows(i, view)
              .filter(reads -> reads.point().equals(point) && reads.temperature() == temperature)
              .isPresent();
      if (shows) {
        String name = (gauge.name() + " " + gauge.needles().get(i).mark()).strip();
        return Optional.of(name + (gauge.pegged(i, view) ? ", pegged" : ""));
      }
    }
    return Optional.empty();
  }

  private static boolean isPort(Part part, String point) {
    return part.kind().equals(TestPort.KIND.name()) && part.legs().get(0).from().equals(point);
  }
}

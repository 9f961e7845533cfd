package dev.offtake.explain;

import dev.offtake.network.Network;
import dev.offtake.part.Facts;
import dev.offtake.part.Gauge;
import dev.offtake.part.Part;
import dev.offtake.part.TestPort;
import java.util.ArrayList;
import java.util.List;

/** Where a value of a place is seen: on a gauge, at a test port, or nowhere. */
final class BreakSeen {
  /** What is said of a value that nobody sees. */
  static final String NOWHERE = "nowhere";

  private final Network network;

  BreakSeen(Network network) {
    this.network = network;
  }

  /**
   * Where a point's value is seen.
   *
   * @param point full name
   * @param temperature whether its temperature is meant, else its pressure
   */
  String point(String point, boolean temperature) {
    List<String> ports = new ArrayList<>();
    for (Part part : network.parts()) {
      if (part instanceof Gauge gauge) {
        for (Facts.Needle needle : gauge.needles()) {
          Facts.Reading reads = needle.reads();
          if (reads.point().equals(point) && reads.temperature() == temperature) {
            if (!gauge.seen().contains("port")) {
              return (gauge.name() + " " + needle.mark()).strip();
            }
            ports.add(gauge.seen());
          }
        }
      } else if (!temperature && isPort(part, point)) {
        ports.add("test port");
      }
    }
    return ports.isEmpty() ? NOWHERE : ports.get(0);
  }

  private static boolean isPort(Part part, String point) {
    return part.kind().equals(TestPort.KIND.name()) && part.legs().get(0).from().equals(point);
  }
}

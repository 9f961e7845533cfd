package dev.offtake.stability;

import dev.offtake.explain.Question;
import dev.offtake.network.Demos;
import dev.offtake.solve.*;
import dev.offtake.system.BleedSystem;
import java.util.*;
import org.junit.jupiter.api.Test;

class ProbeTest {
  @Test
  void probe() throws Exception {
    for (String name : List.of("twin", "rotor")) {
      BleedSystem system = Demos.demo(name);
      for (String power : system.settings().keySet()) {
        for (String line : system.lineUps().keySet()) {
          Question q = Question.of(system, power, "", line, List.of());
          Solution s = new Settler(system.network()).solve(q.setup());
          long t = System.nanoTime();
          Stability st = Stability.of(s);
          System.out.printf(
              "== %s %s %s solved=%s %d modes %.1f ms%n   %s%n",
              name,
              power,
              line,
              s.solved(),
              st.modes().size(),
              (System.nanoTime() - t) / 1e6,
              st.says());
          if (line.equals("usual"))
            for (Mode m : st.modes())
              System.out.printf(
                  "      %10.4f %8.3f Hz z=%.3f %s%n",
                  m.growth(),
                  m.frequency(),
                  m.damping(),
                  m.shares().subList(0, Math.min(3, m.shares().size())).stream()
                      .map(
                          x ->
                              x.name() + (x.valve() ? "*" : "") + String.format(" %.2f", x.share()))
                      .toList());
        }
      }
    }
  }
}

package dev.offtake.measure;

import dev.offtake.network.Equations;
import dev.offtake.network.Network;
import dev.offtake.network.Ruled;
import dev.offtake.part.Conditions;
import dev.offtake.part.Element;
import dev.offtake.part.Evaluation;
import dev.offtake.solve.SteadySolver;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The law of one part with all its partials, by kind: the average over the parts of that kind in
 * the demo twin or, where it has none, in a synthetic network.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, timeUnit = TimeUnit.MILLISECONDS, time = 300)
@Measurement(iterations = 5, timeUnit = TimeUnit.MILLISECONDS, time = 200)
public class PartLaws {
  private static final int COPIES = 8;

  /** Kind of the parts. */
  @Param({
    "compressor tap",
    "fan tap",
    "supply",
    "duct",
    "orifice",
    "check valve",
    "regulator",
    "shutoff valve",
    "temperature control valve",
    "relief valve",
    "heat exchanger",
    "flow user",
    "orifice user",
    "dead-ended user",
    "starter",
    "leak",
    "vent",
    "test port"
  })
  public String kind = "";

  private Element[][] elements;
  private Evaluation[] evaluations;

  /** Makes copies of the network that stand in slightly different states. */
  @Setup
  public void prepare() {
    Twin twin = new Twin();
    Network synthetic = SyntheticNetwork.of(100);
    boolean inTwin = has(twin.system().network());
    Supplier<Equations> maker = inTwin ? twin::equations : () -> ruled(synthetic);
    elements = new Element[COPIES][];
    evaluations = new Evaluation[COPIES];
    for (int c = 0; c < COPIES; c++) {
      Equations equations = maker.get();
      new SteadySolver(equations).solve();
      new Jitter(equations).write(c);
      equations.evaluate();
      evaluations[c] = equations.evaluation();
      elements[c] = ofKind(equations);
    }
  }

  private boolean has(Network network) {
    return network.parts().stream().anyMatch(part -> part.kind().equals(kind));
  }

  private static Equations ruled(Network network) {
    Equations equations = new Equations(network, Conditions.standardDay(0.8, 0.5));
    Ruled.set(equations, Map.of());
    return equations;
  }

  private Element[] ofKind(Equations equations) {
    List<Element> found = new ArrayList<>();
    for (int i = 0; i < equations.network().parts().size(); i++) {
      if (equations.network().parts().get(i).kind().equals(kind)) {
        found.add(equations.element(i));
      }
    }
    return found.toArray(Element[]::new);
  }

  /** All parts of the kind, in each of the states. */
  @Benchmark
  public double law(Clock clock) {
    double sum = 0;
    for (int c = 0; c < COPIES; c++) {
      for (Element element : elements[c]) {
        element.evaluate(evaluations[c]);
        sum += element.branches().get(0).mdot;
      }
      clock.tick(elements[c].length);
    }
    return sum;
  }
}

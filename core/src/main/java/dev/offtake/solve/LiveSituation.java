package dev.offtake.solve;

import dev.offtake.logic.Situation;
import dev.offtake.network.Equations;
import dev.offtake.part.View;
import java.util.HashMap;
import java.util.Map;

/** What conditions may ask of equations as they stand evaluated just now. */
final class LiveSituation implements Situation {
  private static final String PRESSURE = " pressure";
  private static final String TEMPERATURE = " temperature";

  private final Equations equations;
  private final View[] views;
  private final Map<String, Integer> partOf = new HashMap<>();
  private final Map<String, Integer> pressureOf = new HashMap<>();
  private final Map<String, Integer> temperatureOf = new HashMap<>();
  private Map<String, String> positions = Map.of();

  LiveSituation(Equations equations, String[][] because) {
    this.equations = equations;
    var network = equations.network();
    views = new View[network.parts().size()];
    int most = network.parts().stream().mapToInt(part -> part.observables().size()).max().orElse(0);
    double[] scratch = new double[most];
    for (int i = 0; i < views.length; i++) {
      views[i] = new LiveView(equations, because, i, scratch);
      partOf.put(network.parts().get(i).name(), i);
    }
    for (int i = 0; i < network.points().size(); i++) {
      pressureOf.put(network.points().get(i).name() + PRESSURE, i);
      temperatureOf.put(network.points().get(i).name() + TEMPERATURE, i);
    }
  }

  void positions(Map<String, String> now) {
    positions = now;
  }

  @Override
  public boolean is(String subject, String position) {
    Integer part = partOf.get(subject);
    return part == null
        ? position.equals(positions.get(subject))
        : equations.network().parts().get(part).carries(position, views[part]);
  }

  /** The value, or NaN, which no comparison holds for, where there is none of that name. */
  @Override
  public double value(String subject) {
    if (subject.equals("core")) {
      return equations.evaluation().conditions.core();
    }
    Integer pressure = pressureOf.get(subject);
    if (pressure != null) {
      return equations.sensedPressure(pressure);
    }
    Integer temperature = temperatureOf.get(subject);
    return temperature == null ? Double.NaN : equations.evaluation().gas[temperature].t;
  }

  @Override
  public double ambientPressure() {
    return equations.evaluation().conditions.ambientP();
  }
}

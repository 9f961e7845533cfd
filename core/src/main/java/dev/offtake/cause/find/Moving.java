package dev.offtake.cause.find;

import dev.offtake.cause.Recording;
import dev.offtake.part.Conditions;
import dev.offtake.part.Part;
import dev.offtake.solve.Setup;
import dev.offtake.time.Pace;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Moves what is asked by what nobody knows exactly.
 *
 * @param unknowns what is moved; test gauges move no question
 */
record Moving(List<Unknown> unknowns) {

  /**
   * How the question of each scene changes.
   *
   * @param scenes how many
   * @param theta of each unknown, in its standard deviations
   */
  List<Moved> of(int scenes, double[] theta) {
    List<Moved> moved = new ArrayList<>();
    for (int scene = 0; scene < scenes; scene++) {
      moved.add(new InScene(scene, theta.clone()));
    }
    return moved;
  }

  /** What is moved in one scene. */
  private final class InScene implements Moved {
    private final int scene;
    private final double[] theta;

    InScene(int scene, double[] theta) {
      this.scene = scene;
      this.theta = theta;
    }

    @Override
    public Setup setup(Setup asked) {
      return moved(asked, scene, theta);
    }

    @Override
    public Pace pace(Part part, Pace usual) {
      Pace pace = usual;
      for (int u = 0; u < theta.length; u++) {
        boolean moves = theta[u] != 0 && unknowns.get(u) instanceof Unknown.OfPace;
        if (moves && ((Unknown.OfPace) unknowns.get(u)).part().equals(part.name())) {
          Unknown.OfPace own = (Unknown.OfPace) unknowns.get(u);
          pace = own.line().put(pace, own.line().away(own.value(), own.sigma() * theta[u]));
        }
      }
      return pace;
    }

    @Override
    public double ahead(Recording recording) {
      double ahead = 0;
      for (int u = 0; u < theta.length; u++) {
        if (unknowns.get(u) instanceof Unknown.Clock clock && clock.recording().equals(recording)) {
          ahead += clock.sigma() * theta[u];
        }
      }
      return ahead;
    }
  }

  /** The value of a number of a part, within what is possible. */
  static double value(Unknown.OfPart number, double theta) {
    double value = number.value() + number.sigma() * theta;
    return Math.max(number.low(), Math.min(number.high(), value));
  }

  private Setup moved(Setup setup, int scene, double[] theta) {
    Map<Setup.PartNumber, Double> changed = new LinkedHashMap<>(setup.changed());
    Conditions conditions = setup.conditions();
    for (int u = 0; u < theta.length; u++) {
      Unknown unknown = unknowns.get(u);
      if (unknown instanceof Unknown.OfPart own) {
        changed.put(own.number(), value(own, theta[u]));
      } else if (unknown instanceof Unknown.Outside outside && outside.felt(scene)) {
        conditions = outside.away(conditions, theta[u]);
      }
    }
    return new Setup(conditions, setup.positions(), setup.locks(), changed);
  }
}

package dev.offtake.study;

import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import dev.offtake.solve.Quantity;
import dev.offtake.solve.Sensitivities;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How far healthy parts may differ from the numbers in force, as seen in a state.
 *
 * <p>Each number with a tolerance or a range moves what is read by its slope times the distance to
 * either end of its band, to first order ({@link Sensitivities}). The numbers are independent of
 * one another, so that the shifts are gathered as the root of the sum of their squares, up and down
 * apart. All at their worst ends together would be wider, and no system is.
 *
 * <p>The slope is that of the regime in which the state stands: where a valve comes to its stop
 * inside the bands, the true edge lies elsewhere.
 */
public final class Ribbon {
  private final Solution solution;
  private final Sensitivities.Gradients gradients;
  private final double[] below;
  private final double[] above;

  /**
   * Where a healthy reading may lie.
   *
   * @param low SI
   * @param high SI
   */
  public record Edges(double low, double high) {}

  private Ribbon(Solution solution, Sensitivities.Gradients gradients, int columns) {
    this.solution = solution;
    this.gradients = gradients;
    below = new double[columns];
    above = new double[columns];
  }

  /**
   * Edges of each column.
   *
   * @param solution a solved state
   * @param columns what is read from it
   * @return empty where the state has no slopes
   */
  public static Optional<List<Edges>> at(Solution solution, List<Column> columns) {
    List<Quantity> quantities = columns.stream().map(Column::quantity).toList();
    return Sensitivities.at(solution)
        .map(slopes -> new Ribbon(solution, slopes.of(quantities), columns.size()).edges(columns));
  }

  private List<Edges> edges(List<Column> columns) {
    List<Part> parts = solution.network().parts();
    for (int i = 0; i < parts.size(); i++) {
      List<Parameter> own = parts.get(i).parameters();
      for (int k = 0; k < own.size(); k++) {
        if (own.get(k).low() < own.get(k).high()) {
          add(own.get(k), gradients.byNumber(i, k));
        }
      }
    }
    List<Edges> edges = new ArrayList<>();
    for (int c = 0; c < columns.size(); c++) {
      double value = columns.get(c).reading().of(solution);
      edges.add(new Edges(value - Math.sqrt(below[c]), value + Math.sqrt(above[c])));
    }
    return edges;
  }

  private void add(Parameter number, double[] slopes) {
    for (int c = 0; c < slopes.length; c++) {
      double one = slopes[c] * (number.high() - number.value());
      double two = slopes[c] * (number.low() - number.value());
      double up = Math.max(0, Math.max(one, two));
      double down = Math.min(0, Math.min(one, two));
      above[c] += up * up;
      below[c] += down * down;
    }
  }
}

package dev.offtake.measure.cases;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * How well each mode explains what was told: natural logarithms of the evidence.
 *
 * @param modes that may be wrong
 * @param sound of a plant in which nothing is
 * @param logs of each mode
 */
@SuppressWarnings("ArrayRecordComponent")
public record Opinion(List<ModeLine> modes, double sound, double[] logs) {
  /** Keeps its list. */
  public Opinion {
    modes = List.copyOf(modes);
  }

  /**
   * Chances.
   *
   * @param healthy before anything was read
   * @param weight of each mode, beside the others
   * @return of each mode, and last of nothing
   */
  public double[] chances(double healthy, ToDoubleFunction<ModeLine> weight) {
    double all = modes.stream().mapToDouble(weight).sum();
    double[] posts = new double[logs.length + 1];
    for (int i = 0; i < logs.length; i++) {
      posts[i] = logs[i] + Math.log((1 - healthy) * weight.applyAsDouble(modes.get(i)) / all);
    }
    posts[logs.length] = healthy > 0 ? sound + Math.log(healthy) : Double.NEGATIVE_INFINITY;
    double sum = Glance.logOfSum(posts);
    for (int i = 0; i < posts.length; i++) {
      posts[i] = Math.exp(posts[i] - sum);
    }
    return posts;
  }
}

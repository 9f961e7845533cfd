package dev.offtake.measure;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.util.Statistics;

/**
 * What was measured of one benchmark.
 *
 * @param group class of the benchmark
 * @param name what was done
 * @param parameters by name
 * @param nanos of the processor for an operation
 * @param yard ns of the processor for a unit of the yardstick in the same process
 * @param bytes allocated by an operation; NaN when not known
 * @param counts what else was counted: the middle of all iterations, or the largest of what is
 *     called slowest or worst, or the sum of what should not be
 */
record Row(
    String group,
    String name,
    Map<String, String> parameters,
    double nanos,
    double yard,
    double bytes,
    Map<String, Double> counts) {

  static Row of(RunResult result) {
    BenchmarkParams params = result.getParams();
    String[] path = params.getBenchmark().split("\\.", -1);
    Map<String, String> parameters = new TreeMap<>();
    params.getParamsKeys().forEach(key -> parameters.put(key, params.getParam(key)));
    Map<String, Double> counts = new TreeMap<>();
    result
        .getSecondaryResults()
        .forEach(
            (key, value) -> counts.put(key, summary(key).applyAsDouble(value.getStatistics())));
    double nanos = counts.getOrDefault("cpu", Double.NaN);
    double yard = counts.getOrDefault("yard", Double.NaN);
    double bytes =
        counts.entrySet().stream()
            .filter(entry -> entry.getKey().endsWith("gc.alloc.rate.norm"))
            .findFirst()
            .map(Map.Entry::getValue)
            .orElse(Double.NaN);
    counts.keySet().removeIf(key -> key.contains("gc.") || key.equals("cpu") || key.equals("yard"));
    return new Row(
        path[path.length - 2], path[path.length - 1], parameters, nanos, yard, bytes, counts);
  }

  private static ToDoubleFunction<Statistics> summary(String key) {
    if (key.startsWith("slowest") || key.startsWith("worst")) {
      return Statistics::getMax;
    }
    return switch (key) {
      case "fallbacks", "refused" -> Statistics::getSum;
      default -> statistics -> statistics.getPercentile(50);
    };
  }

  /** Time as a multiple of the yardstick. */
  double ratio() {
    return nanos / yard;
  }

  Optional<Double> count(String key) {
    return Optional.ofNullable(counts.get(key));
  }
}

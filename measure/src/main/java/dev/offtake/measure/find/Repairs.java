package dev.offtake.measure.find;

import dev.offtake.measure.cases.Case;
import dev.offtake.measure.cases.Cases;
import dev.offtake.part.Kinds;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;

/**
 * Minutes to a finished repair by following the next checks, beside those of the best fixed order
 * on the same cases. The seed is fixed before a run.
 */
public final class Repairs {
  /** A failure that shows less is not what somebody comes to mend. */
  private static final double SHOWS = 4;

  private final BleedSystem system;
  private final Cases cases = new Cases();
  private final Shelf shelf;
  private final Consumer<String> out;

  /**
   * Prepares.
   *
   * @param file the demo twin
   * @param out takes each line
   */
  public Repairs(Path file, Consumer<String> out) {
    system = SystemReader.read(file, Kinds.all()).system().orElseThrow();
    shelf = new Shelf(system, cases.modes());
    this.out = out;
  }

  /**
   * Runs.
   *
   * @param arguments system file; how many cases, drawn by rate; seed
   */
  public static void main(String[] arguments) {
    Repairs repairs = new Repairs(Path.of(arguments[0]), System.out::println);
    repairs.mend(Integer.parseInt(arguments[1]), Long.parseLong(arguments[2]));
  }

  /**
   * Mends cases that show above four sigmas.
   *
   * @return minutes with checks over those of the fixed order
   */
  public double mend(int count, long seed) {
    SplittableRandom numbers = new SplittableRandom(seed);
    List<Technician.Repair> repairs = new ArrayList<>();
    while (repairs.size() < count) {
      Case one = cases.byRate(numbers.nextLong());
      if (one.shift() >= SHOWS) {
        Technician.Repair repair = new Technician(system, shelf, one).mend();
        repairs.add(repair);
        say(
            "  %s: fixed order %.0f min, order of the first readings %.0f, with %d checks %.0f"
                + " (%.0f expected)",
            one.truth().words(),
            repair.fixed(),
            repair.ordered(),
            repair.checks(),
            repair.checked(),
            repair.expected());
      }
    }
    double fixed = mean(repairs, Technician.Repair::fixed);
    double checked = mean(repairs, Technician.Repair::checked);
    say(
        "%d repairs: fixed order %.0f min, order of the first readings %.0f, with %.1f checks %.0f"
            + " (%.0f expected); checks over fixed %.3f; %.2f checks passed over",
        count,
        fixed,
        mean(repairs, Technician.Repair::ordered),
        mean(repairs, Technician.Repair::checks),
        checked,
        mean(repairs, Technician.Repair::expected),
        checked / fixed,
        mean(repairs, Technician.Repair::impossible));
    return checked / fixed;
  }

  private static double mean(
      List<Technician.Repair> repairs, ToDoubleFunction<Technician.Repair> of) {
    return repairs.stream().mapToDouble(of).average().orElse(Double.NaN);
  }

  private void say(String format, Object... values) {
    out.accept(String.format(Locale.ROOT, format, values));
  }
}

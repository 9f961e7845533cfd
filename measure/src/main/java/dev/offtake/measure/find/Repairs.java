package dev.offtake.measure.find;

import dev.offtake.measure.cases.Case;
import dev.offtake.measure.cases.Cases;
import dev.offtake.part.Kinds;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.nio.file.Path;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.Consumer;

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
    double fixed = 0;
    double ordered = 0;
    double checked = 0;
    double expected = 0;
    int checks = 0;
    int impossible = 0;
    for (int i = 0; i < count; ) {
      Case one = cases.byRate(numbers.nextLong());
      if (one.shift() < SHOWS) {
        continue;
      }
      i++;
      Technician.Repair repair = new Technician(system, shelf, one).mend();
      fixed += repair.fixed();
      ordered += repair.ordered();
      checked += repair.checked();
      expected += repair.expected();
      checks += repair.checks();
      impossible += repair.impossible();
      say(
          "  %s: fixed order %.0f min, order of the first readings %.0f, with %d checks %.0f (%.0f"
              + " expected)",
          one.truth().words(),
          repair.fixed(),
          repair.ordered(),
          repair.checks(),
          repair.checked(),
          repair.expected());
    }
    say(
        "%d repairs: fixed order %.0f min, order of the first readings %.0f, with %.1f checks %.0f"
            + " (%.0f expected); checks over fixed %.3f; %d checks passed over",
        count,
        fixed / count,
        ordered / count,
        checks / (double) count,
        checked / count,
        expected / count,
        checked / fixed,
        impossible);
    return checked / fixed;
  }

  private void say(String format, Object... values) {
    out.accept(String.format(Locale.ROOT, format, values));
  }
}

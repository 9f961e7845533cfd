package dev.offtake.measure.find;

import dev.offtake.cause.ReadingsRead;
import dev.offtake.cause.ReadingsReader;
import dev.offtake.cause.find.Finder;
import dev.offtake.cause.find.Found;
import dev.offtake.cause.find.Prior;
import dev.offtake.measure.cases.Bin;
import dev.offtake.measure.cases.Case;
import dev.offtake.measure.cases.Cases;
import dev.offtake.measure.cases.ModeLine;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;

/** Scores {@code find}: ranking by how far the truth shows, healthy ones, strangers. */
public final class Score {
  private final BleedSystem system;
  private final Cases cases = new Cases();

  private Score(Path file) throws java.io.IOException {
    system = SystemReader.read(file).system().orElseThrow();
  }

  /**
   * Runs.
   *
   * @param arguments system file, cases for each mode and bin, healthy cases, strangers, seed
   */
  public static void main(String[] arguments) throws java.io.IOException {
    Score score = new Score(Path.of(arguments[0]));
    SplittableRandom seeds = new SplittableRandom(Long.parseLong(arguments[4]));
    score.ranking(Integer.parseInt(arguments[1]), seeds.nextLong());
    score.healthy(Integer.parseInt(arguments[2]), seeds.nextLong());
    score.strangers(Integer.parseInt(arguments[3]), seeds.nextLong());
  }

  private Verdict verdict(Case one) {
    return Verdict.of(one, found(one));
  }

  private Found found(Case one) {
    ReadingsRead read = ReadingsReader.readText("case.yaml", one.readings(), system);
    if (read.readings().isEmpty()) {
      throw new IllegalStateException(read.problems() + "\n" + one.readings());
    }
    return Finder.rank(
        system, read.readings().get(), Prior.of(Prior.Reason.SQUAWK), one.number(), share -> {});
  }

  private void ranking(int each, long seed) {
    SplittableRandom numbers = new SplittableRandom(seed);
    Map<Bin, List<Verdict>> verdicts = new EnumMap<>(Bin.class);
    for (ModeLine line : cases.modes()) {
      for (Bin bin : List.of(Bin.NEAR, Bin.CLEAR, Bin.PLAIN)) {
        for (int i = 0; i < each; i++) {
          Optional<Case> one = cases.listed(line, bin, numbers.nextLong());
          if (one.isEmpty()) {
            break;
          }
          Verdict verdict = verdict(one.get());
          verdicts.computeIfAbsent(bin, b -> new ArrayList<>()).add(verdict);
          if (bin != Bin.NEAR && verdict.place() != 1) {
            say(
                "missed %s %s: place %d of %d, chance %.3f, sound %.2f none %.2f (number %d)",
                bin,
                one.get().truth().words(),
                verdict.place(),
                verdict.group(),
                verdict.chance(),
                verdict.sound(),
                verdict.none(),
                one.get().number());
          }
        }
      }
    }
    verdicts.forEach(this::ranking);
  }

  private void ranking(Bin bin, List<Verdict> verdicts) {
    double first = 0;
    double three = 0;
    double whole = 0;
    double wholeThree = 0;
    List<Integer> sizes = new ArrayList<>();
    for (Verdict verdict : verdicts) {
      boolean hit = verdict.place() == 1;
      boolean near = verdict.place() >= 1 && verdict.place() <= 3;
      first += hit ? 1.0 / verdict.group() : 0;
      three += near ? Math.min(1, 3.0 / verdict.group()) : 0;
      whole += hit ? 1 : 0;
      wholeThree += near ? 1 : 0;
      if (verdict.group() > 0) {
        sizes.add(verdict.group());
      }
    }
    sizes.sort(null);
    int n = verdicts.size();
    say(
        "%s: %d cases, truth in first group %.3f (counted 1/k %.3f), in first three %.3f (%.3f),"
            + " median k %d",
        bin,
        n,
        whole / n,
        first / n,
        wholeThree / n,
        three / n,
        sizes.isEmpty() ? 0 : sizes.get(sizes.size() / 2));
  }

  private void healthy(int count, long seed) {
    SplittableRandom numbers = new SplittableRandom(seed);
    int called = 0;
    for (int i = 0; i < count; i++) {
      Case one = cases.healthy(numbers.nextLong());
      Verdict verdict = verdict(one);
      if (verdict.sound() < 0.5) {
        called++;
        say(
            "called broken: %d, sound %.2f none %.2f",
            one.number(), verdict.sound(), verdict.none());
      }
    }
    say("healthy: %d of %d called broken", called, count);
  }

  private void strangers(int count, long seed) {
    SplittableRandom numbers = new SplittableRandom(seed);
    int none = 0;
    int near = 0;
    int either = 0;
    int shown = 0;
    for (int i = 0; i < count; i++) {
      Case one = cases.stranger(numbers.nextLong());
      if (one.shift() < 4) {
        continue;
      }
      shown++;
      Verdict verdict = verdict(one);
      boolean other = verdict.none() > 0.5;
      boolean adjacent = verdict.near() > 0.5 * (1 - verdict.none() - verdict.sound());
      none += other ? 1 : 0;
      near += adjacent ? 1 : 0;
      either += other || adjacent ? 1 : 0;
      if (!other && !adjacent) {
        say(
            "stranger %s: near %.2f none %.2f sound %.2f (%d)",
            one.truth().words(), verdict.near(), verdict.none(), verdict.sound(), one.number());
      }
    }
    say(
        "strangers that show: %d, none of these %d, adjacent %d, either %d",
        shown, none, near, either);
  }

  private static void say(String format, Object... values) {
    System.out.println(String.format(Locale.ROOT, format, values));
  }
}

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
import dev.offtake.part.Kinds;
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
import java.util.function.Consumer;

/**
 * Scores {@code find} on cases of the independent plant: ranking by how far the truth shows,
 * healthy ones called broken, strangers, and calibration. The seed is fixed before a run.
 */
public final class Score {
  private final BleedSystem system;
  private final Cases cases = new Cases();
  private final Consumer<String> out;

  /**
   * Prepares.
   *
   * @param file the demo twin
   * @param out takes each line
   */
  public Score(Path file, Consumer<String> out) {
    system = SystemReader.read(file, Kinds.all()).system().orElseThrow();
    this.out = out;
  }

  /**
   * Runs.
   *
   * @param arguments system file; how many modes (each once in every bin), healthy plants,
   *     strangers and plants drawn by rate; seed
   */
  public static void main(String[] arguments) {
    Score score = new Score(Path.of(arguments[0]), System.out::println);
    SplittableRandom seeds = new SplittableRandom(Long.parseLong(arguments[5]));
    score.ranking(Integer.parseInt(arguments[1]), seeds.nextLong());
    score.healthy(Integer.parseInt(arguments[2]), seeds.nextLong());
    score.strangers(Integer.parseInt(arguments[3]), seeds.nextLong());
    score.calibration(Integer.parseInt(arguments[4]), seeds.nextLong());
  }

  private Verdict verdict(Case one, Prior prior) {
    ReadingsRead read = ReadingsReader.readText("case.yaml", one.readings(), system);
    if (read.readings().isEmpty()) {
      throw new IllegalStateException(read.problems() + "\n" + one.readings());
    }
    Found found = Finder.rank(system, read.readings().get(), prior, one.number(), share -> {});
    return Verdict.of(one, found);
  }

  private static Prior squawk() {
    return Prior.of(Prior.Reason.SQUAWK);
  }

  /**
   * Ranks modes drawn without return, each once in every bin that it reaches.
   *
   * @return share of the cases above four sigmas whose truth is in the first group
   */
  public double ranking(int modes, long seed) {
    SplittableRandom numbers = new SplittableRandom(seed);
    List<ModeLine> left = new ArrayList<>(cases.modes());
    Map<Bin, List<Verdict>> verdicts = new EnumMap<>(Bin.class);
    for (int i = 0; i < modes && !left.isEmpty(); i++) {
      ModeLine line = left.remove(numbers.nextInt(left.size()));
      for (Bin bin : List.of(Bin.NEAR, Bin.CLEAR, Bin.PLAIN)) {
        Optional<Case> one = cases.listed(line, bin, numbers.nextLong());
        if (one.isPresent()) {
          Verdict verdict = verdict(one.get(), squawk());
          verdicts.computeIfAbsent(bin, b -> new ArrayList<>()).add(verdict);
          missed(bin, one.get(), verdict);
        }
      }
    }
    verdicts.forEach(this::ranking);
    List<Verdict> clear = new ArrayList<>(verdicts.getOrDefault(Bin.CLEAR, List.of()));
    clear.addAll(verdicts.getOrDefault(Bin.PLAIN, List.of()));
    return clear.stream().filter(v -> v.place() == 1).count() / (double) Math.max(1, clear.size());
  }

  private void missed(Bin bin, Case one, Verdict verdict) {
    if (bin != Bin.NEAR && verdict.place() != 1) {
      say(
          "  not first: %s %s: place %d, chance %.3f, sound %.2f, none %.2f (case %d)",
          bin,
          one.truth().words(),
          verdict.place(),
          verdict.chance(),
          verdict.sound(),
          verdict.none(),
          one.number());
    }
  }

  private void ranking(Bin bin, List<Verdict> verdicts) {
    double likeliest = 0;
    double first = 0;
    double firstParted = 0;
    double three = 0;
    double log = 0;
    double sound = 0;
    List<Integer> sizes = new ArrayList<>();
    for (Verdict verdict : verdicts) {
      boolean hit = verdict.place() == 1;
      first += hit ? 1 : 0;
      likeliest += verdict.right() ? 1 : 0;
      firstParted += hit ? 1.0 / verdict.group() : 0;
      three += verdict.place() >= 1 && verdict.place() <= 3 ? 1 : 0;
      sound += verdict.sound() > 0.5 ? 1 : 0;
      log += Math.log(Math.max(1e-4, verdict.chance()));
      if (verdict.group() > 0) {
        sizes.add(verdict.group());
      }
    }
    sizes.sort(null);
    int n = verdicts.size();
    say(
        "%s: %d cases, truth in the first group %.3f (counted 1/k %.3f), in the first three %.3f,"
            + " median k %d; the likeliest cause of all is the truth %.3f, log score %.3f; told as"
            + " sound %.3f",
        bin,
        n,
        first / n,
        firstParted / n,
        three / n,
        sizes.isEmpty() ? 0 : sizes.get(sizes.size() / 2),
        likeliest / n,
        log / n,
        sound / n);
  }

  /** Share of healthy plants that are called broken: sound less likely than one half. */
  public double healthy(int count, long seed) {
    SplittableRandom numbers = new SplittableRandom(seed);
    int called = 0;
    for (int i = 0; i < count; i++) {
      Case one = cases.healthy(numbers.nextLong());
      Verdict verdict = verdict(one, squawk());
      if (verdict.sound() < 0.5) {
        called++;
        say(
            "  called broken: case %d, sound %.2f, none %.2f",
            one.number(), verdict.sound(), verdict.none());
      }
    }
    say("healthy: %d of %d called broken", called, count);
    return called / (double) Math.max(1, count);
  }

  private void strangers(int count, long seed) {
    SplittableRandom numbers = new SplittableRandom(seed);
    int shown = 0;
    int none = 0;
    int near = 0;
    int either = 0;
    for (int i = 0; i < count; i++) {
      Case one = cases.stranger(numbers.nextLong());
      if (one.shift() < 4) {
        continue;
      }
      shown++;
      Verdict verdict = verdict(one, squawk());
      boolean other = verdict.none() > 0.5;
      boolean adjacent = verdict.near() > 0.5 * (1 - verdict.none() - verdict.sound());
      none += other ? 1 : 0;
      near += adjacent ? 1 : 0;
      either += other || adjacent ? 1 : 0;
    }
    say(
        "strangers: %d of %d show above 4 sigmas; none of these %d, a part that a judge accepts %d,"
            + " either %d",
        shown, count, none, near, either);
  }

  /** Half healthy, half by rate; believed in ten bins against what was right. */
  private void calibration(int count, long seed) {
    SplittableRandom numbers = new SplittableRandom(seed);
    Prior even = new Prior(Prior.Reason.AFTER_MAINTENANCE, 0.5, 0.001, 100, 100, 1, 1e-6);
    int[] cases = new int[10];
    int[] right = new int[10];
    double[] believed = new double[10];
    double score = 0;
    double blind = 0;
    for (int i = 0; i < count; i++) {
      boolean healthy = numbers.nextBoolean();
      long number = numbers.nextLong();
      Case one = healthy ? this.cases.healthy(number) : this.cases.byRate(number);
      Verdict verdict = verdict(one, even);
      overbold(one, verdict);
      int bin = (int) Math.min(9, 10 * verdict.believed());
      cases[bin]++;
      right[bin] += verdict.right() ? 1 : 0;
      believed[bin] += verdict.believed();
      score += Math.log(Math.max(1e-4, verdict.chance()));
      blind += healthy ? Math.log(0.5) : Math.log(0.5 / this.cases.modes().size());
    }
    double error = 0;
    for (int b = 0; b < 10; b++) {
      if (cases[b] > 0) {
        error += Math.abs(right[b] - believed[b]) / count;
        say(
            "  believed %.2f: %d cases, right %.2f",
            believed[b] / cases[b], cases[b], right[b] / (double) cases[b]);
      }
    }
    say(
        "calibration: %d cases, expected error %.3f, log score %.3f (even prior %.3f)",
        count, error, score / Math.max(1, count), blind / Math.max(1, count));
  }

  private void overbold(Case one, Verdict verdict) {
    if (!verdict.right() && verdict.believed() > 0.5) {
      say(
          "  %s %s (case %d, shift %.1f): %.2f believed of %s, %.3f of the truth",
          one.truth().kind(),
          one.truth().words(),
          one.number(),
          one.shift(),
          verdict.believed(),
          verdict.likeliest(),
          verdict.chance());
    }
  }

  private void say(String format, Object... values) {
    out.accept(String.format(Locale.ROOT, format, values));
  }
}

package dev.offtake.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleConsumer;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * Does many pieces of work side by side. Each worker takes the next piece when it is done with one:
 * pieces differ in length by a hundredfold, and long ones often lie together, so that shares handed
 * out beforehand would leave one worker busy and the others waiting.
 */
public final class Abreast {
  private final int count;
  private final double from;
  private final double to;
  private final DoubleConsumer progress;
  private final AtomicInteger next = new AtomicInteger();
  private int done;

  /** What a piece came to. */
  private record Piece<T>(int number, T result) {}

  private Abreast(int count, double from, double to, DoubleConsumer progress) {
    this.count = count;
    this.from = from;
    this.to = to;
    this.progress = progress;
  }

  /**
   * Does them all.
   *
   * @param count how many pieces
   * @param from share of all work that was done before
   * @param to share that is done then
   * @param progress is told the share after each piece, never less than before; what it throws, as
   *     what a piece throws, ends the work
   * @param work a piece by its number, from 0; called by several threads at a time
   * @return results in the order of their numbers
   */
  public static <T> List<T> all(
      int count, double from, double to, DoubleConsumer progress, IntFunction<T> work) {
    Abreast abreast = new Abreast(count, from, to, progress);
    int workers = Math.min(count, ForkJoinPool.getCommonPoolParallelism() + 1);
    return IntStream.range(0, workers)
        .parallel()
        .mapToObj(worker -> abreast.pieces(work))
        .flatMap(List::stream)
        .sorted(Comparator.comparingInt(Piece::number))
        .map(Piece::result)
        .toList();
  }

  private <T> List<Piece<T>> pieces(IntFunction<T> work) {
    List<Piece<T>> pieces = new ArrayList<>();
    boolean fine = false;
    try {
      for (int i = next.getAndIncrement(); i < count; i = next.getAndIncrement()) {
        pieces.add(new Piece<>(i, work.apply(i)));
        tell();
      }
      fine = true;
    } finally {
      if (!fine) {
        next.set(count);
      }
    }
    return pieces;
  }

  /** Counts and tells as one: two threads would else tell in the wrong order. */
  private synchronized void tell() {
    done++;
    progress.accept(from + (to - from) * done / count);
  }
}

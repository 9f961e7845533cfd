package dev.offtake.cause.find;

import dev.offtake.system.BleedSystem;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleConsumer;
import java.util.function.DoubleSupplier;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Forecasters that work side by side, each with equations of its own. */
final class Team {
  private final BleedSystem system;
  private final DoubleConsumer progress;
  private final Queue<Forecaster> idle = new ConcurrentLinkedQueue<>();

  Team(BleedSystem system, DoubleConsumer progress) {
    this.system = system;
    this.progress = progress;
  }

  /** A piece of many. */
  @FunctionalInterface
  interface Piece<T> {
    T of(Forecaster forecaster, int number);
  }

  /** Does one piece of work. */
  <T> T on(Function<Forecaster, T> work) {
    Forecaster free = idle.poll();
    Forecaster forecaster = free == null ? new Forecaster(system) : free;
    T done = work.apply(forecaster);
    idle.add(forecaster);
    return done;
  }

  /**
   * Does many, side by side.
   *
   * @param from share of all work that was done before
   * @param to share that is done then
   * @return in their order
   */
  <T> List<T> all(int count, double from, double to, Piece<T> work) {
    AtomicInteger done = new AtomicInteger();
    return IntStream.range(0, count)
        .parallel()
        .mapToObj(
            i -> {
              T result = on(forecaster -> work.of(forecaster, i));
              tell(() -> from + (to - from) * done.incrementAndGet() / count);
              return result;
            })
        .toList();
  }

  /** Counts and tells as one: two threads would else tell in the wrong order. */
  private synchronized void tell(DoubleSupplier share) {
    progress.accept(share.getAsDouble());
  }
}

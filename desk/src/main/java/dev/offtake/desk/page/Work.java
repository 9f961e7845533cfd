package dev.offtake.desk.page;

import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Where slow questions wait for their turn, so that they do not hold up the quick ones. A question
 * that takes too long is given up; its thread is interrupted, which ends it at its next step.
 */
final class Work implements AutoCloseable {
  private final ThreadPoolExecutor pool;
  private final int seconds;

  Work(int threads, Limits limits) {
    seconds = limits.seconds();
    pool =
        new ThreadPoolExecutor(
            threads,
            threads,
            1,
            TimeUnit.MINUTES,
            new ArrayBlockingQueue<>(limits.waiting()),
            task -> {
              Thread thread = new Thread(task, "page work");
              thread.setDaemon(true);
              return thread;
            });
  }

  /** Begins something that nobody waits for; forgotten when too much waits already. */
  void soon(Runnable task) {
    try {
      pool.execute(task);
    } catch (RejectedExecutionException full) {
      // It was only to save time later.
    }
  }

  /** Begins something. */
  <T> Future<T> begin(Callable<T> task) {
    try {
      return pool.submit(task);
    } catch (RejectedExecutionException full) {
      throw new Refusal(Refusal.BUSY, "too many questions wait already", "try again in a moment");
    }
  }

  /** Begins something and waits for it. */
  <T> T answer(Callable<T> task) {
    Future<T> future = begin(task);
    try {
      return future.get(seconds, TimeUnit.SECONDS);
    } catch (TimeoutException late) {
      future.cancel(true);
      throw new Refusal(
          Refusal.BUSY, "no answer within " + seconds + " s", "ask for less, or try again");
    } catch (InterruptedException stopped) {
      future.cancel(true);
      Thread.currentThread().interrupt();
      throw new Refusal(Refusal.BUSY, "the server is stopping", "start it again");
    } catch (ExecutionException failed) {
      if (failed.getCause() instanceof Refusal refusal) {
        throw refusal;
      }
      throw new IllegalStateException(failed.getCause());
    }
  }

  /** Ends a computation whose question was given up; to be called at each of its steps. */
  static void goOn() {
    if (Thread.currentThread().isInterrupted()) {
      throw new Refusal(Refusal.BUSY, "the question was given up", "ask again");
    }
  }

  @Override
  public void close() {
    pool.shutdownNow();
  }
}

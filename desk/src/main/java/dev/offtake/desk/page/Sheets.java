package dev.offtake.desk.page;

import dev.offtake.quantity.Style;
import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.DoubleConsumer;

/** Pocket sheets of one system: made once, when somebody first asks for one. */
public final class Sheets implements AutoCloseable {
  private final Opened opened;

  /** So many may wait for a sheet; more would keep the server from answering others. */
  private static final int ASKERS = 3;

  private final Limits limits;
  private final Semaphore askers = new Semaphore(ASKERS);
  private final Map<Style, CompletableFuture<byte[]>> made = new EnumMap<>(Style.class);
  private volatile boolean closed;
  private volatile double progress;

  Sheets(Opened opened, Limits limits) {
    this.opened = opened;
    this.limits = limits;
  }

  /**
   * Makes a sheet.
   *
   * @param opened the system
   * @param style units of its words
   * @param progress is told the share that is done, 0..1; whatever it throws ends the work
   * @return a whole file of HTML, UTF-8
   */
  public static byte[] make(Opened opened, Style style, DoubleConsumer progress) {
    return PocketPage.of(opened.system().title(), Pocket.of(opened, style, progress));
  }

  /** The sheet, as far as it is ready within the time that a question may take. */
  byte[] sheet(Style style) {
    CompletableFuture<byte[]> sheet;
    synchronized (made) {
      sheet = made.computeIfAbsent(style, this::begin);
    }
    boolean waits = !sheet.isDone();
    if (waits && !askers.tryAcquire()) {
      throw making();
    }
    try {
      return sheet.get(limits.seconds(), TimeUnit.SECONDS);
    } catch (TimeoutException late) {
      throw making();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new Refusal(Refusal.BUSY, "the server is stopping", "start it again");
    } catch (ExecutionException | CompletionException fault) {
      throw new IllegalStateException(fault.getCause());
    } finally {
      if (waits) {
        askers.release();
      }
    }
  }

  private Refusal making() {
    return new Refusal(
        Refusal.BUSY,
        "the pocket sheet is being made: " + Math.round(100 * progress) + " % is done",
        "ask for it again in a minute");
  }

  private CompletableFuture<byte[]> begin(Style style) {
    CompletableFuture<byte[]> sheet = new CompletableFuture<>();
    Thread maker =
        new Thread(
            () -> {
              try {
                sheet.complete(make(opened, style, this::step));
              } catch (RuntimeException fault) {
                sheet.completeExceptionally(fault);
              }
            },
            "pocket sheet");
    maker.setDaemon(true);
    maker.start();
    return sheet;
  }

  private void step(double share) {
    if (closed) {
      throw new CancellationException();
    }
    progress = share;
  }

  @Override
  public void close() {
    closed = true;
  }
}

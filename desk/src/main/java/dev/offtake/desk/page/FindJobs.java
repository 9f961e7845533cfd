package dev.offtake.desk.page;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.cause.Readings;
import dev.offtake.cause.find.Finder;
import dev.offtake.cause.find.Found;
import dev.offtake.cause.find.Prior;
import dev.offtake.explain.FindJson;
import dev.offtake.explain.FindText;
import dev.offtake.quantity.Style;
import dev.offtake.system.BleedSystem;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ForkJoinPool;
import org.jspecify.annotations.Nullable;

/** Searches for causes that run beside the page: begun, looked after, given up. */
final class FindJobs implements AutoCloseable {
  /** Where the draws of a search begin: the same question has the same answer. */
  private static final long DRAWS = 1;

  /** Answers that are kept until somebody fetches them. */
  private static final int KEPT = 16;

  /** Searches that may run or wait at once. */
  private static final int RUNNING = 6;

  private static final int WIDTH = 72;

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final BleedSystem system;
  private final long longest;
  private final ForkJoinPool pool;
  private final Map<String, Job> jobs = new LinkedHashMap<>();

  /**
   * Prepares.
   *
   * @param system what is looked at
   * @param limits how long a search may take: five times what a slow question may
   */
  FindJobs(BleedSystem system, Limits limits) {
    this.system = system;
    longest = 5_000_000_000L * limits.seconds();
    pool = new ForkJoinPool(Runtime.getRuntime().availableProcessors());
  }

  /** A search. */
  private static final class Job {
    private final String page;
    private final long began = System.nanoTime();
    private volatile boolean givenUp;
    private volatile double progress;
    private volatile @Nullable ObjectNode result;
    private volatile @Nullable Refusal refusal;

    Job(String page) {
      this.page = page;
    }

    boolean ended() {
      return result != null || refusal != null;
    }
  }

  /**
   * Begins a search; an older one of the same page is given up.
   *
   * @param readings what was read
   * @param reason why somebody looks
   * @param style units of the words
   * @param page which page asks
   * @return by which it is asked after
   */
  String begin(Readings readings, Prior.Reason reason, Style style, String page) {
    Job job = new Job(page);
    String id = UUID.randomUUID().toString();
    synchronized (jobs) {
      jobs.values().stream()
          .filter(old -> old.page.equals(page))
          .forEach(old -> old.givenUp = true);
      long running = jobs.values().stream().filter(old -> !old.ended() && !old.givenUp).count();
      long all = jobs.values().stream().filter(old -> !old.ended()).count();
      if (running >= RUNNING || all >= 2 * RUNNING) {
        throw new Refusal(Refusal.BUSY, "other searches are under way", "try again in a moment");
      }
      jobs.values().removeIf(old -> old.givenUp && old.ended());
      jobs.put(id, job);
      Iterator<Job> eldest = jobs.values().iterator();
      while (jobs.size() > KEPT && eldest.hasNext()) {
        if (eldest.next().ended()) {
          eldest.remove();
        }
      }
    }
    pool.execute(() -> run(job, readings, reason, style));
    return id;
  }

  private void run(Job job, Readings readings, Prior.Reason reason, Style style) {
    try {
      Prior prior = Prior.of(reason);
      Found found = Finder.find(system, readings, prior, DRAWS, share -> step(job, share));
      job.result = document(found, style);
    } catch (CancellationException given) {
      job.refusal = new Refusal(Refusal.BUSY, "the search was given up", "search again");
    } catch (RuntimeException fault) {
      job.refusal =
          new Refusal(
              Refusal.FAULT,
              "a fault in Offtake while it searched, not in your input",
              "leave out the last reading and search again");
    }
  }

  private void step(Job job, double share) {
    if (job.givenUp || System.nanoTime() - job.began > longest) {
      throw new CancellationException();
    }
    job.progress = share;
  }

  private static ObjectNode document(Found found, Style style) {
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    FindText.Manner manner = new FindText.Manner(WIDTH, style, false, today, List.of());
    try {
      ObjectNode node = (ObjectNode) MAPPER.readTree(FindJson.print(found, manner));
      FindText.print(found, manner).lines().forEach(node.putArray("text")::add);
      return node;
    } catch (JsonProcessingException never) {
      throw new IllegalStateException(never);
    }
  }

  /** How far a search has come, and its answer. */
  ObjectNode look(String id) {
    Job job;
    synchronized (jobs) {
      job = jobs.get(id);
    }
    if (job == null) {
      throw new Refusal(Refusal.MISSING, "there is no such search", "search again");
    }
    @Nullable Refusal refusal = job.refusal;
    if (refusal != null) {
      throw refusal;
    }
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    @Nullable ObjectNode result = job.result;
    root.put("done", result != null).put("progress", result == null ? job.progress : 1);
    root.put("doing", result == null ? doing(job.progress) : "done");
    if (result != null) {
      root.set("result", result);
    }
    return root;
  }

  private static String doing(double progress) {
    if (progress < 0.4) {
      return "trying each failure of each part";
    }
    if (progress < 0.7) {
      return "looking closer at those that fit";
    }
    return progress < 0.9 ? "trying two failures at once" : "looking for the check that would tell";
  }

  /** Gives a search up. */
  void giveUp(String id) {
    synchronized (jobs) {
      Job job = jobs.get(id);
      if (job != null) {
        job.givenUp = true;
      }
    }
  }

  @Override
  public void close() {
    synchronized (jobs) {
      jobs.values().forEach(job -> job.givenUp = true);
    }
    pool.shutdownNow();
  }
}

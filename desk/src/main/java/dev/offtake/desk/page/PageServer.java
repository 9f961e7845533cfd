package dev.offtake.desk.page;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.util.JavalinBindException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/** The server of the page: begins, answers and ends. */
public final class PageServer implements AutoCloseable {
  /** Ports that are tried, from the one that was asked for on. */
  private static final int PORTS = 20;

  private static final int THREADS = 24;

  private final Javalin http;
  private final Access access;
  private final Work work;
  private final Answers answers;
  private final FindJobs jobs;
  private final Sheets sheets;
  private final String host;
  private final Consumer<String> says;

  /**
   * How a server is reached.
   *
   * @param host name or address to listen on
   * @param port the port to begin with; 0 for any that is free
   * @param limits what may be asked of the machine
   * @param says takes what a person has to know while it runs, a sentence each
   */
  public record Settings(String host, int port, Limits limits, Consumer<String> says) {}

  private PageServer(Opened opened, Settings settings) {
    host = settings.host();
    says = settings.says();
    access = new Access(loopback(host));
    work = new Work(Math.max(1, Runtime.getRuntime().availableProcessors()), settings.limits());
    answers = new Answers(opened, work);
    Gate gate = new Gate(access, names(), settings.limits(), this::entered);
    http = Javalin.create(PageServer::configure);
    http.before(gate::pass);
    jobs = new FindJobs(opened.system(), settings.limits());
    Posts posts = new Posts(opened, jobs, settings.limits());
    sheets = new Sheets(opened, settings.limits());
    new Routes(answers, access, opened, posts, sheets).add(http);
    http.exception(ReadingsDocument.Wrong.class, PageServer::wrong);
    http.exception(Refusal.class, (refusal, context) -> refuse(context, refusal));
    http.exception(HttpResponseException.class, (problem, context) -> plain(context, problem));
    http.exception(Exception.class, this::fault);
    http.error(404, context -> missing(context));
  }

  /** Bodies that come more slowly are cut off, bytes a second. */
  private static final long SLOWEST_BODY = 1024;

  private static void configure(JavalinConfig config) {
    config.showJavalinBanner = false;
    config.startupWatcherEnabled = false;
    config.http.disableCompression();
    config.jetty.threadPool = new QueuedThreadPool(THREADS, 4);
    config.jetty.modifyServer(server -> server.setErrorHandler(new BadRequests()));
    config.jetty.modifyHttpConfiguration(
        http -> {
          http.setSendServerVersion(false);
          http.setSendDateHeader(false);
          http.setRequestHeaderSize(16 * 1024);
          http.setIdleTimeout(30_000);
          http.setMinRequestDataRate(SLOWEST_BODY);
        });
  }

  /**
   * Begins to answer.
   *
   * @param opened what the page is about
   * @param settings how it is reached
   * @return the running server; close it to end it
   * @throws java.io.IOException when no port is free, or the host is none of this machine
   */
  public static PageServer start(Opened opened, Settings settings) throws java.io.IOException {
    PageServer server = new PageServer(opened, settings);
    for (int i = 0; i < PORTS; i++) {
      int port = settings.port() == 0 ? 0 : settings.port() + i;
      try {
        server.http.start(settings.host(), port);
        server.answers.prepare();
        return server;
      } catch (JavalinBindException taken) {
        // The next port, with a server of its own: one that could not begin does not begin again.
        server.close();
        server = new PageServer(opened, settings);
      }
    }
    server.close();
    throw new java.nio.file.FileSystemException(
        settings.host() + ":" + settings.port(),
        null,
        "this port and those after it are taken, or"
            + " the host is none of this machine; choose another with --port or --host");
  }

  /** Address to open, with the key where one is needed. */
  public String address() {
    String shown = host.contains(":") ? "[" + host + "]" : host;
    String open = access.open() ? "" : "?key=" + access.key();
    return "http://" + (any() ? machine() : shown) + ":" + http.port() + "/" + open;
  }

  /** Port that it listens on. */
  public int port() {
    return http.port();
  }

  /** Whether it can be reached from this machine only. */
  public boolean loopback() {
    return access.open();
  }

  private boolean any() {
    return host.equals("0.0.0.0") || host.equals("::");
  }

  private void entered() {
    says.accept("A device was let in. For another one: " + address());
  }

  private static boolean loopback(String host) {
    try {
      return InetAddress.getByName(host).isLoopbackAddress();
    } catch (UnknownHostException unknown) {
      return false;
    }
  }

  private List<String> names() {
    List<String> names = new ArrayList<>(List.of(host, "[" + host + "]"));
    if (access.open()) {
      names.addAll(List.of("localhost", "127.0.0.1", "[::1]"));
    } else if (any()) {
      names.addAll(List.of("localhost", machine()));
    }
    return names;
  }

  private static String machine() {
    try {
      return InetAddress.getLocalHost().getHostName();
    } catch (UnknownHostException none) {
      return "localhost";
    }
  }

  private static void refuse(Context context, Refusal refusal) {
    context.status(refusal.status());
    Sender.json(context, refusal.json());
  }

  private static void wrong(ReadingsDocument.Wrong wrong, Context context) {
    context.status(Refusal.BAD);
    Sender.json(context, wrong.json());
  }

  private static void plain(Context context, HttpResponseException problem) {
    refuse(context, new Refusal(problem.getStatus(), "that cannot be answered", "ask otherwise"));
  }

  private static void missing(Context context) {
    // What was refused already has said why.
    if (!String.valueOf(context.res().getContentType()).contains("json")) {
      refuse(context, new Refusal(Refusal.MISSING, "there is nothing here", "go back to the page"));
    }
  }

  /** A fault of ours: told where the server was started, in one line, and not to whoever asked. */
  private void fault(Exception fault, Context context) {
    Throwable cause = fault.getCause() == null ? fault : fault.getCause();
    StackTraceElement[] trace = cause.getStackTrace();
    String where = trace.length == 0 ? "" : " at " + trace[0];
    says.accept(
        "A fault in Offtake at "
            + context.path()
            + ": "
            + cause.getClass().getSimpleName()
            + where);
    refuse(
        context,
        new Refusal(
            Refusal.FAULT,
            "a fault in Offtake, not in your input",
            "ask for something else, and tell us what you asked"));
  }

  @Override
  public void close() {
    http.stop();
    work.close();
    jobs.close();
    sheets.close();
  }
}

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Clients that drag the power of a running page, each asking the next state when it has the last
 * one: java measure/page/PageLoad.java URL CLIENTS SECONDS [PAUSE_MS]. Prints how long they waited
 * and how long the server took (its Server-Timing header, from the gate to the answer), in ms.
 */
public class PageLoad {
  private record Times(List<Double> waited, List<Double> served, List<String> failed) {}

  public static void main(String[] arguments) throws Exception {
    String url = arguments[0].replaceAll("/$", "");
    int clients = Integer.parseInt(arguments[1]);
    double seconds = Double.parseDouble(arguments[2]);
    long pause = arguments.length > 3 ? Long.parseLong(arguments[3]) : 0;
    ExecutorService pool = Executors.newFixedThreadPool(clients);
    drag(url, 0, 5, 0); // the server settles
    List<Future<Times>> all = new ArrayList<>();
    for (int i = 0; i < clients; i++) {
      int client = i;
      all.add(pool.submit(() -> drag(url, client, seconds, pause)));
    }
    List<Double> waited = new ArrayList<>();
    List<Double> served = new ArrayList<>();
    List<String> failed = new ArrayList<>();
    for (Future<Times> one : all) {
      waited.addAll(one.get().waited());
      served.addAll(one.get().served());
      failed.addAll(one.get().failed());
    }
    pool.shutdown();
    System.out.printf(
        Locale.ROOT,
        "%d clients, %.0f s, %d answers, %d errors%n",
        clients,
        seconds,
        waited.size(),
        failed.size());
    failed.stream().distinct().limit(5).forEach(System.out::println);
    print("waited", waited);
    print("server", served);
  }

  private static Times drag(String url, int client, double seconds, long pause) throws Exception {
    HttpClient http = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    Times times = new Times(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    long end = System.nanoTime() + (long) (seconds * 1e9);
    // Up and down the rail, a third of a percent a frame, each client from a place of its own.
    for (int i = 17 * client; System.nanoTime() < end; i++) {
      double place = Math.abs((i * 0.0031) % 0.9 - 0.45);
      String ask = String.format(Locale.ROOT, "%s/api/state?core=%.4f", url, 0.55 + place);
      long began = System.nanoTime();
      HttpResponse<String> answer =
          http.send(
              HttpRequest.newBuilder(URI.create(ask)).build(), HttpResponse.BodyHandlers.ofString());
      times.waited().add((System.nanoTime() - began) * 1e-6);
      answer
          .headers()
          .firstValue("Server-Timing")
          .ifPresent(time -> times.served().add(Double.parseDouble(time.replaceAll(".*=", ""))));
      if (answer.statusCode() != 200 || !answer.body().contains("\"solved\":true")) {
        times.failed().add(answer.statusCode() + " " + answer.body());
      }
      if (pause > 0) {
        Thread.sleep(pause);
      }
    }
    return times;
  }

  private static void print(String what, List<Double> times) {
    double[] sorted = times.stream().mapToDouble(t -> t).sorted().toArray();
    if (sorted.length > 0) {
      System.out.printf(
          Locale.ROOT,
          "%-7s median %.2f  p95 %.2f  p99 %.2f  most %.1f ms%n",
          what,
          sorted[sorted.length / 2],
          sorted[sorted.length * 95 / 100],
          sorted[sorted.length * 99 / 100],
          sorted[sorted.length - 1]);
    }
  }
}

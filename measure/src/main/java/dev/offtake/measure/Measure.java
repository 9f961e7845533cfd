package dev.offtake.measure;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.format.ResultFormatType;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;

/**
 * Runs benchmarks and prints their tables: {@code Measure RESULTS [FILTER]...}, each filter a
 * regular expression on {@code Class.method}.
 */
public final class Measure {
  private static final String BASELINE = "StatePieces.denseLu";
  private static final String PEER = "Kinsol";

  private Measure() {}

  /** Runs. */
  public static void main(String[] args) throws RunnerException, IOException {
    Path results = Path.of(args[0]);
    List<String> filters = List.of(args).subList(1, args.length);
    ChainedOptionsBuilder options =
        new OptionsBuilder()
            .addProfiler(GCProfiler.class)
            .result(results.toString())
            .resultFormat(ResultFormatType.JSON)
            .shouldFailOnError(false)
            .verbosity(VerboseMode.NORMAL)
            .include("\\." + BASELINE.replace(".", "\\.") + "$");
    if (filters.isEmpty()) {
      options.include("^dev\\.offtake\\.measure\\.").exclude(PEER);
    }
    for (String filter : filters) {
      options.include(filter);
    }
    PrintStream out = System.out;
    List<Row> rows;
    // The log of JMH goes beside its results, so that the tables are all that is printed.
    Path log = Path.of(results.toString().replaceFirst("\\.json$", "") + ".log");
    out.println("running; the log is " + log);
    try (OutputStream file = Files.newOutputStream(log);
        PrintStream quiet = new PrintStream(file, true, StandardCharsets.UTF_8)) {
      System.setOut(quiet);
      rows = new Runner(options.build()).run().stream().map(Row::of).toList();
    } finally {
      System.setOut(out);
    }
    out.println(machine());
    out.print(Table.print(rows));
    if (Files.readString(log, StandardCharsets.UTF_8).contains("<failure")) {
      out.println("\nNOT ALL BENCHMARKS RAN: see <failure in " + log);
      System.exit(1);
    }
  }

  /** What the figures depend on. */
  private static String machine() throws IOException {
    String load = read(Path.of("/proc/loadavg"));
    return String.format(
        Locale.ROOT,
        "Java %s, %s, %d processors to run on; load of the machine at the end %s",
        Runtime.version().feature(),
        System.getProperty("os.arch"),
        Runtime.getRuntime().availableProcessors(),
        load.isEmpty() ? "unknown" : load.split(" ", 2)[0]);
  }

  private static String read(Path file) throws IOException {
    if (!Files.isReadable(file)) {
      return "";
    }
    try (InputStream in = Files.newInputStream(file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
    }
  }
}

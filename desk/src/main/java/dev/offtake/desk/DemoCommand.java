package dev.offtake.desk;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code demo}: copies the demo files to a folder and answers the first questions on them. */
@Command(
    name = "demo",
    mixinStandardHelpOptions = true,
    description = "Shows the main job on an invented twin; copies its files to play with.",
    footer = {"", "Example:", "  offtake demo"})
final class DemoCommand implements Callable<Integer> {
  private static final List<String> FILES =
      List.of(
          "demo-twin.yaml",
          "demo-rotor.yaml",
          "demo-stand.yaml",
          "profiles/slam-from-ground-idle.yaml",
          "profiles/slam-from-descent.yaml",
          "profiles/slam-with-a-slow-valve.yaml",
          "profiles/overheat-trip.yaml",
          "profiles/start-on-shop-air.yaml",
          "profiles/hunting-regulator.yaml",
          "profiles/fluttering-check-valve.yaml",
          "recordings/slam-from-ground-idle.csv",
          "readings/low-at-idle.yaml",
          "readings/low-at-idle-checked.yaml",
          "readings/lazy-high-stage.yaml",
          "readings/masked-at-high-power.yaml",
          "readings/one-gauge-lies.yaml",
          "readings/needles-crossed.yaml",
          "readings/healthy-with-scatter.yaml",
          "readings/two-at-once.yaml",
          "readings/trip-that-holds.yaml",
          "readings/leak-with-dead-loop.yaml",
          "readings/lazy-on-a-hot-day.yaml",
          "readings/none-of-these.yaml",
          "readings/healthy-run.yaml");

  /** The readings that the demo asks about. */
  private static final String SQUAWK = "readings/low-at-idle.yaml";

  /** The failure of the demo's story: plain at idle, hidden at take-off. */
  private static final String BROKEN = "left mid check valve stuck 1/3 open";

  @Parameters(
      arity = "0..1",
      paramLabel = "FOLDER",
      description = "folder for the demo files (else ${DEFAULT-VALUE})")
  private Path folder = Path.of("offtake-demo");

  @Spec private CommandSpec spec = CommandSpec.create();

  /** What lies beside the demo's system file: readings and profiles. */
  static List<String> besides() {
    return FILES.stream().filter(name -> name.endsWith(".yaml") && name.contains("/")).toList();
  }

  @Override
  public Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    Files.createDirectories(folder.resolve("readings"));
    Files.createDirectories(folder.resolve("profiles"));
    Files.createDirectories(folder.resolve("recordings"));
    for (String name : FILES) {
      copy(name, out);
    }
    String file = folder.resolve("demo-twin.yaml").toString();
    CommandLine root = Objects.requireNonNull(spec.parent()).commandLine();
    int worst = 0;
    for (String power : List.of("ground idle", "take-off")) {
      out.println();
      out.println("$ offtake state " + file + " --at \"" + power + "\"");
      out.println();
      worst = Math.max(worst, root.execute("state", file, "--at", power));
    }
    out.println();
    out.println("$ offtake state " + file + " --at \"ground idle\" --if \"" + BROKEN + "\"");
    out.println();
    worst = Math.max(worst, root.execute("state", file, "--at", "ground idle", "--if", BROKEN));
    String readings = folder.resolve(SQUAWK).toString();
    out.println();
    out.println("$ offtake find " + file + " " + readings);
    out.println();
    worst = Math.max(worst, root.execute("find", file, readings));
    out.println();
    out.println("Next: offtake find " + file + " " + readings.replace(".yaml", "-checked.yaml"));
    out.println("      offtake page " + file);
    out.println("      offtake effects " + file);
    String slam = folder.resolve("profiles/slam-from-ground-idle.yaml").toString();
    out.println("      offtake play " + file + " " + slam);
    return worst;
  }

  private void copy(String name, PrintWriter out) throws IOException {
    Path target = folder.resolve(name);
    if (Files.exists(target)) {
      out.println("Kept your " + target + ".");
      return;
    }
    try (InputStream demo =
        Objects.requireNonNull(DemoCommand.class.getResourceAsStream("/demo/" + name))) {
      WholeFile.write(target, demo, false);
    }
    out.println("Wrote " + target + " (invented).");
  }
}

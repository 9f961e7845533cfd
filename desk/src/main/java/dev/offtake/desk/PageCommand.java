package dev.offtake.desk;

import dev.offtake.desk.page.FolderShelf;
import dev.offtake.desk.page.JarShelf;
import dev.offtake.desk.page.Limits;
import dev.offtake.desk.page.Opened;
import dev.offtake.desk.page.PageServer;
import dev.offtake.desk.page.Sheets;
import dev.offtake.explain.Columns;
import dev.offtake.part.Kinds;
import dev.offtake.quantity.Style;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Reading;
import dev.offtake.system.SystemReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code page}: the living drawing of a system in a browser, on this machine. */
@Command(
    name = "page",
    mixinStandardHelpOptions = true,
    description =
        "Opens the page in a browser: the drawing of the system, its power, its failures. Only this"
            + " machine can reach it. Ctrl-C ends it.",
    footer = {
      "",
      "Examples:",
      "  offtake page",
      "  offtake page demo-twin.yaml",
      "  offtake page demo-twin.yaml --host 0.0.0.0",
      "  offtake page demo-twin.yaml --pocket sheet.html",
    })
final class PageCommand implements Callable<Integer> {
  private static final int WIDTH = 80;
  private static final String DEMO = "demo-twin.yaml";

  @Parameters(arity = "0..1", paramLabel = "SYSTEM", description = "system file (else the demo's)")
  private @Nullable Path file;

  @Option(
      names = "--port",
      paramLabel = "PORT",
      description = "port to begin with; the next free one is taken (else ${DEFAULT-VALUE})")
  private int port = 8462;

  @Option(
      names = "--host",
      paramLabel = "HOST",
      description =
          "address of this machine to listen on, so that a tablet can reach it; asks for a key that"
              + " is printed, and is not encrypted (else ${DEFAULT-VALUE})")
  private String host = "127.0.0.1";

  @Option(
      names = "--pocket",
      paramLabel = "FILE",
      description =
          "write the pocket sheet instead: one file of HTML for a tablet that cannot reach this"
              + " machine")
  private @Nullable Path pocket;

  @Option(names = "--metric", description = "pocket sheet in bar, °C and kg/s")
  private boolean metric;

  @Option(names = "--overwrite", description = "replace the sheet if it is there already")
  private boolean overwrite;

  @Option(names = "--no-open", description = "only print the address")
  private boolean noOpen;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() throws IOException, InterruptedException {
    if (port < 0 || port > 65_535) {
      throw new ParameterException(
          spec.commandLine(), "--port " + port + " is no port: choose 1024 to 65535, or 0 for any");
    }
    Optional<Opened> opened = open();
    if (opened.isEmpty()) {
      return Exit.BAD_INPUT.code();
    }
    Path sheet = pocket;
    return sheet == null ? serve(opened.get()) : write(opened.get(), sheet);
  }

  private int write(Opened opened, Path sheet) throws IOException {
    WholeFile.folder(sheet);
    Progress progress = new Progress(spec.commandLine().getErr(), 1);
    byte[] html = Sheets.make(opened, metric ? Style.METRIC : Style.SHOP, progress);
    progress.end();
    WholeFile.write(sheet, new ByteArrayInputStream(html), overwrite);
    PrintWriter out = spec.commandLine().getOut();
    out.println("Pocket sheet of " + opened.system().title() + ": " + sheet);
    out.println("Open it in a browser. Advice, not approval.");
    out.flush();
    return Exit.DONE.code();
  }

  private int serve(Opened opened) throws IOException, InterruptedException {
    PrintWriter out = spec.commandLine().getOut();
    PageServer.Settings settings = new PageServer.Settings(host, port, Limits.USUAL, this::say);
    try (PageServer server = PageServer.start(opened, settings)) {
      out.println(opened.system().title() + ": " + server.address());
      if (!server.loopback()) {
        say(
            "NOTE: not encrypted. Whoever listens on this network sees what the page shows, and can"
                + " take over what you let in. Use it on a network that you trust, and end it when"
                + " you are done.");
      }
      out.println("Ctrl-C ends it.");
      out.flush();
      Runtime.getRuntime().addShutdownHook(new Thread(server::close, "end of the page"));
      // A key that stands in the line of a command can be read by everybody on this machine.
      if (!noOpen && server.loopback()) {
        Browser.open(server.address());
      }
      await();
    }
    return Exit.DONE.code();
  }

  /** Until somebody presses Ctrl-C. */
  private static void await() throws InterruptedException {
    new CountDownLatch(1).await();
  }

  private void say(String sentence) {
    PrintWriter err = spec.commandLine().getErr();
    err.print(Columns.wrap(sentence, WIDTH, 0, 2));
    err.flush();
  }

  private Optional<Opened> open() throws IOException {
    Path named = file;
    Reading reading =
        named == null
            ? SystemReader.readText(DEMO, JarShelf.read(DEMO), Kinds.all())
            : SystemReader.read(named);
    reading.problems().forEach(problem -> say(problem.toString()));
    Optional<BleedSystem> system =
        reading.problems().isEmpty() ? reading.system() : Optional.empty();
    return system.map(read -> opened(read, named));
  }

  private static Opened opened(BleedSystem system, @Nullable Path named) {
    if (named == null) {
      return new Opened(system, DEMO, new JarShelf(DemoCommand.besides()));
    }
    Path folder = Objects.requireNonNull(named.toAbsolutePath().getParent());
    return new Opened(system, String.valueOf(named.getFileName()), new FolderShelf(folder));
  }
}

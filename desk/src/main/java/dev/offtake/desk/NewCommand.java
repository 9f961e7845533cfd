package dev.offtake.desk;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code new}: writes a commented starter file for a usual arrangement. */
@Command(
    name = "new",
    mixinStandardHelpOptions = true,
    description = "Writes a commented starter file for a usual arrangement.",
    footer = {"", "Example:", "  offtake new my-engine.yaml --arrangement stand"})
final class NewCommand implements Callable<Integer> {
  /** The arrangements. */
  enum Arrangement {
    /** Two engines with two taps each and cross-bleed. */
    TWIN,
    /** One engine with one tap on a test stand. */
    STAND,
    /** An auxiliary unit alone. */
    AUXILIARY,
    /** A turboshaft with one tap. */
    TURBOSHAFT;

    String resource() {
      return "starters/" + name().toLowerCase(Locale.ROOT) + ".yaml";
    }
  }

  @Parameters(paramLabel = "FILE", description = "file to write, such as my-engine.yaml")
  private Path file = Path.of("");

  @Option(
      names = "--arrangement",
      description = "one of ${COMPLETION-CANDIDATES} (else ${DEFAULT-VALUE})")
  private Arrangement arrangement = Arrangement.TWIN;

  @Option(names = "--overwrite", description = "replace the file if it is there already")
  private boolean overwrite;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() throws IOException {
    try (InputStream starter =
        Objects.requireNonNull(NewCommand.class.getResourceAsStream(arrangement.resource()))) {
      WholeFile.write(file, starter, overwrite);
    } catch (FileAlreadyExistsException there) {
      PrintWriter err = spec.commandLine().getErr();
      err.println("offtake: " + file + " is there already; name another, or say --overwrite");
      return Exit.BAD_INPUT.code();
    }
    PrintWriter out = spec.commandLine().getOut();
    out.println("Wrote " + file + ". Its numbers are typical ones, not your engine's:");
    out.println("  offtake readback " + file + "   lists what to look up");
    out.println("  offtake state " + file + "   answers on the typical numbers until then");
    out.flush();
    return Exit.DONE.code();
  }
}

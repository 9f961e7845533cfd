package dev.offtake.desk;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
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

  @Parameters(paramLabel = "FILE", description = "file to write; it must not be there yet")
  private Path file = Path.of("");

  @Option(
      names = "--arrangement",
      description = "one of ${COMPLETION-CANDIDATES} (else ${DEFAULT-VALUE})")
  private Arrangement arrangement = Arrangement.TWIN;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() throws IOException {
    if (Files.exists(file)) {
      spec.commandLine()
          .getErr()
          .println("offtake: " + file + " is there already; name another file");
      return Exit.BAD_INPUT.code();
    }
    try (InputStream starter =
        Objects.requireNonNull(NewCommand.class.getResourceAsStream(arrangement.resource()))) {
      Files.copy(starter, file);
    }
    spec.commandLine()
        .getOut()
        .println(
            "Wrote "
                + file
                + ". Its numbers are usual ones, not your engine's: offtake readback "
                + file
                + " lists what to look up.");
    spec.commandLine().getOut().flush();
    return Exit.DONE.code();
  }
}

package dev.offtake.desk;

import dev.offtake.explain.Columns;
import dev.offtake.quantity.Style;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Reading;
import dev.offtake.system.SystemReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What every command about a system takes: the file, the units, the width. */
final class SystemOptions {
  private static final int USUAL_WIDTH = 80;

  @Parameters(paramLabel = "SYSTEM", description = "system file, such as demo-twin.yaml")
  private Path file = Path.of("");

  @Option(names = "--metric", description = "print bar, °C and kg/s (else psig, °F and lb/min)")
  private boolean metric;

  @Option(names = "--shop", description = "print psig, °F and lb/min, as without the option")
  private boolean shop;

  @Option(names = "--json", description = "print JSON in SI units for other programs")
  private boolean json;

  @Option(
      names = "--width",
      paramLabel = "COLUMNS",
      description = "columns to print in (else those of the terminal)")
  private int width = terminal();

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec = CommandSpec.create();

  private static int terminal() {
    String columns = System.getenv("COLUMNS");
    boolean number = columns != null && columns.matches("[0-9]{2,3}");
    return number ? Integer.parseInt(columns) : USUAL_WIDTH;
  }

  /** Reads the file; prints its problems and returns nothing when it has any. */
  Optional<BleedSystem> read() throws IOException {
    Reading reading = SystemReader.read(file);
    PrintWriter err = spec.commandLine().getErr();
    reading.problems().forEach(p -> err.print(Columns.wrap(p.toString(), width, 0, 2)));
    err.flush();
    return reading.problems().isEmpty() ? reading.system() : Optional.empty();
  }

  Path file() {
    return file;
  }

  Style style() {
    return metric && !shop ? Style.METRIC : Style.SHOP;
  }

  boolean json() {
    return json;
  }

  int width() {
    return width;
  }
}

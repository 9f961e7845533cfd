package dev.offtake.desk;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/**
 * The command {@code offtake}: its subcommands, and how they end.
 *
 * <p>A command is a class of its own that implements {@code Callable<Integer>}; it is named in
 * {@code subcommands} below and returns the code of the {@link Exit} that tells how it went.
 */
@Command(
    name = "offtake",
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class,
    description = "Works out and explains a bleed-air supply system.",
    synopsisSubcommandLabel = "COMMAND",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done",
      "1:the answer is \"no\"",
      "2:bad input",
      "3:no answer: not solved, or a fault in Offtake",
    },
    footer = {
      "",
      "Advice, not approval. The approved manual and the signature rule.",
    },
    subcommands = {
      DemoCommand.class,
      NewCommand.class,
      ReadbackCommand.class,
      StateCommand.class,
      CurveCommand.class,
      EffectsCommand.class,
      FindCommand.class,
      MatchCommand.class,
      PageCommand.class,
      PlayCommand.class,
      SchemaCommand.class,
      picocli.AutoComplete.GenerateCompletion.class,
      CommandLine.HelpCommand.class
    })
public final class Main implements Callable<Integer> {

  @Spec private CommandSpec spec = CommandSpec.create();

  /** Runs one command and ends the process with its exit code. */
  public static void main(String[] arguments) {
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    int code = prepare(asked(arguments), out, err).execute(arguments);
    out.flush();
    err.flush();
    System.exit(code);
  }

  /**
   * The command line that an answer needs: with the one command that is asked for, because reading
   * the options of all of them takes a third of a start; with all where the first word names none.
   */
  static CommandLine asked(String... arguments) {
    Object one = arguments.length == 0 ? "" : alone(arguments[0]);
    if (one.equals("")) {
      return new CommandLine(new Main());
    }
    return new CommandLine(CommandSpec.create().name("offtake")).addSubcommand(one);
  }

  /** The class of a command that calls none of the others; empty text for any other word. */
  private static Object alone(String word) {
    return switch (word) {
      case "new" -> NewCommand.class;
      case "readback" -> ReadbackCommand.class;
      case "state" -> StateCommand.class;
      case "curve" -> CurveCommand.class;
      case "effects" -> EffectsCommand.class;
      case "find" -> FindCommand.class;
      case "match" -> MatchCommand.class;
      case "page" -> PageCommand.class;
      case "play" -> PlayCommand.class;
      case "schema" -> SchemaCommand.class;
      default -> "";
    };
  }

  /**
   * Sets what all commands have in common: where they write, and how they complain.
   *
   * @param commands the command line with all its subcommands
   * @param out where answers go
   * @param err where progress and complaints go
   * @return the same command line, ready to execute
   */
  static CommandLine prepare(CommandLine commands, PrintWriter out, PrintWriter err) {
    Complaints complaints = new Complaints();
    return commands
        .setOut(out)
        .setErr(err)
        .setUsageHelpWidth(80)
        .setUsageHelpAutoWidth(false)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setExecutionExceptionHandler(complaints)
        .setParameterExceptionHandler(complaints);
  }

  /** Called when no command is named: shows what there is. */
  @Override
  public Integer call() {
    spec.commandLine().usage(spec.commandLine().getOut());
    return Exit.DONE.code();
  }

  /** The version that the build wrote into the jar. */
  static final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = Main.class.getPackage().getImplementationVersion();
      return new String[] {"offtake " + (version == null ? "(not built as a jar)" : version)};
    }
  }
}

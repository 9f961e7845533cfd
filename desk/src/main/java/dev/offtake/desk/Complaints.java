package dev.offtake.desk;

import dev.offtake.explain.Columns;
import dev.offtake.quantity.QuantityProblem;
import java.io.PrintWriter;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * Says in one sentence what went wrong, and picks the exit code.
 *
 * <p>What a person can mend is {@link Exit#BAD_INPUT}; anything else is a fault of Offtake, told as
 * such under {@link Exit#NOT_SOLVED}.
 */
final class Complaints implements IExecutionExceptionHandler, IParameterExceptionHandler {

  /** Columns of a complaint. */
  private static final int WIDTH = 80;

  @Override
  public int handleParseException(ParameterException wrong, String[] arguments) {
    CommandLine command = wrong.getCommandLine();
    PrintWriter err = command.getErr();
    say(err, sentence(wrong));
    if (!UnmatchedArgumentException.printSuggestions(wrong, err)) {
      err.println("For help: " + command.getCommandSpec().qualifiedName() + " --help");
    }
    err.flush();
    return Exit.BAD_INPUT.code();
  }

  @Override
  public int handleExecutionException(Exception wrong, CommandLine command, ParseResult parsed) {
    Exit exit = exit(wrong);
    String sentence = exit == Exit.BAD_INPUT ? mendable(wrong) : fault(wrong);
    say(command.getErr(), sentence);
    command.getErr().flush();
    return exit.code();
  }

  private static Exit exit(Exception wrong) {
    boolean mendable = wrong instanceof QuantityProblem || wrong instanceof FileSystemException;
    return mendable ? Exit.BAD_INPUT : Exit.NOT_SOLVED;
  }

  private static String mendable(Exception wrong) {
    if (wrong instanceof QuantityProblem problem) {
      return problem.wrong() + "; " + problem.mend();
    }
    if (wrong instanceof NoSuchFileException missing) {
      return "there is no file " + missing.getFile() + "; check its name and folder";
    }
    if (wrong instanceof FileAlreadyExistsException there) {
      return there.getFile() + " is there already; name another one";
    }
    if (wrong instanceof AccessDeniedException denied) {
      return "no permission for " + denied.getFile() + "; check who owns it";
    }
    return "file trouble: " + sentence(wrong);
  }

  private static String fault(Exception wrong) {
    return "a fault in Offtake, not in your input: "
        + wrong.getClass().getSimpleName()
        + ": "
        + sentence(wrong);
  }

  private static String sentence(Exception wrong) {
    String message = wrong.getMessage();
    return message == null ? "no further word" : message.strip().replaceAll("\\s*\\R\\s*", " ");
  }

  private static void say(PrintWriter err, String sentence) {
    err.print(Columns.wrap("offtake: " + sentence, WIDTH, 0, 2));
  }
}

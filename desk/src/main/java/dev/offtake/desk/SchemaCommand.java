package dev.offtake.desk;

import dev.offtake.part.Kinds;
import dev.offtake.system.SchemaWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code schema}: what an editor needs to complete and check system files. */
@Command(
    name = "schema",
    mixinStandardHelpOptions = true,
    description =
        "Prints the JSON Schema of system files, with which an editor completes and checks them.",
    footer = {
      "",
      "Example:",
      "  offtake schema > offtake-schema.json",
      "and as the first line of a system file beside it:",
      "  # yaml-language-server: $schema=offtake-schema.json",
    })
final class SchemaCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    spec.commandLine().getOut().println(SchemaWriter.schema(Kinds.all()).toPrettyString());
    spec.commandLine().getOut().flush();
    return Exit.DONE.code();
  }
}

package dev.offtake.desk;

import dev.offtake.explain.Readback;
import dev.offtake.system.BleedSystem;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code readback}: what was understood, assumed and missed. */
@Command(
    name = "readback",
    mixinStandardHelpOptions = true,
    description = "What was understood, assumed and missed; where papers disagree.",
    footer = {"", "Example:", "  offtake readback demo-twin.yaml"})
final class ReadbackCommand implements Callable<Integer> {
  @Mixin private SystemOptions options = new SystemOptions();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() throws IOException {
    Optional<BleedSystem> system = options.read();
    if (system.isEmpty()) {
      return Exit.BAD_INPUT.code();
    }
    Readback readback = new Readback(system.get(), options.style());
    String text = options.json() ? readback.json() : readback.text(options.width());
    spec.commandLine().getOut().print(text);
    spec.commandLine().getOut().flush();
    return Exit.DONE.code();
  }
}

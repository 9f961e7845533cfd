package dev.offtake.desk;

import dev.offtake.explain.BreakAnswer;
import dev.offtake.explain.BreakInquiry;
import dev.offtake.explain.BreakJson;
import dev.offtake.explain.BreakText;
import dev.offtake.explain.Question;
import dev.offtake.explain.StateAnswer;
import dev.offtake.explain.StateInquiry;
import dev.offtake.explain.StateJson;
import dev.offtake.explain.StateText;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.system.BleedSystem;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code state}: what every point, valve and user does at one power, and why. */
@Command(
    name = "state",
    mixinStandardHelpOptions = true,
    description = "What every point, valve and user does at one power, and why.",
    footer = {
      "",
      "Examples:",
      "  offtake state demo-twin.yaml",
      "  offtake state demo-twin.yaml --at take-off --set \"isolation: OPEN\"",
      "  offtake state demo-twin.yaml --at \"85 %%\" --metric",
      "  offtake state demo-twin.yaml --if \"left mid check valve stuck 1/3 open\"",
    })
final class StateCommand implements Callable<Integer> {
  @Mixin private SystemOptions options = new SystemOptions();

  @Option(
      names = "--at",
      paramLabel = "POWER",
      description = "a power setting of the file, or a core speed such as \"85 %%\"")
  private String at = "";

  @Option(
      names = "--day",
      paramLabel = "DAY",
      description =
          "a day of the file, \"standard day\", or its values: \"35000 ft, ISA +10 degF, Mach 0.78\","
              + " \"29.71 inHg station, 41 degF\", \"29.92 inHg QNH at 1200 ft, 41 degF\"")
  private String day = "";

  @Option(names = "--line-up", paramLabel = "LINE-UP", description = "a line-up of the file")
  private String lineUp = "";

  @Option(
      names = "--set",
      paramLabel = "\"SWITCH: POSITION\"",
      description =
          "one switch, or a valve \"locked open\", \"locked shut\", \"removed and capped\"")
  private List<String> sets = List.of();

  @Option(
      names = "--if",
      paramLabel = "\"PART MODE [EXTENT]\"",
      description =
          "a part that has failed, such as \"left mid check valve stuck 1/3\"; may be given"
              + " several times")
  private List<String> faults = List.of();

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() throws IOException, QuantityProblem {
    Optional<BleedSystem> system = options.read();
    if (system.isEmpty()) {
      return Exit.BAD_INPUT.code();
    }
    Question question = Question.of(system.get(), at, day, lineUp, sets).broken(faults);
    return faults.isEmpty() ? healthy(question) : broken(question);
  }

  private int healthy(Question question) {
    StateAnswer answer = StateInquiry.answer(question, options.style());
    return say(
        answer,
        options.json()
            ? StateJson.print(answer) + System.lineSeparator()
            : StateText.print(answer, options.width(), options.style()));
  }

  private int broken(Question question) throws QuantityProblem {
    BreakAnswer answer = BreakInquiry.answer(question, options.style());
    return say(
        answer.state(),
        options.json()
            ? BreakJson.print(answer) + System.lineSeparator()
            : BreakText.print(answer, options.width(), options.style()));
  }

  private int say(StateAnswer answer, String text) {
    spec.commandLine().getOut().print(text);
    spec.commandLine().getOut().flush();
    return answer.solved() ? Exit.DONE.code() : Exit.NOT_SOLVED.code();
  }
}

package dev.offtake.desk;

import dev.offtake.explain.CurveAnswer;
import dev.offtake.explain.CurveCsv;
import dev.offtake.explain.CurveJson;
import dev.offtake.explain.CurveText;
import dev.offtake.explain.Question;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.system.BleedSystem;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code curve}: table, picture and changeovers over a range of anything. */
@Command(
    name = "curve",
    mixinStandardHelpOptions = true,
    description = "What happens while one quantity moves: table, picture, changeovers.",
    footer = {
      "",
      "Examples:",
      "  offtake curve demo-twin.yaml",
      "  offtake curve demo-twin.yaml --over core=60..70 --points 11",
      "  offtake curve demo-twin.yaml --at cruise --over \"altitude=0..40000 ft\"",
      "  offtake curve demo-twin.yaml --at take-off \\",
      "      --over \"left bleed regulator set=30..80 psig\"",
      "  offtake curve demo-twin.yaml --day \"standard day\" --day \"hot day\" \\",
      "      --show \"left duct pressure, left duct temperature\" --png days.png",
      "  offtake curve demo-twin.yaml --png broken.png \\",
      "      --if \"left mid check valve stuck 1/3\"",
      "  offtake curve demo-twin.yaml --points 200 --csv curve.csv --svg curve.svg",
    })
final class CurveCommand implements Callable<Integer> {
  @Mixin private SystemOptions options = new SystemOptions();

  @Option(
      names = "--over",
      paramLabel = "QUANTITY=RANGE",
      description =
          "what moves: core=55..100 (the usual), \"altitude=0..40000 ft\","
              + " \"air=-40..110 degF\", Mach=0..0.8, or a part and its number:"
              + " \"left bleed regulator set=30..50 psig\"")
  private String over = "";

  @Option(
      names = "--points",
      paramLabel = "N",
      description = "how many states to look at; a table of more than 25 shows the round ones")
  private int points;

  @Option(
      names = "--at",
      paramLabel = "POWER",
      description = "a power setting of the file, or a core speed such as \"85 %%\"")
  private String at = "";

  @Option(
      names = "--day",
      paramLabel = "DAY",
      description = "a day, as for state; give several to compare them")
  private List<String> days = List.of("");

  @Option(names = "--line-up", paramLabel = "LINE-UP", description = "a line-up of the file")
  private String lineUp = "";

  @Option(
      names = "--set",
      paramLabel = "\"SWITCH: POSITION\"",
      description =
          "one switch, or a valve \"locked open\", \"locked shut\", \"removed and capped\"")
  private List<String> sets = List.of();

  @Option(
      names = "--show",
      paramLabel = "COLUMNS",
      description =
          "what to show: points with pressure or temperature, parts with flow or opening:"
              + " \"left duct pressure, left pack flow\"")
  private String show = "";

  @Option(
      names = "--if",
      paramLabel = "\"PART MODE [EXTENT]\"",
      description =
          "a part that has failed, such as \"left mid check valve stuck 1/3\": healthy and broken"
              + " are shown together; may be given several times")
  private List<String> faults = List.of();

  @Option(
      names = "--csv",
      paramLabel = "FILE",
      description = "write comma-separated values as well")
  private @Nullable Path csv;

  @Option(names = "--svg", paramLabel = "FILE", description = "draw a picture that scales")
  private @Nullable Path svg;

  @Option(names = "--png", paramLabel = "FILE", description = "draw a picture in dots")
  private @Nullable Path png;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() throws IOException, QuantityProblem {
    Optional<BleedSystem> system = options.read();
    if (system.isEmpty()) {
      return Exit.BAD_INPUT.code();
    }
    for (@Nullable Path file : new @Nullable Path[] {csv, svg, png}) {
      if (file != null) {
        WholeFile.folder(file);
      }
    }
    List<CurveAnswer> answers = answers(system.get());
    PrintWriter out = spec.commandLine().getOut();
    if (options.json()) {
      out.println(CurveJson.print(answers));
    } else {
      out.print(CurveText.print(answers, options.width(), options.style()));
    }
    out.flush();
    if (csv != null) {
      write(csv, CurveCsv.print(answers, options.style()).getBytes(StandardCharsets.UTF_8));
    }
    if (svg != null || png != null) {
      pictures(answers);
    }
    boolean answered = answers.stream().allMatch(answer -> answer.curve().answered());
    return answered ? Exit.DONE.code() : Exit.NOT_SOLVED.code();
  }

  private List<CurveAnswer> answers(BleedSystem system) throws QuantityProblem {
    List<Question> questions = new ArrayList<>();
    for (String day : days) {
      questions.add(Question.of(system, at, day, lineUp, sets).broken(faults));
    }
    CurveAnswer.Request request = new CurveAnswer.Request(over, points, show);
    Progress progress = new Progress(spec.commandLine().getErr(), questions.size());
    List<CurveAnswer> answers = new ArrayList<>();
    for (Question question : questions) {
      answers.addAll(CurveAnswer.all(question, request, options.style(), progress));
      progress.next();
    }
    progress.end();
    return answers;
  }

  private void pictures(List<CurveAnswer> answers) throws IOException, QuantityProblem {
    if (svg != null) {
      write(svg, Drawn.of(answers, options.style(), true));
    }
    if (png != null) {
      write(png, Drawn.of(answers, options.style(), false));
    }
  }

  private void write(Path file, byte[] content) throws IOException {
    WholeFile.write(file, new ByteArrayInputStream(content), true);
    spec.commandLine().getErr().println("Wrote " + file + ".");
  }
}

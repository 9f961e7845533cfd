package dev.offtake.desk;

import dev.offtake.explain.EffectsCsv;
import dev.offtake.explain.EffectsJson;
import dev.offtake.explain.EffectsPage;
import dev.offtake.explain.EffectsText;
import dev.offtake.part.Part;
import dev.offtake.quantity.Nearest;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.study.Twins;
import dev.offtake.study.effect.Effects;
import dev.offtake.study.effect.EffectsStudy;
import dev.offtake.system.BleedSystem;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code effects}: each mode of each part at each power, and whether anyone would notice. */
@Command(
    name = "effects",
    mixinStandardHelpOptions = true,
    description = "What each failure does at each power, how bad it is, and who would notice.",
    footer = {
      "",
      "Examples:",
      "  offtake effects demo-twin.yaml",
      "  offtake effects demo-twin.yaml --pairs --csv effects.csv",
      "  offtake effects demo-twin.yaml --part \"left mid check valve\"",
    })
final class EffectsCommand implements Callable<Integer> {
  private static final Pattern EACH_SIDE = Pattern.compile("^(?i)(both sides|both|each side)\\s+");

  @Mixin private SystemOptions options = new SystemOptions();

  @Option(
      names = "--part",
      paramLabel = "PART",
      description = "only one part, in full; without its side the part of each side")
  private @Nullable String part;

  @Option(
      names = "--pairs",
      description = "find the second failure that makes each dormant one bite; takes longer")
  private boolean pairs;

  @Option(
      names = "--csv",
      paramLabel = "FILE",
      description = "write comma-separated values as well, a line for each failure and occasion")
  private @Nullable Path csv;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() throws IOException, QuantityProblem {
    Optional<BleedSystem> read = options.read();
    if (read.isEmpty()) {
      return Exit.BAD_INPUT.code();
    }
    BleedSystem system = read.get();
    check(system);
    Set<String> parts = parts(system);
    if (csv != null) {
      WholeFile.folder(csv);
    }
    PrintWriter err = spec.commandLine().getErr();
    Progress progress = new Progress(err, 1);
    Effects effects = EffectsStudy.of(system, parts, pairs, options.style(), progress);
    progress.end();
    PrintWriter out = spec.commandLine().getOut();
    out.print(printed(system, effects, parts));
    out.flush();
    if (csv != null) {
      byte[] bytes = EffectsCsv.print(effects, options.style()).getBytes(StandardCharsets.UTF_8);
      WholeFile.write(csv, new ByteArrayInputStream(bytes), true);
      err.println("Wrote " + csv + ".");
    }
    return Exit.DONE.code();
  }

  private String printed(BleedSystem system, Effects effects, Set<String> parts) {
    if (options.json()) {
      return EffectsJson.print(system, effects, options.style()) + System.lineSeparator();
    }
    return parts.isEmpty()
        ? EffectsText.print(system, effects, options.width(), options.style())
        : EffectsPage.print(system, effects, parts, options.width(), options.style());
  }

  private void check(BleedSystem system) throws QuantityProblem {
    if (system.settings().isEmpty()) {
      throw new QuantityProblem(
          "the file names no power setting, so there is no occasion to look at",
          "add `power settings:` with a line such as `ground idle: {core: 62 %, fan: 24 %}`");
    }
  }

  /** The parts that are asked about, in the order of the file; none for all. */
  private Set<String> parts(BleedSystem system) throws QuantityProblem {
    String named = part;
    if (named == null) {
      return Set.of();
    }
    if (named.isBlank()) {
      throw new QuantityProblem(
          "--part is empty", "name one, such as \"left mid check valve\", or leave it out for all");
    }
    String asked = EACH_SIDE.matcher(named.strip()).replaceFirst("");
    Set<String> known = new LinkedHashSet<>();
    Set<String> found = new LinkedHashSet<>();
    for (Part one : system.parts()) {
      String bare = Twins.withoutSide(one.name(), system.sides());
      if (!one.modes().isEmpty()) {
        known.add(one.name());
        known.add(bare);
        if (one.name().equalsIgnoreCase(asked) || bare.equalsIgnoreCase(asked)) {
          found.add(one.name());
        }
      }
    }
    if (found.isEmpty()) {
      throw new QuantityProblem(
          "there is no part called \"" + named + "\" that could fail",
          Nearest.to(named, known)
              .map(name -> "did you mean " + name + "?")
              .orElse("`offtake readback` lists the parts"));
    }
    return found;
  }
}

package dev.offtake.measure.cases;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.part.Extent;
import dev.offtake.part.Part;
import dev.offtake.study.Fault;
import dev.offtake.study.Faults;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The list of modes is Offtake's own list for the demo, and each is drawn or has its reason.
 *
 * <p>After a change, run this test with {@code -Dofftake.modes=write}: it writes the list anew.
 */
class ModeListTest {
  private static final Path LIST =
      Path.of("src/main/resources/dev/offtake/measure/cases/modes.txt");
  private static final String HEAD =
      """
      # Failure modes that Offtake lists for demo/demo-twin.yaml, extents in SI:
      # part|mode|what the extent is|its dimension|least|most|in a million hours.
      # ModeListTest writes this list anew when it is run with -Dofftake.modes=write.
      """;

  private final BleedSystem system =
      SystemReader.read(Path.of("../demo/demo-twin.yaml")).system().orElseThrow();

  @Test
  void theListIsOfftakes() throws IOException {
    String list =
        HEAD
            + Faults.all(system).stream()
                .map(ModeListTest::line)
                .map(line -> line.line() + "\n")
                .collect(Collectors.joining());
    if ("write".equals(System.getProperty("offtake.modes"))) {
      Files.writeString(LIST, list);
    }
    assertThat(Files.readString(LIST))
        .as("run this test with -Dofftake.modes=write")
        .isEqualTo(list);
  }

  /** Six digits, so that the last bit of a unit's factor is nobody's business. */
  private static ModeLine line(Fault fault) {
    Extent extent = fault.mode().extent();
    return new ModeLine(
        fault.part().name(),
        fault.mode().name(),
        extent == null ? "" : extent.says(),
        extent == null ? "" : extent.dimension().name(),
        extent == null ? 1 : six(extent.least()),
        extent == null ? 1 : six(extent.most()),
        six(1e6 * fault.mode().rate()));
  }

  private static double six(double value) {
    return Double.parseDouble(String.format(Locale.ROOT, "%.5e", value));
  }

  @Test
  void eachModeIsDrawnOrHasItsReason() {
    Effects effects = Effects.all();
    assertThat(Lists.modes())
        .allSatisfy(
            line ->
                assertThat(effects.of(line).isPresent())
                    .as(line.name())
                    .isNotEqualTo(Untold.why(line).isPresent()));
  }

  @Test
  void eachEffectTurnsSomething() {
    Effects effects = Effects.all();
    Knobs sound = Nominal.knobs();
    for (ModeLine line : Lists.modes()) {
      if (effects.of(line).isPresent()) {
        Knobs broken = effects.broken(line, sound, line.most(), new java.util.SplittableRandom(1));
        assertThat(broken).as(line.name()).isNotEqualTo(sound);
      }
    }
  }

  @Test
  void eachStrangerBreaksSomethingAndIsAcceptedOnPartsThatExist() {
    Strangers strangers = Strangers.all();
    List<Stranger> list = Lists.strangers();
    assertThat(list).hasSizeGreaterThanOrEqualTo(12);
    assertThat(list.stream().map(Stranger::name)).hasSameElementsAs(strangers.names());
    Set<String> parts = system.parts().stream().map(Part::name).collect(Collectors.toSet());
    Knobs sound = Nominal.knobs();
    for (Stranger stranger : list) {
      for (Side side : Side.values()) {
        assertThat(parts).as(stranger.name()).containsAll(stranger.accepted(side));
        assertThat(strangers.broken(stranger, sound, side, 1)).isNotEqualTo(sound);
      }
    }
  }
}

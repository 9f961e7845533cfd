package dev.offtake.study;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.network.Demos;
import dev.offtake.part.Extent;
import dev.offtake.part.Inspection;
import dev.offtake.part.Kind;
import dev.offtake.part.Kinds;
import dev.offtake.part.Mode;
import dev.offtake.part.Part;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.system.BleedSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * {@code docs/failure-modes.md} follows the modes of a sample of every kind, word for word.
 *
 * <p>After a change, run this test with {@code -Dofftake.docs=write}: it writes the page anew.
 */
class FailureModesDocsTest {
  private static final Path PAGE = Path.of("../docs/failure-modes.md");
  private static final String WRITE = "offtake.docs";

  private static final String HEAD =
      """
      # How parts fail

      Every way in which a part of a kind can fail, as `--if "PART MODE [EXTENT]"` takes it. The parts themselves hold
      these modes; this page follows them (`FailureModesDocsTest` writes it anew when it is run with
      `-Dofftake.docs=write`).

      Nothing in here comes from a paper. Meanings, what is noticed and how a failure is looked for are common practice,
      no source. Rates (failures in a million hours of running) and minutes are assumptions: orders of magnitude, there
      to put suspects in order. Extents are those of one invented part of the kind; where they follow a bore or a scale
      they are others for another part.
      """;

  @Test
  void thePageFollowsTheModes() throws IOException {
    String page = page();
    if ("write".equals(System.getProperty(WRITE))) {
      Files.writeString(PAGE, page);
    }
    assertThat(Files.readString(PAGE))
        .as("run this test with -D" + WRITE + "=write")
        .isEqualTo(page);
  }

  @Test
  void everyModeBelongsToARemovableUnitAndSpeaksPlainly() {
    for (Part part : Demos.everyKind().network().parts()) {
      Kind kind = Kinds.named(part.kind()).orElseThrow();
      Set<String> names = new HashSet<>();
      for (Mode mode : part.modes()) {
        String what = part.kind() + " " + mode.name();
        assertThat(names.add(mode.name())).as(what).isTrue();
        assertThat(kind.removableUnits()).as(what).contains(mode.unit());
        assertThat(mode.shifts().isEmpty() && mode.rebuild() == null).as(what).isFalse();
        for (String text : List.of(mode.means(), mode.noticed(), mode.inspection().how())) {
          assertThat(text).as(what).doesNotEndWith(".");
        }
      }
    }
  }

  private static String page() {
    Map<String, Map<String, Mode>> byKind = new LinkedHashMap<>();
    Kinds.all().forEach(kind -> byKind.put(kind.name(), new LinkedHashMap<>()));
    BleedSystem system = Demos.everyKind();
    for (Part part : system.network().parts()) {
      Map<String, Mode> modes = byKind.get(part.kind());
      assertThat(modes).as(part.kind()).isNotNull();
      part.modes().forEach(mode -> modes.putIfAbsent(mode.name(), mode));
    }
    StringBuilder page = new StringBuilder(HEAD);
    byKind.forEach((kind, modes) -> section(kind, modes, page));
    return page.toString();
  }

  private static void section(String kind, Map<String, Mode> modes, StringBuilder page) {
    page.append("\n## ").append(kind).append("\n\n");
    if (modes.isEmpty()) {
      page.append("No way to fail yet.\n");
      return;
    }
    page.append("| mode | unit | how far | what has happened | in a million hours | noticed |");
    page.append(" looked for |\n");
    page.append("| --- | --- | --- | --- | --- | --- | --- |\n");
    modes.values().forEach(mode -> page.append(row(mode)));
  }

  private static String row(Mode mode) {
    return "| %s | %s | %s | %s | %s | %s | %s |%n"
        .formatted(
            mode.name(),
            mode.unit(),
            extent(mode.extent()),
            mode.means(),
            Style.SHOP.print(1e6 * mode.rate(), Dimension.NUMBER),
            mode.noticed().isEmpty() ? "–" : mode.noticed(),
            inspection(mode.inspection()))
        .replace(System.lineSeparator(), "\n");
  }

  private static String extent(@Nullable Extent extent) {
    if (extent == null) {
      return "–";
    }
    return "%s: %s to %s, usually %s"
        .formatted(
            extent.says(),
            print(extent, extent.least()),
            print(extent, extent.most()),
            print(extent, extent.usual()));
  }

  private static String print(Extent extent, double value) {
    return extent.dimension() == Dimension.SHARE
        ? Style.SHOP.print(value, Dimension.SHARE)
        : Fault.print(extent, value, Style.SHOP);
  }

  private static String inspection(Inspection inspection) {
    String tools = inspection.tools().isEmpty() ? "" : "; " + inspection.tools();
    return String.format(
        Locale.ROOT,
        "%s (%s, %.0f min%s)",
        inspection.how(),
        inspection.access().words(),
        inspection.minutes(),
        tools);
  }
}

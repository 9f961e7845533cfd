package dev.offtake.explain;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import dev.offtake.part.Kinds;
import dev.offtake.quantity.Style;
import dev.offtake.study.effect.Effects;
import dev.offtake.study.effect.EffectsStudy;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What {@code effects} prints as text, CSV and JSON, on one small engine with a watched zone. */
class EffectsDocsTest {
  private static final Path DOCS = Path.of("../docs/json-effects.md");
  private static final String ENGINE =
      """
      offtake: 1
      title: One engine
      power settings:
        idle: {core: 62 %}
        high: {core: 85 %}
      parts:
        low tap: {kind: compressor tap, to: low duct, bore: 3 in, table: {columns: [core %, psig, degF], rows: [[62, 8, 188], [99, 103, 610]]}}
        high tap: {kind: compressor tap, to: high duct, bore: 2.4 in, table: {columns: [core %, psig, degF], rows: [[62, 26, 322], [99, 285, 950]]}}
        check valve: {kind: check valve, path: low duct -> duct, bore: 3 in}
        high valve: {kind: regulator, path: high duct -> duct, bore: 2.5 in, holds: duct pressure, set to: 32 psig}
        user: {kind: flow user, takes from: duct, takes: 52 lb/min, needs: 12 psig}
        joint: {kind: leak, at: duct, into: zone, area: 0 in2}
        louvre: {kind: vent, at: zone, bore: 3 in}
        loop: {kind: leak loop, watches: zone temperature, alarm: 180 degF for 5 s}
      lights:
        leak light: {lit when: loop is lit}
      gauges:
        duct gauge: {reads: duct pressure, scale: 0..80 psig, step: 1 psi, good to: 1 psi, seen: flight deck}
      """;

  private static BleedSystem system;
  private static Effects effects;

  @BeforeAll
  static void makeTheTable() {
    system = SystemReader.readText("one.yaml", ENGINE, Kinds.all()).system().orElseThrow();
    effects = EffectsStudy.of(system, Set.of(), true, Style.SHOP, share -> {});
  }

  @Test
  void everyFieldIsDocumentedAndNoOther() throws IOException {
    String json = EffectsJson.print(system, effects, Style.SHOP);
    Set<String> written = JsonFields.of(new ObjectMapper().readTree(json));
    written.removeIf(field -> field.startsWith("classes."));
    Set<String> documented = JsonFields.documented(Files.readString(DOCS));
    assertThat(documented).containsAll(written);
    documented.removeAll(written);
    assertThat(documented).isSubsetOf("failures[].outcomes[].trouble", "pairs[].dormant.extent");
  }

  /** A dead loop is the failure that waits for a leak (common practice, no source). */
  @Test
  void aDeadLoopWaitsForALeak() {
    assertThat(effects.bites())
        .anySatisfy(
            bite -> {
              assertThat(bite.dormant().part().name()).isEqualTo("loop");
              assertThat(bite.partner().part().name()).isEqualTo("joint");
              assertThat(bite.together().number()).isEqualTo("I");
              assertThat(bite.alone().number()).isEqualTo("II");
            });
  }

  @Test
  void theTextStaysWithinItsColumns() {
    String text = EffectsText.print(system, effects, 80, Style.SHOP);
    assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    assertThat(text).contains("FAILURE EFFECTS", "DORMANT", "CAUTION", "CHECK VALVE", "HIDDEN");
    Effects one = EffectsStudy.of(system, Set.of("check valve"), false, Style.SHOP, share -> {});
    String page = EffectsPage.print(system, one, Set.of("check valve"), 80, Style.SHOP);
    assertThat(page.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    assertThat(page).contains("FLAPPER MISSING", "means", "look", "CAUTION");
  }

  @Test
  void theCsvHasALineForEachFailureAndOccasion() {
    List<String> lines = EffectsCsv.print(effects, Style.SHOP).lines().toList();
    int rows = effects.rows().size() * effects.occasions().size();
    assertThat(lines.indexOf("")).isEqualTo(1 + rows);
    assertThat(lines.get(0)).startsWith("part,removable unit,failure,extent");
    assertThat(lines).hasSize(3 + rows + effects.bites().size());
  }
}

package dev.offtake.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.ObjectMapper;
import dev.offtake.cause.Readings;
import dev.offtake.cause.ReadingsReader;
import dev.offtake.cause.find.Match;
import dev.offtake.cause.find.MatchedNumber;
import dev.offtake.cause.find.Matcher;
import dev.offtake.cause.find.RecordedBench;
import dev.offtake.network.Demos;
import dev.offtake.part.Kinds;
import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Reading;
import dev.offtake.system.SystemReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What {@code match} prints and writes, of the demo's healthy run. */
class MatchDocsTest {
  private static final Path DEMO = Path.of("../demo/demo-twin.yaml");
  private static final Path JSON = Path.of("../docs/json-match.md");
  private static final Path PAGE = Path.of("../docs/match.md");

  private static Match match;

  @BeforeAll
  static void matchTheDemo() throws QuantityProblem {
    BleedSystem twin = Demos.demo("twin");
    Path file = Path.of("../demo/readings/healthy-run.yaml");
    Readings run = ReadingsReader.read(file, twin).readings().orElseThrow();
    match = Matcher.match(twin, run, share -> {});
  }

  @Test
  void everyFieldIsDocumentedAndNoOther() throws IOException, QuantityProblem {
    String json = MatchJson.print(match, List.of("A note."));
    Set<String> written = JsonFields.of(new ObjectMapper().readTree(json));
    String recorded = MatchJson.print(recorded(), List.of());
    written.addAll(JsonFields.of(new ObjectMapper().readTree(recorded)));
    Set<String> documented = JsonFields.documented(Files.readString(JSON));
    assertThat(documented).containsAll(written);
    documented.removeAll(written);
    assertThat(documented)
        .allMatch(f -> f.startsWith("only together[]") || f.startsWith("lights that do not fit[]"));
  }

  private static Match recorded() throws QuantityProblem {
    Readings readings = RecordedBench.recorded("valves: {regulator: {servo: 3.4 s}}", List.of());
    return Matcher.match(RecordedBench.SYSTEM, readings, share -> {});
  }

  @Test
  void howValvesMoveIsToldForAProfile() throws QuantityProblem {
    String text = MatchText.print(recorded(), 80, Style.SHOP, List.of());

    assertThat(text).contains("HOW VALVES MOVE", "WHAT IS LEFT OF THE RECORDING");
    assertThat(text).containsPattern("  valves:\n +regulator: \\{servo: [0-9.]+ s[,}]");
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void thePageShowsWhatIsPrinted() throws IOException {
    String text = MatchText.print(match, 80, Style.SHOP, List.of());
    assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    assertThat(Files.readString(PAGE)).contains(text);
    assertThat(MatchText.print(match, 60, Style.METRIC, List.of()).lines())
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(60));
  }

  /** A band that is read back says the same as the standard deviation that it was made from. */
  @Test
  void theWrittenFileIsReadAgainWithTheMatchedNumbers() throws IOException {
    String before = Files.readString(DEMO);
    String text = MatchFile.text(match, before, "healthy-run.yaml");
    Reading reading = SystemReader.readText("matched.yaml", text, Kinds.all());
    assertThat(reading.problems()).isEmpty();
    BleedSystem matched = reading.system().orElseThrow();
    assertThat(matched.doubts()).isEmpty();
    assertThat(match.worthWriting()).hasSizeGreaterThanOrEqualTo(4);
    for (MatchedNumber number : match.worthWriting()) {
      Parameter now = parameter(matched, number);
      double round = 0.06 * number.halfBand();
      assertThat(now.value()).isCloseTo(number.value(), within(round));
      assertThat(now.high() - now.value()).isCloseTo(number.halfBand(), within(round));
      assertThat(now.value() - now.low()).isCloseTo(number.halfBand(), within(round));
    }
    assertThat(matched.modelError().pressure())
        .isCloseTo(match.pressure().after(), within(0.05 * match.pressure().after()));
    assertThat(matched.modelError().source()).startsWith("matched to healthy-run.yaml 2026-11-02");
    before
        .lines()
        .filter(line -> line.contains("#"))
        .map(line -> line.substring(line.indexOf('#')))
        .forEach(comment -> assertThat(text).contains(comment));
  }

  private static Parameter parameter(BleedSystem system, MatchedNumber number) {
    return system.parts().stream()
        .filter(part -> part.name().equals(number.number().part()))
        .map(Part::parameters)
        .flatMap(List::stream)
        .filter(p -> p.name().equals(number.number().parameter()))
        .findFirst()
        .orElseThrow();
  }
}

package dev.offtake.system;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.part.Kinds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The line {@code model error} of a file. */
class ModelErrorReaderTest {
  private static Reading read(String line) {
    String text =
        """
        offtake: 1
        papers: {SD: {title: Description}}
        %s
        parts:
          supply: {kind: supply, to: duct, table: {columns: [psig, lb/min], rows: [[75, 0], [70, 150]]}}
          pack: {kind: flow user, takes from: duct, takes: 50 lb/min, needs: 5 psig}
        """;
    return SystemReader.readText("file.yaml", text.formatted(line), Kinds.all());
  }

  private static ModelError error(String line) {
    Reading reading = read(line);
    assertThat(reading.problems()).isEmpty();
    return reading.system().orElseThrow().modelError();
  }

  @Test
  void aFileMayGiveBothOneOrNone() {
    ModelError both = error("model error: {pressure: 1.8 %, temperature: 9 degF; a run}");
    assertThat(both.pressure()).isCloseTo(0.018, within(1e-12));
    assertThat(both.temperature()).isCloseTo(5, within(1e-12));
    assertThat(both.source()).isEqualTo("a run");
    assertThat(both.assumed()).isFalse();
    ModelError one = error("model error: {pressure: 1.8 %}");
    assertThat(one.assumed()).isTrue();
    assertThat(one.temperature()).isEqualTo(ModelError.USUAL.temperature());
    assertThat(error("")).isEqualTo(ModelError.USUAL);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "model error: 2 % | needs named lines",
        "model error: {presure: 2 %} | no line `presure`",
        "model error: {pressure: 0 %} | No forecast is off by 0 %",
        "model error: {pressure: 80 %} | No forecast is off by 80 %",
        "model error: {pressure: 2 psi} | file.yaml:3",
        "model error: {temperature: -3 degF} | No forecast is off by -3 degF",
        "model error: {temperature: unknown} | No forecast is off by unknown",
        "model error: {temperature: } | file.yaml:3",
        "model error: {pressure: 2 %; XY p.3} | `XY` is not listed",
      })
  void whatCannotBeIsToldOnce(String line, String told) {
    assertThat(read(line).problems()).hasSize(1);
    assertThat(read(line).problems().get(0).toString()).contains(told);
  }
}

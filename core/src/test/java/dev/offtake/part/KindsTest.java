package dev.offtake.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class KindsTest {
  @Test
  void everyKindHasItsOwnNameAndSpeaks() {
    Set<String> names = new HashSet<>();
    for (Kind kind : Kinds.all()) {
      assertThat(names.add(kind.name())).as(kind.name()).isTrue();
      assertThat(kind.says()).as(kind.name()).endsWith(".");
      assertThat(kind.symbol()).isNotEmpty();
      // A limit is written on paper: there is nothing to remove.
      assertThat(kind.removableUnits().isEmpty()).isEqualTo(kind == OperatingLimit.KIND);
    }
  }

  @Test
  void everyKeyIsNamedOnceAndHasAnExample() {
    for (Kind kind : Kinds.all()) {
      Set<String> names = new HashSet<>();
      for (Key key : kind.keys()) {
        assertThat(names.add(key.name())).as(kind.name() + ": " + key.name()).isTrue();
        assertThat(key.example()).as(kind.name() + ": " + key.name()).isNotEmpty();
        assertThat(key.says()).as(kind.name() + ": " + key.name()).endsWith(".");
      }
    }
  }

  /** The reference of kinds has one row for each key, word for word. */
  @Test
  void theReferenceFollowsTheKeys() throws IOException {
    String text = Files.readString(Path.of("../docs/system-file-kinds.md"));
    for (Kind kind : Kinds.all()) {
      String title = kind instanceof TapKind ? "compressor tap, fan tap" : kind.name();
      int start = text.indexOf("\n## " + title + "\n");
      assertThat(start).as("section of " + kind.name()).isPositive();
      String section = text.substring(start, text.indexOf("\n## ", start + 1));
      for (Key key : kind.keys()) {
        boolean fanRows = kind.name().equals("fan tap") && key.form() == Form.TABLE;
        assertThat(section).contains(fanRows ? "| table |" : row(key));
      }
    }
  }

  private static String row(Key key) {
    String value = key.form() == Form.CHOICE ? String.join(" or ", key.choices()) : key.example();
    String usual = key.typical().isEmpty() ? "–" : key.typical();
    return "| %s | `%s` | %s | %s |"
        .formatted(key.name(), value, key.required() ? "must" : usual, key.says());
  }

  @Test
  void everyParameterIsBoundedAndBelongsToARemovableUnit() {
    check(CompressorTap.KIND, Samples.tapFacts());
    check(Supply.KIND, Samples.supply());
    check(Duct.KIND, Samples.duct());
    check(FlowUser.KIND, Samples.user());
    check(HeatExchanger.KIND, Samples.exchanger());
  }

  private static void check(Kind kind, KindFacts facts) {
    List<Parameter> parameters = kind.build(facts).parameters();
    assertThat(facts.problems).isEmpty();
    assertThat(parameters).isNotEmpty();
    for (Parameter p : parameters) {
      assertThat(kind.removableUnits()).as(kind.name() + ": " + p.name()).contains(p.unit());
      assertThat(p.min()).isLessThanOrEqualTo(p.low());
      assertThat(p.low()).isLessThanOrEqualTo(p.value());
      assertThat(p.value()).isLessThanOrEqualTo(p.high());
      assertThat(p.high()).isLessThanOrEqualTo(p.max());
    }
  }
}

package dev.offtake.cause;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.system.Problem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each slip is told once, in its line, with how to mend it. */
class BrokenReadingsTest {
  private static final String BEGIN = "offtake readings: 1\nreadings:\n  - at: ground idle\n";

  private static void toldOnce(ReadingsRead read, int line, String message) {
    assertThat(read.readings()).isEmpty();
    assertThat(read.problems()).as(read.problems().toString()).hasSize(1);
    Problem problem = read.problems().get(0);
    assertThat(problem.toString()).contains(message);
    assertThat(problem.line()).as(problem.toString()).isEqualTo(line);
    assertThat(problem.mend()).isNotBlank().doesNotEndWith(".");
  }

  /** One reading of a file at ground idle: it stands in line 4. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "left dukt pressure: 15 psig | no gauge, light or port `left dukt pressure`. Did you mean `left duct pressure`?",
        "duct pressure: 15 psig | `duct pressure` does not say on which side",
        "pressure: 15 psig | `pressure` could be",
        "left duct pressure: 15 degF | 15 degF is a temperature, not a gauge pressure",
        "left duct pressure: 15 psia | 15 psia is an absolute pressure, not a gauge pressure",
        "left duct pressure: 15 psi | does not say whether it is gauge or absolute",
        "left duct pressure: 15 | 15 has no unit",
        "left duct pressure: 15 ppm | Did you mean lb/min",
        "left duct pressure: -15 psig | below vacuum",
        "left duct pressure: -15.5 psig | reaches below vacuum: the air outside is only 14.7 psia",
        "left duct pressure: -1 psig | beyond the needle: the duct gauge ends at 0.0 psig. Write `pegged low`",
        "left duct pressure: 81 psig | beyond the needle: the duct gauge ends at 80.0 psig. Write `pegged high`",
        "left interstage pressure: 12000 psig | more than bleed air ever has",
        "left interstage pressure: pegged | nothing says where the scale of this gauge ends",
        "left duct test port temperature: -500 degF | below absolute zero",
        "left duct test port temperature: 12E9 degF | more than bleed air ever has",
        "left interstage pressure: 15 psig with test gauge 9 | no gauge `test gauge 9` under `gauges used`",
        "left bleed trip light: on with test gauge 9 | no gauge `test gauge 9`",
        "left duct pressure: middling | `middling` is nothing that a needle shows",
        "left duct pressure: unknown 10..20 psig | nobody reads",
        "left duct pressure: swinging 14..10 psig | runs backwards",
        "left duct pressure: 7 psi below left duct pressure | compared with itself",
        "left duct pressure: 7 psi below centre | nothing `centre` to compare with",
        "left duct pressure: -7 psi below right | does not go with `below`",
        "left duct pressure: [15, 16] | needs one value, not a list",
        "left bleed trip light: green | `left bleed trip light` cannot be `green`",
        "left bleed regulator: opne | Did you mean open?",
        "left bleed regulator: 130 % open | no valve is `130 % open`",
        "left bleed switch: FULL | `left bleed switch` cannot be `FULL`",
        "left duct skin: clammy | a skin cannot be `clammy`",
        "line-up: packs of | There is no line-up `packs of`. Did you mean `packs off`?",
        "said by: my uncle | is nobody whose word is weighed",
        "trip: left overheat trip | is no side of a trip",
        "trip: reset held | does not follow a trip",
        "trip: after overheat trip | Say on which side: `left overheat trip`",
        "trip: before left overheet trip | Did you mean `left overheat trip`?",
        "set: {bleed switch: OFF} | Say on which side: `left bleed switch`",
        "set: {isolation valve: ajar} | `isolation valve` cannot be `ajar`",
        "set: isolation OPEN | `set` needs named lines",
        "day: {barometer: 29.71 inHg, air: 41 degF} | whether it is station pressure or QNH",
        "day: freezing | is no altitude, barometer",
      })
  void aReading(String reading, String message) {
    String text = BEGIN + "    " + reading + "\n";
    toldOnce(ReadingsReader.readText("r.yaml", text, Told.TWIN), 4, message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'' | 1 | The file is empty. Begin with `offtake readings: 1`",
        "'# only a comment' | 1 | The file is empty",
        "just words | 1 | A readings file holds named sections, not `just words`",
        "'- at: cruise' | 1 | A readings file holds named sections, not a list",
        "'offtake: 1' | 1 | This is a system file, not readings",
        "'squawk: low' | 1 | This is not a file of readings",
        "'offtake readings: 2' | 1 | These readings are of version `2`",
        "'offtake readings: 1' | 1 | The file holds no reading",
        "'offtake readings: 1\\nreedings: []' | 2 | Readings have no line `reedings`. Did you mean `readings`?",
        "'offtake readings: 1\\nreadings: {at: cruise}' | 2 | `readings:` needs a list",
        "'offtake readings: 1\\nreadings:\\n  - cruise' | 3 | A reading needs named lines, not `cruise`",
        "'offtake readings: 1\\nreadings:\\n  - left duct: 15 psig' | 3 | Nothing says at which power this was read",
        "'offtake readings: 1\\nreadings:\\n  - at: groud idle' | 3 | There is no power setting `groud idle`. Did you mean `ground idle`?",
        "'offtake readings: 1\\nreadings:\\n  - at: warp' | 3 | no power setting `warp`. Known: ground idle, descent",
        "'offtake readings: 1\\nreadings:\\n  - at: {core: 614 %}' | 3 | No engine runs at 614 %",
        "'offtake readings: 1\\nreadings:\\n  - at: {core: -4 %}' | 3 | No engine runs at -4 %",
        "'offtake readings: 1\\nreadings:\\n  - at: {core: 61 psig}' | 3 | 61 psig is a gauge pressure, not a share",
        "'offtake readings: 1\\nreadings:\\n  - at: {cor: 61 %}' | 3 | `at` has no line `cor`. Did you mean `core`?",
        "'offtake readings: 1\\nreadings:\\n  - at: ground idle, cruise' | 3 | Two powers are given at once",
        "'offtake readings: 1\\nreadings:\\n  - at: [cruise]' | 3 | `at` names one power, not a list",
        "'offtake readings: 1\\ndate: yesterday\\nseen: {left mid tap: sound}' | 2 | `yesterday` is no date",
        "'offtake readings: 1\\nseen: {mid tap: sound}' | 2 | Say on which side: `left mid tap`",
        "'offtake readings: 1\\nseen: {left mid tab: sound}' | 2 | Did you mean `left mid tap`?",
        "'offtake readings: 1\\nseen: {left mid tap: }' | 2 | Nothing is said of what was seen",
        "'offtake readings: 1\\nseen: {left mid tap: gap -0.4 in}' | 2 | Nothing is `-0.4 in` wide",
        "'offtake readings: 1\\nseen: {left mid check valve: \"stuck 1/3, sound\"}' | 2 | faulty and sound at once",
        "'offtake readings: 1\\ngauges used: {g: }\\nseen: {left mid tap: sound}' | 2 | needs named lines",
        "'offtake readings: 1\\ngauges used: {g: {good to: 5 lb/min}}\\nseen: {left mid tap: sound}' | 2 | 5 lb/min is a mass flow",
        "'offtake readings: 1\\ngauges used: {g: {good to: -5 psi}}\\nseen: {left mid tap: sound}' | 2 | `good to` cannot be `-5 psi`",
        "'offtake readings: 1\\ngauges used: {g: {good: 5 psi}}\\nseen: {left mid tap: sound}' | 2 | has no line `good`",
        "'offtake readings: 1\\ngauges used: {g: {good to: 5 psi, step: 1 degF}}\\nseen: {left mid tap: sound}' | 2 | pressures in one line and temperatures in another",
        "'offtake readings: 1\\ngauges used: {g: {calibration due: 1/3/27}}\\nseen: {left mid tap: sound}' | 2 | `1/3/27` is no date",
        "'offtake readings: 1\\ngauges used: {duct gauge: {good to: 1 psi}}\\nseen: {left mid tap: sound}' | 2 | is a gauge of the system",
        "'offtake readings: 1\\ngauges used: {g: {shares the sender of: dukt gauge}}\\nseen: {left mid tap: sound}' | 2 | Did you mean `duct gauge`?",
      })
  void aFile(String text, int line, String message) {
    String lines = text.replace("\\n", "\n");
    toldOnce(ReadingsReader.readText("r.yaml", lines, Told.TWIN), line, message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'' | 1 | The file is empty. Begin with the line `at,line-up,what,read,with,note`",
        "'at,what,read' | 1 | The table holds no reading",
        "'at;what;read' | 1 | The columns are not parted by commas",
        "'at,what,red' | 1 | `red` is no column of readings. Did you mean `read`?",
        "'at,at,what,read' | 1 | `at` is there twice",
        "'user,pass,hunter2\\n1,2,3' | 1 | The first line names no column of readings",
        "'at,what' | 1 | The column `read` is missing",
        "'at,what,read\\ncruise,left duct,15 psig,16 psig' | 2 | more cells than there are columns",
        "'at,what,read\\ncruise,,15 psig' | 2 | does not say what was read",
        "'at,what,read\\n,left duct,15 psig' | 2 | Nothing says at which power",
        "'at,what,read\\n\\ncruise,\"left duct,15 psig' | 3 | A quote is opened and never closed",
        "'at,what,read\\ncruise,left duct pressure,15 degF' | 2 | 15 degF is a temperature",
        "'at,what,read\\ncruise,left duct,-4 psig' | 2 | reaches below vacuum: the air outside is only 3.5 psia",
      })
  void aTable(String text, int line, String message) {
    String lines = text.replace("\\n", "\n");
    ReadingsRead read = ReadingsReader.readText("r.csv", lines, Told.TWIN);
    assertThat(read.problems()).as(read.problems().toString()).isNotEmpty();
    if (!message.startsWith("A quote")) {
      toldOnce(read, line, message);
    }
    assertThat(read.problems().toString()).contains("r.csv:" + line + ": ").contains(message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'' | Nothing is said of what was read",
        "left duct 15 psig | No colon stands between the power and the readings",
        "'ground idle: ' | No reading follows the colon",
        "'groundidle: left duct 15 psig' | Did you mean `ground idle`?",
        "'fan 24 %: left duct 15 psig' | Nothing says at which power",
        "'ground idle, packs of: left duct 15 psig' | Did you mean `packs off`?",
        "'ground idle: left dukt 15 psig' | no gauge, light or port `left dukt`. Did you mean `left duct`?",
        "'ground idle: left duct 15 psig, left duct 16 psig' | `left duct pressure` is read twice at once",
        "'ground idle: left leak light on with test gauge 7' | not read with a test gauge",
      })
  void aLine(String line, String message) {
    ReadingsRead read = ReadingsReader.readLines(List.of(line), Told.TWIN);
    toldOnce(read, 1, message);
  }

  @Test
  void severalAreToldAtOnceInTheOrderOfTheFile() {
    String text =
        BEGIN
            + "    left dukt pressure: 15 psig\n    right duct pressure: 15 degF\n"
            + "  - at: warp\n    left duct pressure: 99 psig\n";
    ReadingsRead read = ReadingsReader.readText("r.yaml", text, Told.TWIN);
    assertThat(read.problems()).extracting(Problem::line).containsExactly(4, 5, 6, 7);
    assertThat(read.problems()).extracting(Problem::file).containsOnly("r.yaml");
  }

  @Test
  void whatIsNoFileIsSaid(@TempDir Path folder) throws Exception {
    assertThat(ReadingsReader.read(folder.resolve("none.yaml"), Told.TWIN).problems().toString())
        .contains("none.yaml:1: There is no file `none.yaml`");
    assertThat(ReadingsReader.read(folder, Told.TWIN).problems().toString())
        .contains("is a folder");
    Path picture = Files.write(folder.resolve("p.csv"), new byte[] {'a', 0, 1, 2});
    assertThat(ReadingsReader.read(picture, Told.TWIN).problems().toString())
        .contains("p.csv:1: The file is not text");
  }

  /** Seeds are the numbers of the repetitions. */
  @RepeatedTest(200)
  void noTextMakesAReaderThrow(org.junit.jupiter.api.RepetitionInfo repetition) {
    Random random = new Random(repetition.getCurrentRepetition());
    StringBuilder text = new StringBuilder(ReadingsExamplesTest.FILE);
    String signs = " :,;-[]{}\"'#\n\t&*!%@`|>?0123456789abcpsig";
    for (int i = 0; i < 1 + random.nextInt(6); i++) {
      int at = random.nextInt(text.length());
      char sign = signs.charAt(random.nextInt(signs.length()));
      switch (random.nextInt(3)) {
        case 0 -> text.setCharAt(at, sign);
        case 1 -> text.insert(at, sign);
        default -> text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(8)));
      }
    }
    for (String name : List.of("r.yaml", "r.csv")) {
      ReadingsRead read = ReadingsReader.readText(name, text.toString(), Told.TWIN);
      assertThat(read.readings().isPresent()).isEqualTo(read.problems().isEmpty());
    }
    String line = text.toString().replace('\n', ',');
    ReadingsRead read = ReadingsReader.readLines(List.of(line), Told.TWIN);
    assertThat(read.readings().isPresent()).isEqualTo(read.problems().isEmpty());
  }
}

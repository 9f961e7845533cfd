package dev.offtake.logic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConditionReaderTest {
  private static final double PSI = 6894.757293168361;

  private final Bench bench =
      new Bench()
          .put("left bleed switch", "OFF")
          .put("isolation", "AUTO")
          .put("left overheat trip", "set")
          .put("high and low valve", "open")
          .put("cover", "not installed")
          .put("lamp", "lit and steady")
          .put("left duct pressure", Bench.AMBIENT + 30 * PSI)
          .put("left duct temperature", 500)
          .put("core", 0.62);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "bleed switch is OFF                                    | true",
        "Bleed  switch IS off                                   | true",
        "left bleed switch is ON                                | false",
        "bleed switch is not ON                                 | true",
        "not bleed switch is ON                                 | true",
        "not not bleed switch is ON                             | false",
        "high and low valve is open and isolation is AUTO       | true",
        "isolation is OPEN or (isolation is AUTO and bleed switch is ON) | false",
        "isolation is OPEN or isolation is AUTO                 | true",
        "cover is not installed                                 | true",
        "cover is installed                                     | false",
        "cover is not not installed                             | false",
        "lamp is lit and steady                                 | true",
        "lamp is lit and isolation is AUTO                      | false",
        "duct pressure above 29.9 psig                          | true",
        "duct pressure is above 30.1 psig                       | false",
        "duct pressure below 44.8 psia                          | true",
        "duct pressure below 44.5 psia                          | false",
        "duct pressure above 2 bar(g)                           | true",
        "(duct pressure above 2 bar(g))                         | true",
        "duct pressure is not above 31 psig                     | true",
        "duct temperature above 440 degF                        | true",
        "duct temperature below 440 degF                        | false",
        "core above 60 % and core below 65 %                    | true",
      })
  void holdsAsWritten(String text, boolean expected) throws ConditionProblem {
    assertThat(ConditionReader.read(text, bench).holds(bench)).isEqualTo(expected);
  }

  @Test
  void printsBackAndNamesWhatItAsks() throws ConditionProblem {
    String text = "bleed switch is OFF or  (not trip1)".replace("trip1", "overheat trip is set");
    Condition condition = ConditionReader.read(text + "; SD p.9", bench);
    assertThat(condition.text()).isEqualTo(text);
    assertThat(condition.names()).containsExactly("left bleed switch", "left overheat trip");
  }

  @Test
  void comparisonsExcludeTheLimitAndUnknownValues() throws ConditionProblem {
    bench.put("core", 0.5);
    assertThat(ConditionReader.read("core above 50 %", bench).holds(bench)).isFalse();
    assertThat(ConditionReader.read("core below 50 %", bench).holds(bench)).isFalse();
    bench.put("core", Double.NaN);
    assertThat(ConditionReader.read("core above 1 %", bench).holds(bench)).isFalse();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "isolation is OPEN or bleed switch is OFF   | bleed switch is OFF",
        "bleed switch is OFF or isolation is AUTO   | bleed switch is OFF",
        "isolation is AUTO and (lamp is dark or bleed switch is OFF) "
            + "| isolation is AUTO and bleed switch is OFF",
        "not (isolation is OPEN)                    | not (isolation is OPEN)",
        "isolation is OPEN                          |",
        "isolation is AUTO and lamp is dark         |",
      })
  void tellsWhyItHolds(String text, String why) throws ConditionProblem {
    Condition condition = ConditionReader.read(text, bench);
    assertThat(condition.because(bench).orElse(null)).isEqualTo(why);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "blede switch is OFF      | there is no 'blede switch' | did you mean bleed switch?",
        "left bleed swich is OFF  | there is no                | did you mean left bleed switch?",
        "xyzzy is OFF             | there is no 'xyzzy'        | name a switch",
        "bleed switch is OF       | no position 'OF'           | did you mean OFF?",
        "isolation is purple      | no position 'purple'       | say SHUT, AUTO or OPEN",
        "isolation is             | position of isolation      | say SHUT",
        "isolation is OPEN or AUTO | 'AUTO' says nothing       | name the subject in every clause",
        "isolation OPEN           | says nothing               | name the subject",
        "isolation above 3 psig   | cannot be above            | isolation is SHUT",
        "core is 62 %             | no positions               | above or below",
        "core above 3 psig        | gauge pressure             | %",
        "core above               | no value                   | unknown",
        "core above 60 % +/- 1 points | not one limit          | without a tolerance",
        "core above 60..70 %      | not one limit              | without a tolerance",
        "duct pressure above 3 psi | gauge or absolute         | psig or psia",
        "(isolation is OPEN       | not closed                 | )",
        "isolation is OPEN)       | left over                  | pair parentheses",
        "isolation is OPEN and    | clause is missing at the end | such as",
        "or isolation is OPEN     | clause is missing before   | such as",
        "''                       | clause is missing          | such as",
        "()                       | clause is missing          | such as",
      })
  void refusalsTellHowToMend(String text, String wrong, String mend) {
    assertThatExceptionOfType(ConditionProblem.class)
        .isThrownBy(() -> ConditionReader.read(text, bench))
        .satisfies(problem -> assertThat(problem.wrong()).contains(wrong))
        .satisfies(problem -> assertThat(problem.mend()).contains(mend));
  }

  @Test
  void refusesWhatNobodyCanRead() {
    String deep = "(".repeat(500) + "isolation is OPEN" + ")".repeat(500);
    assertThatExceptionOfType(ConditionProblem.class)
        .isThrownBy(() -> ConditionReader.read(deep, bench));
    assertThatExceptionOfType(ConditionProblem.class)
        .isThrownBy(() -> ConditionReader.read("not ".repeat(5000) + "isolation is OPEN", bench));
  }
}

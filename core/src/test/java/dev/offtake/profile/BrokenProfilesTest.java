package dev.offtake.profile;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.network.Demos;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Problem;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each mistake in a profile is told once, with its line and how to mend it. */
class BrokenProfilesTest {
  private static final BleedSystem TWIN = Demos.demo("twin");
  private static final String HEAD = "offtake profile: 1\nactions:\n";

  private static List<Problem> problems(String text) {
    ProfileRead read = ProfileReader.readText("p.yaml", text, TWIN);
    assertThat(read.profile().isEmpty()).isEqualTo(!read.problems().isEmpty());
    return read.problems();
  }

  private static Problem only(String text) {
    List<Problem> problems = problems(text);
    assertThat(problems).hasSize(1);
    return problems.get(0);
  }

  /** One line under {@code actions:}, what is said of it, and of how to mend it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "at 5 s: jump up | Nobody can do `jump up` | Write a switch",
        "at 5 s: {acelerate: ground idle -> take-off} | Nobody can do `acelerate` | `accelerate`",
        "at 5 s: {left pak switch: OFF} | Nobody can do `left pak switch` | left pack switch",
        "at 5 s: {pack switch: OFF} | does not say on which side | left pack switch",
        "at 5 s: {left pack switch: OF} | `left pack switch` cannot be `OF` | `OFF`",
        "at 5 s: {left high stage valve: OPEN} | cannot be `OPEN` | locked open",
        "at five: shut down | Five is not a number | ",
        "soon: shut down | `soon` does not say when | at 5 s",
        "at 5: shut down | 5 | s",
        "at -5 s: shut down | lies outside any run | 0 s to 24 h",
        "at 30 h: shut down | lies outside any run | 0 s to 24 h",
        "at 4..5 s: shut down | is no one time | Write one time",
        "from 9 s to 4 s: {core: ground idle -> take-off} | runs back | earlier time first",
        "at 5 s: {core: ground idle -> take-off} | Nothing says how long | from 4 s to 10 s",
        "at 5 s: {accelerate: ground idle -> descent -> take-off} | from which power | ->",
        "at 5 s: {accelerate: take-off -> ground idle} | slows down | Check the two powers",
        "from 4 s to 9 s: {core: take-off -> ground idle} | stands at ground idle | where it stands",
        "from 4 s to 9 s: {core: ground idle -> takeoff} | `takeoff` | take-off",
        "from 4 s to 9 s: {core: ground idle -> 900 %} | No engine runs at | 100 % speed",
        "from 4 s to 9 s: {left pack switch: OFF} | happens at once | at 4 s",
        "at 5 s: {breaks: left high stage valv stuck 1/3} | no part | left high stage valve",
        "at 5 s: {breaks: left high stage valve stuk} | does not fail by | stuck",
        "at 5 s: {breaks: left bleed regulator sense lines crossed} | how it was put together | Write it under",
        "at 5 s: {remove: ground suply} | no supply `ground suply` | ground supply",
        "at 5 s: {connect: ground supply} | is on already | Leave the line out",
        "at 5 s: {shut down: now} | needs nothing after it | alone",
        "at 5 s: {left pack switch: {OFF: ON}} | Nothing stands deeper | one line",
      })
  void anActionThatCannotBe(String line, String wrong, String mend) {
    Problem problem = only(HEAD + "  " + line + "\n");
    assertThat(problem.line()).isEqualTo(3);
    assertThat(problem.wrong()).contains(wrong.strip());
    assertThat(problem.mend()).contains(mend == null ? "" : mend.strip());
  }

  @Test
  void timesThatRunBack() {
    Problem problem =
        only(HEAD + "  at 9 s: left pack switch OFF\n  at 4 s: right pack switch OFF\n");
    assertThat(problem.line()).isEqualTo(4);
    assertThat(problem.wrong()).isEqualTo("Time runs back from 9 s to 4 s");
  }

  @Test
  void aSwitchTurnedBothWaysAtOnce() {
    Problem problem = only(HEAD + "  at 4 s: isolation OPEN\n  at 4.0 s: {isolation: AUTO}\n");
    assertThat(problem.line()).isEqualTo(4);
    assertThat(problem.wrong()).isEqualTo("At 4 s isolation is turned to OPEN and to AUTO");
  }

  @Test
  void rampsThatOverlap() {
    Problem problem =
        only(
            HEAD
                + "  from 4 s to 9 s: {core: ground idle -> take-off}\n"
                + "  from 8 s to 12 s: {core: take-off -> ground idle}\n");
    assertThat(problem.line()).isEqualTo(4);
    assertThat(problem.wrong()).isEqualTo("At 8 s the core still moves, by line 3, until 9 s");
  }

  @Test
  void aShutDownOfAStoppedEngine() {
    Problem problem =
        only("offtake profile: 1\nstart: {power: stopped}\nactions:\n  at 4 s: shut down\n");
    assertThat(problem.line()).isEqualTo(4);
    assertThat(problem.wrong()).contains("is stopped already");
  }

  @Test
  void faultsThatContradictEachOtherAndOnesThatAreThereAlready() {
    String stuck = "  at 4 s: {breaks: left high stage valve stuck 1/3}\n";
    assertThat(
            only(HEAD + stuck + "  at 5 s: {breaks: left high stage valve stuck open}\n").wrong())
        .contains("contradict each other");
    assertThat(problems(HEAD + stuck + "  at 5 s: {breaks: left high stage valve stuck 1/2}\n"))
        .extracting(Problem::wrong)
        .contains("Left high stage valve stuck is broken already");
  }

  @Test
  void whatTheSystemFileForbids() {
    Problem problem = only(HEAD + "  at 4 s: aux bleed ON\n  at 6 s: {ground supply switch: ON}\n");
    assertThat(problem.line()).isEqualTo(4);
    assertThat(problem.wrong())
        .isEqualTo(
            "At 6 s ground supply switch is ON and aux bleed is ON, which the system file forbids"
                + " (SD p.11)");
  }

  @Test
  void aProfileThatEndsTooSoonOrDoesNothing() {
    String ramp = "  from 4 s to 9 s: {core: ground idle -> take-off}\n";
    assertThat(only(HEAD + ramp + "ends at: 8 s\n").wrong()).contains("something moves until 9 s");
    assertThat(only("offtake profile: 1\n").wrong()).isEqualTo("Nothing is done in this profile");
  }

  @Test
  void anotherFile() {
    assertThat(only("offtake: 1\n").wrong()).isEqualTo("This is a system file, not a profile");
    assertThat(only("offtake readings: 1\n").wrong())
        .isEqualTo("These are readings, not a profile");
    assertThat(only("offtake profile: 2\n").wrong()).contains("version `2`");
    assertThat(only("").wrong()).isEqualTo("The file is empty");
    assertThat(only("a: *b\n").wrong()).contains("aliases are not read");
  }

  @Test
  void sectionsAndTheirLines() {
    List<Problem> problems =
        problems(
            "offtake profile: 1\n"
                + "strt: {power: ground idle}\n"
                + "start: {power: idle, day: hot dy, line-up: packs of, isolation: HALF}\n"
                + "acceleration: {grond idle to full: 5 s, full to idle: 900 h}\n"
                + "start-up: {inertia: 5 lb}\n"
                + "actions: {at 4 s: isolation OPEN}\n");
    assertThat(problems).extracting(Problem::line).containsExactly(2, 3, 3, 3, 3, 4, 4, 5);
  }

  @Test
  void severalProblemsAreToldAtOnce() {
    assertThat(problems(HEAD + "  soon: shut down\n  at 4 s: fly\n  at 5 s: {isolation: HALF}\n"))
        .extracting(Problem::line)
        .containsExactly(3, 4, 5);
  }

  @Test
  void noTextMakesTheReaderThrow() {
    String sound =
        HEAD
            + "  at 1 s: {left pack switch: OFF}\n"
            + "  from 4 s to 9 s: {core: ground idle -> take-off}\n"
            + "  at 12 s: {breaks: [left high stage valve stuck 1/3]}\nends at: 20 s\n";
    assertThat(problems(sound)).isEmpty();
    Random random = new Random(7);
    String signs = " :{}[]-\"'#&*!|>%\n\t0aA.,;→\u0000\u2028";
    for (int i = 0; i < 3000; i++) {
      StringBuilder text = new StringBuilder(sound);
      for (int k = random.nextInt(4); k >= 0; k--) {
        int at = random.nextInt(text.length());
        char sign = signs.charAt(random.nextInt(signs.length()));
        if (random.nextBoolean()) {
          text.setCharAt(at, sign);
        } else {
          text.insert(at, sign);
        }
      }
      problems(text.toString());
    }
  }

  @Test
  void aFloodOfActionsIsRefused() {
    StringBuilder flood = new StringBuilder(HEAD);
    for (int i = 0; i <= ProfileReader.MOST; i++) {
      flood
          .append("  at ")
          .append(i)
          .append(" s: isolation ")
          .append(i % 2 == 0 ? "OPEN\n" : "SHUT\n");
    }
    assertThat(only(flood.toString()).wrong()).contains("is no profile");
  }
}

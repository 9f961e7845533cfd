package dev.offtake.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.offtake.part.Mode;
import dev.offtake.part.Part;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Settler;
import dev.offtake.study.Fault;
import dev.offtake.study.Sign;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the demo's answer says of a broken part: order, relations and shape, never its numbers. */
class BreakAnswerTest {
  private static final String STUCK_OPEN = "left mid check valve stuck open";
  private static BleedSystem system;
  private static BreakAnswer open;

  @BeforeAll
  static void read() throws Exception {
    system = SystemReader.read(Path.of("../demo/demo-twin.yaml")).system().orElseThrow();
    open = answer(question("ground idle", STUCK_OPEN));
  }

  private static Question question(String at, String... faults) throws QuantityProblem {
    return Question.of(system, at, "", "", List.of()).broken(List.of(faults));
  }

  /** Without the look ahead along the power, which takes most of the time and is tested alone. */
  private static BreakAnswer answer(Question question) throws QuantityProblem {
    StateAnswer state =
        StateExplainer.explain(
            question.asked(Style.SHOP),
            new Settler(question.network()).solve(question.setup()),
            Optional::empty,
            Style.SHOP);
    return BreakInquiry.answer(state, question, Style.SHOP);
  }

  private static BreakAnswer.Noticed at(BreakAnswer answer, String power) {
    return answer.noticed().stream().filter(n -> n.power().equals(power)).findFirst().orElseThrow();
  }

  /**
   * Common practice, no source: a check valve that does not shut lets high stage air back into the
   * mid stage at idle, the duct is low there, and at take-off, where the mid stage feeds, nobody
   * sees it.
   */
  @Test
  void aStuckOpenCheckValveIsPlainAtIdleAndHiddenAtTakeOff() {
    assertThat(open.headline()).contains("runs back into the engine", "left mid tap");
    assertThat(at(open, "ground idle").verdict()).isEqualTo("plain");
    assertThat(at(open, "take-off").verdict()).isEqualTo("HIDDEN");
    Sign needle =
        at(open, "ground idle").signs().stream()
            .filter(sign -> sign.needle().equals("L"))
            .findFirst()
            .orElseThrow();
    assertThat(needle.change()).isNegative();
    assertThat(needle.verdict()).isEqualTo(Sign.Verdict.PLAIN);
    assertThat(Math.abs(needle.change())).isGreaterThan(needle.limit());
    assertThat(open.back().get(0)).contains("left mid tap", "core flow");
  }

  /** The air has not changed: only the needle is wrong. */
  @Test
  void aGaugeThatIsWrongIsNotToldAsAPressureThatFalls() throws QuantityProblem {
    BreakAnswer stuck = answer(question("cruise", "duct gauge L needle stuck 30 psig"));
    assertThat(stuck.headline()).contains("gauge itself is wrong").doesNotContain("falls");
  }

  @Test
  void theCauseComesFirstThenTheAirThenUsersThenWatchers() {
    List<String> steps = open.follows();
    assertThat(steps.get(0)).contains(STUCK_OPEN.substring(5));
    int interstage = index(steps, "Left interstage falls");
    int high = index(steps, "Left high tap gives");
    int pack = index(steps, "Left pack");
    int gauge = index(steps, "Duct gauge L");
    assertThat(List.of(0, interstage, high, pack, gauge)).isSorted();
    assertThat(steps).noneMatch(step -> step.startsWith("Right"));
  }

  private static int index(List<String> steps, String begin) {
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i).startsWith(begin)) {
        return i;
      }
    }
    throw new AssertionError(begin + " is not in " + steps);
  }

  @Test
  void whatChangedIsSortedAndSaysWhereItIsSeen() {
    assertThat(open.changed()).hasSizeLessThanOrEqualTo(14);
    assertThat(open.changed().stream().map(row -> -row.weight()).toList()).isSorted();
    assertThat(open.changed())
        .anyMatch(row -> row.name().equals("left duct") && row.seen().equals("duct gauge L"))
        .anyMatch(row -> row.seen().equals("interstage test port"))
        .anyMatch(row -> row.seen().equals("nowhere"));
  }

  @Test
  void theTextFitsAndHasItsLabelsInTheirOrder() {
    for (Style style : Style.values()) {
      String text = BreakText.print(open, 80, style);
      assertThat(text.lines()).allMatch(line -> line.length() <= 80);
      assertThat(text)
          .containsSubsequence(
              "IF    " + STUCK_OPEN,
              open.headline().substring(0, 20),
              "WHAT FOLLOWS, ALONG THE AIR",
              "CHANGED",
              "BACK INTO THE ENGINE",
              "WHO WOULD NOTICE",
              "LOOK ALSO",
              "WHY",
              "CAUTION");
    }
  }

  @Test
  void anExtentThatNobodyGaveIsTold() throws QuantityProblem {
    assertThat(question("", "left mid check valve stuck").asked(Style.SHOP).broken().get(0))
        .contains("no extent given", "taken");
    assertThat(question("", "left mid check valve stuck 1/2").asked(Style.SHOP).broken().get(0))
        .doesNotContain("no extent given");
  }

  /** Ways in which somebody in a hurry writes, and what the answer has to offer. */
  @ParameterizedTest
  @CsvSource({
    "left mid check vlave stuck open, did you mean left mid check valve?",
    "mid check valve stuck open, each side mid check valve",
    "left mid check valve, it may be: flapper missing",
    "left mid check valve stuk open, did you mean stuck open?",
    "left mid check valve stuck 130 %, give 2 to 98 % open",
    "left mid check valve slow 100, give 2 to 50 times slower",
    "left pack leaks 400 in2, 'give area of the hole, 0.02 to 12.57 in²'",
    "left mid check valve stuck 0.5, say 50 %",
    "left mid check valve stuck 1, say 1 % or 100 %",
    "left pack leaks; right pack leaks, write --if \"left pack leaks\" --if \"right pack leaks\"",
    "'left pack leaks, right pack leaks', one --if says one failure",
    "pack leaks and cowl heat leaks, says 2",
    "left start switch ON, write --set \"left start switch: ON\"",
    "dc bus is dead, write --set \"dc bus: DEAD\"",
    "start switch jammed, '(it has OFF, ON)'",
    "left mid check valve stuck open 1/3, left mid check valve stuck 1/3",
    "left mid check valve stuck 30, say 30 %",
    "left mid check valve leaks outward 3 in, in²",
    "left mid check valve jammed open, stuck open",
    "'', left mid check valve stuck 1/3"
  })
  void aHurriedWordIsMended(String fault, String offers) {
    assertThatThrownBy(() -> question("", fault))
        .isInstanceOfSatisfying(
            QuantityProblem.class, p -> assertThat(p.wrong() + "; " + p.mend()).contains(offers));
  }

  @Test
  void capitalsAColonAndBothAreUnderstood() throws QuantityProblem {
    assertThat(question("", "Left Mid Check Valve: stuck open").faults())
        .extracting(Fault::name)
        .containsExactly(STUCK_OPEN);
    assertThat(question("", "both mid check valve stuck open").faults()).hasSize(2);
  }

  @Test
  void whatShowsOnlyWhilePowerMovesIsSaidToDoSo() throws QuantityProblem {
    BreakAnswer slow = answer(question("ground idle", "left mid check valve slow"));
    assertThat(slow.headline()).contains("only while power moves");
    assertThat(slow.changed()).isEmpty();
    assertThat(slow.noticed()).allMatch(row -> row.verdict().equals("HIDDEN"));
  }

  @Test
  void piecesAreToBeAccountedForAlongTheAir() throws QuantityProblem {
    BreakAnswer lost = answer(question("ground idle", "left mid check valve flapper missing"));
    String pieces =
        lost.look().stream()
            .filter(look -> look.what().equals("pieces"))
            .findFirst()
            .orElseThrow()
            .says();
    // Back into the engine where air runs back, else on to the valve behind it.
    assertThat(pieces).contains("ground idle", "the engine at the left mid tap", "take-off");
    assertThat(pieces).contains("left bleed regulator").doesNotContain("right");
  }

  /** The demo's precooler without cooling air at take-off: the overheat trip shuts the side. */
  @Test
  void aTripIsToldBeforeAndAfter() throws QuantityProblem {
    Part valve =
        system.parts().stream()
            .filter(part -> part.name().equals("left cooling air valve"))
            .findFirst()
            .orElseThrow();
    Fault fault = Fault.usual(valve, Mode.named("shut", "v", "It sticks").puts("stuck at", 0));
    BreakAnswer answer =
        answer(Question.of(system, "take-off", "", "", List.of()).with(List.of(fault)));
    assertThat(answer.headline()).contains("left overheat trip trips", "left pack goes short");
    int hot = index(answer.follows(), "Left duct ");
    int trips = index(answer.follows(), "Left overheat trip tripped");
    int shut = index(answer.follows(), "Left bleed regulator shuts");
    assertThat(List.of(hot, trips, shut)).isSorted();
    assertThat(answer.follows().get(hot)).contains("heats up");
    assertThat(answer.look()).anyMatch(look -> look.what().equals("hot"));
    assertThat(answer.changed().get(0).seen()).isNotEqualTo("nowhere");
  }
}

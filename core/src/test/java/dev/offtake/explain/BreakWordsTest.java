package dev.offtake.explain;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Settler;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Sentences about broken systems that a hostile reader found false or silly, as they are now. */
class BreakWordsTest {
  private static BleedSystem system;

  @BeforeAll
  static void read() throws Exception {
    system = SystemReader.read(Path.of("../demo/demo-twin.yaml")).system().orElseThrow();
  }

  private static BreakAnswer answer(String at, List<String> sets, String... faults)
      throws QuantityProblem {
    Question question = Question.of(system, at, "", "", sets).broken(List.of(faults));
    StateAnswer state =
        StateExplainer.explain(
            question.asked(Style.SHOP),
            new Settler(question.network()).solve(question.setup()),
            Optional::empty,
            Style.SHOP);
    return BreakInquiry.answer(state, question, Style.SHOP);
  }

  private static BreakAnswer answer(String at, String... faults) throws QuantityProblem {
    return answer(at, List.of(), faults);
  }

  private static String why(BreakAnswer answer, String part) {
    return answer.state().why().stream()
        .filter(row -> row.part().equals(part))
        .findFirst()
        .orElseThrow()
        .because();
  }

  private static List<String> hot(BreakAnswer answer) {
    return answer.look().stream()
        .filter(look -> look.what().equals("hot"))
        .map(BreakAnswer.Look::says)
        .toList();
  }

  @Test
  void airThatRunsBackIsNotToldAsLeakThatPasses() throws QuantityProblem {
    BreakAnswer back =
        answer(
            "ground idle",
            List.of("aux bleed: ON", "isolation: AUTO"),
            "auxiliary unit check valve leaks back 0.3 in2",
            "right mid check valve flapper missing");
    assertThat(back.beside())
        .noneMatch(says -> says.contains("leak passes"))
        .anyMatch(
            says ->
                says.startsWith("Nothing of its own feeds the right side")
                    && says.contains("its air comes from the auxiliary unit")
                    && says.contains("runs back into the engine at the right mid tap"));
    assertThat(why(back, "right mid check valve")).endsWith("runs backwards through it");
    assertThat(why(back, "left mid check valve")).doesNotContain("backwards");
  }

  @Test
  void airThatOnlyBlowsOutFeedsNobody() throws QuantityProblem {
    BreakAnswer leak = answer("take-off", "left high tap flange leaks 2 in2");
    assertThat(leak.beside().get(0))
        .startsWith("The MID TAP feeds the left side.")
        .contains("high tap gives", "comes to no user");
  }

  @Test
  void crossedNeedlesShowTheOtherSide() throws QuantityProblem {
    BreakAnswer crossed =
        answer("take-off", "duct gauge needles crossed", "left bleed regulator stuck 30 %");
    assertThat(seen(crossed, "left duct")).isEqualTo("duct gauge R, pegged");
    BreakAnswer stuck =
        answer("take-off", "duct gauge L needle stuck 40 psig", "left bleed regulator stuck open");
    assertThat(seen(stuck, "left duct")).isEqualTo("test port");
  }

  private static String seen(BreakAnswer answer, String place) {
    return answer.changed().stream()
        .filter(row -> row.name().equals(place))
        .findFirst()
        .orElseThrow()
        .seen();
  }

  /** With the ground supply on, the right side's own air is still; without it, it is hot. */
  @Test
  void whatIsHotWithoutTheFailureIsNotBlamedOnIt() throws QuantityProblem {
    List<String> cart = List.of("ground supply switch: ON");
    BreakAnswer leak = answer("ground idle", cart, "right pylon joint leaks 0.5 in2");
    assertThat(hot(leak)).hasSize(1).allMatch(says -> says.startsWith("Right pylon zone"));
    assertThat(BreakText.print(leak, 80, Style.SHOP))
        .contains("WHO WOULD NOTICE, at each power with ground supply switch ON");
  }

  /**
   * The healthy system trips as well with this valve locked, so that its heat is not the leak's.
   */
  @Test
  void heatBeforeATripThatAHealthySystemHasTooIsNotBlamed() throws QuantityProblem {
    List<String> locked = List.of("left cooling air valve: locked shut");
    assertThat(hot(answer("take-off", locked, "left pack takes too little 10 %"))).isEmpty();
    assertThat(hot(answer("take-off", "left cooling air valve stuck shut"))).isNotEmpty();
  }

  @Test
  void aHotZoneNamesTheJointAndADeadLoopWhatItWouldHaveDone() throws QuantityProblem {
    BreakAnswer dead = answer("take-off", "left pylon joint leaks 0.5 in2", "left pylon loop dead");
    assertThat(dead.headline()).contains("left pylon loop stays dark");
    assertThat(dead.follows()).anyMatch(step -> step.contains("it would have lit at 255 °F"));
    assertThat(hot(dead).get(0))
        .contains("look at left pylon joint, which blows into it", "if it were sound")
        .doesNotContain("louvre");
    BreakAnswer sound = answer("take-off", "left pylon joint leaks 0.5 in2");
    assertThat(sound.follows()).noneMatch(step -> step.contains("would have"));
  }

  @Test
  void aTripAndALightThatDoNothingAreTold() throws QuantityProblem {
    BreakAnswer trip =
        answer("take-off", "left overheat trip dead", "left cooling air valve stuck shut");
    assertThat(trip.headline()).contains("left overheat trip does not trip at");
    BreakAnswer bulb =
        answer("take-off", "left leak light bulb out", "left wing joint leaks 1 in2");
    assertThat(bulb.headline()).contains("left leak light stays dark");
  }

  @Test
  void aNeedleBeyondItsScaleIsPeggedAndNotAReading() throws QuantityProblem {
    BreakAnswer open = answer("take-off", "left bleed regulator stuck open");
    assertThat(open.follows()).anyMatch(step -> step.endsWith("-> pegged at 80 psig."));
    assertThat(open.noticed()).anyMatch(row -> row.says().contains("pegged at 80 psig"));
    assertThat(BreakText.print(open, 80, Style.SHOP)).doesNotContain("80.0 psig,");
    BreakAnswer stuck = answer("take-off", "duct gauge L needle stuck 80 psig");
    assertThat(stuck.follows()).noneMatch(step -> step.contains("pegged"));
    assertThat(
            SignWords.stands(80 * 6894.757293168, "pegged", Dimension.GAUGE_PRESSURE, Style.SHOP))
        .isEqualTo(" is pegged at 80 psig");
  }

  @Test
  void aUserThatHasEnoughNowWasShortOrOff() throws QuantityProblem {
    BreakAnswer fed =
        answer("take-off", List.of("left bleed switch: OFF"), "isolation valve stuck open");
    assertThat(fed.follows())
        .anyMatch(step -> step.startsWith("Left pack has enough, healthy it is short"));
    assertThat(fed.noticed())
        .anyMatch(row -> row.says().contains("left pack has enough, healthy it is short"));
    BreakAnswer on = answer("descent", "left cowl heat stuck on");
    assertThat(on.follows()).anyMatch(step -> step.contains("healthy it is off"));
    BreakAnswer starter = answer("ground idle", "left starter stuck on");
    assertThat(starter.headline()).doesNotContain("goes short");
    assertThat(starter.follows())
        .anyMatch(step -> step.startsWith("Left pack still gets its flow, though"));
  }

  @Test
  void aUserWithoutAirIsToldOnceAndWhyInOneClause() throws QuantityProblem {
    BreakAnswer shut = answer("take-off", "left bleed regulator stuck shut");
    String text = BreakText.print(shut, 80, Style.SHOP);
    assertThat(text).containsOnlyOnce("left pack goes short.").doesNotContain("though wide open");
    assertThat(shut.beside()).noneMatch(says -> says.contains("goes short"));
    BreakAnswer off =
        answer("take-off", List.of("left bleed switch: OFF"), "right pack takes too little 10 %");
    assertThat(why(off, "left bleed regulator")).isEqualTo("bleed switch is OFF");
    assertThat(off.beside()).anyMatch(says -> says.startsWith("The left pack goes short:"));
  }

  @Test
  void aTripWithoutACauseBeginsAtTheValveThatItShuts() throws QuantityProblem {
    BreakAnswer trip = answer("take-off", "left overheat trip false");
    assertThat(trip.follows().get(1)).startsWith("Left bleed regulator shuts");
  }

  @Test
  void aPowerThatTheFileDoesNotNameIsAsAsked() throws QuantityProblem {
    Question question = Question.of(system, "core=75", "hot day", "", List.of());
    Question blocked = question.broken(List.of("left fan tap blocked 95 %"));
    assertThat(hot(BreakInquiry.answer(blocked, Style.SHOP)))
        .anyMatch(says -> says.contains(" as asked, over the 460 °F of the left pack inlet limit;"))
        .noneMatch(says -> says.contains("at as asked"));
  }

  @Test
  void whereAirGoesEitherWayTheWayIsTold() throws QuantityProblem {
    BreakAnswer open =
        answer("take-off", "isolation valve stuck open", "left bleed regulator stuck shut");
    assertThat(open.follows().get(1)).contains("passes it from right duct to left duct");
  }

  @Test
  void aReasonIsNotItsOwnContradiction() throws QuantityProblem {
    BreakAnswer back = answer("cruise", "left mid check valve flapper missing");
    assertThat(why(back, "left high stage valve")).contains("it feels", "is under its set");
  }
}

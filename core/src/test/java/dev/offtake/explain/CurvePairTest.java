package dev.offtake.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.network.Demos;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import dev.offtake.study.Curve;
import dev.offtake.study.Notice;
import dev.offtake.study.Sign;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A healthy and a broken curve: each is held against states that are solved alone, by another way
 * than along the curve.
 */
class CurvePairTest {
  private static final String STUCK = "left mid check valve stuck 1/3";
  private static final String LEAK = "left mid check valve leaks outward";

  private static Question question(String at, String... faults) throws QuantityProblem {
    return Question.of(Demos.demo("twin"), at, "", "", List.of()).broken(List.of(faults));
  }

  private static List<CurveAnswer> answers(String over, int points, String... faults)
      throws QuantityProblem {
    CurveAnswer.Request request = new CurveAnswer.Request(over, points, "");
    return CurveAnswer.all(question("", faults), request, Style.SHOP, share -> {});
  }

  /** A state alone, from fresh memory. */
  private static Solution alone(Question question, double core) {
    Setup setup = question.setup();
    double fan = question.fanLine().applyAsDouble(core);
    return new Settler(question.network())
        .solve(setup.at(setup.conditions().withSpeeds(core, fan)));
  }

  private static String verdict(double core, String fault) throws QuantityProblem {
    List<Sign> signs = Notice.between(alone(question(""), core), alone(question("", fault), core));
    return BreakSigns.word(Notice.best(signs, false));
  }

  @ParameterizedTest
  @CsvSource({STUCK, LEAK, "left bleed regulator sense lines crossed"})
  void bothCurvesAreThoseOfTheirOwnNetworks(String fault) throws QuantityProblem {
    List<CurveAnswer> pair = answers("core=70..90", 3, fault);
    assertThat(pair).extracting(CurveAnswer::broken).containsExactly(false, true);
    Question[] asked = {question(""), question("", fault)};
    for (int i = 0; i < 2; i++) {
      Curve curve = pair.get(i).curve();
      assertThat(curve.columns())
          .extracting(column -> column.name())
          .contains("left duct pressure", "right duct temperature");
      for (Curve.Row row : curve.up()) {
        Solution state = alone(asked[i], row.x());
        for (int k = 0; k < curve.columns().size(); k++) {
          double own = curve.columns().get(k).reading().of(state);
          // Walked along and solved alone differ by the solver's rest: 1e-4 of the pressure.
          assertThat(row.values().get(k)).isCloseTo(own, within(2e-4 * Math.abs(own) + 20));
        }
      }
    }
    assertThat(pair.get(0).curve().up()).isNotEqualTo(pair.get(1).curve().up());
  }

  @Test
  void theStretchesCoverTheRangeAndTurnWhereStatesAloneTurn() throws QuantityProblem {
    CurveAnswer now = answers("core=55..100", 46, STUCK).get(1);
    List<CurveAnswer.Noticed> stretches = now.noticed();
    assertThat(stretches.get(0).from()).isEqualTo(0.55);
    assertThat(stretches.get(stretches.size() - 1).to()).isEqualTo(1.0);
    assertThat(stretches).hasSizeGreaterThan(2);
    double beside = 2e-4;
    for (int i = 1; i < stretches.size(); i++) {
      CurveAnswer.Noticed below = stretches.get(i - 1);
      CurveAnswer.Noticed above = stretches.get(i);
      assertThat(above.from()).isEqualTo(below.to());
      assertThat(verdict(above.from() - beside, STUCK)).isEqualTo(below.verdict());
      assertThat(verdict(above.from() + beside, STUCK)).isEqualTo(above.verdict());
    }
  }

  @Test
  void theVerdictsAreThoseOfTheStateAtEachPower() throws QuantityProblem {
    List<CurveAnswer.Noticed> stretches = answers("core=55..100", 46, STUCK).get(1).noticed();
    Question idle = question("ground idle", STUCK);
    for (BreakAnswer.Noticed power : BreakInquiry.answer(idle, Style.SHOP).noticed()) {
      boolean seaLevel = List.of("ground idle", "take-off").contains(power.power());
      double core = question(power.power()).setup().conditions().core();
      if (seaLevel) {
        assertThat(stretches)
            .filteredOn(stretch -> stretch.from() <= core && core <= stretch.to())
            .extracting(CurveAnswer.Noticed::verdict)
            .contains(power.verdict());
      }
    }
  }

  @Test
  void theHealthyCurveIsTheOneWithoutAFault() throws QuantityProblem {
    Curve alone = answers("core=70..80", 3).get(0).curve();
    Curve healthy = answers("core=70..80", 3, LEAK).get(0).curve();
    assertThat(healthy.up()).isEqualTo(alone.up());
    assertThat(answers("core=70..80", 3).get(0).noticed()).isEmpty();
  }

  @Test
  void whatAFaultChangesCannotBeMovedAsWell() {
    assertThatThrownBy(
            () ->
                answers(
                    "left bleed regulator set=30..50 psig",
                    3,
                    STUCK,
                    "left bleed regulator set drifted high"))
        .isInstanceOf(QuantityProblem.class)
        .hasMessageContaining("cannot run over left bleed regulator set")
        .hasMessageContaining("\"left bleed regulator set drifted high\": the fault changes it");
    assertThatThrownBy(() -> answers("left mid check valve opening=0..1", 3, STUCK))
        .isInstanceOf(QuantityProblem.class)
        .hasMessageContaining("left mid check valve stuck");
  }

  @Test
  void anotherNumberMovesInBoth() throws QuantityProblem {
    List<CurveAnswer> pair =
        answers("right bleed regulator set=30..50 psig", 3, "left bleed regulator set drifted low");
    assertThat(pair).allMatch(answer -> answer.curve().answered());
  }

  @Test
  void whatHappensInBothIsToldOnce() throws QuantityProblem {
    List<CurveAnswer> pair = answers("core=60..85", 26, STUCK);
    Curve healthy = pair.get(0).curve();
    Curve now = pair.get(1).curve();
    List<PairEvents.Marked> events = PairEvents.of(healthy, now);
    assertThat(events)
        .filteredOn(marked -> marked.whose().isEmpty())
        .flatExtracting(marked -> marked.event().changes())
        .extracting(Curve.Change::subject)
        .contains("right high stage valve", "right mid check valve");
    // A stuck flapper does not begin to open.
    assertThat(events)
        .filteredOn(marked -> !marked.whose().equals(PairEvents.HEALTHY))
        .flatExtracting(marked -> marked.event().changes())
        .extracting(Curve.Change::subject)
        .doesNotContain("left mid check valve");
    long changes = events.stream().mapToLong(marked -> marked.event().changes().size()).sum();
    long shared =
        events.stream()
            .filter(marked -> marked.whose().isEmpty())
            .mapToLong(marked -> marked.event().changes().size())
            .sum();
    assertThat(changes + shared).isEqualTo(count(healthy) + count(now));
  }

  private static long count(Curve curve) {
    return curve.events().stream().mapToLong(event -> event.changes().size()).sum();
  }

  /** At 80 columns each side has a table of its own; the sound side is said to be sound. */
  @Test
  void aSideIsNotTornApart() throws QuantityProblem {
    String text = CurveText.print(answers("core=55..100", 10, STUCK), 80, Style.SHOP);
    assertThat(text).contains("\n\nTHE SAME HEALTHY AND NOW\n").containsOnlyOnce("RIGHT\n");
    assertThat(text.lines().filter(line -> line.contains("LEFT") && line.contains("RIGHT")))
        .isEmpty();
    String wide = CurveText.print(answers("core=55..100", 10, STUCK), 120, Style.SHOP);
    assertThat(wide).doesNotContain("THE SAME HEALTHY AND NOW");
  }

  @ParameterizedTest
  @CsvSource({"80", "132"})
  void theTableFitsAndHasBoth(int width) throws QuantityProblem {
    String text = CurveText.print(answers("core=55..100", 10, STUCK), width, Style.SHOP);
    assertThat(text.lines()).allMatch(line -> line.length() <= width);
    assertThat(text)
        .contains("IF    left mid check valve stuck 33 % open", "healthy", "now", "both")
        .contains("WHO WOULD NOTICE", "plain", "lost in the gauge", "HIDDEN", "nothing tells")
        .contains("left pack goes short; at ", "duct gauge L ");
  }

  @Test
  void commaSeparatedValuesSayWithWhatEachLineIs() throws QuantityProblem {
    String csv = CurveCsv.print(answers("core=60..64", 3, STUCK), Style.SHOP);
    List<String> lines = csv.lines().toList();
    assertThat(lines.get(0)).startsWith("day,if,way,core %,");
    assertThat(lines.get(1)).startsWith("standard day,,up,60,");
    assertThat(lines.get(4)).startsWith("standard day,left mid check valve stuck 33 % open,up,60,");
    assertThat(lines)
        .contains("day,if,from core %,to,who would notice,what shows")
        .anyMatch(line -> line.startsWith("standard day,left mid check valve stuck 33 % open,60,"));
  }
}

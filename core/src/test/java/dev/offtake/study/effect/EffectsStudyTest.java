package dev.offtake.study.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.offtake.network.Demos;
import dev.offtake.quantity.Style;
import dev.offtake.severity.Criterion;
import dev.offtake.severity.Severity;
import dev.offtake.study.Faults;
import dev.offtake.study.Sign;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The failure-effects table of the demo twin; what is expected is common practice, no source. */
class EffectsStudyTest {
  private static final BleedSystem TWIN = Demos.demo("twin");
  private static Effects all;

  /** Not while the class is made: workers that call one of its lambdas would wait for it. */
  @BeforeAll
  static void makeTheTable() {
    all = EffectsStudy.of(TWIN, Set.of(), false, Style.SHOP, share -> {});
  }

  private static FaultEffect row(String part, String mode) {
    return all.rows().stream()
        .filter(r -> r.faults().size() == 1)
        .filter(r -> r.fault().name().equals(part + " " + mode))
        .findFirst()
        .orElseThrow();
  }

  private static Outcome usual(FaultEffect row, String power) {
    return row.outcomes().stream()
        .filter(o -> o.occasion().power().equals(power) && o.occasion().lineUp().equals("usual"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyFailureStandsAtEveryPowerInEveryLineUp() {
    int occasions = TWIN.settings().size() * TWIN.lineUps().size();
    assertThat(all.occasions()).hasSize(occasions);
    assertThat(all.rows())
        .hasSize(Faults.all(TWIN).size() + Faults.common(TWIN).size())
        .allSatisfy(row -> assertThat(row.outcomes()).hasSize(occasions));
  }

  @Test
  void everyRowIsBalancedOrHasAReason() {
    for (FaultEffect row : all.rows()) {
      for (Outcome outcome : row.outcomes()) {
        assertThat(outcome.findings()).as(row.fault().name()).isNotEmpty();
        boolean noRest = outcome.leadsTo(Criterion.NO_REST);
        assertThat(outcome.trouble().isEmpty()).as(row.fault().name()).isNotEqualTo(noRest);
      }
    }
  }

  /** High-stage air at cruise with one precooler for two packs is more than that one can cool. */
  @Test
  void aLimitOfTheFileThatIsPassedIsAFindingWhereItIsPassed() {
    FaultEffect row = row("right high stage valve", "stuck open");
    Outcome alone =
        row.outcomes().stream()
            .filter(o -> o.occasion().power().equals("cruise"))
            .filter(o -> o.occasion().lineUp().equals("left bleed off"))
            .findFirst()
            .orElseThrow();
    assertThat(alone.leadsTo(Criterion.OVER_LIMIT)).isTrue();
    assertThat(alone.leadsTo(Criterion.TRIPPED)).isFalse();
    assertThat(usual(row, "ground idle").leadsTo(Criterion.OVER_LIMIT)).isFalse();
  }

  /** A check valve that lets go shows at idle and hides at high power. */
  @Test
  void anOpenCheckValveLosesAirAtIdleAndHidesAtTakeOff() {
    FaultEffect row = row("left mid check valve", "flapper missing");
    Outcome idle = usual(row, "ground idle");
    assertThat(idle.leadsTo(Criterion.RECIRCULATION)).isTrue();
    assertThat(idle.leadsTo(Criterion.PIECES)).isTrue();
    assertThat(idle.noticed()).isEqualTo(Sign.Verdict.PLAIN);
    assertThat(usual(row, "take-off").noticed()).isEqualTo(Sign.Verdict.HIDDEN);
    assertThat(usual(row, "take-off").leadsTo(Criterion.RECIRCULATION)).isFalse();
    assertThat(row.severity(all.scale())).isEqualTo(Severity.CRITICAL);
    assertThat(row.dormant()).isFalse();
  }

  /** The high stage carries idle alone. */
  @Test
  void aShutHighStageValveShowsAtIdleOnly() {
    FaultEffect row = row("left high stage valve", "stuck shut");
    assertThat(usual(row, "ground idle").noticed()).isEqualTo(Sign.Verdict.PLAIN);
    assertThat(usual(row, "ground idle").leadsTo(Criterion.SHORT)).isTrue();
    assertThat(usual(row, "take-off").noticed()).isEqualTo(Sign.Verdict.HIDDEN);
  }

  /** What makes up for a failure is among the valves that move, and never the failed one. */
  @Test
  void theFailedValveIsNotAmongThoseThatMakeUpForIt() {
    for (FaultEffect row : all.rows()) {
      for (Outcome outcome : row.outcomes()) {
        assertThat(outcome.moves())
            .noneMatch(move -> move.part().equals(row.fault().part().name()));
      }
    }
  }

  @Test
  void aPartAskedAloneHasTheSameRows() {
    Effects one =
        EffectsStudy.of(TWIN, Set.of("left mid check valve"), false, Style.SHOP, share -> {});
    List<FaultEffect> among =
        all.rows().stream()
            .filter(
                r ->
                    r.faults().stream()
                        .anyMatch(f -> f.part().name().equals("left mid check valve")))
            .toList();
    assertThat(one.rows()).hasSameSizeAs(among);
    for (int i = 0; i < among.size(); i++) {
      assertThat(one.rows().get(i).severity(one.scale()))
          .isEqualTo(among.get(i).severity(all.scale()));
    }
  }

  @Test
  void progressRisesToTheEndAndMayStopTheStudy() {
    List<Double> told = new ArrayList<>();
    EffectsStudy.of(TWIN, Set.of("isolation valve"), false, Style.SHOP, told::add);
    assertThat(told).isSorted().endsWith(1.0);
    assertThatThrownBy(
            () ->
                EffectsStudy.of(
                    TWIN,
                    Set.of("isolation valve"),
                    false,
                    Style.SHOP,
                    share -> {
                      throw new CancellationException("enough");
                    }))
        .isInstanceOf(CancellationException.class);
  }
}

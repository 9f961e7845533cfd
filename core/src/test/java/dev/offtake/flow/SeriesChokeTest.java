package dev.offtake.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Chokes in series: which one rules, and how the ruling one moves; own cases. */
class SeriesChokeTest {
  private static final double T = 500;

  private record Stage(FlowLaw law, double size) {
    Flow flow(double lnUp, double lnDown) {
      return FlowLawContract.flow(law, lnUp, T, lnDown, T, size);
    }
  }

  /** Flow through all stages, by bisection on each inner pressure, outermost first. */
  private static double flow(List<Stage> stages, double lnUp, double lnDown) {
    Stage first = stages.get(0);
    if (stages.size() == 1) {
      return first.flow(lnUp, lnDown).mdot;
    }
    double low = lnDown;
    double high = lnUp;
    for (int i = 0; i < 60; i++) {
      double mid = 0.5 * (low + high);
      double in = first.flow(lnUp, mid).mdot;
      if (in > flow(stages.subList(1, stages.size()), mid, lnDown)) {
        low = mid;
      } else {
        high = mid;
      }
    }
    return first.flow(lnUp, low).mdot;
  }

  /** Two nozzles: the choked flow is that of the first while it is the smaller by enough. */
  @Test
  void smallerNozzleRulesAndTheChokeMovesWithTheAreas() {
    Stage small = new Stage(new NozzleLaw(), 1e-3);
    Stage large = new Stage(new NozzleLaw(), 3e-3);
    double alone = small.flow(3, -3).mdot;
    assertThat(flow(List.of(small, large), 3, -3)).isCloseTo(alone, within(1e-12 * alone));
    double swapped = flow(List.of(large, small), 3, -3);
    assertThat(swapped).isLessThan(alone).isGreaterThan(0.9 * alone);
    double inner = 3 + Math.log(swapped / alone);
    double again = large.flow(3, inner).mdot;
    assertThat(again).isCloseTo(swapped, within(1e-9 * swapped));
  }

  /** Three chokes: closing the last moves the choke there; the flow never rises in doing so. */
  @Test
  void chokeMovesAlongThreeStages() {
    Stage venturi = new Stage(new VenturiLaw(0.8), 1.2e-3);
    Stage duct = new Stage(TestGas.duct(4, 2e-6, 0.5), 4e-3);
    double limited = venturi.flow(3, -3).mdot;
    double last = Double.MAX_VALUE;
    boolean ruledByVenturi = false;
    boolean ruledByValve = false;
    for (double area = 6e-3; area > 2e-4; area *= 0.93) {
      double flow = flow(List.of(venturi, duct, new Stage(new ValveLaw(0.4), area)), 3, -1);
      assertThat(flow).isLessThanOrEqualTo(last * (1 + 1e-9));
      ruledByVenturi |= Math.abs(flow - limited) < 1e-9 * limited;
      ruledByValve |= flow < 0.5 * limited;
      last = flow;
    }
    assertThat(ruledByVenturi).isTrue();
    assertThat(ruledByValve).isTrue();
  }

  /** A flow limiter with recovery stays choked while what follows backs it up to its recovery. */
  @Test
  void venturiStaysChokedAtALittlePressureDrop() {
    Stage venturi = new Stage(new VenturiLaw(0.8), 1e-3);
    Stage nozzle = new Stage(new NozzleLaw(), 1e-3);
    double lnBack = 3 + Math.log(0.89);
    assertThat(venturi.flow(3, lnBack).choked).isTrue();
    assertThat(nozzle.flow(3, lnBack).choked).isFalse();
    assertThat(venturi.flow(3, lnBack).mdot).isCloseTo(nozzle.flow(3, 0).mdot, within(1e-12));
  }

  /** Kink: over the whole approach to the choke the duct's flow loses at most 0.5 %. */
  @Test
  void smoothingTakesAtMostHalfAPercent() {
    Stage duct = new Stage(TestGas.duct(0, 0, 0.8), 4e-3);
    double full = duct.flow(3, -3).mdot;
    double before = 0;
    boolean bent = false;
    for (double lnDown = 2.9; lnDown > 1.5; lnDown -= 1e-3) {
      Flow f = duct.flow(3, lnDown);
      assertThat(f.mdot).isGreaterThanOrEqualTo(before);
      if (!f.choked && f.mdot > 0.9951 * full) {
        bent = true;
      }
      before = f.mdot;
    }
    assertThat(bent).isTrue();
    assertThat(before).isEqualTo(full);
  }
}

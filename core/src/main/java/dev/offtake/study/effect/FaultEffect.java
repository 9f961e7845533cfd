package dev.offtake.study.effect;

import dev.offtake.part.Mode;
import dev.offtake.severity.Criterion;
import dev.offtake.severity.Severity;
import dev.offtake.severity.SeverityScale;
import dev.offtake.study.Fault;
import dev.offtake.study.Sign;
import java.util.List;

/**
 * What one failure does at every occasion.
 *
 * @param faults the failure; on every side at once where it has a common cause
 * @param outcomes in the order of the occasions
 */
public record FaultEffect(List<Fault> faults, List<Outcome> outcomes) {
  /** Keeps its lists. */
  public FaultEffect {
    faults = List.copyOf(faults);
    outcomes = List.copyOf(outcomes);
  }

  /** The failure, the first one where it is several. */
  public Fault fault() {
    return faults.get(0);
  }

  /** Whether it shows only while power moves, so that states at rest tell nothing of it. */
  public boolean moving() {
    return fault().mode().traits().contains(Mode.Trait.MOVING);
  }

  /** Class of the worst outcome. */
  public Severity severity(SeverityScale scale) {
    return worst(scale).severity(scale);
  }

  /** The worst outcome; of equals the first. */
  public Outcome worst(SeverityScale scale) {
    Outcome worst = outcomes.get(0);
    for (Outcome outcome : outcomes) {
      if (outcome.severity(scale).worseThan(worst.severity(scale))) {
        worst = outcome;
      }
    }
    return worst;
  }

  /** Occasions at which a person without a test gauge could tell, at best, to this degree. */
  public List<Occasion> at(Sign.Verdict verdict) {
    return outcomes.stream()
        .filter(outcome -> outcome.noticed() == verdict)
        .map(Outcome::occasion)
        .toList();
  }

  /** Whether nothing is seen and nothing that matters happens at any occasion. */
  public boolean dormant() {
    return outcomes.stream()
        .allMatch(
            outcome ->
                outcome.trouble().isEmpty()
                    && outcome.noticed() == Sign.Verdict.HIDDEN
                    && harmless(outcome));
  }

  private static boolean harmless(Outcome outcome) {
    return outcome.leadsTo(Criterion.NOTHING) || outcome.leadsTo(Criterion.SHOWS);
  }
}

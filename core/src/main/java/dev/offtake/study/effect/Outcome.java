package dev.offtake.study.effect;

import dev.offtake.part.Doing;
import dev.offtake.severity.Criterion;
import dev.offtake.severity.Severity;
import dev.offtake.severity.SeverityScale;
import dev.offtake.study.Notice;
import dev.offtake.study.Sign;
import java.util.List;

/**
 * What a failure does at one occasion.
 *
 * @param occasion when
 * @param trouble why there is no state to speak of; empty when there is one
 * @param before what the failed part does when healthy
 * @param after what it does now
 * @param findings what it leads to; never empty
 * @param signs what each gauge, light and user shows, all of them
 * @param moves valves that make up for it or are led astray, those that move most first
 */
public record Outcome(
    Occasion occasion,
    String trouble,
    Doing before,
    Doing after,
    List<Finding> findings,
    List<Sign> signs,
    List<Move> moves) {

  /** Keeps its lists. */
  public Outcome {
    findings = List.copyOf(findings);
    signs = List.copyOf(signs);
    moves = List.copyOf(moves);
  }

  /**
   * A valve that stands elsewhere than in the healthy system.
   *
   * @param part full name
   * @param healthy opening, 0..1
   * @param now opening, 0..1
   */
  public record Move(String part, double healthy, double now) {}

  /** What a person without a test gauge could tell, at best. */
  public Sign.Verdict noticed() {
    return Notice.best(signs, false);
  }

  /** Class of the worst finding. */
  public Severity severity(SeverityScale scale) {
    return severity(scale, findings);
  }

  /** Class of the worst of some findings. */
  static Severity severity(SeverityScale scale, List<Finding> findings) {
    return scale.worst(findings.stream().map(Finding::criterion));
  }

  /** Whether something of a kind is among the findings. */
  public boolean leadsTo(Criterion criterion) {
    return findings.stream().anyMatch(finding -> finding.criterion() == criterion);
  }
}

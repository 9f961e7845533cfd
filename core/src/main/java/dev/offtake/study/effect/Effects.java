package dev.offtake.study.effect;

import dev.offtake.severity.Severity;
import dev.offtake.severity.SeverityScale;
import dev.offtake.solve.Solution;
import dev.offtake.study.Fault;
import java.util.List;

/**
 * The failure-effects table.
 *
 * @param occasions powers and line-ups that were looked at
 * @param healthy state of the healthy system at each of them
 * @param rows one for each failure, in the order of the parts
 * @param scale which criterion means which class
 * @param bites pairs of failures that are worse than either; empty when they were not looked for
 * @param pairs whether pairs were looked for
 */
public record Effects(
    List<Occasion> occasions,
    List<Solution> healthy,
    List<FaultEffect> rows,
    SeverityScale scale,
    List<Bite> bites,
    boolean pairs) {

  /** Keeps its lists. */
  public Effects {
    occasions = List.copyOf(occasions);
    healthy = List.copyOf(healthy);
    rows = List.copyOf(rows);
    bites = List.copyOf(bites);
  }

  /** Failures that nothing shows and that matter to nothing until something else fails. */
  public List<FaultEffect> dormant() {
    return rows.stream().filter(FaultEffect::dormant).toList();
  }

  /**
   * A dormant failure and the one that makes it bite.
   *
   * @param dormant what nobody saw
   * @param partner what failed next
   * @param occasion when the pair is worst
   * @param alone class of the partner alone at that occasion
   * @param together class of the pair
   * @param findings what the pair leads to and the partner alone does not
   */
  public record Bite(
      Fault dormant,
      Fault partner,
      Occasion occasion,
      Severity alone,
      Severity together,
      List<Finding> findings) {
    /** Keeps its list. */
    public Bite {
      findings = List.copyOf(findings);
    }
  }
}

package dev.offtake.study.effect;

import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import dev.offtake.quantity.Style;
import dev.offtake.severity.Severity;
import dev.offtake.solve.Solution;
import dev.offtake.study.Bench;
import dev.offtake.study.Broken;
import dev.offtake.study.Fault;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Puts dormant failures beside others, to see which of them make them bite. */
final class Pairs {
  /** Partners that are told for each dormant failure. */
  private static final int TOLD = 3;

  /** A point has moved when its pressure has changed by more, Pa (1 psi; assumption). */
  private static final double MOVED_P = 6895;

  /** Likewise its temperature, K (18 °F; assumption). */
  private static final double MOVED_T = 10;

  private final EffectsStudy study;
  private final List<Fault> dormant;

  Pairs(EffectsStudy study, List<Fault> dormant) {
    this.study = study;
    this.dormant = List.copyOf(dormant);
  }

  /** Every dormant failure that a partner makes bite. */
  List<Effects.Bite> with(FaultEffect partner) {
    if (partner.faults().size() > 1) {
      return List.of();
    }
    Fault second = partner.fault();
    Broken alone = Broken.of(study.system().network(), study.system().sides(), partner.faults());
    return study.onBench(
        bench -> {
          List<Solution> states = new ArrayList<>();
          for (int i = 0; i < study.occasions().size(); i++) {
            states.add(bench.solve(alone, study.occasions().get(i).setup(), study.healthy(i)));
          }
          List<Effects.Bite> bites = new ArrayList<>();
          for (Fault first : dormant) {
            if (!first.part().name().equals(second.part().name())) {
              List<Integer> where = moved(first, states);
              if (!where.isEmpty()) {
                bite(bench, first, partner, where, states, bites);
              }
            }
          }
          return bites;
        });
  }

  /**
   * Occasions at which a partner moves what a dormant part touches: elsewhere the dormant failure
   * stays as harmless as it is beside a healthy system, because a part answers to nothing but its
   * own points and the logic.
   */
  private List<Integer> moved(Fault first, List<Solution> states) {
    List<Integer> where = new ArrayList<>();
    for (int i = 0; i < states.size(); i++) {
      if (states.get(i).solved() && moved(first.part(), study.healthy(i), states.get(i))) {
        where.add(i);
      }
    }
    return where;
  }

  private static boolean moved(Part part, Solution was, Solution now) {
    for (Leg leg : part.legs()) {
      if (moved(leg.from(), was, now) || moved(leg.to(), was, now)) {
        return true;
      }
    }
    int before = was.network().part(part.name());
    int after = now.network().part(part.name());
    return before >= 0
        && after >= 0
        && !was.doing(before, Style.SHOP).regime().equals(now.doing(after, Style.SHOP).regime());
  }

  private static boolean moved(String point, Solution was, Solution now) {
    int at = was.network().point(point);
    return at >= 0
        && (Math.abs(now.pressure(at) - was.pressure(at)) > MOVED_P
            || Math.abs(now.temperature(at) - was.temperature(at)) > MOVED_T);
  }

  private void bite(
      Bench bench,
      Fault first,
      FaultEffect partner,
      List<Integer> where,
      List<Solution> states,
      List<Effects.Bite> bites) {
    Broken both;
    try {
      both =
          Broken.of(
              study.system().network(), study.system().sides(), List.of(partner.fault(), first));
    } catch (Broken.Contradiction cannotBeTogether) {
      return;
    }
    Effects.@Nullable Bite worst = null;
    for (int i : where) {
      Outcome alone = partner.outcomes().get(i);
      if (!alone.trouble().isEmpty()) {
        continue;
      }
      Solution now = bench.solve(both, study.occasions().get(i).setup(), states.get(i));
      Effects.Bite here = compare(first, partner.fault(), alone, i, both, now);
      if (here != null && (worst == null || here.together().worseThan(worst.together()))) {
        worst = here;
      }
    }
    if (worst != null) {
      bites.add(worst);
    }
  }

  private Effects.@Nullable Bite compare(
      Fault first, Fault second, Outcome alone, int i, Broken both, Solution now) {
    if (!now.solved()) {
      return null;
    }
    Solution was = study.healthy(i);
    List<Finding> findings = study.findings(was, now, both, List.of());
    Severity severity = alone.severity(study.scale());
    Severity together = Outcome.severity(study.scale(), findings);
    if (!together.worseThan(severity)) {
      return null;
    }
    List<Finding> more =
        findings.stream().filter(finding -> !alone.leadsTo(finding.criterion())).toList();
    return new Effects.Bite(first, second, alone.occasion(), severity, together, more);
  }

  /** The worst few partners of each dormant failure; partners of one part and class stand once. */
  static List<Effects.Bite> worst(List<Effects.Bite> all) {
    List<Effects.Bite> sorted = new ArrayList<>(all);
    sorted.sort(
        Comparator.comparing(Effects.Bite::together)
            .thenComparing(bite -> -bite.partner().mode().rate()));
    List<Effects.Bite> told = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Effects.Bite bite : sorted) {
      long already =
          told.stream().filter(b -> b.dormant().name().equals(bite.dormant().name())).count();
      String key = bite.dormant().name() + " / " + bite.partner().part().name();
      if (already < TOLD && seen.add(key)) {
        told.add(bite);
      }
    }
    return told;
  }
}

package dev.offtake.logic;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The sentences of which a condition is made, each with the words in which it was written. */
sealed interface Clause extends Condition {

  /** {@code bleed switch is OFF}. */
  record Stands(String subject, String position, String text) implements Clause {
    @Override
    public boolean holds(Situation situation) {
      return situation.is(subject, position);
    }

    @Override
    public Set<String> names() {
      return Set.of(subject);
    }
  }

  /**
   * {@code duct pressure is above 30 psig}.
   *
   * @param above whether the value must lie above the limit, else below; at the limit neither holds
   * @param limit SI; Pa above ambient when {@code gauge}
   * @param gauge whether the limit counts from the ambient pressure
   */
  record Passes(String subject, boolean above, double limit, boolean gauge, String text)
      implements Clause {
    @Override
    public boolean holds(Situation situation) {
      double ambient = gauge ? situation.ambientPressure() : 0;
      double value = situation.value(subject) - ambient;
      return above ? value > limit : value < limit;
    }

    @Override
    public Set<String> names() {
      return Set.of(subject);
    }
  }

  /** {@code not …}. */
  record Not(Condition operand, String text) implements Clause {
    @Override
    public boolean holds(Situation situation) {
      return !operand.holds(situation);
    }

    @Override
    public Set<String> names() {
      return operand.names();
    }
  }

  /** {@code … and …}, two or more. */
  record All(List<Condition> operands, String text) implements Clause {
    @Override
    public boolean holds(Situation situation) {
      for (Condition operand : operands) {
        if (!operand.holds(situation)) {
          return false;
        }
      }
      return true;
    }

    @Override
    public Set<String> names() {
      return union(operands);
    }

    /** All of the operands are needed, each for its own reason. */
    @Override
    public Optional<String> because(Situation situation) {
      if (!holds(situation)) {
        return Optional.empty();
      }
      return Optional.of(
          operands.stream()
              .flatMap(operand -> operand.because(situation).stream())
              .collect(Collectors.joining(" and ")));
    }
  }

  /** {@code … or …}, two or more. */
  record Any(List<Condition> operands, String text) implements Clause {
    @Override
    public boolean holds(Situation situation) {
      for (Condition operand : operands) {
        if (operand.holds(situation)) {
          return true;
        }
      }
      return false;
    }

    @Override
    public Set<String> names() {
      return union(operands);
    }

    /** One operand is enough: the first that holds. */
    @Override
    public Optional<String> because(Situation situation) {
      return operands.stream().flatMap(operand -> operand.because(situation).stream()).findFirst();
    }
  }

  /** A clause in parentheses, which only its text remembers. */
  record Grouped(Condition inner, String text) implements Clause {
    @Override
    public boolean holds(Situation situation) {
      return inner.holds(situation);
    }

    @Override
    public Set<String> names() {
      return inner.names();
    }

    @Override
    public Optional<String> because(Situation situation) {
      return inner.because(situation);
    }
  }

  private static Set<String> union(List<Condition> operands) {
    Set<String> names = new LinkedHashSet<>();
    operands.forEach(operand -> names.addAll(operand.names()));
    return Collections.unmodifiableSet(names);
  }
}

package dev.offtake.logic;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Predicate;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class ConditionPropertiesTest {

  /** A condition and what it means, put together side by side. */
  record Sentence(String text, int strength, Predicate<Situation> meaning) {}

  private static final int OR = 0;
  private static final int AND = 1;
  private static final int ONE = 2;

  /**
   * Written with the fewest parentheses that precedence allows, a sentence means what was meant.
   */
  @Property(tries = 500, seed = "31")
  void meansWhatItSays(@ForAll("sentences") Sentence sentence, @ForAll("benches") Bench bench)
      throws ConditionProblem {
    Condition condition = ConditionReader.read(sentence.text(), bench);
    assertThat(condition.holds(bench)).isEqualTo(sentence.meaning().test(bench));
    assertThat(condition.text()).isEqualTo(sentence.text());
  }

  /** A reason is there when the condition holds, holds itself, and asks about nothing else. */
  @Property(tries = 500, seed = "32")
  void reasonsHold(@ForAll("sentences") Sentence sentence, @ForAll("benches") Bench bench)
      throws ConditionProblem {
    Condition condition = ConditionReader.read(sentence.text(), bench);
    assertThat(condition.because(bench).isPresent()).isEqualTo(condition.holds(bench));
    if (condition.holds(bench)) {
      Condition reason = ConditionReader.read(condition.because(bench).orElseThrow(), bench);
      assertThat(reason.holds(bench)).isTrue();
      assertThat(condition.names()).containsAll(reason.names());
    }
  }

  /** Whatever is typed is a condition or a problem with a mend. */
  @Property(tries = 2000, seed = "33")
  void anyTextIsReadOrRefused(@ForAll("scraps") String text, @ForAll("benches") Bench bench) {
    try {
      ConditionReader.read(text, bench).holds(bench);
    } catch (ConditionProblem problem) {
      assertThat(problem.wrong()).isNotBlank();
      assertThat(problem.mend()).isNotBlank();
    }
  }

  @Provide
  Arbitrary<String> scraps() {
    List<String> scraps =
        List.of(
            "isolation",
            "is",
            "not",
            "and",
            "or",
            "(",
            ")",
            "OPEN",
            "AUTO",
            "core",
            "above",
            "below",
            "50 %",
            "psig",
            "high",
            "low",
            "valve",
            ";",
            "is OFF",
            "bleed switch",
            "()");
    return Arbitraries.of(scraps).list().ofMaxSize(12).map(list -> String.join(" ", list));
  }

  @Provide
  Arbitrary<Bench> benches() {
    return Combinators.combine(
            Arbitraries.of("ON", "OFF"),
            Arbitraries.of("SHUT", "AUTO", "OPEN"),
            Arbitraries.doubles().between(0, 1))
        .as(
            (bleed, isolation, core) ->
                new Bench()
                    .put("left bleed switch", bleed)
                    .put("isolation", isolation)
                    .put("core", core));
  }

  @Provide
  Arbitrary<Sentence> sentences() {
    return Arbitraries.recursive(this::clauses, this::joined, 0, 4);
  }

  private Arbitrary<Sentence> clauses() {
    return Arbitraries.of(
        new Sentence("bleed switch is OFF", ONE, s -> s.is("left bleed switch", "OFF")),
        new Sentence("isolation is not AUTO", ONE, s -> !s.is("isolation", "AUTO")),
        new Sentence("isolation is OPEN", ONE, s -> s.is("isolation", "OPEN")),
        new Sentence("core above 50 %", ONE, s -> s.value("core") > 0.5));
  }

  private Arbitrary<Sentence> joined(Arbitrary<Sentence> inner) {
    Arbitrary<Sentence> not =
        inner.map(s -> new Sentence("not " + wrap(s, ONE), ONE, s.meaning().negate()));
    Arbitrary<Sentence> and =
        Combinators.combine(inner, inner)
            .as(
                (a, b) ->
                    new Sentence(
                        wrap(a, AND) + " and " + wrap(b, AND), AND, a.meaning().and(b.meaning())));
    Arbitrary<Sentence> or =
        Combinators.combine(inner, inner)
            .as(
                (a, b) ->
                    new Sentence(
                        wrap(a, OR) + " or " + wrap(b, OR), OR, a.meaning().or(b.meaning())));
    return Arbitraries.oneOf(not, and, or);
  }

  private static String wrap(Sentence sentence, int strength) {
    return sentence.strength() < strength ? "(" + sentence.text() + ")" : sentence.text();
  }
}

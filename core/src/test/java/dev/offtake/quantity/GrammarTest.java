package dev.offtake.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class GrammarTest {
  @Test
  void articlesFollowTheFirstLetter() {
    assertThat(Grammar.a("orifice")).isEqualTo("an orifice");
    assertThat(Grammar.a("duct")).isEqualTo("a duct");
    assertThat(Grammar.capitalA("engine gauge")).isEqualTo("An engine gauge");
    assertThat(Grammar.capitalA("leak")).isEqualTo("A leak");
  }

  @Test
  void oneIsNotMany() {
    assertThat(Grammar.count(1, "switch")).isEqualTo("1 switch");
    assertThat(Grammar.count(0, "switch")).isEqualTo("0 switches");
    assertThat(Grammar.count(2, "power setting")).isEqualTo("2 power settings");
  }
}

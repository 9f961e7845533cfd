package dev.offtake.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Walking an apprentice through the run. */
class WalkOnPageTest extends Browsing {
  @Test
  void eachPressIsOneEventForwardAndBack() {
    open();
    button("Walk through").click();
    page.waitForSelector(".walk .next");
    String first = page.locator(".walk .where").textContent();
    page.keyboard().press("ArrowRight");
    assertThat(page.locator(".walk .where").textContent()).startsWith("2 of ").isNotEqualTo(first);
    page.keyboard().press("ArrowLeft");
    assertThat(page.locator(".walk .where").textContent()).isEqualTo(first);
  }

  @Test
  void whoGuessesFirstSeesNothingBeforeTheGuess() {
    open();
    button("Walk through").click();
    page.waitForSelector(".walk .next");
    page.getByLabel("Guess first").check();
    for (int i = 0; i < 4 && page.locator(".choice").count() == 0; i++) {
      button("Next").click();
    }
    assertThat(page.locator(".choice").count()).isGreaterThan(1);
    assertThat(page.locator("#sentence").isVisible()).isFalse();
    assertThat(page.locator("#drawing").isVisible())
        .as("there is something to reason from")
        .isTrue();
    assertThat(page.locator("[aria-label$='what is asked'] .now").first().textContent())
        .isEqualTo("?");
    assertThat(button("take-off").isDisabled()).as("the power stays while one guesses").isTrue();
    page.locator(".choice").first().click();
    assertThat(page.locator(".judged").textContent()).matches("(?s)(Right|Not so).*");
    settled();
    assertThat(page.locator("#drawing").isVisible()).isTrue();
  }

  @Test
  void whoLeavesAGuessSeesThePageAgain() {
    for (String way : new String[] {"Escape", "Close these details", "Numbers"}) {
      open();
      button("Walk through").click();
      page.waitForSelector(".walk .next");
      page.getByLabel("Guess first").check();
      for (int i = 0; i < 4 && page.locator(".choice").count() == 0; i++) {
        button("Next").click();
      }
      if (way.equals("Escape")) {
        page.keyboard().press(way);
      } else {
        button(way).click();
      }
      settled();
      assertThat(page.locator("#sentence").isVisible()).as(way).isTrue();
      assertThat(page.locator("[aria-label$='what is asked']").count()).as(way).isZero();
      assertThat(button("take-off").isDisabled()).as(way).isFalse();
    }
  }
}

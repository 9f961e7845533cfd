package dev.offtake.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** From what the gauges show to what it can be. */
class WrongOnPageTest extends Browsing {
  @Test
  void threeReadingsBringTheAnswerAtTheSide() {
    open();
    button("Something is wrong").click();
    page.locator(".powers .key").getByText("ground idle").click();
    page.keyboard().type("15");
    assertThat(page.locator(".typed").textContent()).isEqualTo("15 psig");
    assertThat(page.locator(".face .hand").count()).isEqualTo(1);
    button("Next").click();
    page.keyboard().type("23");
    page.keyboard().press("Enter");
    button("OFF").click();
    page.waitForSelector(".groups .group");
    String told = page.locator(".answer").textContent();
    assertThat(told).contains("left mid check valve", "Check next", "none of these");
  }

  @Test
  void nothingExpectedIsShownWhileSomeoneReads() {
    open();
    button("Something is wrong").click();
    page.locator(".powers .key").getByText("ground idle").click();
    assertThat(page.locator("#drawing").isVisible()).isFalse();
    assertThat(page.locator("#sentence").isVisible()).isFalse();
    assertThat(page.locator(".face .hand").count()).as("needles before a reading").isZero();
  }

  @Test
  void readingsOutliveAReload() {
    open();
    button("Something is wrong").click();
    page.locator(".powers .key").getByText("ground idle").click();
    page.keyboard().type("15");
    button("Next").click();
    page.reload();
    ready(page);
    button("Something is wrong").click();
    assertThat(page.locator(".so-far").textContent()).contains("left duct pressure", "15 psig");
  }

  @Test
  void aStoryOfTheDemoIsLoadedAndACauseShownOnTheDrawing() {
    open();
    button("Something is wrong").click();
    page.getByLabel("Readings files").selectOption("readings/low-at-idle.yaml");
    button("Take them").click();
    page.waitForSelector(".groups .cause");
    page.locator(".groups .cause").first().click();
    settled();
    assertThat(page.locator("#broken .tie").count()).isEqualTo(1);
    assertThat(page.locator("#drawing").textContent()).contains("read 15 psig");
  }
}

package dev.offtake.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A server that went away, a slow way to it, and people who type anything. */
class TroubleOnPageTest extends Browsing {
  private static final String MARKUP =
      "<img src=x onerror=\"document.title='taken'\"><script>1</script>";

  @Test
  void aStoppedServerIsToldAndThePageGoesOnWhenItIsBack() throws IOException {
    PageServer own = serve(0);
    int port = own.port();
    page.navigate(own.address());
    ready(page);
    own.close();
    button("take-off").click();
    page.waitForSelector("#trouble:not([hidden])");
    assertThat(page.locator("#trouble").textContent())
        .contains("does not answer", "Start it again");
    assertThat(page.locator("#sentence").textContent())
        .as("the old answer stays")
        .contains("Ground idle");
    try (PageServer again = serve(port)) {
      assertThat(again.port()).isEqualTo(port);
      tells("Take-off");
      quiet();
    }
    forgive("ERR_CONNECTION_REFUSED");
    forgive("Failed to load resource");
  }

  /** A server that was started again knows the page's old token no more. */
  @Test
  void readingsAreSearchedAfterARestart() throws IOException {
    PageServer own = serve(0);
    int port = own.port();
    page.navigate(own.address());
    ready(page);
    own.close();
    try (PageServer again = serve(port)) {
      assertThat(again.port()).isEqualTo(port);
      button("Something is wrong").click();
      page.getByLabel("Readings files").selectOption("readings/low-at-idle.yaml");
      button("Take them").click();
      page.waitForSelector(".groups .cause");
    }
    forgive("Failed to load resource");
  }

  @Test
  void anAddressThatCannotBeAnsweredSaysSo() {
    open("#power=ground+idle&day=no+such+day");
    page.waitForSelector("#trouble:not([hidden])");
    assertThat(page.locator("#sentence").textContent()).doesNotContain("Reading the system");
    assertThat(page.locator("#trouble").textContent()).contains("no such day", ". It knows");
    forgive("Failed to load resource");
  }

  @Test
  void anAnswerToAnotherQuestionIsNotToldAsTheAnswer() {
    open();
    button("Day and switches").click();
    page.getByLabel("Another day").fill("99999 ft");
    button("Take it").click();
    page.waitForSelector("body.stale");
    button("All as they sit").click();
    quiet();
    assertThat(page.locator("body.stale").count()).isZero();
    forgive("Failed to load resource");
  }

  @Test
  void onASlowWayTheLastQuestionWins() {
    open();
    page.route(
        "**/api/state*",
        route -> {
          try {
            Thread.sleep(400);
          } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
          }
          route.resume();
        });
    button("descent").click();
    button("cruise").click();
    button("take-off").click();
    tells("Take-off");
    settled();
    assertThat(page.locator("#sentence").textContent()).startsWith("Take-off");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        MARKUP,
        "9999999999999999999999 psig",
        "\u0000\u0007\u202Eabc",
        "-40000 ft, 9999 degF"
      })
  void aHostileDayIsRefusedInWords(String typed) {
    open();
    button("Day and switches").click();
    page.getByLabel("Another day").fill(typed);
    button("Take it").click();
    page.waitForSelector("#trouble:not([hidden])");
    assertThat(page.title()).doesNotContain("taken");
    assertThat(page.locator("#trouble img").count()).isZero();
    button("All as they sit").click();
    quiet();
    forgive("Failed to load resource");
  }

  @Test
  void aHostileAddressAsksForNothingBad() {
    open("#power=" + "x".repeat(500) + "&if=%3Cimg%20src%3Dx%3E&set=a%3A%20b");
    page.waitForSelector("#trouble:not([hidden])");
    assertThat(page.locator("#broken img").count()).isZero();
    forgive("Failed to load resource");
  }

  @Test
  void aHostileComplaintStaysAText() {
    open();
    button("Something is wrong").click();
    page.getByLabel("The complaint, in the words of who made it").fill(MARKUP);
    page.locator(".powers .key").first().click();
    page.keyboard().type("999999999999");
    button("Next").click();
    page.keyboard().type("1");
    for (int i = 0; i < 3; i++) { // the other pressure and both temperatures
      button("Next").click();
    }
    button("OFF").click();
    page.waitForSelector(".answer .short");
    assertThat(page.locator(".answer").textContent()).contains("more than bleed air ever has");
    assertThat(page.title()).doesNotContain("taken");
    forgive("Failed to load resource");
  }
}

package dev.offtake.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A profile on the drawing: what happens over time, at any instant. */
class PlayOnPageTest extends Browsing {
  @Test
  void aTripIsPlayedAndEachEventCanBeGoneTo() {
    open();
    button("Play").click();
    page.getByLabel("Profiles").selectOption("profiles/overheat-trip.yaml");
    button("Play it").click();
    page.waitForSelector(".events .event");
    String before = page.locator(".play .typed").textContent();
    assertThat(before).startsWith("0.0 s");
    page.locator(".event", hasText("TRIPS")).first().click();
    assertThat(page.locator(".play .typed").textContent()).startsWith("13.");
    assertThat(
            page.locator("[aria-label^='left overheat trip']").first().getAttribute("aria-label"))
        .contains("tripped");
    button("Close these details").click();
    settled();
    assertThat(sentence()).startsWith("Ground idle");
  }

  private static com.microsoft.playwright.Page.LocatorOptions hasText(String text) {
    return new com.microsoft.playwright.Page.LocatorOptions().setHasText(text);
  }

  @Test
  void thePowerGoesAlongAndWhoTouchesItStopsThePlay() {
    open();
    button("Play").click();
    page.getByLabel("Profiles").selectOption("profiles/slam-from-ground-idle.yaml");
    button("Play it").click();
    page.locator(".event", hasText("lift")).first().click();
    assertThat(Double.parseDouble(page.locator(".grip").getAttribute("aria-valuenow")))
        .as("on its way from 62 to 99")
        .isBetween(70.0, 90.0);
    assertThat(page.locator("#sentence").textContent()).matches("At [0-9.]+ s: .*both sides.*");
    assertThat(page.locator(".play .told").textContent())
        .containsSubsequence("relief valve LIFTS", "What happens");
    button("Run").click();
    button("cruise").click();
    tells("Cruise");
    assertThat(button("Run").count()).as("it stands still").isEqualTo(1);
    assertThat(page.locator(".grip").getAttribute("aria-valuenow")).isEqualTo("92.0");
    page.locator(".play .short[role=status]").waitFor();
    assertThat(page.locator("#sentence").textContent()).startsWith("Cruise");
    page.locator(".event").first().click();
    assertThat(page.locator("#sentence").textContent()).startsWith("At 5");
  }
}

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
}

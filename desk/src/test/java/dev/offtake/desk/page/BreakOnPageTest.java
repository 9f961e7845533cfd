package dev.offtake.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Breaking parts on the page, and mending them. */
class BreakOnPageTest extends Browsing {
  @Test
  void aBrokenPartChangesTheSentenceAndShowsWhatFollows() {
    open();
    button("Break a part").click();
    page.getByLabel("Find a part").fill("left mid check");
    button("left mid check valve").click();
    page.locator(
            ".mode", new com.microsoft.playwright.Page.LocatorOptions().setHasText("stuck open"))
        .first()
        .click();
    assertThat(sentence()).contains("runs back into the engine at the left mid tap");
    page.waitForSelector(".follows:not(.old) ol li");
    assertThat(page.locator(".follows").textContent()).contains("Who would notice");
    assertThat(page.locator("#drawing").textContent()).contains("(was ");
    page.locator("#broken").getByText("Mend").first().click();
    assertThat(sentence()).doesNotContain("runs back");
    assertThat(page.locator("#drawing").textContent()).doesNotContain("(was ");
  }

  @Test
  void anExtentIsMovedByPlusAndMinus() {
    open("#power=ground+idle&if=left+mid+check+valve+stuck+33+%25");
    page.locator("#broken").waitFor();
    open();
    button("Break a part").click();
    button("left mid check valve").click();
    page.locator(
            ".mode b",
            new com.microsoft.playwright.Page.LocatorOptions()
                .setHasText(java.util.regex.Pattern.compile("^stuck$")))
        .click();
    settled();
    String first = page.locator(".extent-says").textContent();
    page.getByLabel("More", new com.microsoft.playwright.Page.GetByLabelOptions().setExact(true))
        .click();
    settled();
    assertThat(page.locator(".extent-says").textContent()).isNotEqualTo(first);
  }

  @Test
  void severalPartsMayBeBrokenAndEachIsMendedAlone() {
    open(
        "#power=ground+idle&if=left+mid+check+valve+stuck+open&if=right+high+stage+valve+stuck+shut");
    settled();
    assertThat(page.locator("#broken .tie").count()).isEqualTo(2);
    page.getByLabel("Mend: right high stage valve stuck shut").click();
    settled();
    assertThat(page.locator("#broken .tie").count()).isEqualTo(1);
    assertThat(page.locator("#broken").textContent()).contains("left mid check valve");
  }
}

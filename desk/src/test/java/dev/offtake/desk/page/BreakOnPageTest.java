package dev.offtake.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Breaking parts on the page, and mending them. */
class BreakOnPageTest extends Browsing {
  @Test
  void aBrokenPartChangesTheSentenceAndShowsWhatFollows() {
    open();
    button("Break a part").click();
    page.getByLabel("Find a part").fill("left mid check");
    button("left mid check valve").click();
    page.locator(".mode", new Page.LocatorOptions().setHasText("stuck open")).first().click();
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
    page.locator(".mode b", new Page.LocatorOptions().setHasText(Pattern.compile("^stuck$")))
        .click();
    settled();
    String first = page.locator(".extent-says").textContent();
    page.getByLabel("More", new Page.GetByLabelOptions().setExact(true)).click();
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

  @Test
  void mendingStaysUnderTheThumbWhenWhatFollowsArrives() {
    as(390, 844, ColorScheme.LIGHT);
    open("#power=ground+idle");
    button("Break a part").click();
    button("left mid check valve").click();
    page.locator(".mode b", new Page.LocatorOptions().setHasText(Pattern.compile("^stuck$")))
        .click();
    button("Mend it").waitFor();
    double before = button("Mend it").boundingBox().y;
    page.waitForSelector(".follows:not(.old) ol li");
    assertThat(button("Mend it").boundingBox().y).isEqualTo(before);
    assertThat(page.locator(".panel .body").boundingBox().height)
        .as("room to read on a phone")
        .isGreaterThan(350);
  }

  /** The slider is the same one while it is moved: a thumb keeps hold of it, keys go on. */
  @Test
  void theExtentIsMovedByKeysWithoutLosingIt() {
    open("#power=ground+idle");
    button("Break a part").click();
    button("left mid check valve").click();
    page.locator(".mode b", new Page.LocatorOptions().setHasText(Pattern.compile("^stuck$")))
        .click();
    page.getByLabel("How far").focus();
    String first = page.locator(".extent-says").textContent();
    page.keyboard().press("ArrowRight");
    settled();
    page.keyboard().press("ArrowRight");
    settled();
    assertThat(page.evaluate("document.activeElement.type")).isEqualTo("range");
    assertThat(page.locator(".extent-says").textContent()).isNotEqualTo(first);
  }

  @Test
  void whatChangesDoesNotFadeBesideThePartThatIsTold() {
    open("#power=ground+idle&if=left+mid+check+valve+stuck+open");
    button("Break a part").click();
    button("left mid check valve").click();
    page.locator("svg.pointing").waitFor();
    Object changed = opacity("[aria-label^='left duct,']");
    assertThat(changed).isEqualTo("1");
    assertThat(opacity(".drawing .pipes")).isEqualTo("1");
    assertThat(opacity("[aria-label^='right duct,']")).isNotEqualTo("1");
  }

  private Object opacity(String where) {
    return page.locator(where).first().evaluate("element => getComputedStyle(element).opacity");
  }

  @Test
  void twoTapsOnAPartOpenItAndLeaveTheViewAlone() {
    as(390, 844, ColorScheme.LIGHT);
    open();
    page.getByLabel("Smaller drawing").click();
    String view = page.locator(".view").getAttribute("transform");
    page.locator("[aria-label^='left high tap,']").first().dispatchEvent("dblclick");
    assertThat(page.locator(".view").getAttribute("transform")).isEqualTo(view);
  }
}

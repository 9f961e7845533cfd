package dev.offtake.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a person sees who opens the page for the first time, and what dragging the power does. */
class FirstLookTest extends Browsing {
  @Test
  void theSentenceTellsWhoFeeds() {
    open();
    assertThat(sentence()).startsWith("Ground idle").contains("high tap feeds");
    assertThat(page.locator("#drawing svg [id^=dr-part-]").count())
        .as("parts on the drawing")
        .isGreaterThan(30);
    assertThat(page.locator("#caution").textContent()).contains("Advice, not approval");
  }

  @ParameterizedTest
  @CsvSource({"1280, 800", "1024, 768", "390, 844"})
  void nothingReachesBeyondTheScreen(int width, int height) {
    as(width, height, ColorScheme.LIGHT);
    open();
    Object wide = page.evaluate("document.documentElement.scrollWidth");
    assertThat(((Number) wide).intValue()).isLessThanOrEqualTo(width);
    for (String name : new String[] {"Something is wrong", "Break a part"}) {
      var box = button(name).boundingBox();
      assertThat(box.x + box.width).as(name).isLessThanOrEqualTo(width);
      assertThat(box.y + box.height).as(name).isLessThanOrEqualTo(height);
    }
  }

  @Test
  void aStopTakesThePower() {
    open();
    button("take-off").click();
    assertThat(sentence()).startsWith("Take-off").contains("mid tap feeds");
  }

  @Test
  void theRailIsMovedByKeysAndByDragging() {
    open();
    var grip = page.getByRole(com.microsoft.playwright.options.AriaRole.SLIDER).first();
    grip.focus();
    page.keyboard().press("End");
    settled();
    assertThat(grip.getAttribute("aria-valuenow")).isEqualTo("100.0");
    page.keyboard().press("Home");
    settled();
    double least = Double.parseDouble(grip.getAttribute("aria-valuenow"));
    assertThat(least).isLessThan(60);
    var track = page.locator(".track").boundingBox();
    page.mouse().move(track.x + 10, track.y + track.height / 2);
    page.mouse().down();
    page.mouse()
        .move(
            track.x + track.width - 12,
            track.y + 20,
            new com.microsoft.playwright.Mouse.MoveOptions().setSteps(25));
    page.mouse().up();
    settled();
    assertThat(Double.parseDouble(grip.getAttribute("aria-valuenow"))).isGreaterThan(97);
    assertThat(page.locator("#sentence").textContent()).contains("mid tap feeds");
  }

  @Test
  void whatIsAskedOutlivesAReload() {
    open("#power=take-off&if=left+mid+check+valve+stuck+open");
    String before = sentence();
    assertThat(page.locator("#broken").textContent()).contains("left mid check valve stuck open");
    page.reload();
    ready(page);
    assertThat(sentence()).isEqualTo(before);
  }

  @Test
  void twoTabsDoNotDisturbEachOther() {
    open();
    Page other = tab();
    other.navigate(server.address() + "#power=take-off");
    ready(other);
    button("cruise").click();
    assertThat(sentence()).startsWith("Cruise");
    assertThat(other.locator("#sentence").textContent()).startsWith("Take-off");
  }
}

package dev.offtake.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Mouse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
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
    var grip = page.getByRole(AriaRole.SLIDER).first();
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
        .move(track.x + track.width - 12, track.y + 20, new Mouse.MoveOptions().setSteps(25));
    page.mouse().up();
    settled();
    assertThat(Double.parseDouble(grip.getAttribute("aria-valuenow"))).isGreaterThan(97);
    assertThat(page.locator("#sentence").textContent()).contains("mid tap feeds");
  }

  /**
   * States around the hand are there before it comes; an answer that comes late changes nothing.
   */
  @Test
  void theDrawingFollowsTheHandWithoutWaiting() {
    open();
    List<Route> held = new ArrayList<>();
    page.route(Pattern.compile("/api/state\\?"), held::add);
    var track = page.locator(".track").boundingBox();
    double place = track.x + 0.4 * track.width; // far from any named stop
    page.waitForResponse(
        answer -> answer.url().contains("/api/states?"),
        () -> {
          page.mouse().move(place, track.y + 20);
          page.mouse().down();
        });
    page.mouse().move(place + 6, track.y + 20, new Mouse.MoveOptions().setSteps(3));
    page.mouse().up();
    settled();
    String shown = duct(page);

    Page fresh = tab();
    fresh.navigate(page.url());
    ready(fresh);
    assertThat(page.url()).contains("core=");
    assertThat(shown).isEqualTo(duct(fresh));
    assertThat(held).as("asked once, where the hand took hold").hasSize(1);
    held.get(0).resume();
    page.waitForTimeout(300);
    assertThat(duct(page)).isEqualTo(shown);
  }

  private static String duct(Page page) {
    return page.locator("[aria-label^='left duct,']").first().getAttribute("aria-label");
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

  /** However much is told, the drawing keeps its place and size. */
  @Test
  void aLongSentenceIsSetSmallerAndMovesNothing() {
    open();
    double top = page.locator("#drawing").boundingBox().y;
    page.locator("#sentence:not([data-long])").waitFor();
    page.navigate(
        server.address()
            + "#power=ground+idle&if=left+mid+check+valve+stuck+33+%25&if=right+mid+check+valve"
            + "+stuck+open");
    page.locator("#sentence[data-long]").waitFor();
    settled();
    assertThat(page.locator("#drawing").boundingBox().y).isEqualTo(top);
    assertThat(page.evaluate("sentence.scrollHeight <= sentence.clientHeight")).isEqualTo(true);
  }

  @Test
  void allOfTheDrawingIsShownWhereItDoesNotFit() {
    as(390, 844, ColorScheme.LIGHT);
    open();
    page.getByLabel("All of the drawing").click();
    page.locator("#look")
        .waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.HIDDEN));
    var users = page.locator("[aria-label^='right wing heat,']").first().boundingBox();
    assertThat(users.x).isPositive();
    assertThat(users.x + users.width).isLessThan(390);
  }

  /** The words of a pressed button are seen with the mouse over it as well. */
  @Test
  void aPressedButtonUnderTheMouseIsReadable() {
    open();
    var stop = page.locator(".stop[aria-pressed=true]");
    String look = "b => getComputedStyle(b).backgroundColor + getComputedStyle(b).color";
    Object before = stop.evaluate(look);
    stop.hover();
    assertThat(stop.evaluate(look)).isEqualTo(before);
  }
}

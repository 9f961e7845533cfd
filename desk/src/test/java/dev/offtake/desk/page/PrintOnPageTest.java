package dev.offtake.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import org.junit.jupiter.api.Test;

/** The page on paper: all of the drawing, and nothing that is there to be pressed. */
class PrintOnPageTest extends Browsing {
  @Test
  void allOfTheDrawingIsPrintedAndTheScreenIsAsBefore() {
    open("#power=ground+idle&if=left+mid+check+valve+stuck+33+%25");
    for (int i = 0; i < 3; i++) {
      page.locator("#drawing").hover();
      page.mouse().wheel(0, -400);
    }
    String moved = page.locator(".view").getAttribute("transform");
    paper();
    var sheet = page.locator("#drawing").boundingBox();
    for (String name : new String[] {"left starter,", "right mid tap,", "right wing heat,"}) {
      var box = page.locator("[aria-label^='" + name + "']").first().boundingBox();
      assertThat(box.x).as(name).isGreaterThanOrEqualTo(sheet.x);
      assertThat(box.x + box.width).as(name).isLessThanOrEqualTo(sheet.x + sheet.width);
      assertThat(box.y + box.height).as(name).isLessThanOrEqualTo(sheet.y + sheet.height);
    }
    page.evaluate("dispatchEvent(new Event('afterprint'))");
    page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.SCREEN));
    assertThat(page.locator(".view").getAttribute("transform")).isEqualTo(moved);
    assertThat(page.locator("svg.drawing").getAttribute("viewBox")).isNull();
  }

  @Test
  void whatIsThereToBePressedIsNotPrinted() {
    open("#power=ground+idle&if=left+mid+check+valve+stuck+33+%25");
    button("Break a part").click();
    button("left mid check valve").click();
    page.waitForSelector(".follows:not(.old) ol li");
    paper();
    for (String what :
        new String[] {".mode", ".extent", ".broken-now .firm", ".tie button", ".stop"}) {
      assertThat(page.locator(what).first().isVisible()).as(what).isFalse();
    }
    assertThat(page.locator(".follows").isVisible()).isTrue();
    assertThat(page.locator("#drawing").isVisible()).isTrue();
  }

  private void paper() {
    page.evaluate("dispatchEvent(new Event('beforeprint'))");
    page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
  }
}

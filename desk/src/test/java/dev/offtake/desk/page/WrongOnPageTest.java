package dev.offtake.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.List;
import java.util.Locale;
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
    button("Next").click(); // both temperatures
    button("Next").click();
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

  /** The check that is advised is entered where it belongs: with its switch, and told so. */
  @Test
  void theCheckThatIsAdvisedIsReadWithItsSwitch() {
    open();
    take("readings/low-at-idle.yaml");
    page.waitForSelector(".checks .key");
    String check = page.locator(".checks li p b").first().textContent();
    page.locator(".checks .key").first().click();
    String where = page.locator(".ask .where").textContent();
    assertThat(check.toLowerCase(Locale.ROOT)).startsWith(where.toLowerCase(Locale.ROOT));
    // A power alone would be read without moving anything.
    assertThat(where).matches("[a-z -]+, .*[a-z ]+ (ON|OFF|off)");
    page.keyboard().type("25");
    button("That is all").click();
    assertThat(page.locator(".so-far").textContent()).contains(where + "left duct pressure25 psig");
    // The search goes by it as well: it stands in the answer, read against each cause.
    page.locator(
            ".answer[aria-busy=false] .numbers th small",
            new Page.LocatorOptions().setHasText(where))
        .first()
        .waitFor();
  }

  @Test
  void aSwitchThatStoodOtherwiseMakesAnOccasionOfItsOwn() {
    open();
    button("Something is wrong").click();
    page.locator(".powers .key").getByText("ground idle").click();
    page.keyboard().type("15");
    button("That is all").click();
    button("Read at another power").click();
    page.locator(".moves summary").click();
    page.locator("[data-choice='left pack switch: OFF']").click();
    page.locator(".powers .key").getByText("ground idle").click();
    assertThat(page.locator(".typed").textContent()).as("nothing was read so").startsWith("–");
    page.keyboard().type("24");
    button("That is all").click();
    assertThat(page.locator(".so-far .occasion").allTextContents())
        .containsExactly(
            "ground idleleft duct pressure15 psig",
            "ground idle, left pack switch OFFleft duct pressure24 psig");
  }

  @Test
  void itIsAskedWhichUsersWork() {
    open();
    button("Something is wrong").click();
    page.locator(".powers .key").getByText("ground idle").click();
    for (int i = 0; i < 12 && page.locator(".seen-keys").count() == 0; i++) {
      button("Next").click();
    }
    page.locator("[data-choice='left wing heat: OFF']").click();
    button("That is all").click();
    assertThat(page.locator(".so-far").textContent()).contains("left wing heatoff");
  }

  @Test
  void readingsThatWereThrownAwayOrReplacedComeBack() {
    open();
    button("Something is wrong").click();
    page.locator(".powers .key").getByText("ground idle").click();
    page.keyboard().type("15");
    button("That is all").click();
    button("Throw these readings away").click();
    assertThat(page.locator(".so-far").count()).isZero();
    page.reload();
    ready(page);
    button("Something is wrong").click();
    button("Bring back the reading from before").click();
    assertThat(page.locator(".so-far").textContent()).contains("15 psig");
    button("Close these details").click();
    take("readings/low-at-idle.yaml");
    page.waitForSelector(".bring-back");
    assertThat(page.locator(".so-far").textContent()).contains("take-off");
    page.locator(".bring-back").click();
    assertThat(page.locator(".so-far").textContent())
        .contains("15 psig")
        .doesNotContain("take-off");
  }

  /** What comes first is told before the list, and no two stories have one name. */
  @Test
  void unitsStandAboveTheListAndStoriesAreToldApart() {
    open();
    button("Something is wrong").click();
    List<String> stories = page.locator("[aria-label='Readings files'] option").allTextContents();
    assertThat(stories).hasSizeGreaterThan(10).doesNotHaveDuplicates();
    button("Close these details").click();
    take("readings/low-at-idle.yaml");
    page.waitForSelector(".units dt");
    String first = page.locator(".units dt").first().textContent();
    assertThat(page.locator(".answer").textContent())
        .contains("First comes the " + first)
        .containsSubsequence("By removable unit", "What it can be");
  }

  private void take(String story) {
    button("Something is wrong").click();
    page.locator("details:has([aria-label='Readings files']):not([open]) summary")
        .all()
        .forEach(com.microsoft.playwright.Locator::click);
    page.getByLabel("Readings files").selectOption(story);
    button("Take them").click();
  }
}

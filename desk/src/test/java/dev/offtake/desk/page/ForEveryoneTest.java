package dev.offtake.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The page for those who use keys, screen readers, strong contrast, or gloves (axe-core, WCAG 2.2
 * AA).
 */
class ForEveryoneTest extends Browsing {
  @ParameterizedTest
  @EnumSource(
      value = ColorScheme.class,
      names = {"LIGHT", "DARK"})
  void noPanelBreaksARule(ColorScheme light) {
    as(1280, 800, light);
    open("#power=ground+idle&if=left+mid+check+valve+stuck+open");
    judge("the drawing");
    for (String way :
        List.of(
            "Day and switches",
            "Numbers",
            "Curve",
            "Walk through",
            "Play",
            "More",
            "Break a part")) {
      button(way).click();
      page.waitForSelector("#panel:not([hidden]) h2");
      settled();
      judge(way);
    }
    button("left mid check valve").click();
    page.waitForSelector(".follows:not(.old) ol");
    judge("a tag");
    button("Something is wrong").click();
    judge("which power");
    page.locator(".powers .key").first().click();
    judge("a gauge");
  }

  private void judge(String where) {
    List<Rule> broken =
        new AxeBuilder(page)
            .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"))
            .analyze()
            .getViolations();
    String told =
        broken.stream()
            .map(rule -> rule.getId() + ": " + rule.getNodes().get(0).getHtml())
            .collect(Collectors.joining("\n"));
    assertThat(told).as(where).isEmpty();
  }

  @Test
  void inGlovesEveryTargetIsLargeEnough() {
    as(1024, 768, ColorScheme.LIGHT);
    open();
    button("Something is wrong").click();
    page.locator(".powers .key").first().click();
    for (var key : page.locator(".wrong .key").all()) {
      var box = key.boundingBox();
      assertThat(Math.min(box.width, box.height)).as(key.textContent()).isGreaterThanOrEqualTo(64);
    }
  }

  @Test
  void theWholePageIsReachedByKeys() {
    open();
    page.keyboard().press("Tab");
    assertThat(focused()).isEqualTo("Skip to the power");
    for (int i = 0; i < 6; i++) {
      page.keyboard().press("Tab");
    }
    assertThat(focused()).isEqualTo("More");
    page.keyboard().press("Enter");
    assertThat(focused()).isEqualTo("More");
    page.keyboard().press("Escape");
    assertThat(page.locator("#panel").isVisible()).isFalse();
    assertThat(focused()).as("the focus goes back").isEqualTo("More");
  }

  private String focused() {
    return (String) page.evaluate("document.activeElement.textContent");
  }
}

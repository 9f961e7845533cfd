package dev.offtake.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The curve over power, and what is told below it. */
class CurveOnPageTest extends Browsing {
  @Test
  void aChangeoverTellsItsPowerAndWhetherSomethingIsBroken() {
    open("#power=ground+idle&if=left+mid+check+valve+stuck+open");
    button("Curve").click();
    page.waitForSelector(".changeovers");
    assertThat(page.locator(".chart-words h3").allTextContents())
        .containsExactly("Changeovers with nothing broken", "Changeovers with what is broken");
    assertThat(page.locator(".changeovers b").allTextContents())
        .isNotEmpty()
        .allMatch(told -> told.matches("core \\d+\\.\\d %.*:"));
  }

  @Test
  void limitsOfOneValueAreToldOnce() {
    open();
    Object told =
        page.evaluate(
            "async () => (await import('/curve.js')).joined(["
                + "{value: 29.999999, says: 'left starter needs 30 psig'},"
                + "{value: 30, says: 'right starter needs 30 psig'},"
                + "{value: 12, says: 'left pack needs 12 psig'}], ['left', 'right'])"
                + ".map(one => one.says)");
    assertThat(told)
        .isEqualTo(List.of("each side: starter needs 30 psig", "left pack needs 12 psig"));
  }

  @Test
  void aFifthCurveIsRefusedBesideItsBox() {
    open();
    button("Curve").click();
    page.waitForSelector(".legend");
    page.locator(".picker summary").click();
    for (String point : new String[] {"left interstage", "right interstage", "left mid duct"}) {
      page.getByLabel(point, exactly()).click();
    }
    assertThat(page.locator(".picker .short").isVisible()).isTrue();
    assertThat(page.getByLabel("left mid duct", exactly()).isChecked()).isFalse();
    page.getByLabel("right interstage", exactly()).uncheck();
    assertThat(page.locator(".picker .short").isVisible()).isFalse();
  }

  private static com.microsoft.playwright.Page.GetByLabelOptions exactly() {
    return new com.microsoft.playwright.Page.GetByLabelOptions().setExact(true);
  }

  /** A reading stands on the curve only where the curve is of its line-up and its switches. */
  @Test
  void readingsOfAnotherLineUpAreNotDrawn() {
    open();
    Object alike =
        page.evaluate(
            "async () => { const m = await import('/standing.js');"
                + " const s = await (await fetch('/api/system')).json();"
                + " const now = m.standing(s, 'ground idle', '', {});"
                + " return [['', {}], ['usual', {}], ['packs off', {}], ['', {'left pack switch':"
                + " 'OFF'}], ['packs off', {'left pack switch': 'ON', 'right pack switch': 'ON'}]]"
                + ".map(([l, x]) => m.standsAlike(now, m.standing(s, 'ground idle', l, x))); }");
    assertThat(alike).isEqualTo(List.of(true, true, false, false, true));
  }
}

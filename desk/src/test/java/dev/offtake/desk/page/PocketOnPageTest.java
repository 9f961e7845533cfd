package dev.offtake.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A pocket sheet opened from a file, with the network off. */
class PocketOnPageTest extends Browsing {
  private void carried(Path folder, String hash) throws IOException {
    Path file = Files.write(folder.resolve("sheet.html"), MadeSheet.HTML);
    as(1024, 768, ColorScheme.LIGHT);
    context.setOffline(true);
    page.navigate(file.toUri() + hash);
    ready(page);
  }

  @Test
  void itTellsWhatThePageTellsAndItsDay(@TempDir Path folder) throws IOException {
    carried(folder, "");
    assertThat(sentence()).isEqualTo(MadeSheet.RECORD.at("/stops/0/sound/headline/0").asText());
    assertThat(page.locator("#drawing svg [id^=dr-part-]").count())
        .as("parts on the drawing")
        .isGreaterThan(4);
    assertThat(page.locator("#pocket-cover").textContent())
        .contains("standard day (59 °F, 29.92 inHg)", "43 failures each");
  }

  /** Within 10 °F and 0.3 inHg of its day it answers, beyond it refuses and says why. */
  @Test
  void anotherDayIsRefused(@TempDir Path folder) throws IOException {
    carried(folder, "");
    assertThat(asked("'29.65 inHg station, 66 degF'")).isEqualTo("answered");
    assertThat(asked("'29.92 inHg station, 70 degF'")).contains("does not hold for", "10 °F");
    assertThat(asked("'29.60 inHg station, 59 degF'")).contains("does not hold for");
    assertThat(asked("'35000 ft, ISA'")).contains("does not hold for");
    assertThat(asked("undefined")).isEqualTo("answered");
  }

  /** What the sheet answers on a day, or why it does not. */
  private String asked(String day) {
    return (String)
        page.evaluate(
            "async () => { try { await globalThis.offtakePocket.state({power: 'ground idle', day: "
                + day
                + "}); return 'answered'; } catch (e) { return e.message + ' ' + e.mend; } }");
  }

  /** What it refuses it does not tell below the answer of another question. */
  @Test
  void itOffersWhatItHoldsAndARefusalIsNoAnswer(@TempDir Path folder) throws IOException {
    carried(folder, "#core=0.7777");
    page.waitForSelector("#trouble:not([hidden])");
    assertThat(page.locator("#sentence").textContent()).doesNotContain("Reading the system");
    page.getByLabel("More power").click();
    quiet();
    assertThat(page.locator(".stop[aria-pressed=true]").count()).isEqualTo(1);
    page.getByLabel("Power, core speed in percent").press("Home");
    settled();
    assertThat(page.locator(".stop[aria-pressed=true]").count()).as("rests at a stop").isEqualTo(1);
    assertThat(page.locator("#trouble").isVisible()).isFalse();
    button("Break a part").click();
    page.locator(".pick button").first().click();
    page.locator(".mode").first().click();
    page.waitForSelector(".notice li");
    assertThat(page.locator(".extent").count()).as("extents that it does not hold").isZero();
    assertThat(page.locator(".notice li").allTextContents())
        .allSatisfy(line -> assertThat(line).doesNotMatch(".*\\b(\\w+) +\\1\\s*"));
  }
}

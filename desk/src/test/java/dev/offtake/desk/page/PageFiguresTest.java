package dev.offtake.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * How fast the page is in the browser. Not a part of the usual run, because a time says little on a
 * busy machine; for docs/performance.md:
 *
 * <pre>mvn -pl core,desk test -Dtest=PageFiguresTest -Dofftake.figures=true</pre>
 */
@EnabledIfSystemProperty(named = "offtake.figures", matches = "true")
class PageFiguresTest extends Browsing {
  /** Moves the grip as a hand would and notes how long each picture takes after the last move. */
  private static final String DRAG =
      """
      async () => {
        const track = document.querySelector('.track');
        const box = track.getBoundingClientRect();
        const send = (type, x) => track.dispatchEvent(new PointerEvent(type, {
          pointerId: 1, bubbles: true, cancelable: true, clientX: x, clientY: box.top + 20, button: 0, buttons: 1 }));
        track.setPointerCapture = () => {};
        const times = [];
        const painted = () => new Promise((done) => document.addEventListener('shown', () =>
          requestAnimationFrame(() => setTimeout(done)), { once: true }));
        const first = painted();
        send('pointerdown', box.left + 5);
        await first;
        for (let i = 1; i <= 400; i++) {
          const share = 0.5 - 0.5 * Math.cos((i / 400) * 4 * Math.PI);
          const shown = painted();
          const from = performance.now();
          send('pointermove', box.left + 5 + share * (box.width - 10));
          await shown;
          times.push(performance.now() - from);
        }
        send('pointerup', box.left + 5);
        return times;
      }
      """;

  private static final String WEIGHT =
      "() => [...performance.getEntriesByType('navigation'), ...performance.getEntriesByType('resource')]"
          + ".filter((one) => !one.name.includes('/api/'))"
          + ".reduce((sum, one) => sum + one.encodedBodySize, 0)";

  private static final String FIRST =
      "() => performance.getEntriesByType('mark').find((one) => one.name === 'shown').startTime";

  @Test
  void dragging() {
    open();
    dragging("to places that nobody has asked yet");
    dragging("to and fro");
    dragging("and again");
  }

  private void dragging(String where) {
    @SuppressWarnings("unchecked") // numbers of a script come as doubles or integers
    List<Number> times = (List<Number>) page.evaluate(DRAG);
    double[] sorted = times.stream().mapToDouble(Number::doubleValue).sorted().toArray();
    System.out.printf(
        "input to painted frame, %s: median %.1f ms, p95 %.1f, p99 %.1f, worst %.1f of %d%n",
        where,
        sorted[sorted.length / 2],
        sorted[(int) (0.95 * sorted.length)],
        sorted[(int) (0.99 * sorted.length)],
        sorted[sorted.length - 1],
        sorted.length);
    assertThat(sorted).hasSize(400);
  }

  @Test
  void firstDrawing() {
    page.addInitScript("document.addEventListener('shown', () => performance.mark('shown'))");
    open();
    page.reload();
    ready(page);
    double first = ((Number) page.evaluate(FIRST)).doubleValue();
    System.out.printf("first meaningful drawing: %.0f ms after load began%n", first);
    assertThat(first).isPositive();
  }

  @Test
  void weight() {
    open();
    button("Curve").click();
    page.waitForSelector(".uplot");
    double kib = ((Number) page.evaluate(WEIGHT)).doubleValue() / 1024;
    System.out.printf("page, compressed, fonts and charts included: %.0f KiB%n", kib);
    assertThat(kib).isBetween(100.0, 600.0);
  }
}

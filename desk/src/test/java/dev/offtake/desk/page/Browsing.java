package dev.offtake.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.WaitForSelectorState;
import dev.offtake.system.SystemReader;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;

/**
 * The page in a real browser, Debian's Chromium, on the demo: a server on a free port, a fresh
 * profile for each test. Whatever the page complains of in its console, and every request that
 * leaves this machine, fails the test that caused it.
 */
abstract class Browsing {
  private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
  private static final Path DEMO = Path.of("../demo/demo-twin.yaml");
  private static final List<String> FLAGS =
      List.of(
          "--no-sandbox",
          "--disable-gpu",
          "--disable-quic",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync");

  /** Long enough for a busy machine; nothing waits so long that is well. */
  private static final double PATIENCE = 60_000;

  private static Playwright playwright;
  private static Browser browser;
  static PageServer server;

  private final List<String> complaints = new ArrayList<>();
  private final List<String> forgiven = new ArrayList<>();
  private final List<String> strangers = new ArrayList<>();
  BrowserContext context;
  Page page;

  @BeforeAll
  static void begin() throws IOException {
    assertThat(Files.isExecutable(CHROMIUM))
        .as("the tests of the page need Debian's chromium: apt-get install chromium")
        .isTrue();
    server = serve(0);
    playwright =
        Playwright.create(
            new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    browser =
        playwright
            .chromium()
            .launch(
                new BrowserType.LaunchOptions()
                    .setExecutablePath(CHROMIUM)
                    .setHeadless(true)
                    .setArgs(FLAGS));
  }

  static PageServer serve(int port) throws IOException {
    var system = SystemReader.read(DEMO).system().orElseThrow();
    Opened opened =
        new Opened(system, "demo-twin.yaml", new FolderShelf(DEMO.toAbsolutePath().getParent()));
    return PageServer.start(
        opened, new PageServer.Settings("127.0.0.1", port, Limits.USUAL, says -> {}));
  }

  @AfterAll
  static void end() {
    browser.close();
    playwright.close();
    server.close();
  }

  @BeforeEach
  void fresh() {
    context = profile(1280, 800, ColorScheme.LIGHT);
    page = tab();
  }

  @AfterEach
  void clean() {
    context.close();
    // What is forgiven may come at any time, also after the test has looked at what it asked for.
    complaints.removeIf(complaint -> forgiven.stream().anyMatch(complaint::contains));
    assertThat(complaints).as("complaints of the page").isEmpty();
    assertThat(strangers).as("requests that leave this machine").isEmpty();
  }

  /** A browser profile without a past. */
  BrowserContext profile(int width, int height, ColorScheme light) {
    BrowserContext made =
        browser.newContext(
            new Browser.NewContextOptions().setViewportSize(width, height).setColorScheme(light));
    made.setDefaultTimeout(PATIENCE);
    return made;
  }

  /** A tab that is watched. */
  Page tab() {
    Page made = context.newPage();
    made.onPageError(complaints::add);
    made.onConsoleMessage(
        message -> {
          if (message.type().equals("error")) {
            complaints.add(message.text());
          }
        });
    made.onRequest(
        request -> {
          String host = URI.create(request.url()).getHost();
          if (host != null && !host.equals("127.0.0.1")) {
            strangers.add(request.url());
          }
        });
    return made;
  }

  /** Another size or light, in place of the usual laptop by day. */
  void as(int width, int height, ColorScheme light) {
    context.close();
    context = profile(width, height, light);
    page = tab();
  }

  /** Opens the page and waits for its first answer. */
  void open() {
    open("");
  }

  void open(String hash) {
    page.navigate(server.address() + hash);
    ready(page);
  }

  static void ready(Page shown) {
    shown.waitForSelector("body[data-ready]");
    settled(shown);
  }

  /** The one large sentence. */
  String sentence() {
    settled();
    return page.locator("#sentence").textContent();
  }

  /** Waits until the answer to what was asked last is there. */
  void settled() {
    settled(page);
  }

  private static void settled(Page shown) {
    shown.locator("#stage:not(.waiting)").waitFor();
  }

  /** Waits for the sentence to begin so. */
  void tells(String beginning) {
    page.locator("#sentence")
        .filter(new Locator.FilterOptions().setHasText(Pattern.compile("^" + beginning)))
        .waitFor();
  }

  /** Waits until no trouble is told any more. */
  void quiet() {
    page.locator("#trouble")
        .waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.HIDDEN));
  }

  Locator button(String name) {
    return page.getByRole(
        AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
  }

  /** A complaint that belongs to what a test does, such as a lost server. */
  void forgive(String part) {
    forgiven.add(part);
  }
}

package dev.offtake.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who is let in, and what happens to what a stranger sends. */
class SafetyTest {
  private static final List<String> SAID = Collections.synchronizedList(new ArrayList<>());
  private static final Limits LIMITS = new Limits(20_000, 1000, 5000, 32, 60);

  private static PageServer server;
  private static Visitor visitor;

  @BeforeAll
  static void start() throws IOException {
    server = Visitor.server("127.0.0.1", LIMITS, SAID);
    visitor = new Visitor(server.port());
  }

  @AfterAll
  static void stop() {
    server.close();
    // A fault of ours would have been told here.
    assertThat(SAID).isEmpty();
  }

  private static void refused(HttpResponse<String> answer, int... statuses) {
    assertThat(statuses).as(answer.body()).contains(answer.statusCode());
    assertThat(Visitor.json(answer).at("/problem/message").asText()).isNotBlank();
    assertThat(Visitor.json(answer).at("/problem/mend").asText()).isNotBlank();
    assertThat(answer.body()).doesNotContain("\tat ", "Exception", "java.");
  }

  @Test
  void everyAnswerTellsTheBrowserToKeepToThisServer() {
    for (String path : List.of("/", "/api/state", "/no/such/thing", "/api/state?core=x")) {
      HttpResponse<String> answer = visitor.get(path);
      assertThat(answer.headers().firstValue("Content-Security-Policy")).hasValue(Gate.POLICY);
      assertThat(answer.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
      assertThat(answer.headers().firstValue("X-Frame-Options")).hasValue("DENY");
      assertThat(answer.headers().firstValue("Referrer-Policy")).hasValue("no-referrer");
      assertThat(answer.headers().firstValue("Access-Control-Allow-Origin")).isEmpty();
      assertThat(answer.headers().firstValue("Server")).isEmpty();
    }
    assertThat(Gate.POLICY)
        .contains("default-src 'none'", "script-src 'self';", "frame-ancestors 'none'")
        .doesNotContain("unsafe", "*");
  }

  @Test
  void aNameThatIsNotOursIsRefused() throws IOException {
    for (String host : List.of("evil.example", "evil.example:80", "", "127.0.0.1.evil.example")) {
      assertThat(visitor.raw("GET /api/state HTTP/1.1", "Host: " + host))
          .as(host)
          .containsPattern("HTTP/1.1 (403|400) ")
          .doesNotContain("headline");
    }
    String port = ":" + server.port();
    for (String host : List.of("127.0.0.1" + port, "localhost" + port, "LocalHost" + port)) {
      assertThat(visitor.raw("GET /api/state HTTP/1.1", "Host: " + host))
          .as(host)
          .startsWith("HTTP/1.1 200 ");
    }
  }

  @Test
  void whatAnotherPageAsksIsRefused() {
    String token = visitor.token();
    refused(visitor.get("/api/state", "Sec-Fetch-Site", "cross-site"), 403);
    refused(visitor.get("/api/state", "Origin", "http://evil.example"), 403);
    refused(visitor.get("/api/state", "Origin", "null"), 403);
    refused(visitor.post("/api/find", "{}"), 403);
    refused(visitor.post("/api/find", "{}", "X-Offtake", "guess"), 403);
    refused(
        visitor.post("/api/find", "{}", "X-Offtake", token, "Origin", "http://evil.example"), 403);
    refused(
        visitor.post("/api/find", "{}", "X-Offtake", token, "Sec-Fetch-Site", "same-site"), 403);
    // The page itself, and a person who follows a link to it.
    String self = "http://127.0.0.1:" + server.port();
    assertThat(visitor.get("/api/state", "Origin", self).statusCode()).isEqualTo(200);
    assertThat(
            visitor
                .get("/", "Sec-Fetch-Site", "cross-site", "Sec-Fetch-Mode", "navigate")
                .statusCode())
        .isEqualTo(200);
    // A frame is no person, and a link leads to the front page only: a sheet takes a minute of
    // work.
    refused(
        visitor.get(
            "/",
            "Sec-Fetch-Site",
            "cross-site",
            "Sec-Fetch-Mode",
            "navigate",
            "Sec-Fetch-Dest",
            "iframe"),
        403);
    refused(
        visitor.get("/pocket", "Sec-Fetch-Site", "cross-site", "Sec-Fetch-Mode", "navigate"), 403);
  }

  @Test
  void whatIsNoRequestIsRefusedInTheSameWay() throws IOException {
    for (String line : List.of("GET / HTTP/9.9", "GET /%zz HTTP/1.1", "nothing at all", "\u0001")) {
      assertThat(visitor.raw(line, "Host: 127.0.0.1:" + server.port()))
          .as(line)
          .containsPattern("^HTTP/1.1 (400|403|404|405|505) ")
          .contains("{\"problem\":{\"message\":")
          .contains("Content-Security-Policy: " + Gate.POLICY)
          .doesNotContainIgnoringCase("jetty");
    }
  }

  @Test
  void whatIsMissingIsToldByItsOwnWords() {
    HttpResponse<String> search = visitor.get("/api/find/none");

    refused(search, 404);
    assertThat(search.body()).contains("no such search");
  }

  @Test
  void onlyReadingAndSendingIsPossible() throws IOException {
    for (String method : List.of("PUT", "DELETE", "PATCH", "OPTIONS", "TRACE")) {
      String host = "Host: 127.0.0.1:" + server.port();
      assertThat(visitor.raw(method + " /api/state HTTP/1.1", host, "Content-Length: 0"))
          .as(method)
          .containsPattern("^HTTP/1.1 (405|403|404|501) ");
    }
  }

  @Test
  void bodiesHaveAnEnd() {
    String token = visitor.token();
    String big = "\"" + "x".repeat(LIMITS.body()) + "\"";
    refused(visitor.post("/api/find", big, "X-Offtake", token), 413);
    refused(
        visitor.stream(
            "/api/find", big.getBytes(java.nio.charset.StandardCharsets.UTF_8), "X-Offtake", token),
        413);
    refused(visitor.get("/api/state?if=" + "a".repeat(9000)), 413, 400, 414, 431);
  }

  @Test
  void noPathLeadsOutOfThePage() throws IOException {
    String host = "Host: 127.0.0.1:" + server.port();
    for (String path :
        List.of(
            "/../pom.xml",
            "/..%2f..%2fpom.xml",
            "/%2e%2e/%2e%2e/etc/passwd",
            "/fonts/../../demo/demo-twin.yaml",
            "/..\\..\\pom.xml",
            "//etc/passwd",
            "/dev/offtake/desk/Main.class",
            "/index.html",
            "/page.js%00.png")) {
      assertThat(visitor.raw("GET " + path + " HTTP/1.1", host))
          .as(path)
          .containsPattern("^HTTP/1.1 (400|404) ")
          .doesNotContain("modelVersion", "root:", "offtake: 1");
    }
    for (String file : List.of("../demo-twin.yaml", "/etc/passwd", "readings/../../pom.xml", "")) {
      refused(visitor.get(Visitor.path("/api/readings", "file", file)), 404);
    }
  }

  @Test
  void aFolderIsNotLeftByALink(@TempDir Path all) throws IOException {
    Path folder = Files.createDirectory(all.resolve("system"));
    Path outside = Files.writeString(all.resolve("outside.yaml"), "offtake readings: 1\n");
    Files.writeString(folder.resolve("inside.yaml"), "offtake readings: 1\n");
    Files.createSymbolicLink(folder.resolve("link.yaml"), outside);
    Files.createSymbolicLink(folder.resolve("up"), all);
    FolderShelf shelf = new FolderShelf(folder);

    assertThat(shelf.names()).containsExactly("inside.yaml");
    assertThat(shelf.text("inside.yaml")).hasValue("offtake readings: 1\n");
    for (String name : List.of("link.yaml", "up/outside.yaml", "../outside.yaml", "inside.yaml/")) {
      assertThat(shelf.text(name)).as(name).isEmpty();
    }
  }

  @Test
  void whoAsksTooOftenHasToWait() throws IOException {
    Limits few = new Limits(1000, 0.001, 5, 4, 60);
    try (PageServer strict = Visitor.server("127.0.0.1", few, SAID)) {
      Visitor eager = new Visitor(strict.port());
      for (int i = 0; i < 5 * Gate.AT_HOME; i++) {
        assertThat(eager.get("/").statusCode()).isEqualTo(200);
      }
      refused(eager.get("/"), 429);
    }
  }

  @Test
  void elsewhereAKeyLetsInOnce() throws IOException {
    List<String> said = new ArrayList<>();
    try (PageServer open = Visitor.server("0.0.0.0", LIMITS, said)) {
      assertThat(open.loopback()).isFalse();
      assertThat(open.address()).contains("?key=");
      Visitor tablet = new Visitor(open.port());
      refused(tablet.get("/"), 403);
      refused(tablet.get("/api/state"), 403);
      refused(tablet.get("/?key=guess"), 403);
      String key = open.address().substring(open.address().indexOf('?'));
      // Who previews a link looks at its head, or at another path: that does not use the key up.
      assertThat(tablet.head("/" + key).statusCode()).isEqualTo(403);
      refused(tablet.get("/api/state" + key), 403);

      HttpResponse<String> entered = tablet.get("/" + key);
      String cookie = entered.headers().firstValue("Set-Cookie").orElseThrow();

      assertThat(entered.statusCode()).isEqualTo(302);
      assertThat(entered.headers().firstValue("Location")).hasValue("/");
      assertThat(cookie).contains("HttpOnly", "SameSite=Strict", "Path=/");
      String mine = cookie.substring(0, cookie.indexOf(';'));
      assertThat(tablet.get("/api/state", "Cookie", mine).statusCode()).isEqualTo(200);
      refused(tablet.get("/" + key), 403);
      assertThat(said).hasSize(1).allMatch(line -> line.contains("?key="));
      assertThat(open.address()).doesNotEndWith(key);
      // Who tries keys is stopped before long.
      List<Integer> tries = new ArrayList<>();
      for (int i = 0; i < 12; i++) {
        tries.add(tablet.get("/?key=guess" + i).statusCode());
      }
      assertThat(tries).contains(429).doesNotContain(200, 302);
    }
  }

  @Test
  void aNameOfAStrangerIsRefusedElsewhereToo() throws IOException {
    try (PageServer open = Visitor.server("0.0.0.0", LIMITS, new ArrayList<>())) {
      String key = open.address().substring(open.address().indexOf('?'));
      assertThat(new Visitor(open.port()).raw("GET /" + key + " HTTP/1.1", "Host: evil.example"))
          .startsWith("HTTP/1.1 403 ");
    }
  }

  @Test
  void aTakenPortIsPassedOver() throws IOException {
    Opened opened = new Opened(Visitor.demo(), "demo-twin.yaml", new JarShelf(List.of()));
    int taken = server.port();
    PageServer.Settings same = new PageServer.Settings("127.0.0.1", taken, LIMITS, SAID::add);
    try (PageServer second = PageServer.start(opened, same)) {
      assertThat(second.port()).isNotEqualTo(taken);
      assertThat(new Visitor(second.port()).get("/").statusCode()).isEqualTo(200);
    }
  }
}

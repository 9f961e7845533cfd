package dev.offtake.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nonsense and malice in every field: one message each, and never a fault of ours. */
class HostileInputTest {
  private static final List<String> SAID = Collections.synchronizedList(new ArrayList<>());

  private static final List<String> NASTY =
      List.of(
          "<script>alert(1)</script>",
          "\"><img src=x onerror=alert(1)>",
          "'; DROP TABLE parts; --",
          "../../../../etc/passwd",
          "${jndi:ldap://x/y}",
          "{{token}}",
          "%00",
          "a\u0000b",
          "\u202Eabc",
          "\r\nSet-Cookie: x=y",
          "1e999",
          "-1e308",
          "NaN",
          "Infinity",
          "999999999999999999999999999999 %",
          "0x7fffffff",
          "：",
          ":",
          "x".repeat(5000),
          "left mid check valve stuck -1e99 %",
          "left mid check valve stuck NaN",
          "isolation: <b>OPEN</b>",
          "left mid check valve: locked ajar",
          "core=0..1e9",
          "core=55..55.0000000001");

  private static PageServer server;
  private static Visitor visitor;

  @BeforeAll
  static void start() throws IOException {
    Limits limits = new Limits(50_000, 1e6, 1_000_000, 32, 60);
    server = Visitor.server("127.0.0.1", limits, SAID);
    visitor = new Visitor(server.port());
  }

  @AfterAll
  static void stop() {
    server.close();
    assertThat(SAID).isEmpty();
  }

  private static void told(HttpResponse<String> answer, String of) {
    assertThat(answer.statusCode())
        .as(of + " " + answer.body().substring(0, Math.min(300, answer.body().length())))
        .isBetween(400, 499);
    String message = Visitor.json(answer).at("/problem/message").asText();
    assertThat(message).as(of).isNotBlank().hasSizeLessThan(700).doesNotContain("\n", "\u0000");
    assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/json");
    assertThat(answer.body()).doesNotContain("\tat ", "Exception");
  }

  @ParameterizedTest
  @ValueSource(strings = {"power", "core", "day", "lineup", "set", "if", "units"})
  void aStateIsAskedInWordsOfTheFile(String field) {
    for (String nasty : NASTY) {
      told(visitor.get(Visitor.path("/api/state", field, nasty)), field + "=" + nasty);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"of", "over", "points"})
  void soIsACurve(String field) {
    for (String nasty : NASTY) {
      if (!(field.equals("over") && nasty.startsWith("core=55..55"))) {
        told(visitor.get(Visitor.path("/api/curve", field, nasty)), field + "=" + nasty);
      }
    }
  }

  @Test
  void anEmptyFieldIsAsIfItWereNotThere() {
    for (String field : List.of("power", "core", "day", "lineup", "units")) {
      assertThat(visitor.get("/api/state?" + field + "=").statusCode()).as(field).isEqualTo(200);
    }
  }

  @Test
  void tooManyAreTooMany() {
    told(visitor.get("/api/state" + "?if=x".concat("&if=x".repeat(Ask.MOST))), "if");
    told(visitor.get("/api/state" + "?set=x".concat("&set=x".repeat(Ask.MOST))), "set");
    told(visitor.get("/api/state?core=0.6&core=0.7"), "core twice");
    told(visitor.get("/api/states"), "no cores");
    told(visitor.get("/api/states?cores=0.6,"), "an empty core");
    told(visitor.get("/api/states?cores=0.6,x"), "a core that is none");
    told(visitor.get("/api/states?cores=0x1p-1"), "a core as nobody writes it");
    told(visitor.get("/api/states?cores=0.6" + ",.6".repeat(Ask.MOST_CORES)), "cores");
    told(visitor.get("/api/break"), "nothing broken");
    told(visitor.get("/api/find/none"), "no search");
  }

  @Test
  void readingsThatAreNoneAreRefused() {
    String token = visitor.token();
    List<String> bodies = new ArrayList<>();
    bodies.addAll(List.of("", "{", "[]", "null", "\"x\"", "{}{}", "{\"a\":1,\"a\":2}"));
    bodies.add("[".repeat(3000));
    bodies.add("{\"offtake readings\":" + "{\"a\":".repeat(40) + "1" + "}".repeat(41));
    bodies.add("{\"offtake readings\":\"2\"}");
    bodies.add("{\"offtake readings\":\"1\"}");
    bodies.add("&a [*a]");
    bodies.add("{\"offtake readings\":\"1\",\"readings\":[]}");
    for (String nasty : NASTY) {
      String text = nasty.replace("\\", "\\\\").replace("\"", "\\\"").replace("\r\n", "\\r\\n");
      String said = text.replace("\u0000", "\\u0000");
      bodies.add(
          "{\"offtake readings\":\"1\",\"readings\":[{\"at\":\""
              + said
              + "\","
              + "\"left duct pressure\":\"15 psig\"}]}");
      bodies.add(
          "{\"offtake readings\":\"1\",\"readings\":[{\"at\":\"ground idle\",\""
              + said
              + "\":\"15 psig\"}]}");
      bodies.add(
          "{\"offtake readings\":\"1\",\"readings\":[{\"at\":\"ground idle\","
              + "\"left duct pressure\":\""
              + said
              + "\"}]}");
    }
    for (String body : bodies) {
      told(visitor.post("/api/find", body, "X-Offtake", token), body);
      told(visitor.post("/api/readings/save", body, "X-Offtake", token), body);
    }
  }

  @Test
  void aTitleIsNotMarkup() throws IOException {
    String text = JarShelf.read("demo-twin.yaml").replace("title: Demo twin", "title: <b>&'\"");
    var system =
        dev.offtake.system.SystemReader.readText("x.yaml", text, dev.offtake.part.Kinds.all())
            .system()
            .orElseThrow();
    Opened opened = new Opened(system, "x.yaml", new JarShelf(List.of()));
    PageServer.Settings settings = new PageServer.Settings("127.0.0.1", 0, Limits.USUAL, SAID::add);
    try (PageServer named = PageServer.start(opened, settings)) {
      String html = new Visitor(named.port()).get("/").body();
      assertThat(html).contains("&lt;b&gt;&amp;&#39;&quot;").doesNotContain("<b>", "{{");
    }
  }
}

package dev.offtake.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import dev.offtake.cause.ReadingsReader;
import dev.offtake.cause.ReadingsWriter;
import dev.offtake.explain.Question;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.system.BleedSystem;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What the page asks over HTTP, and what it gets. */
class PageServerTest {
  private static final List<String> SAID = Collections.synchronizedList(new ArrayList<>());
  private static final String STUCK = "left mid check valve stuck 1/3";

  private static PageServer server;
  private static Visitor visitor;
  private static BleedSystem system;

  @BeforeAll
  static void start() throws IOException {
    server = Visitor.server("127.0.0.1", Limits.UNHURRIED, SAID);
    visitor = new Visitor(server.port());
    system = Visitor.demo();
  }

  @AfterAll
  static void stop() {
    server.close();
    assertThat(SAID).isEmpty();
  }

  @Test
  void thePageCarriesItsTokenAndTitle() {
    HttpResponse<String> page = visitor.get("/");
    assertThat(page.statusCode()).isEqualTo(200);
    assertThat(page.headers().firstValue("Content-Type")).hasValue("text/html;charset=utf-8");
    assertThat(page.body()).contains("Demo twin").doesNotContain("{{");
    assertThat(visitor.token()).hasSizeGreaterThan(20);
  }

  @Test
  void whatTheBrowserHasIsNotSentAgain() {
    HttpResponse<String> first = visitor.get("/api/system");
    String tag = first.headers().firstValue("ETag").orElseThrow();
    HttpResponse<String> again = visitor.get("/api/system", "If-None-Match", tag);
    assertThat(again.statusCode()).isEqualTo(304);
    assertThat(again.body()).isEmpty();
    HttpResponse<String> zipped = visitor.get("/api/system", "Accept-Encoding", "gzip");
    assertThat(zipped.headers().firstValue("Content-Encoding")).hasValue("gzip");
  }

  @Test
  void theSystemIsThereInTheOrderOfTheStates() {
    JsonNode told = visitor.json("/api/system");
    JsonNode state = visitor.json("/api/state");
    assertThat(told.get("parts").size()).isEqualTo(state.get("parts").size());
    assertThat(told.get("points").size()).isEqualTo(state.get("points").size());
    for (int i = 0; i < system.parts().size(); i++) {
      assertThat(told.at("/parts/" + i + "/name").asText())
          .isEqualTo(system.network().parts().get(i).name());
    }
    assertThat(told.get("powers").findValuesAsText("name"))
        .containsExactlyElementsOf(system.settings().keySet());
    assertThat(told.get("readings").findValuesAsText("file"))
        .containsExactlyElementsOf(Visitor.READINGS);
    assertThat(told.toString()).doesNotContain("null");
  }

  /** Each failure, to each extent that is offered, can be asked in the words that are offered. */
  @Test
  void whatIsOfferedCanBeAsked() throws QuantityProblem {
    for (String units : List.of("shop", "metric")) {
      int asked = 0;
      for (JsonNode part : visitor.json("/api/system", "units", units).get("parts")) {
        for (JsonNode mode : part.get("modes")) {
          List<String> words = new ArrayList<>(List.of(mode.get("words").asText()));
          mode.at("/extent/steps").forEach(step -> words.add(step.get("words").asText()));
          assertThat(mode.has("extent")).isEqualTo(words.size() > 1);
          for (String text : words) {
            Question question = Question.of(system, "", "", "", List.of());
            assertThat(question.broken(List.of(text)).faults()).as(text).hasSize(1);
            asked++;
          }
        }
      }
      assertThat(asked).isGreaterThan(500);
    }
  }

  @Test
  void severalStatesAreTheStatesOneByOne() {
    String[] broken = {"if", "left mid check valve stuck 1/3", "units", "metric"};
    for (String[] rest : List.of(new String[0], broken)) {
      String[] asked = Arrays.copyOf(rest, rest.length + 2);
      asked[rest.length] = "cores";
      asked[rest.length + 1] = "0.6120,0.613,0.9";
      JsonNode several = visitor.json("/api/states", asked).get("states");
      assertThat(several.size()).isBetween(1, 3);
      for (int i = 0; i < several.size(); i++) {
        asked[rest.length] = "core";
        asked[rest.length + 1] = List.of("0.612", "0.613", "0.9").get(i);
        assertThat(several.get(i).get("headline"))
            .isEqualTo(visitor.json("/api/state", asked).get("headline"));
        assertThat(several.get(i).get("core").asText()).isEqualTo(asked[rest.length + 1]);
      }
    }
  }

  @Test
  void changesComeInTheOrderInWhichTheyAreMet() {
    JsonNode changes = visitor.json("/api/changes", "power", "ground idle");
    double last = 0;
    for (JsonNode up : changes.get("up")) {
      assertThat(up.get("core").asDouble()).isGreaterThanOrEqualTo(last);
      assertThat(up.get("low").asDouble()).isLessThanOrEqualTo(up.get("core").asDouble());
      assertThat(up.get("high").asDouble()).isGreaterThanOrEqualTo(up.get("core").asDouble());
      last = up.get("core").asDouble();
    }
    for (JsonNode down : changes.get("down")) {
      assertThat(down.get("core").asDouble()).isLessThanOrEqualTo(last + 1);
      last = down.get("core").asDouble();
    }
    // The demo hands over on each side, and back.
    assertThat(changes.get("up").findValues("handover")).hasSize(2);
    assertThat(changes.get("down").findValues("handover")).hasSize(2);
    JsonNode limits = changes.get("limits");
    assertThat(limits.findValuesAsText("says")).anyMatch(says -> says.contains("table"));
  }

  @Test
  void aBrokenPartTellsWhatFollowsAndWhoWouldNotice() {
    JsonNode answer = visitor.json("/api/break", "power", "ground idle", "if", STUCK);
    assertThat(answer.get("headline").asText()).contains("runs back into the engine");
    assertThat(answer.get("follows").size()).isGreaterThan(3);
    assertThat(answer.get("notice").findValuesAsText("power"))
        .containsExactlyElementsOf(system.settings().keySet());
    assertThat(answer.get("changed").findValuesAsText("name")).contains("left duct");
  }

  @Test
  void aCurveLiesInItsRibbon() {
    JsonNode curve =
        visitor.json(
            "/api/curve", "of", "left duct", "of", "left pack flow", "if", STUCK, "points", "24");
    int points = curve.at("/x/values").size();
    assertThat(points).isEqualTo(24);
    assertThat(curve.get("series").findValuesAsText("name"))
        .containsExactly("left duct pressure", "left pack flow");
    int wide = 0;
    for (JsonNode series : curve.get("series")) {
      for (int i = 0; i < points; i++) {
        double value = series.get("healthy").get(i).asDouble();
        double low = series.get("low").get(i).asDouble();
        double high = series.get("high").get(i).asDouble();
        assertThat(value).isBetween(low, high);
        wide += high - low > 0.1 ? 1 : 0;
      }
      assertThat(series.get("broken").size()).isEqualTo(points);
    }
    assertThat(wide).isGreaterThan(points);
    assertThat(curve.get("limits").findValuesAsText("says")).contains("left pack needs 12.0 psig");
    assertThat(curve.at("/series/0/broken/4").asDouble())
        .isLessThan(curve.at("/series/0/healthy/4").asDouble());
  }

  @Test
  void aWalkGoesUpAndComesBack() {
    JsonNode steps = visitor.json("/api/walk", "power", "ground idle", "if", STUCK).get("steps");
    List<String> powers = new ArrayList<>();
    int guesses = 0;
    double last = 0;
    for (JsonNode step : steps) {
      assertThat(step.get("says").asText()).isNotBlank();
      assertThat(step.at("/broken/says").asText()).contains("left mid check valve stuck");
      double core = step.get("core").asDouble();
      boolean up = step.get("up").asBoolean();
      assertThat(up ? core - last : last - core).isGreaterThan(-0.002);
      last = core;
      if (step.get("kind").asText().equals("power")) {
        powers.add(step.get("power").asText());
      }
      if (step.has("guess")) {
        guesses++;
        int right = step.at("/guess/right").asInt();
        assertThat(right).isBetween(0, step.at("/guess/choices").size() - 1);
        assertThat(step.at("/guess/because").asText()).isNotBlank();
      }
    }
    assertThat(powers)
        .containsExactly("ground idle", "descent", "take-off", "descent", "ground idle");
    assertThat(guesses).isGreaterThan(10);
  }

  @Test
  void readingsGoOutAndComeBackTheSame() throws IOException {
    for (String file : Visitor.READINGS) {
      HttpResponse<String> sent = visitor.get(Visitor.path("/api/readings", "file", file));
      HttpResponse<String> saved =
          visitor.post("/api/readings/save", sent.body(), "X-Offtake", visitor.token());
      var read = ReadingsReader.readText(file, JarShelf.read(file), system).readings();
      assertThat(saved.body()).isEqualTo(ReadingsWriter.yaml(read.orElseThrow(), system));
      assertThat(saved.headers().firstValue("Content-Disposition").orElse(""))
          .startsWith("attachment");
    }
  }

  @Test
  void aWrongReadingIsToldWithItsLine() {
    String body =
        "{\"offtake readings\": \"1\", \"readings\": [{\"at\": \"ground idle\","
            + " \"left duct pressure\": \"15 ppm\"}]}";
    JsonNode problem =
        Visitor.json(visitor.post("/api/find", body, "X-Offtake", visitor.token())).get("problem");
    assertThat(problem.get("where").asText()).isEqualTo("left duct pressure");
    assertThat(problem.get("mend").asText()).contains("lb/min");
  }

  /** The readings are those of the demo's story; what is broken stands in demo/truth. */
  @Test
  void aSearchFindsWhatIsBroken() throws InterruptedException {
    String body = visitor.get("/api/readings?file=readings/low-at-idle.yaml").body();
    String token = visitor.token();
    HttpResponse<String> old =
        visitor.post("/api/find", body, "X-Offtake", token, "X-Page", "one page");
    HttpResponse<String> begun =
        visitor.post("/api/find", body, "X-Offtake", token, "X-Page", "one page");
    assertThat(begun.statusCode()).isEqualTo(202);
    JsonNode look = look(begun);
    double last = 0;
    for (int i = 0; i < 1200 && !look.get("done").asBoolean(); i++) {
      assertThat(look.get("progress").asDouble()).isBetween(last, 1.0);
      assertThat(look.get("doing").asText()).isNotBlank();
      last = look.get("progress").asDouble();
      Thread.sleep(100);
      look = look(begun);
    }
    assertThat(look.get("done").asBoolean()).isTrue();
    assertThat(look.at("/result/causes/0/words").asText()).contains("left");
    assertThat(look.at("/result/units").findValuesAsText("part")).contains("left mid check valve");
    assertThat(look.at("/result/text").size()).isGreaterThan(10);
    // The older one was given up.
    String given = visitor.get("/api/find/" + Visitor.json(old).get("id").asText()).body();
    assertThat(given).contains("given up");
  }

  private static JsonNode look(HttpResponse<String> begun) {
    return Visitor.json(visitor.get("/api/find/" + Visitor.json(begun).get("id").asText()));
  }
}

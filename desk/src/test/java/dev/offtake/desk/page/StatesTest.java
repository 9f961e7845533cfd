package dev.offtake.desk.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import dev.offtake.explain.Glance;
import dev.offtake.explain.Panel;
import dev.offtake.explain.Question;
import dev.offtake.explain.StateAnswer;
import dev.offtake.explain.StateInquiry;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Solution;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The page answers what {@code offtake state} answers, whatever was asked before. */
class StatesTest {
  private static final BleedSystem SYSTEM = Visitor.demo();

  private static final List<Map<String, List<String>>> QUESTIONS =
      List.of(
          Map.of(),
          Map.of("lineup", List.of("packs off")),
          Map.of("lineup", List.of("left bleed off")),
          Map.of("day", List.of("hot day"), "set", List.of("isolation: OPEN", "aux bleed: ON")),
          Map.of("power", List.of("cruise")),
          Map.of("if", List.of("left mid check valve stuck 1/3")),
          Map.of("if", List.of("left bleed regulator stuck open", "right high tap weak")),
          Map.of("set", List.of("wing anti-ice: ON", "left high stage valve: locked shut")));

  /** Good balances: at worst a part in 10^6, where the stillest point rounds. */
  private static final Pattern BALANCE =
      Pattern.compile("air and heat in = out to \\d+ parts? in 10\\^([6-9]|1\\d)");

  private static Ask ask(Map<String, List<String>> rest, double core) {
    Map<String, List<String>> query = new HashMap<>(rest);
    query.put("core", List.of(String.format(Locale.ROOT, "%.5f", core)));
    return Ask.of(query);
  }

  /** The same words as from nothing, all along the rail. */
  @Test
  void aMovedAnswerIsTheAnswerFromNothing() {
    int asked = 0;
    List<String> differ = new ArrayList<>();
    for (Map<String, List<String>> rest : possible()) {
      States states = new States(SYSTEM);
      for (double core = 0.5507; core < 1; core += 0.0231) {
        Ask ask = ask(rest, core);
        Question question = ask.question(SYSTEM);
        Solution cold = new Settler(question.network()).solve(question.setup());
        Moment moment = Moment.of(states, ask);
        asked++;
        assertThat(moment.solution().solved()).isEqualTo(cold.solved());
        if (cold.solved() && !words(Glance.of(question, cold, Style.SHOP)).equals(words(moment))) {
          differ.add(rest + " " + core);
        }
      }
    }
    assertThat(asked).isGreaterThan(100);
    assertThat(differ).isEmpty();
  }

  /** Those that the demo knows: a mode that it has not would make the test say nothing. */
  private static List<Map<String, List<String>>> possible() {
    QUESTIONS.forEach(q -> assertThat(ask(q, 0.7).sets()).isNotNull());
    return QUESTIONS.stream().filter(q -> !q.toString().contains("weak")).toList();
  }

  private static List<String> words(Moment moment) {
    assertThat(moment.glance()).isNotNull();
    return words(java.util.Objects.requireNonNull(moment.glance()));
  }

  private static List<String> words(Glance glance) {
    List<String> words = new ArrayList<>(glance.headline());
    words.add(glance.lead());
    glance.acts().forEach(act -> words.add(act.word() + ": " + act.why()));
    glance.places().forEach(place -> words.add(place.says()));
    glance.panel().needles().forEach(needle -> words.add(needle.says()));
    glance.panel().lights().forEach(lamp -> words.add(lamp.name() + lamp.lit() + lamp.because()));
    glance.room().forEach(room -> words.add(room.says()));
    words.addAll(glance.memory());
    return words;
  }

  /** Everything that both print, at each power of the file. */
  @Test
  void aPowerIsAnsweredAsTheCommandAnswersIt() throws QuantityProblem {
    States states = new States(SYSTEM);
    for (String power : SYSTEM.settings().keySet()) {
      Ask ask = Ask.of(Map.of("power", List.of(power)));
      JsonNode page = StateDocument.of(states, ask);
      StateAnswer state =
          StateInquiry.answer(Question.of(SYSTEM, power, "", "", List.of()), Style.SHOP);

      assertThat(page.at("/asked/0").asText()).isEqualTo(state.asked().power());
      List<String> headline = new ArrayList<>();
      page.get("headline").forEach(says -> headline.add(says.asText()));
      assertThat(headline.subList(1, headline.size())).isEqualTo(state.headline());
      for (StateAnswer.Why why : state.why()) {
        JsonNode part = page.get("parts").get(SYSTEM.network().part(why.part()));
        assertThat(part.get("word").asText()).isEqualTo(why.word());
        assertThat(part.get("why").asText()).isEqualTo(why.because());
      }
      for (StateAnswer.Air air : state.air()) {
        int point = SYSTEM.network().point(air.name());
        if (point >= 0) {
          JsonNode node = page.get("points").get(point);
          double p = air.gaugePressure();
          assertThat(node.get("p").asDouble()).isCloseTo(p, within(1e-9 * (1e5 + Math.abs(p))));
          assertThat(node.get("t").asDouble()).isCloseTo(air.temperature(), within(1e-6));
          assertThat(node.get("origin").asText()).isEqualTo(air.note());
        }
      }
      for (int i = 0; i < state.panel().needles().size(); i++) {
        Panel.Needle needle = state.panel().needles().get(i);
        assertThat(page.at("/needles/" + i + "/says").asText()).isEqualTo(needle.says());
      }
    }
  }

  /** The same, in another order, beside others, and after others. */
  @Test
  void theAnswerDependsOnNothingButTheQuestion() {
    List<Ask> asks = new ArrayList<>();
    for (Map<String, List<String>> rest : possible()) {
      for (double core : new double[] {0.5723, 0.7031, 0.7845, 0.9118}) {
        asks.add(ask(rest, core));
      }
    }
    List<JsonNode> first = answers(new States(SYSTEM), asks);
    States busy = new States(SYSTEM);
    List<Ask> other = new ArrayList<>(asks);
    Collections.shuffle(other, new Random(7));
    IntStream.range(0, 3).forEach(round -> answers(busy, other));
    List<JsonNode> beside =
        IntStream.range(0, asks.size())
            .parallel()
            .<JsonNode>mapToObj(i -> StateDocument.of(busy, asks.get(i)))
            .toList();

    List<JsonNode> again = answers(busy, asks);
    for (int i = 0; i < asks.size(); i++) {
      assertThat(again.get(i).equals(StatesTest::alike, first.get(i))).as(told(asks, i)).isTrue();
      assertThat(beside.get(i).equals(StatesTest::alike, first.get(i))).as(told(asks, i)).isTrue();
    }
  }

  private static String told(List<Ask> asks, int i) {
    return "the answer to " + asks.get(i);
  }

  private static List<JsonNode> answers(States states, List<Ask> asks) {
    return asks.stream().<JsonNode>map(ask -> StateDocument.of(states, ask)).toList();
  }

  /**
   * Compares two values of answers: all the same but what rounding decides, since a solver that has
   * solved before may eliminate in another order. That is the last figures of a number, and the
   * figure in the sentence of the balance, which tells what rounding left over.
   */
  private static int alike(JsonNode one, JsonNode two) {
    if (one.equals(two)) {
      return 0;
    }
    if (one.isTextual() && two.isTextual()) {
      return BALANCE.matcher(one.asText()).lookingAt() && BALANCE.matcher(two.asText()).lookingAt()
          ? 0
          : 1;
    }
    double apart = Math.abs(one.asDouble() - two.asDouble());
    double size = Math.max(Math.abs(one.asDouble()), Math.abs(two.asDouble()));
    return one.isNumber() && two.isNumber() && apart <= 1e-6 * size + 1e-8 ? 0 : 1;
  }

  @Test
  void whatIsHealthyStandsBesideWhatIsNot() {
    States states = new States(SYSTEM);
    Map<String, List<String>> broken =
        Map.of("power", List.of("ground idle"), "if", List.of("left mid check valve stuck 1/3"));
    JsonNode now = StateDocument.of(states, Ask.of(broken));
    JsonNode sound = StateDocument.of(states, Ask.of(broken).healthy());
    int valve = SYSTEM.network().part("left mid check valve");
    int duct = SYSTEM.network().point("left duct");
    int other = SYSTEM.network().point("right duct");

    assertThat(now.at("/parts/" + valve + "/was")).isEqualTo(sound.at("/parts/" + valve + "/word"));
    assertThat(now.at("/parts/" + valve + "/broken").asText()).startsWith("stuck 33 %");
    assertThat(now.at("/points/" + duct + "/was")).isEqualTo(sound.at("/points/" + duct + "/says"));
    assertThat(now.at("/points/" + other).has("was")).isFalse();
    assertThat(sound.toString()).doesNotContain("\"was\"");
    assertThat(now.at("/headline/0").asText())
        .startsWith("Ground idle, left mid check valve stuck 33 % open: ")
        .contains("runs back into the engine at the left mid tap");
  }
}

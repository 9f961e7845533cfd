package dev.offtake.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.offtake.part.Kinds;
import dev.offtake.quantity.Style;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.FanLine;
import dev.offtake.system.SystemReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A power setting that does not say which speed the engine holds, and where speeds come from. */
class HeldSpeedTest {
  private static BleedSystem silent;

  @BeforeAll
  static void read() throws Exception {
    String demo = Files.readString(Path.of("../demo/demo-twin.yaml"));
    String text = demo.replace("holds: physical, ", "").replace(", holds: physical; SD p.2", "");
    silent = SystemReader.readText("silent.yaml", text, Kinds.all()).system().orElseThrow();
  }

  private static StateAnswer answer(String at, String day) throws Exception {
    return StateInquiry.answer(Question.of(silent, at, day, "", List.of()), Style.SHOP);
  }

  /** 104 °F: θ = 313.15/288.15, so that 62 % corrected reads 64.6 %. */
  @Test
  void onAHotDayBothAreTold() throws Exception {
    StateAnswer answer = answer("ground idle", "hot day");
    StateAnswer corrected = answer.ifCorrected().orElseThrow();
    assertThat(corrected.asked().power()).contains("62 % corrected (64.6 % as read)");
    String text = StateText.print(answer, 80, Style.SHOP);
    assertThat(text).contains("IF THE ENGINE HOLDS CORRECTED SPEED", "The same taps feed.");
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
    JsonNode root = new ObjectMapper().readTree(StateJson.print(answer));
    JsonNode other = root.get("if corrected speed is held");
    assertThat(pressure(other)).isGreaterThan(1.2 * pressure(root));
  }

  private static double pressure(JsonNode answer) {
    for (JsonNode row : answer.get("air")) {
      if (row.get("name").asText().equals("left high tap")) {
        return row.get("gauge pressure Pa").asDouble();
      }
    }
    throw new AssertionError("no left high tap");
  }

  /** 104 °F: the corrected curve meets a change at a lower speed, by the root of 313.15/288.15. */
  @Test
  void aCurveIsDrawnForBoth() throws Exception {
    Question question = Question.of(silent, "ground idle", "hot day", "", List.of());
    CurveAnswer.Request request =
        new CurveAnswer.Request("core=60..64", 2, "left high tap flow, left high duct pressure");
    List<CurveAnswer> both = CurveAnswer.all(question, request, Style.SHOP, done -> {});
    assertThat(both).extracting(CurveAnswer::heldSpeed).containsExactly("physical", "corrected");
    assertThat(both.get(0).power()).startsWith("core physical 60");
    assertThat(both.get(1).power()).startsWith("core corrected 60");
    assertThat(both.get(1).dayName()).isEqualTo("hot day (corrected speed)");
    double physical = both.get(0).curve().up().get(0).values().get(1);
    assertThat(both.get(1).curve().up().get(0).values().get(1)).isGreaterThan(1.2 * physical);
    Question standard = Question.of(silent, "ground idle", "", "", List.of());
    assertThat(CurveAnswer.all(standard, request, Style.SHOP, done -> {})).hasSize(1);
  }

  @Test
  void onAStandardDayOneIsEnough() throws Exception {
    StateAnswer answer = answer("ground idle", "");
    assertThat(answer.ifCorrected()).isEmpty();
    assertThat(answer.asked().assumes()).anyMatch(says -> says.contains("both are the same"));
  }

  @Test
  void aFanSpeedBetweenSettingsIsAnAssumption() throws Exception {
    StateAnswer answer = answer("72 %", "");
    assertThat(answer.asked().assumes())
        .contains("Fan speed 34.5 %: a straight line through the file's settings.");
    assertThat(answer.asked().assumes()).hasSize(1);
  }

  /** The file's settings: 62/24, 82/45, 92/88, 99/96. */
  @Test
  void theFanLineMeetsTheSettingsAndGoesOn() {
    FanLine line = FanLine.of(silent);
    assertThat(line.fan(0.62)).isCloseTo(0.24, within(1e-12));
    assertThat(line.fan(0.92)).isCloseTo(0.88, within(1e-12));
    assertThat(line.fan(0.99)).isCloseTo(0.96, within(1e-12));
    assertThat(line.fan(1.06)).isCloseTo(1.04, within(1e-12));
    assertThat(line.fan(0.2)).isZero();
    assertThat(line.covers(0.5)).isFalse();
    assertThat(line.covers(0.7)).isTrue();
  }
}

package dev.offtake.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.explain.Question;
import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Setup;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What lies ahead as power comes up, on the demo at ground idle. */
class AheadTest {
  private static final List<List<String>> LEFT = List.of(List.of("left mid tap", "left high tap"));
  private static final String VALVE = "left high stage valve";

  private static BleedSystem system;

  @BeforeAll
  static void read() throws Exception {
    system = SystemReader.read(Path.of("../demo/demo-twin.yaml")).system().orElseThrow();
  }

  private static Course course(Map<Setup.PartNumber, Double> changed) throws Exception {
    Question question = Question.of(system, "ground idle", "", "", List.of());
    Setup asked = question.setup();
    Setup setup = new Setup(asked.conditions(), asked.positions(), asked.locks(), changed);
    return new Course(new Settler(system.network()), setup, question.fanLine());
  }

  /** Every number that has a band, held at its value. */
  private static Map<Setup.PartNumber, Double> pinned() {
    Map<Setup.PartNumber, Double> values = new HashMap<>();
    for (Part part : system.network().parts()) {
      for (Parameter p : part.parameters()) {
        values.put(new Setup.PartNumber(part.name(), p.name()), p.value());
      }
    }
    return values;
  }

  @Test
  void theNextChangeIsARangeAroundItsBestGuess() throws Exception {
    NextChange.Event event = NextChange.find(course(Map.of()), 1.05).event().orElseThrow();
    assertThat(event.low()).isLessThan(event.core());
    assertThat(event.high()).isGreaterThan(event.core());
    assertThat(event.high() - event.low()).isLessThan(0.1);
  }

  @Test
  void theMidTapTakesOverFromTheHighTap() throws Exception {
    Handover.Event event = Handover.find(course(Map.of()), LEFT, 1.05).get(0);
    assertThat(event.from()).isEqualTo("left high tap");
    assertThat(event.to()).isEqualTo("left mid tap");
    assertThat(event.low()).isLessThan(event.core());
    assertThat(event.high()).isGreaterThan(event.core());
  }

  /**
   * Without cooling air the left side trips before the mid tap would take over: it then begins to
   * feed a side that nothing fed, after the high tap all the same.
   */
  @Test
  void aHandoverWithAGapNamesBothTaps() throws Exception {
    List<String> locked = List.of("left cooling air valve: locked shut");
    Question question = Question.of(system, "ground idle", "", "", locked);
    Course gap = new Course(new Settler(system.network()), question.setup(), question.fanLine());
    Handover.Event event = Handover.find(gap, LEFT, 1.05).get(0);
    assertThat(event.from()).isEqualTo("left high tap");
    assertThat(event.to()).isEqualTo("left mid tap");
    assertThat(event.low()).isLessThan(event.core());
  }

  @Test
  void withoutBandsTheHandoverIsOneSpeed() throws Exception {
    Handover.Event event = Handover.find(course(pinned()), LEFT, 1.05).get(0);
    assertThat(event.low()).isEqualTo(event.core());
    assertThat(event.high()).isEqualTo(event.core());
  }

  /** One band alone: the range ends where the handover is with the number at the band's ends. */
  @Test
  void aRangeEndsWhereTheNumbersEndPutsTheHandover() throws Exception {
    Parameter set =
        system.network().parts().get(system.network().part(VALVE)).parameters().stream()
            .filter(p -> p.name().equals("set"))
            .findFirst()
            .orElseThrow();
    Map<Setup.PartNumber, Double> free = pinned();
    free.remove(new Setup.PartNumber(VALVE, "set"));
    Handover.Event range = Handover.find(course(free), LEFT, 1.05).get(0);
    assertThat(range.high()).isCloseTo(handover(set.high()), within(0.004));
    assertThat(range.low()).isCloseTo(handover(set.low()), within(0.004));
    assertThat(range.high() - range.low()).isGreaterThan(0.01);
  }

  private static double handover(double set) throws Exception {
    Map<Setup.PartNumber, Double> changed = pinned();
    changed.put(new Setup.PartNumber(VALVE, "set"), set);
    return Handover.find(course(changed), LEFT, 1.05).get(0).core();
  }
}

package dev.offtake.checks;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.network.Demos;
import dev.offtake.part.Part;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A published catalogue of nineteen faults of a pneumatically actuated control valve, each mapped
 * to a failure mode or to the reason why it has no meaning in bleed air.
 *
 * <p>Source of the list: DAMADICS benchmark, table at
 * http://www.hindawi.com/journals/aans/2011/453169/tab1/; the benchmark itself is Bartyś et al.,
 * Control Engineering Practice 14 (2006). Which of our modes answers to each is a judgement.
 */
class PublishedValveFaultsCheckTest {
  private static final List<Part> PARTS = Demos.demo("twin").network().parts();

  @ParameterizedTest
  @CsvSource({
    "f1 valve clogging, left high stage valve, partly blocked",
    "f2 plug or seat sedimentation, left high stage valve, leaks through its seat",
    "f3 plug or seat erosion, left high stage valve, leaks through its seat",
    "f4 more valve or bushing friction, left high stage valve, slow",
    "f5 external leakage, left high stage valve, leaks outward",
    "f6 internal leakage, left high stage valve, leaks through its seat",
    "f8 twisted piston rod, left high stage valve, opens short",
    "f9 housing tightness, left high stage valve, servo line leaking",
    "f9 terminals tightness, left bleed regulator, wiring open",
    "f10 diaphragm perforation, left high stage valve, actuator diaphragm leaking",
    "f11 spring fault, left high stage valve, set spring broken",
    "f12 transducer fault, left high stage valve, set drifted high",
    "f13 rod position sensor fault, isolation valve, position switch out of adjustment",
    "f14 pressure sensor fault, left high stage valve, sense line blocked",
    "f15 positioner feedback fault, left high stage valve, droop widened",
    "f16 supply pressure drop, left high stage valve, muscle lost",
  })
  void haveAModeOfOurs(String published, String part, String mode) {
    assertThat(PARTS.stream().filter(p -> p.name().equals(part)).findFirst())
        .as(published)
        .hasValueSatisfying(
            found -> assertThat(found.modes()).extracting("name").as(published).contains(mode));
  }

  @ParameterizedTest
  @CsvSource({
    "f7 medium evaporation or critical flow, air does not evaporate and every law chokes by itself",
    "f17 unexpected pressure change across the valve, the network computes what stands across it",
    "f18 bypass opened, no bypass is built round a bleed valve; a file may draw one as an orifice",
    "f19 flow sensor fault, no valve of the trade regulates by flow",
  })
  void haveNoMeaningHere(String published, String why) {
    assertThat(why).as(published).isNotBlank();
  }

  /** One to nineteen, none left out: the tables above are read as they stand. */
  @Test
  void allNineteenAreAnswered() throws NoSuchMethodException {
    List<String> rows =
        List.of(
                getClass()
                    .getDeclaredMethod("haveAModeOfOurs", String.class, String.class, String.class),
                getClass().getDeclaredMethod("haveNoMeaningHere", String.class, String.class))
            .stream()
            .flatMap(m -> List.of(m.getAnnotation(CsvSource.class).value()).stream())
            .toList();
    assertThat(IntStream.rangeClosed(1, 19))
        .allMatch(n -> rows.stream().anyMatch(row -> row.startsWith("f" + n + " ")));
  }
}

package dev.offtake.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class NearestTest {
  private static final List<String> WORDS = List.of("bleed switch", "pack switch", "isolation");

  @Test
  void offersTheWordThatWasMeant() {
    assertThat(Nearest.to("blede switch", WORDS)).contains("bleed switch");
    assertThat(Nearest.to("Isolaton", WORDS)).contains("isolation");
    assertThat(Nearest.to("rudder trim", WORDS)).isEmpty();
    assertThat(Nearest.to("", List.of("a", ""))).isEmpty();
  }

  @Test
  void mendsWithTheNearestOrWithAll() {
    assertThat(Nearest.mend("ONN", List.of("ON", "OFF"))).isEqualTo("did you mean ON?");
    assertThat(Nearest.mend("purple", List.of("SHUT", "AUTO", "OPEN")))
        .isEqualTo("say SHUT, AUTO or OPEN");
  }

  @Test
  void countsLettersToMend() {
    assertThat(Nearest.distance("psig", "pisg")).isEqualTo(1);
    assertThat(Nearest.distance("psig", "PSI")).isEqualTo(1);
    assertThat(Nearest.distance("kitten", "sitting")).isEqualTo(3);
    assertThat(Nearest.distance("a".repeat(99), "a")).isEqualTo(Integer.MAX_VALUE);
  }

  @Property(tries = 300, seed = "21")
  void distanceIsSymmetricAndBounded(
      @ForAll @StringLength(max = 12) String one, @ForAll @StringLength(max = 12) String other) {
    int distance = Nearest.distance(one, other);
    assertThat(distance).isEqualTo(Nearest.distance(other, one));
    assertThat(distance).isBetween(0, 2 * 12 * 3);
    assertThat(Nearest.distance(one, one)).isZero();
  }
}

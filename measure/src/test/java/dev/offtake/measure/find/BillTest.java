package dev.offtake.measure.find;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.measure.cases.Cases;
import dev.offtake.part.Access;
import dev.offtake.part.Kinds;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a repair costs. */
class BillTest {
  private static final Shelf.Unit CLAMP = new Shelf.Unit("left joint", "clamp", Access.COWLS, 10);
  private static final Shelf.Unit VALVE = new Shelf.Unit("left valve", "valve", Access.BENCH, 60);

  @Test
  void openCowlsArePaidOnceAndTheBenchEachTime() {
    Bill bill = new Bill(Set.of());
    assertThat(bill.price(CLAMP)).isEqualTo(40);
    bill.look(CLAMP);
    assertThat(bill.price(CLAMP)).isEqualTo(10);
    bill.look(VALVE);
    bill.look(VALVE);
    assertThat(bill.minutes()).isEqualTo(40 + 2 * (60 + 180));
  }

  @Test
  void everyModeThatIsDrawnHasAUnitInTheFixedOrder() {
    BleedSystem system =
        SystemReader.read(Path.of("../demo/demo-twin.yaml"), Kinds.all()).system().orElseThrow();
    Cases cases = new Cases();
    Shelf shelf = new Shelf(system, cases.modes());
    assertThat(shelf.fixed()).doesNotHaveDuplicates().hasSizeGreaterThan(50);
    // What is cheap to look at and fails often comes first.
    assertThat(shelf.fixed().get(0).minutes() + shelf.fixed().get(0).access().minutes())
        .isLessThan(60);
    for (long number = 0; number < 20; number++) {
      assertThat(shelf.fixed()).contains(shelf.broken(cases.byRate(number).truth()));
    }
  }
}

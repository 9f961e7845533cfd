package dev.offtake.study;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.network.Demos;
import dev.offtake.quantity.Style;
import dev.offtake.system.BleedSystem;
import org.junit.jupiter.api.Test;

/** What Offtake says of a fault is read as the same fault. */
class FaultWordsTest {
  @Test
  void everyFaultIsReadBack() throws Exception {
    BleedSystem system = Demos.everyKind();
    FaultReader reader = new FaultReader(system);
    for (Fault fault : Faults.all(system)) {
      Fault plain = reader.read(fault.name()).get(0);
      assertThat(plain.name()).isEqualTo(fault.name());
      assertThat(plain.extent()).as(fault.name()).isEqualTo(fault.extent());
      String words = fault.words(Style.SHOP);
      Fault read = reader.read(words).get(0);
      assertThat(read.name()).as(words).isEqualTo(fault.name());
      assertThat(read.words(Style.SHOP)).isEqualTo(words);
    }
  }
}

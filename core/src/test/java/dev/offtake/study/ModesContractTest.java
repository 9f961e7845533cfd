package dev.offtake.study;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.explain.Question;
import dev.offtake.network.Demos;
import dev.offtake.part.Extent;
import dev.offtake.part.Kinds;
import dev.offtake.part.Mode;
import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What every mode of every part of the demos keeps to, whatever its kind. */
class ModesContractTest {
  private static final BleedSystem TWIN = Demos.demo("twin");
  private static final BleedSystem ROTOR = Demos.demo("rotor");

  private static List<Part> parts() {
    return Stream.of(TWIN, ROTOR).flatMap(system -> system.network().parts().stream()).toList();
  }

  @Test
  void everyModeBelongsToARemovableUnitOfItsKind() {
    for (Part part : parts()) {
      List<String> units = Kinds.named(part.kind()).orElseThrow().removableUnits();
      for (Mode mode : part.modes()) {
        assertThat(units).as(part.name() + " " + mode.name()).contains(mode.unit());
      }
    }
  }

  @Test
  void everyModeHasItsOwnNameAndSpeaksInSentencesWithoutAFullStop() {
    for (Part part : parts()) {
      Set<String> names = new HashSet<>();
      for (Mode mode : part.modes()) {
        String as = part.name() + " " + mode.name();
        assertThat(names.add(mode.name())).as(as).isTrue();
        assertThat(mode.means()).as(as).isNotBlank().matches("\\p{Lu}.*[^.]");
        assertThat(mode.noticed()).as(as).doesNotEndWith(".");
        assertThat(mode.inspection().how()).as(as).isNotBlank().matches("\\p{Lu}.*[^.]");
        assertThat(mode.rate()).as(as).isPositive();
      }
    }
  }

  /** The longest name wins, so that a longer name must not read as a shorter one and an extent. */
  @Test
  void noNameReadsAsAnotherOneWithAnExtent() {
    for (Part part : parts()) {
      for (Mode one : part.modes()) {
        for (Mode other : part.modes()) {
          Extent asks = one.extent();
          if (asks != null && other.name().startsWith(one.name() + " ")) {
            String rest = other.name().substring(one.name().length() + 1);
            assertThat(reads(rest, asks.dimension())).as(other.name()).isFalse();
          }
        }
      }
    }
  }

  private static boolean reads(String text, Dimension dimension) {
    try {
      QuantityReader.read(text, dimension);
      return true;
    } catch (QuantityProblem no) {
      return false;
    }
  }

  @Test
  void everyFaultIsReadBackFromItsWords() throws QuantityProblem {
    FaultReader reader = new FaultReader(TWIN);
    for (Fault fault : Faults.all(TWIN)) {
      List<Fault> read = reader.read(fault.words(Style.SHOP));
      assertThat(read).as(fault.words(Style.SHOP)).hasSize(1);
      assertThat(read.get(0).name()).isEqualTo(fault.name());
    }
  }

  @Test
  void itsNumbersAreRealAndStayWithinWhatIsPossible() {
    for (BleedSystem system : List.of(TWIN, ROTOR)) {
      List<Part> parts = system.network().parts();
      for (Fault fault : Faults.all(system)) {
        for (double extent : extents(fault.mode())) {
          Broken broken = Broken.of(system.network(), system.sides(), List.of(fault.to(extent)));
          for (Mode.Shift shift : fault.mode().shifts()) {
            inBounds(broken, fault, shift, extent);
          }
        }
      }
    }
  }

  private static double[] extents(Mode mode) {
    Extent asks = mode.extent();
    return asks == null ? new double[] {1} : new double[] {asks.least(), asks.usual(), asks.most()};
  }

  private static void inBounds(Broken broken, Fault fault, Mode.Shift shift, double extent) {
    String name = fault.part().name() + shift.part();
    Part part = broken.network().parts().get(broken.network().part(name));
    Optional<Parameter> found =
        part.parameters().stream().filter(p -> p.name().equals(shift.parameter())).findFirst();
    assertThat(found).as(fault.name() + ": " + shift.parameter()).isPresent();
    Parameter parameter = found.orElseThrow();
    double value = shift.becomes().of(parameter.value(), extent);
    assertThat(value)
        .as(fault.name() + ": " + shift.parameter())
        .isBetween(parameter.min(), parameter.max());
  }

  @Test
  void everyUsualFaultHasAnAnswerAtGroundIdleAndAtTakeOff() throws QuantityProblem {
    List<String> without = new ArrayList<>();
    Settler settler = new Settler(TWIN.network());
    for (String power : List.of("ground idle", "take-off")) {
      Setup setup = Question.of(TWIN, power, "", "", List.of()).setup();
      for (Fault fault : Faults.all(TWIN)) {
        Broken broken = Broken.of(TWIN.network(), TWIN.sides(), List.of(fault));
        boolean same = broken.network() == TWIN.network();
        Settler mine = same ? settler : new Settler(broken.network());
        mine.forget();
        Solution solution = mine.solve(broken.setup(setup));
        if (!solution.solved()) {
          without.add(fault.name() + " at " + power + " " + solution.outcome());
        }
      }
    }
    assertThat(without).isEmpty();
  }
}

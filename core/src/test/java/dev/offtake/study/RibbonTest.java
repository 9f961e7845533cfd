package dev.offtake.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.part.Conditions;
import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.LineUp;
import dev.offtake.system.Standing;
import dev.offtake.system.SystemReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Ribbons against states that are solved anew with each number moved (own case, recomputed). */
class RibbonTest {
  private static final BleedSystem SYSTEM =
      SystemReader.read(Path.of("../demo/demo-twin.yaml")).system().orElseThrow();

  /** Share of its band by which a number is moved. */
  private static final double MOVED = 0.001;

  private final Settler settler = new Settler(SYSTEM.network());

  /** The tap's flow only where it feeds: the leak of a shut valve bends at its stop. */
  private static List<Column> columns(double core) {
    List<Column> columns = new ArrayList<>();
    for (String name : List.of("left duct", "left interstage")) {
      int point = SYSTEM.network().point(name);
      columns.add(Column.pressure(name, point));
      columns.add(Column.temperature(name, point));
    }
    if (core < 0.75) {
      columns.add(Column.flow("left high tap", SYSTEM.network().part("left high tap")));
    }
    return columns;
  }

  private static Setup at(double core) {
    var setting = SYSTEM.settings().get("ground idle");
    Standing standing = Standing.of(SYSTEM, setting, SYSTEM.lineUps().get(LineUp.USUAL));
    Conditions conditions = Conditions.standardDay(core, 0.5);
    return new Setup(conditions, standing.positions(), standing.locks(), Map.of());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.70, 0.90})
  void edgesAreThoseOfNumbersThatAreMovedOneByOne(double core) {
    Solution here = settler.solve(at(core));
    List<Column> columns = columns(core);
    double[] above = new double[columns.size()];
    double[] below = new double[columns.size()];
    for (Part part : SYSTEM.network().parts()) {
      for (Parameter number : part.parameters()) {
        if (number.low() < number.high()) {
          add(here, core, part, number, columns, above, below);
        }
      }
    }
    List<Ribbon.Edges> edges = Ribbon.at(here, columns).orElseThrow();
    for (int c = 0; c < columns.size(); c++) {
      double value = columns.get(c).reading().of(here);
      double up = Math.sqrt(above[c]);
      double down = Math.sqrt(below[c]);
      assertThat(edges.get(c).high() - value)
          .as("above " + columns.get(c).name())
          .isCloseTo(up, within(0.02 * up));
      assertThat(value - edges.get(c).low())
          .as("below " + columns.get(c).name())
          .isCloseTo(down, within(0.02 * down));
    }
  }

  private void add(
      Solution here,
      double core,
      Part part,
      Parameter number,
      List<Column> columns,
      double[] above,
      double[] below) {
    double step = MOVED * (number.high() - number.low());
    Solution more = moved(here, core, part, number, Math.min(number.max(), number.value() + step));
    Solution less = moved(here, core, part, number, Math.max(number.min(), number.value() - step));
    double width =
        Math.min(number.max(), number.value() + step)
            - Math.max(number.min(), number.value() - step);
    for (int c = 0; c < columns.size(); c++) {
      Column column = columns.get(c);
      double slope = (column.reading().of(more) - column.reading().of(less)) / width;
      double high = slope * (number.high() - number.value());
      double low = slope * (number.low() - number.value());
      above[c] += Math.pow(Math.max(0, Math.max(high, low)), 2);
      below[c] += Math.pow(Math.min(0, Math.min(high, low)), 2);
    }
  }

  private Solution moved(Solution here, double core, Part part, Parameter number, double value) {
    Setup asked = at(core);
    Setup.PartNumber name = new Setup.PartNumber(part.name(), number.name());
    settler.startFrom(here);
    Solution solution =
        settler.solve(
            new Setup(asked.conditions(), asked.positions(), asked.locks(), Map.of(name, value)));
    assertThat(solution.solved()).isTrue();
    return solution;
  }

  @Test
  void theRegulatedPressureIsAsUncertainAsItsSet() {
    // The regulator holds 42 psig +4 -2 with an unknown droop of 3..6 psi at 90 % core speed.
    Solution here = settler.solve(at(0.90));
    int point = SYSTEM.network().point("left regulated duct");
    Column regulated = Column.pressure("left regulated duct", point);
    Ribbon.Edges edges = Ribbon.at(here, List.of(regulated)).orElseThrow().get(0);
    double value = regulated.reading().of(here);
    double psi = 6894.757;
    assertThat(edges.high() - value).isBetween(3.5 * psi, 4.5 * psi);
    assertThat(value - edges.low()).isBetween(1.5 * psi, 2.5 * psi);
  }
}

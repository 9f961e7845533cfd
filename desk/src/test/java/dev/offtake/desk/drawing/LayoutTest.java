package dev.offtake.desk.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.part.Role;
import dev.offtake.system.BleedSystem;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LayoutTest {
  /** Rectangle of a box, px. */
  private record Rectangle(double left, double top, double right, double bottom) {
    static Rectangle of(Placed placed, int box) {
      Box what = placed.plan().boxes().get(box);
      double x = placed.x()[box];
      double y = placed.y()[box];
      return new Rectangle(x, y, x + what.width(), y + what.height());
    }

    boolean meets(Rectangle other) {
      return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }
  }

  static Stream<Path> files() {
    return Systems.files().stream();
  }

  private static Placed placed(BleedSystem system) {
    return Layout.of(Planner.of(system));
  }

  @ParameterizedTest
  @MethodSource("files")
  void noTwoBoxesOverlap(Path file) {
    assertThat(overlaps(placed(Systems.of(file)))).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("files")
  void noPipeRunsThroughWordsOrSymbolsOfOthers(Path file) {
    assertThat(runThrough(placed(Systems.of(file)))).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("files")
  void pipesOfDifferentPointsOnlyCross(Path file) {
    assertThat(merged(placed(Systems.of(file)))).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("files")
  void suppliesAreBelowAndUsersAboveWhatTheyAreJoinedTo(Path file) {
    BleedSystem system = Systems.of(file);
    Placed placed = placed(system);
    List<String> wrong = new ArrayList<>();
    for (Wire wire : placed.plan().wires()) {
      Role role = system.parts().get(wire.number()).role();
      double part = placed.middle(wire.part());
      double point = placed.middle(wire.point());
      boolean source = role == Role.SOURCE && part <= point;
      boolean user = role == Role.USER && part >= point;
      if (source || user) {
        wrong.add(placed.plan().boxes().get(wire.part()).name());
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void leftIsLeftAndRightIsRightAndTheyMirrorEachOther() {
    Placed placed = placed(Systems.demo());
    List<Box> boxes = placed.plan().boxes();
    double middle = placed.width() / 2;
    for (int i = 0; i < boxes.size(); i++) {
      if (boxes.get(i).side().equals("left")) {
        assertThat(placed.axis(i)).as(boxes.get(i).name()).isLessThan(middle);
      } else if (boxes.get(i).side().equals("right")) {
        assertThat(placed.axis(i)).as(boxes.get(i).name()).isGreaterThan(middle);
      }
    }
    for (int i = 0; i < boxes.size(); i++) {
      int twin = find(boxes, boxes.get(i).name().replaceFirst("^left ", "right "));
      assertThat(Math.abs(placed.middle(i) - placed.middle(twin)))
          .as("height of " + boxes.get(i).name() + " and its twin")
          .isLessThan(1);
    }
  }

  private static int find(List<Box> boxes, String name) {
    return boxes.stream().map(Box::name).toList().indexOf(name);
  }

  @Test
  void twoHundredPartsKeepApart() {
    BleedSystem system = Systems.many(14);
    assertThat(system.parts().size()).isGreaterThanOrEqualTo(200);
    long start = System.nanoTime();
    Placed placed = placed(system);
    double seconds = (System.nanoTime() - start) / 1e9;
    assertThat(overlaps(placed)).isEmpty();
    assertThat(runThrough(placed)).isEmpty();
    // Wide of what is measured: this only catches a layout that has gone astray.
    assertThat(seconds).isLessThan(30);
  }

  static List<String> overlaps(Placed placed) {
    List<String> found = new ArrayList<>();
    int n = placed.plan().boxes().size();
    for (int i = 0; i < n; i++) {
      for (int k = i + 1; k < n; k++) {
        if (Rectangle.of(placed, i).meets(Rectangle.of(placed, k))) {
          found.add(name(placed, i) + " and " + name(placed, k));
        }
      }
    }
    return found;
  }

  private static String name(Placed placed, int box) {
    return placed.plan().boxes().get(box).name();
  }

  static List<String> runThrough(Placed placed) {
    List<String> found = new ArrayList<>();
    for (int w = 0; w < placed.routes().size(); w++) {
      Wire wire = placed.plan().wires().get(w);
      for (Rectangle pipe : stretches(placed.routes().get(w), 2)) {
        for (int box = 0; box < placed.plan().boxes().size(); box++) {
          boolean own = box == wire.point() || box == wire.part();
          if (!own && pipe.meets(Rectangle.of(placed, box))) {
            found.add(
                name(placed, wire.point())
                    + " to "
                    + name(placed, wire.part())
                    + " through "
                    + name(placed, box));
          }
        }
      }
    }
    return found;
  }

  /** Straight stretches of a route, as wide as asked to each side, px. */
  private static List<Rectangle> stretches(Placed.Route route, double half) {
    List<Rectangle> list = new ArrayList<>();
    for (int i = 1; i < route.x().length; i++) {
      list.add(
          new Rectangle(
              Math.min(route.x()[i], route.x()[i - 1]) - half,
              Math.min(route.y()[i], route.y()[i - 1]),
              Math.max(route.x()[i], route.x()[i - 1]) + half,
              Math.max(route.y()[i], route.y()[i - 1])));
    }
    return list;
  }

  /** Upright stretches of different points that stand less than a pipe's width apart. */
  private static List<String> merged(Placed placed) {
    List<String> found = new ArrayList<>();
    for (int a = 0; a < placed.routes().size(); a++) {
      for (int b = a + 1; b < placed.routes().size(); b++) {
        Wire one = placed.plan().wires().get(a);
        Wire other = placed.plan().wires().get(b);
        if (one.point() != other.point() && meet(placed.routes().get(a), placed.routes().get(b))) {
          found.add(name(placed, one.point()) + " and " + name(placed, other.point()));
        }
      }
    }
    return found;
  }

  private static boolean meet(Placed.Route a, Placed.Route b) {
    return stretches(a, 4).stream()
        .filter(s -> s.bottom() - s.top() > 1)
        .anyMatch(
            s -> stretches(b, 4).stream().filter(t -> t.bottom() - t.top() > 1).anyMatch(s::meets));
  }
}

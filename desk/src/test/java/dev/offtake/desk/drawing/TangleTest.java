package dev.offtake.desk.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Systems that nobody would build are drawn as well: loops, dead ends, sides joined crosswise. */
class TangleTest {
  private static final String TAP =
      "{kind: supply, to: %s, temperature: 300 degF,"
          + " table: {columns: [psig, lb/min], rows: [[45, 0], [36, 60]]}}";

  private final StringBuilder text = new StringBuilder();

  private static Placed draw(String text) {
    return Layout.of(Planner.of(Systems.of(text)));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4})
  void aTangleOfAnyNumberOfSidesKeepsApart(int sides) {
    for (int seed = 0; seed < 3; seed++) {
      String tangle = new TangleTest().tangle(new Random(31L * sides + seed), sides);
      Placed placed = draw(tangle);
      assertThat(LayoutTest.overlaps(placed)).as(tangle).isEmpty();
      assertThat(LayoutTest.runThrough(placed)).as(tangle).isEmpty();
      assertThat(PipeTree.pieces(placed)).isNotEmpty();
      assertThat(Picture.of(placed, PipeTree.pieces(placed)))
          .isEqualTo(Picture.of(draw(tangle), PipeTree.pieces(draw(tangle))));
    }
  }

  private String tangle(Random random, int sides) {
    text.append(
        "offtake: 1\ntitle: Tangle\nabout: Invented.\npower settings: {idle: {core: 62 %}}\n");
    List<String> points = List.of("a", "b", "c", "d", "e");
    if (sides == 0) {
      text.append("parts:\n");
      parts(random, points, 12, "  ");
      return text.toString();
    }
    List<String> names = List.of("one", "two", "three", "four").subList(0, sides);
    List<String> marks = new ArrayList<>();
    names.forEach(name -> marks.add(name + ": " + name.charAt(0) + name.charAt(1)));
    text.append("sides: {" + String.join(", ", marks) + "}\neach side:\n  parts:\n");
    parts(random, points, 9, "    ");
    if (sides > 1) {
      text.append("between sides:\n");
      List<String> all = new ArrayList<>();
      names.forEach(name -> points.forEach(point -> all.add(name + " " + point)));
      joins(random, all, 4, "  ");
    }
    return text.toString();
  }

  /** A chain through all points, so that each is named twice, and more between any two. */
  private void parts(Random random, List<String> points, int more, String indent) {
    line(indent, "supply", TAP.formatted(points.get(0)));
    for (int i = 1; i < points.size(); i++) {
      String path = points.get(i - 1) + " -> " + points.get(i);
      line(indent, "hole " + i, "{kind: orifice, path: " + path + ", bore: 1 in}");
    }
    line(indent, "user", "{kind: flow user, takes from: e, takes: 5 lb/min, needs: 5 psig}");
    joins(random, points, more, indent);
  }

  private void joins(Random random, List<String> points, int more, String indent) {
    for (int i = 0; i < more; i++) {
      String from = points.get(random.nextInt(points.size()));
      String to = points.get(random.nextInt(points.size()));
      if (from.equals(to)) {
        continue;
      }
      String arrow = random.nextBoolean() ? " -> " : " <-> ";
      String what =
          switch (random.nextInt(4)) {
            case 0 -> "{kind: check valve, path: " + from + " -> " + to + ", bore: 1 in}";
            case 1 -> "{kind: shutoff valve, path: " + from + arrow + to + ", bore: 1 in}";
            case 2 -> "{kind: vent, at: " + from + ", bore: 1 in}";
            default -> "{kind: orifice, path: " + from + " -> " + to + ", bore: 1 in}";
          };
      line(indent, "join with a rather long name " + i, what);
    }
  }

  private void line(String indent, String name, String what) {
    text.append(indent).append(name).append(": ").append(what).append('\n');
  }
}

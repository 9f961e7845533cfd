package dev.offtake.desk;

import dev.offtake.explain.CurveAnswer;
import dev.offtake.explain.PairEvents;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.study.Curve;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;

/** What a healthy curve and a broken one have in common, so that it is drawn once. */
final class InCommon {
  private InCommon() {}

  /** Whether a column prints the same wherever both are known. */
  static boolean same(CurveAnswer healthy, CurveAnswer now, int column, Style style) {
    Dimension dimension = healthy.curve().columns().get(column).dimension();
    return alike(
        healthy.curve(),
        now.curve(),
        (one, two) ->
            style
                .number(one.values().get(column), dimension)
                .equals(style.number(two.values().get(column), dimension)));
  }

  /** Whether a side is fed by the same sources wherever both are known. */
  static boolean sameFeeding(CurveAnswer healthy, CurveAnswer now, int group) {
    return alike(
        healthy.curve(),
        now.curve(),
        (one, two) -> one.feeding().get(group).equals(two.feeding().get(group)));
  }

  /** The name of what belongs to both. */
  static String both(String healthy) {
    return healthy.replace(PairEvents.HEALTHY, "both");
  }

  private static boolean alike(Curve healthy, Curve now, BiPredicate<Curve.Row, Curve.Row> same) {
    return alike(healthy.up(), now.up(), same)
        && (healthy.remembers() == now.remembers())
        && alike(healthy.down(), now.down(), same);
  }

  private static boolean alike(
      List<Curve.Row> healthy, List<Curve.Row> now, BiPredicate<Curve.Row, Curve.Row> same) {
    Map<Double, Curve.Row> others = new HashMap<>();
    now.forEach(row -> others.put(row.x(), row));
    for (Curve.Row row : healthy) {
      Curve.Row other = others.get(row.x());
      boolean known = other != null && other.answered();
      boolean edge = other == null;
      if (!edge && (row.answered() != known)) {
        return false;
      }
      if (other != null && known && !same.test(row, other)) {
        return false;
      }
    }
    return true;
  }
}

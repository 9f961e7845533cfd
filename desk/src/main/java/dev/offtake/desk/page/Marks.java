package dev.offtake.desk.page;

import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.part.Trip;
import dev.offtake.study.Column;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Limits of the file that a curve may cross: what users need, what trips and reliefs wait for. */
final class Marks {
  /** Lines of a file that are limits of the place where the part stands, and their words. */
  private static final Map<String, String> AT_ITS_PLACE =
      Map.of("needs", "needs", "cracks at", "opens at");

  private static final Map<String, String> OF_A_TRIP = Map.of("above", "above", "below", "below");

  private Marks() {}

  /**
   * A limit.
   *
   * @param value SI, as the column measures
   * @param says what it is, such as {@code left pack needs}
   */
  record Mark(double value, String says) {}

  /** The limits of what a column shows. */
  static List<Mark> of(BleedSystem system, Column column) {
    List<Mark> marks = new ArrayList<>();
    for (Statement statement : system.statements()) {
      int number = system.network().part(statement.part());
      if (!statement.inForce() || number < 0) {
        continue;
      }
      Part part = system.network().parts().get(number);
      Map<String, String> keys = keys(part, column);
      String word = keys.get(statement.key());
      if (word != null && statement.stated().dimension() == column.dimension()) {
        marks.add(new Mark(statement.stated().nominal(), part.name() + " " + word));
      }
    }
    return marks;
  }

  private static Map<String, String> keys(Part part, Column column) {
    if (part instanceof Trip trip) {
      return trip.watches().name().equals(column.name()) ? OF_A_TRIP : Map.of();
    }
    boolean watched = part.role() == Role.USER || part.kind().equals("relief valve");
    for (Leg leg : watched ? part.legs() : List.<Leg>of()) {
      if (column.name().equals(leg.from() + " pressure")) {
        return AT_ITS_PLACE;
      }
    }
    return Map.of();
  }
}

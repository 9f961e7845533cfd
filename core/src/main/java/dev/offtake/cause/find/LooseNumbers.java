package dev.offtake.cause.find;

import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Statement;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which loose number is stated by which line of the file: {@code set to} states {@code set}, {@code
 * droop} states {@code droop}. A line that is turned into another number, such as a bore into an
 * area, is not found: nobody could write the matched number back into it.
 */
final class LooseNumbers {
  private LooseNumbers() {}

  /** Statements by the number of the unknown that they state, in the order of the file. */
  static Map<Integer, Statement> of(BleedSystem system, List<Unknown> unknowns) {
    Map<Integer, Statement> found = new LinkedHashMap<>();
    for (Statement statement : system.statements()) {
      if (statement.inForce() && statement.stated().high() > statement.stated().low()) {
        for (int u = 0; u < unknowns.size(); u++) {
          if (unknowns.get(u) instanceof Unknown.OfPart own && states(system, statement, own)) {
            found.putIfAbsent(u, statement);
          }
        }
      }
    }
    return found;
  }

  private static boolean states(BleedSystem system, Statement statement, Unknown.OfPart own) {
    String name = own.number().parameter();
    boolean named = statement.key().equals(name) || statement.key().startsWith(name + " ");
    return named
        && own.number().part().equals(statement.part())
        && parameter(system, own).filter(p -> same(p, statement)).isPresent();
  }

  private static Optional<Parameter> parameter(BleedSystem system, Unknown.OfPart own) {
    return system.parts().stream()
        .filter(part -> part.name().equals(own.number().part()))
        .map(Part::parameters)
        .flatMap(List::stream)
        .filter(parameter -> parameter.name().equals(own.number().parameter()))
        .findFirst();
  }

  /** Whether the number is the statement's own, not made from it. */
  private static boolean same(Parameter parameter, Statement statement) {
    double scale = Math.abs(statement.stated().high()) + Math.abs(statement.stated().low());
    return parameter.dimension() == statement.stated().dimension()
        && Math.abs(parameter.low() - statement.stated().low()) < 1e-9 * scale
        && Math.abs(parameter.high() - statement.stated().high()) < 1e-9 * scale;
  }
}
